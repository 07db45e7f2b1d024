// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/history/words.h>

#include <QCoreApplication>
#include <QStringList>
#include <session/filled.h>
#include <stations/common/station_text.h>

namespace caprail {

namespace {

struct RoundsText {
    Q_DECLARE_TR_FUNCTIONS(HistoryStation)
};

QString momentText(UtcTime time) {
    const std::string text = format(time); // "2026-05-04T09:30:00.000Z"
    return qtText(text.substr(0, 10) + " " + text.substr(11, 5));
}

} // namespace

QString cellStory(const RoundCell& cell, const Units& units) {
    QStringList story;
    const QString found = cell.what.outcome == Outcome::held ? RoundsText::tr("held")
                          : cell.what.angle
                              ? RoundsText::tr("moved %1").arg(qtText(format(cell.what.angle->value, units)))
                              : RoundsText::tr("moved");
    story << filled(RoundsText::tr("%1, round %2: %3"), capitalised(qtText(describe(cell.what.fastener))),
                    cell.what.round, found);
    if (cell.what.torque) {
        story << RoundsText::tr("at %1").arg(qtText(format(cell.what.torque->value, units)));
    }
    story << RoundsText::tr("%1 with %2")
                 .arg(qtText(cell.person), cell.what.instrument.empty() ? RoundsText::tr("no instrument named")
                                                                        : qtText(cell.what.instrument));
    story << RoundsText::tr("%1 UTC, entry %2").arg(momentText(cell.time)).arg(cell.entry);
    if (cell.isStruck) {
        story << RoundsText::tr("struck");
    } else if (cell.otherEntries > 0) {
        story << RoundsText::tr("an earlier outcome was struck");
    }
    return story.join(QStringLiteral("\n"));
}

} // namespace caprail
