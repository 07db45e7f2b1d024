// SPDX-License-Identifier: GPL-3.0-or-later
#include <assessment/program_findings.h>

#include <assessment/fastener_groups.h>
#include <assessment/specified.h>
#include <base/say.h>
#include <fasteners/lubricant.h>

namespace caprail {

namespace {

constexpr std::string_view proofFinding = "proof-";
constexpr std::string_view singleUseFinding = "single-use-";

template <class T> void open(Facts& facts, std::string name, const Seen<T>& because, std::string place, std::string text) {
    FindingFact finding;
    finding.opened = {because.entry, because.time, because.person, {name, std::move(place), std::move(text)}};
    facts.findings.insert_or_assign(std::move(name), std::move(finding));
}

} // namespace

Result<TorqueJudgement> judgeGroup(const FastenerGroupSet& group, std::int64_t scatterPercent, const Units& units) {
    if (group.method != TighteningMethod::torque || !group.torque) {
        return refuse(Core::say("No torque is given: there is nothing to work out a preload from."));
    }
    const auto thread = parseThread(group.thread);
    if (!thread) {
        return tl::unexpected(thread.error());
    }
    const auto lubricant = findLubricant(group.lubricant);
    if (!lubricant) {
        return tl::unexpected(lubricant.error());
    }
    const auto grade = parseGrade(group.grade);
    if (!grade) {
        return tl::unexpected(grade.error());
    }
    return judgeTorque(group.torque->value, *thread, *grade, lubricant->nutFactor, lubricant->friction,
                       static_cast<double>(scatterPercent) / 100.0, units);
}

void reviewProof(Facts& facts) {
    std::set<std::string> inForce;
    for (const auto& [key, group] : facts.groups) {
        const bool isPulled = group.what.method == TighteningMethod::torque && group.what.torque;
        const bool isDissolved = group.what.places && group.what.places->names.empty();
        const auto judged = judgeGroup(group.what, facts.rules.torqueScatterPercent, Units{});
        if (!isPulled || isDissolved || (judged && !judged->isOverProof())) {
            continue;
        }
        const std::string name = std::string(proofFinding) + std::to_string(group.entry);
        inForce.insert(name);
        if (!facts.findings.contains(name)) {
            // What is left out must not look better than what is too much.
            open(facts, name, group, std::string(word(key.kind)),
                 !judged
                     ? Core::say("nobody can tell how far %1 goes towards proof (%2): name it, or say who takes the "
                                 "specification and why",
                                 group.what.torque->typed.empty() ? format(group.what.torque->value, Units{})
                                                                  : group.what.torque->typed,
                                 judged.error().sentence)
                     : Core::say("what is specified, %1, goes to %2 of proof at the lower friction, torsion counted: "
                                 "lower it, or "
                                 "say who takes it and why",
                                 group.what.torque->typed.empty() ? format(group.what.torque->value, Units{})
                                                                  : group.what.torque->typed,
                                 formatPercent(judged->equivalent.high, Units{})));
        }
    }
    std::erase_if(facts.findings, [&](const auto& finding) {
        return finding.first.starts_with(proofFinding) && !finding.second.settled && !inForce.contains(finding.first);
    });
}

void countTightening(Facts& facts, const Seen<FastenerTightened>& tightened) {
    const FastenerId f = tightened.what.fastener;
    const auto* group = facts.groupOf(f);
    if (group == nullptr) {
        return;
    }
    FastenerFact& fact = facts.fasteners[f];
    fact.timesTight = tightened.what.isNew.value_or(false) ? 0 : fact.timesTight;
    if (!isAsSpecified(tightened.what, group->what)) {
        return;
    }
    ++fact.timesTight;
    if (fact.timesTight > 1 && isSingleUse(group->what)) {
        open(facts, std::string(singleUseFinding) + std::to_string(tightened.entry), tightened, code(f),
             Core::say("it is used once, and was now tightened %1 times: fit a new one, or say who takes it "
                       "and why",
                       fact.timesTight));
    }
}

} // namespace caprail
