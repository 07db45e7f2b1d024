// SPDX-License-Identifier: GPL-3.0-or-later
#include <assessment/rule_values.h>

#include <base/say.h>
#include <clearances/trial_fit.h>
#include <clearances/turning.h>
#include <measure/budgets.h>

namespace caprail {

namespace {

std::string yesOrNo(const std::optional<bool>& is) {
    return is.value_or(false) ? Core::say("yes") : Core::say("no");
}

/// Half a temperature's width is a difference: it is printed as one.
std::string spreadText(Temperature spread, const Units& units) {
    const double kelvins = static_cast<double>(spread.value()) / 1000.0;
    return units.length == LengthUnit::inch ? formatNumber(kelvins * 1.8, 1, units.decimalMark) + " °F"
                                            : formatNumber(kelvins, 1, units.decimalMark) + " °C";
}

} // namespace

std::vector<RuleValue> ruleValues(const RulesSet& rules, const Units& units) {
    return {{"decision", Core::mark("the decision rule"), shown(rules.decision)},
            {"coverage", Core::mark("the coverage"), shown(rules.coverage)},
            {"repeat_limit", Core::mark("the repeat limit of gap readings"), format(rules.repeatLimit, units)},
            {"minimum_passes", Core::mark("the least number of passes"), std::to_string(rules.minimumPasses)},
            {"kit_tolerance", Core::mark("the tolerance of a shim's marking"), format(rules.kitTolerance, units)},
            {"largest_stack", Core::mark("the most shims per stack"), std::to_string(rules.largestStack)},
            {"torque_scatter_percent", Core::mark("the scatter of preload at a torque"),
             std::to_string(rules.torqueScatterPercent) + " %"},
            {"temperature_spread", Core::mark("what parts may differ by in temperature"),
             spreadText(rules.temperatureSpread.value_or(usualTemperatureSpread), units)},
            {"counterweight_minimum", Core::mark("the least clearance at a counterweight"),
             format(rules.counterweightMinimum, units)},
            {"pickup_tube_minimum", Core::mark("the least clearance at the pickup tube"),
             format(rules.pickupTubeMinimum.value_or(defaultPickupTubeClearance()), units)},
            {"dipstick_minimum", Core::mark("the least clearance at the dipstick"),
             format(rules.dipstickMinimum.value_or(defaultDipstickClearance()), units)},
            {"turning_rise", Core::mark("the largest rise of the turning torque"),
             format(rules.turningRise.value_or(usualTurningRise()), units)}};
}

std::string describeRuleChanges(const RulesSet& from, const RulesSet& to, const Units& units) {
    std::string words;
    const auto add = [&](const char* title, const std::string& was, const std::string& is) {
        if (was != is) {
            words += (words.empty() ? "" : "; ") + Core::say("%1 from %2 to %3", Core::say(title), was, is);
        }
    };
    const auto before = ruleValues(from, units);
    const auto after = ruleValues(to, units);
    for (std::size_t i = 0; i < before.size(); ++i) {
        add(before[i].title, before[i].figure, after[i].figure);
    }
    add(Core::mark("a second person verifies"), yesOrNo(from.secondPersonVerifies), yesOrNo(to.secondPersonVerifies));
    add(Core::mark("a second person signs off"), yesOrNo(from.secondPersonSigns), yesOrNo(to.secondPersonSigns));
    return words;
}

std::string specifiedText(const FastenerGroupSet& group, const Units& units) {
    std::string words;
    const auto add = [&](const std::string& part) { words += (words.empty() ? "" : " + ") + part; };
    if (group.torque) {
        add(format(group.torque->value, units));
    }
    if (group.angle) {
        add(format(group.angle->value, units));
    }
    if (group.stretch) {
        add(Core::say("stretch %1", formatFine(group.stretch->value, units)));
    }
    return words;
}

} // namespace caprail
