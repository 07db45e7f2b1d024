// SPDX-License-Identifier: GPL-3.0-or-later
#include <work/warm_look.h>

#include <algorithm>
#include <base/say.h>
#include <base/text.h>
#include <work/shells.h>

namespace caprail {

namespace {

std::optional<Expansion> knownExpansion(std::string_view material) {
    const auto known = std::ranges::find(knownExpansions(), material, &MaterialExpansion::material);
    return known == knownExpansions().end() ? std::nullopt : std::optional(known->coefficient);
}

} // namespace

Warming usualWarming() {
    return {knownExpansion(usualBlockMaterial).value_or(Expansion()),
            knownExpansion(usualCrankMaterial).value_or(Expansion()),
            celsius(20),
            celsius(90),
            celsius(90),
            {}};
}

std::vector<WarmClearance> warmClearances(const Facts& facts, const Assessment& assessment, const Warming& warming) {
    std::vector<WarmClearance> list;
    for (const auto& [bearing, result] : assessment.clearances) {
        if (result.clearance && result.journalMean) {
            Warming here = warming;
            here.shells = warmShells(facts, bearing);
            list.push_back({bearing, *result.journalMean, *result.clearance,
                            clearanceAt(*result.clearance, *result.journalMean, here)});
        }
    }
    return list;
}

Oil oilOf(const OilGrade& grade) {
    return {{celsius(40), grade.at40}, {celsius(100), grade.at100}};
}

FilmQuestion usualFilmQuestion() {
    FilmQuestion question;
    question.oil = oilOf(commonGrades().front());
    return question;
}

Result<std::vector<BearingFilm>> bearingFilms(const std::vector<WarmClearance>& clearances, Temperature oilNow,
                                              const FilmQuestion& question, const Units& units) {
    const auto viscosity = dynamicViscosity(question.oil, oilNow);
    if (!viscosity) {
        return tl::unexpected(viscosity.error());
    }
    if (!question.load) {
        return refuse(Core::say("At this temperature the oil has %1 mPa·s. No load is named, so no film is worked out: "
                                "name the load on one bearing.",
                                formatNumber(*viscosity, 1, units.decimalMark)));
    }
    if (clearances.empty()) {
        return tl::unexpected(noClearanceYet());
    }
    std::vector<BearingFilm> films;
    for (const WarmClearance& at : clearances) {
        RunningBearing running{at.journal,     question.width,
                               at.asMeasured,  static_cast<double>(question.revolutionsPerMinute),
                               *question.load, *viscosity};
        const auto asMeasured = oilFilm(running);
        running.clearance = at.warm.value_or(Length());
        films.push_back({at.bearing, asMeasured, running,
                         at.warm ? oilFilm(running) : Result<OilFilm>(tl::unexpected(at.warm.error()))});
    }
    return films;
}

Problem noClearanceYet() {
    return {Core::say("No clearance is measured with a micrometer yet: measure journals and bores first.")};
}

std::string filmAssumptions() {
    return Core::say("Least film by the charts of Raimondi and Boyd for a steady load, with the same load and width at "
                     "every bearing, the oil as warm as the block, its viscosity by ASTM D341. An engine's load turns "
                     "and hammers: advice, no verdict.");
}

std::string warmAssumptions() {
    return Core::say("A look ahead by α·D·ΔT, the shells with their steel backs where their thickness is known, common "
                     "practice, no source: it leaves out that a cap may be of another metal. No verdict, not stored.");
}

Result<Expansion> parseExpansion(std::string_view text, const std::string& what) {
    if (const auto known = knownExpansion(trimmed(text))) {
        return *known;
    }
    const auto value = decimalNumber(trimmed(text));
    if (!value || *value > 1'000) {
        return refuse(Core::say("%1 is not a coefficient for %2: type millionths per kelvin, 11.4 for grey cast iron.",
                                quotedText(text), what));
    }
    return millionthsPerKelvin(*value);
}

Result<double> parseViscosity(std::string_view text, const std::string& what) {
    const auto value = decimalNumber(trimmed(text));
    if (!value || *value <= 0) {
        return refuse(Core::say("%1 is not the oil's viscosity at %2: type mm²/s from its data sheet, a number above "
                                "zero.",
                                quotedText(text), what));
    }
    return *value;
}

} // namespace caprail
