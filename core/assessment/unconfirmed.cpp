// SPDX-License-Identifier: GPL-3.0-or-later
#include <assessment/unconfirmed.h>

#include <algorithm>
#include <assessment/fastener_groups.h>
#include <assessment/rule_values.h>
#include <base/say.h>
#include <base/text.h>

namespace caprail {

namespace {

/// The name of a group for a list: "main cap, inner", "rear cap".
std::string nameOf(const GroupKey& key) {
    return key.ring ? shown(key.kind) + ", " + shown(*key.ring) : key.name.empty() ? shown(key.kind) : visibly(key.name);
}

} // namespace

bool namesSomebody(std::string_view source) {
    constexpr std::string_view nobodys[] = {"common practice", "no source"};
    const std::string words = lowered(source);
    return !isBlank(words) &&
           std::ranges::none_of(nobodys, [&](auto phrase) { return words.find(phrase) != std::string::npos; });
}

std::vector<ValueStanding> valuesOf(const Facts& facts, const Units& units) {
    std::vector<ValueStanding> list;
    const auto add = [&](std::string code, std::string title, std::string figure, const std::string& source,
                         std::int64_t entry) {
        ValueStanding value{std::move(code), std::move(title), std::move(figure), source, entry, namesSomebody(source), {}};
        if (const auto said = facts.confirmed.find(value.code); said != facts.confirmed.end()) {
            value.isConfirmed = true;
            value.source = said->second.what.source;
            value.by = said->second.person;
        }
        list.push_back(std::move(value));
    };
    for (const auto& [name, band] : facts.bands) {
        add("band:" + name, Core::say("the limits of “%1”", Core::say(name)), format(band.band, units), band.source,
            band.entry);
    }
    for (const RuleValue& rule : ruleValues(facts.rules, units)) {
        add("rule:" + std::string(rule.field), Core::say(rule.title), rule.figure, facts.rules.source, facts.rulesEntry);
    }
    for (const auto& [key, group] : facts.groups) {
        if (isSpecified(group.what) && (!facts.layout || !membersOf(facts, key).empty())) {
            add(codeOf(key), Core::say("what the %1 fasteners are tightened to", nameOf(key)),
                specifiedText(group.what, units), group.what.source, group.entry);
        }
    }
    return list;
}

std::size_t countUnconfirmed(const std::vector<ValueStanding>& values) {
    return static_cast<std::size_t>(std::ranges::count(values, false, &ValueStanding::isConfirmed));
}

std::string unconfirmedSentence(const std::vector<ValueStanding>& values) {
    const std::size_t open = countUnconfirmed(values);
    return open == 0 ? std::string()
                     : Core::count(open, Core::mark("%1 value of %2 was confirmed by nobody: it is common practice, and the part "
                                                    "maker's own figure comes first."),
                                   Core::mark("%1 values of %2 were confirmed by nobody: they are common practice, and the "
                                              "part makers' own figures come first."),
                                   values.size());
}

} // namespace caprail
