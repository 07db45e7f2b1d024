// SPDX-License-Identifier: GPL-3.0-or-later
#include <assessment/budget_of.h>
#include <assessment/current_readings.h>
#include <assessment/figures.h>
#include <assessment/rests_on.h>
#include <base/say.h>
#include <ledger/band_names.h>

namespace caprail {

namespace {

void fitCheck(const Assessing& a, const FitId& id, const BandFact& band, const std::string& title) {
    const std::string subject = id.first + ":" + std::to_string(id.second);
    Check& check = a.add(CheckKind::fit, id, subject, title, {Station::bearings, subject});
    const auto at = a.facts.fits.find(id);
    check.remedy = Core::say("Measure it.");
    if (at == a.facts.fits.end()) {
        return;
    }
    const auto current = currentFits(a.facts, id);
    const auto& listed = current.empty() ? at->second : current;
    for (const auto& reading : listed) {
        rest(check, reading.entry);
    }
    FitResult& result = a.out.fits[id];
    result.value = Length(toNearest(summarise(lengthsOf(listed, [](const auto& r) { return r.value.value; })).mean));
    result.readings = listed.size();
    result.isCurrent = !current.empty();
    const Judged& judged = a.judge(check, "", result.value, fitBudgetOf(a.facts, id), band.band);
    result.uncertainty = judged.uncertainty;
    check.sentence = a.against(judged) + ".";
    a.settle(check, Core::say("Bring it into its band, and measure again."),
             Core::say("Measure it again: more readings make the uncertainty smaller."));
    applyStaleness(check, a.facts, a.units);
    if (check.state == CheckState::stale) {
        check.remedy = canBeJudgedAgain(a.facts, check) ? Core::say("Look at it, and accept it by the new numbers with "
                                                                    "a reason.")
                                                        : Core::say("Measure it again.");
    }
}

} // namespace

void fitChecks(const Assessing& a) {
    if (!a.facts.layout) {
        return;
    }
    for (const auto& [name, band] : a.facts.bands) {
        if (!bands::isFit(name)) {
            continue;
        }
        if (name == bands::rodSideClearance) {
            for (int number = 1; number <= a.facts.layout->throws(); ++number) {
                fitCheck(a, {name, number}, band, Core::say("Rod side clearance, throw %1", number));
            }
            continue;
        }
        // A fit of the shop's own has as many places as were read, and one at least.
        fitCheck(a, {name, 1}, band,
                 name == bands::crankEndPlay ? Core::say("Crank end play") : Core::say("Fit: %1", name));
        for (const auto& [id, readings] : a.facts.fits) {
            if (id.first == name && id.second != 1) {
                fitCheck(a, id, band, Core::say("Fit: %1, place %2", name, id.second));
            }
        }
    }
}

} // namespace caprail
