// SPDX-License-Identifier: GPL-3.0-or-later
#include <sheet/wrench_marks.h>

#include <fasteners/wrench.h>
#include <sheet/sheet_text.h>

namespace caprail::sheet {

void WrenchMarks::remember(const QString& reason) {
    if (!m_reasons.contains(reason)) {
        m_reasons << reason;
    }
}

QString WrenchMarks::markFor(const std::string& wrench, std::optional<Torque> torque, UtcTime time) {
    const auto at = m_facts.instruments.find(wrench);
    if (at == m_facts.instruments.end()) {
        return {};
    }
    const InstrumentAdded& what = at->second.latest();
    QString marks;
    if (torque && what.largestTorque) {
        const auto smallest = what.smallestTorque ? std::optional(what.smallestTorque->value) : std::nullopt;
        const auto range = WrenchRange::upTo(what.largestTorque->value, smallest);
        const QString mark = range ? text(rangeMark(*torque, *range, m_units)) : QString();
        if (!mark.isEmpty()) {
            marks += QStringLiteral("†");
            remember(QStringLiteral("† ") + text(wrench) + QStringLiteral(": ") + mark);
        }
    }
    if (what.calibrated) {
        const auto pulls = m_facts.wrenchPulls.find(wrench);
        const std::int64_t cycles = what.cycles.value_or(0) + (pulls == m_facts.wrenchPulls.end() ? 0 : pulls->second);
        const QString mark = text(calibrationMark({*what.calibrated, what.due, what.dueCycles}, dateOf(time), cycles));
        if (!mark.isEmpty()) {
            marks += QStringLiteral("‡");
            remember(QStringLiteral("‡ ") + text(wrench) + QStringLiteral(": ") + mark);
        }
    } else if (what.due && *what.due < dateOf(time)) {
        marks += QStringLiteral("‡");
        remember(QStringLiteral("‡ ") + text(wrench) + QStringLiteral(": ") +
                 Sheet::tr("past its due date, %1").arg(text(format(*what.due))));
    }
    return marks;
}

} // namespace caprail::sheet
