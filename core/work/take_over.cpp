// SPDX-License-Identifier: GPL-3.0-or-later
#include <work/take_over.h>

#include <algorithm>
#include <assessment/rests_on.h>
#include <set>
#include <work/stack_planning.h>

namespace caprail {

namespace {

bool isSameStack(const std::vector<std::string>& a, const std::vector<std::string>& b) {
    return std::set(a.begin(), a.end()) == std::set(b.begin(), b.end());
}

bool standsAsPlanned(const PlannedStack& planned, Position p, const Facts& facts, const std::set<Position>& standing) {
    const auto built = facts.stacks.find(p);
    return built != facts.stacks.end() && isSameStack(built->second.shims, planned.shims) && standing.contains(p);
}

} // namespace

std::vector<Body> takeOver(const StackPlan& plan, const Facts& facts, const Assessment& assessment) {
    if (facts.isClosed()) {
        return {};
    }
    const std::set<Position> standing = standingStacks(facts, assessment);
    std::vector<Body> builds;
    std::set<Position> rebuilt;
    std::set<std::string> wanted;
    for (const PlannedStack& planned : plan.stacks) {
        const auto p = parsePosition(planned.position);
        if (!p || !planned.inBand || standsAsPlanned(planned, *p, facts, standing)) {
            continue;
        }
        builds.push_back(StackBuilt{*p, NameList{planned.shims}});
        rebuilt.insert(*p);
        wanted.insert(planned.shims.begin(), planned.shims.end());
    }
    std::vector<Body> entries;
    for (const auto& stack : facts.stacks) {
        const Position p = stack.first;
        const bool holdsWanted = std::ranges::any_of(stack.second.shims, [&](const std::string& shim) {
            const auto plannedHere = std::ranges::find(plan.stacks, code(p), &PlannedStack::position);
            const bool staysHere = rebuilt.contains(p) && plannedHere != plan.stacks.end() &&
                                   std::ranges::find(plannedHere->shims, shim) != plannedHere->shims.end();
            return wanted.contains(shim) && !staysHere;
        });
        if (holdsWanted) {
            entries.push_back(StackMoved{p, StackMove::takenApart});
        }
    }
    std::ranges::move(builds, std::back_inserter(entries));
    return entries;
}

std::vector<Body> moveAllStacks(const Facts& facts, StackMove move) {
    std::vector<Body> entries;
    for (const auto& [p, built] : facts.stacks) {
        if (built.isOn != (move == StackMove::putBack)) {
            entries.push_back(StackMoved{p, move});
        }
    }
    return entries;
}

std::optional<Body> confirmStack(Position position, const Facts& facts, const Assessment& assessment) {
    const auto built = facts.stacks.find(position);
    if (built == facts.stacks.end()) {
        return {};
    }
    const Check* check = assessment.find("stack:" + code(position));
    if (check != nullptr && check->state == CheckState::stale && canBeJudgedAgain(facts, *check)) {
        return JudgedAgain{check->code, "the stack was looked at again against the present numbers"};
    }
    return StackBuilt{position, NameList{built->second.shims}};
}

std::vector<BuiltStack> builtStacks(const Facts& facts, const StackPlan& plan) {
    std::vector<BuiltStack> stacks;
    for (const auto& [p, built] : facts.stacks) {
        if (std::ranges::find(plan.stacks, code(p), &PlannedStack::position) != plan.stacks.end()) {
            stacks.push_back({code(p), built.shims});
        }
    }
    return stacks;
}

} // namespace caprail
