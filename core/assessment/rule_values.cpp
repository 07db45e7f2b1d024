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
    const auto length = [&](std::string_view field, const char* title, Length value) {
        return RuleValue{field, title, formatExact(value, units), value.value()};
    };
    const auto number = [&](std::string_view field, const char* title, std::int64_t value, const char* sign = "") {
        return RuleValue{field, title, std::to_string(value) + sign, value};
    };
    const Temperature spread = rules.temperatureSpread.value_or(usualTemperatureSpread);
    const Torque rise = rules.turningRise.value_or(usualTurningRise());
    return {{"decision", Core::mark("the decision rule"), shown(rules.decision), std::int64_t(rules.decision)},
            {"coverage", Core::mark("the coverage"), shown(rules.coverage), std::int64_t(rules.coverage)},
            length("repeat_limit", Core::mark("the repeat limit of gap readings"), rules.repeatLimit),
            number("minimum_passes", Core::mark("the least number of passes"), rules.minimumPasses),
            length("kit_tolerance", Core::mark("the tolerance of a shim's marking"), rules.kitTolerance),
            number("largest_stack", Core::mark("the most shims per stack"), rules.largestStack),
            number("torque_scatter_percent", Core::mark("the scatter of preload at a torque"),
                   rules.torqueScatterPercent, " %"),
            {"temperature_spread", Core::mark("what parts may differ by in temperature"), spreadText(spread, units),
             spread.value()},
            length("counterweight_minimum", Core::mark("the least clearance at a counterweight"),
                   rules.counterweightMinimum),
            length("pickup_tube_minimum", Core::mark("the least clearance at the pickup tube"),
                   rules.pickupTubeMinimum.value_or(defaultPickupTubeClearance())),
            length("dipstick_minimum", Core::mark("the least clearance at the dipstick"),
                   rules.dipstickMinimum.value_or(defaultDipstickClearance())),
            {"turning_rise", Core::mark("the largest rise of the turning torque"), format(rise, units), rise.value()}};
}

std::vector<std::string_view> changedRules(const RulesSet& from, const RulesSet& to) {
    std::vector<std::string_view> changed;
    const auto before = ruleValues(from);
    const auto after = ruleValues(to);
    for (std::size_t i = 0; i < before.size(); ++i) {
        if (before[i].exact != after[i].exact) {
            changed.push_back(after[i].field);
        }
    }
    return changed;
}

std::string describeRuleChanges(const RulesSet& from, const RulesSet& to, const Units& units) {
    std::string words;
    const auto tell = [&](std::string change) { words += (words.empty() ? "" : "; ") + std::move(change); };
    const auto before = ruleValues(from, units);
    const auto after = ruleValues(to, units);
    for (std::size_t i = 0; i < before.size(); ++i) {
        if (before[i].figure != after[i].figure) {
            tell(Core::say("%1 from %2 to %3", Core::say(after[i].title), before[i].figure, after[i].figure));
        } else if (before[i].exact != after[i].exact) {
            tell(Core::say("%1 by less than its last digit, at %2", Core::say(after[i].title), after[i].figure));
        }
    }
    const auto add = [&](const char* title, const std::optional<bool>& was, const std::optional<bool>& is) {
        if (was.value_or(false) != is.value_or(false)) {
            tell(Core::say("%1 from %2 to %3", Core::say(title), yesOrNo(was), yesOrNo(is)));
        }
    };
    add(Core::mark("a second person verifies"), from.secondPersonVerifies, to.secondPersonVerifies);
    add(Core::mark("a second person signs off"), from.secondPersonSigns, to.secondPersonSigns);
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
