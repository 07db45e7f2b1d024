// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <ledger/entries.h>
#include <string>
#include <units/format.h>
#include <vector>

namespace caprail {

/// One of the values that the rules hold, as it is in force: what is not given is the program's own default.
struct RuleValue {
    std::string_view field; ///< its name in `rules_set`: "repeat_limit"
    const char* title;      ///< marked for translation
    std::string figure;     ///< "0.0010 in", "2"
    std::int64_t exact = 0; ///< the value itself: what differs by less than is printed differs
};

/// The values by which verdicts are made, in the order of the form; not what the planner aims for, nor who may sign.
std::vector<RuleValue> ruleValues(const RulesSet&, const Units& units = {});
/// The fields of those that differ, if only by less than is printed.
std::vector<std::string_view> changedRules(const RulesSet& from, const RulesSet& to);
/// Those of `to` that differ from `from`, and who has to verify and sign: "the repeat limit from 0.0010 in to 0.0020 in".
std::string describeRuleChanges(const RulesSet& from, const RulesSet& to, const Units& units = {});
/// What a group asks for: "70.0 lbf·ft + 90.0°"; empty while nothing is specified.
std::string specifiedText(const FastenerGroupSet&, const Units& units = {});

} // namespace caprail
