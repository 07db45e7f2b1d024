// SPDX-License-Identifier: GPL-3.0-or-later
#include <session/filled.h>
#include <sheet/sections.h>

#include <assessment/beside_verdict.h>
#include <assessment/unconfirmed.h>
#include <cstdlib>
#include <sheet/sheet_text.h>

namespace caprail::sheet {

CheckState Writing::stateOf(const std::string& checkCode) const {
    const Check* check = assessment().find(checkCode);
    return check == nullptr ? CheckState::notDone : check->state;
}

QString Writing::time(UtcTime time) const {
    return timeText(time, options.zone);
}

QString Writing::day(UtcTime time) const {
    return dayText(time, options.zone);
}

QString Writing::fromTo(UtcTime first, UtcTime last) const {
    if (first == last) {
        return time(first);
    }
    const QString end = time(last);
    return time(first) + QStringLiteral(" – ") + (day(first) == day(last) ? end.right(5) : end);
}

QString zoneText(const Ledger& ledger, const QTimeZone& zone) {
    QStringList distances;
    for (const Entry& entry : ledger.entries()) {
        const int minutes = zone.offsetFromUtc(QDateTime::fromMSecsSinceEpoch(entry.time.milliseconds, Qt::UTC)) / 60;
        const int size = std::abs(minutes);
        const QString distance = QStringLiteral("UTC%1%2:%3")
                                     .arg(minutes < 0 ? QStringLiteral("−") : QStringLiteral("+"))
                                     .arg(size / 60, 2, 10, QLatin1Char('0'))
                                     .arg(size % 60, 2, 10, QLatin1Char('0'));
        if (!distances.contains(distance)) {
            distances << distance;
        }
    }
    const QString name = QString::fromUtf8(zone.id());
    if (distances.isEmpty() || name == QLatin1String("UTC") || name == QLatin1String("Etc/UTC")) {
        return name == QLatin1String("Etc/UTC") ? QStringLiteral("UTC") : name;
    }
    return name + QStringLiteral(", ") + distances.join(QStringLiteral(", "));
}

SheetCell verdictCell(CheckState state) {
    return stateCell(state, state == CheckState::good ? Sheet::tr("in") : QString());
}

SheetCell verdictCell(const Writing& w, const std::string& checkCode) {
    const Check* check = w.assessment().find(checkCode);
    SheetCell cell = verdictCell(w.stateOf(checkCode));
    const std::string beside = check == nullptr ? std::string() : besideVerdict(*check, w.units());
    if (!beside.empty()) {
        cell.text += QStringLiteral("  ") + text(beside);
    }
    return cell;
}

namespace {

/// What p and C mean, under either rule.
QString conformitySentence() {
    return Sheet::tr("p is the probability that the value lies within its limits, C how many times over the limits hold four "
                     "standard uncertainties (JCGM 106); below 1 a value is weakly measured.");
}

} // namespace

QString ruleSentence(const RulesSet& rules) {
    if (rules.decision == DecisionRule::simple) {
        return Sheet::tr("Decision rule: simple acceptance. The measured value alone decides; its expanded uncertainty "
                         "U is shown and not counted.") +
               QLatin1Char(' ') + conformitySentence();
    }
    return Sheet::tr("Decision rule: guard bands (ISO 14253-1). A value is in when all of value ± U lies inside its "
                     "limits, out when all of it lies outside, and too close to call otherwise. U is the expanded "
                     "uncertainty, %1.")
               .arg(rules.coverage == Coverage::two ? Sheet::tr("k = 2") : Sheet::tr("Student's t at 95.45 %")) +
           QLatin1Char(' ') + conformitySentence();
}

QString sourceText(const Writing& w, const std::string& valueCode, const std::string& source) {
    const auto said = w.facts().confirmed.find(valueCode);
    if (said != w.facts().confirmed.end()) {
        return text(said->second.what.source);
    }
    return source.empty() || namesSomebody(source) ? text(source) : Sheet::tr("common practice, confirmed by nobody");
}

QString bandText(const Writing& w, std::string_view name) {
    const Units& units = w.units();
    const BandFact& band = *w.facts().bandNamed(name);
    QString words = text(format(band.band, units));
    if (band.target) {
        words = Sheet::tr("%1, target %2").arg(words, text(format(*band.target, units)));
    }
    const QString source = sourceText(w, "band:" + std::string(name), band.source);
    return source.isEmpty() ? words : words + QStringLiteral(" (") + source + QLatin1Char(')');
}

QString reachOf(const Writing& w) {
    if (!w.facts().engine) {
        return {};
    }
    const EngineDescribed& e = w.facts().engine->what;
    return joined({e.address ? text(*e.address) : QString(), e.telephone ? text(*e.telephone) : QString()});
}

QString shopOf(const SheetSource& source, const SheetOptions& options) {
    if (!options.shopName.isEmpty() || !source.facts.engine) {
        return options.shopName;
    }
    return text(source.facts.engine->what.shop);
}

} // namespace caprail::sheet
