// SPDX-License-Identifier: GPL-3.0-or-later
#include <sheet/sections.h>

#include <sheet/sheet_text.h>

namespace caprail::sheet {

CheckState Writing::stateOf(const std::string& code) const {
    const Check* check = assessment().find(code);
    return check == nullptr ? CheckState::notDone : check->state;
}

SheetCell verdictCell(CheckState state) {
    return stateCell(state, state == CheckState::good ? Sheet::tr("in") : QString());
}

QString ruleSentence(const RulesSet& rules) {
    if (rules.decision == DecisionWord::simple) {
        return Sheet::tr("Decision rule: simple acceptance. The measured value alone decides; its expanded uncertainty "
                         "U is shown and not counted.");
    }
    return Sheet::tr("Decision rule: guard bands (ISO 14253-1). A value is in when all of value ± U lies inside its "
                     "band, out when all of it lies outside, and too close to call otherwise. U is the expanded "
                     "uncertainty, %1.")
        .arg(rules.coverage == CoverageWord::two ? Sheet::tr("k = 2") : Sheet::tr("Student's t at 95.45 %"));
}

QString bandText(const BandFact& band, const Units& units) {
    QString words = text(format(band.band, units));
    if (band.target) {
        words += Sheet::tr(", target %1").arg(text(format(*band.target, units)));
    }
    if (!band.source.empty()) {
        words += QStringLiteral(" (") + text(band.source) + QLatin1Char(')');
    }
    return words;
}

QString shopOf(const SheetSource& source, const SheetOptions& options) {
    if (!options.shopName.isEmpty() || !source.facts.engine) {
        return options.shopName;
    }
    return text(source.facts.engine->what.shop);
}

} // namespace caprail::sheet
