// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <map>
#include <set>
#include <shims/plan/checked_request.h>
#include <shims/plan/stack_plan.h>
#include <tuple>
#include <base/say.h>

namespace caprail {

namespace {

using StacksByPosition = std::map<std::string, const BuiltStack*>;

Result<StacksByPosition> checkBuilt(const PlanRequest& request, const std::map<std::string, Length>& kit,
                                    const std::vector<BuiltStack>& built) {
    std::set<std::string> positions;
    for (const PlanPosition& p : request.positions) {
        positions.insert(p.id);
    }
    StacksByPosition stacks;
    std::map<std::string, std::string> usedAt;
    for (const BuiltStack& stack : built) {
        if (positions.count(stack.position) == 0) {
            return refuse(Core::say("There is no position %1 in this plan: correct its name.", stack.position));
        }
        if (!stacks.emplace(stack.position, &stack).second) {
            return refuse(Core::say("Position %1 is given two built stacks: give one.", stack.position));
        }
        for (const std::string& shim : stack.shims) {
            if (kit.count(shim) == 0) {
                return refuse(Core::say("The stack built at position %1 has shim %2, which is not in the kit or is set "
                                        "aside: correct the stack.",
                                        stack.position, shim));
            }
            const auto [at, isNew] = usedAt.emplace(shim, stack.position);
            if (!isNew) {
                return refuse(
                    Core::say("Shim %1 is built in twice, at position %2 and at position %3: correct one of them.",
                              shim, at->second, stack.position));
            }
        }
    }
    return stacks;
}

} // namespace

ShareOfBound shareOfBound(const StackPlan& plan, Objective objective) {
    using Figure = ShareOfBound::Figure;
    const PlanBound& bound = plan.bound;
    struct Pair {
        Figure figure;
        std::int64_t smaller;
        std::int64_t larger;
    };
    const Pair third = objective == Objective::leastTwist
                           ? Pair{Figure::twistSum, bound.twistSum, plan.twistSum}
                           : Pair{Figure::largestResidual, bound.largestResidual.value(), plan.largestResidual.value()};
    for (const Pair& pair :
         {Pair{Figure::inBand, plan.inBand, bound.inBand}, Pair{Figure::shims, bound.shims, plan.shims}, third,
          Pair{Figure::sumResidual, bound.sumResidual.value(), plan.sumResidual.value()}}) {
        if (pair.smaller < pair.larger) {
            return {pair.figure, static_cast<double>(pair.smaller) / static_cast<double>(pair.larger)};
        }
    }
    return {};
}

Result<PlanComparison> compareWithBest(const PlanRequest& request, const StackPlan& best,
                                       const std::vector<BuiltStack>& built) {
    std::map<std::string, Length> kit;
    for (const PlanShim& shim : request.shims) {
        kit.emplace(shim.id, shim.thickness);
    }
    const auto stacks = checkBuilt(request, kit, built);
    if (!stacks) {
        return tl::unexpected(stacks.error());
    }
    PlanComparison c;
    const int caps = solver::capsOf(request);
    std::int64_t twist = 0;
    for (const PlanPosition& p : request.positions) {
        Length residual = p.gap;
        if (const auto stack = stacks->find(p.id); stack != stacks->end()) {
            c.shims += static_cast<int>(stack->second->shims.size());
            if (request.largestStack > 0 && static_cast<int>(stack->second->shims.size()) > request.largestStack) {
                c.tooLarge.push_back(p.id);
            }
            for (const std::string& shim : stack->second->shims) {
                residual -= kit.at(shim);
            }
        }
        if (bandAt(request, p).contains(residual)) {
            ++c.inBand;
            c.largestResidual = std::max(c.largestResidual, residual.magnitude());
            c.sumResidual += residual.magnitude();
            twist += solver::twistWeight(p, caps) * residual.value();
        }
    }
    c.twistSum = twist < 0 ? -twist : twist;
    c.fewerInBand = best.inBand - c.inBand;
    c.moreShims = c.shims - best.shims;
    c.largerResidual = c.largestResidual - best.largestResidual;
    c.largerSum = c.sumResidual - best.sumResidual;
    c.moreTwist = c.twistSum - best.twistSum;
    const std::int64_t third = request.objective == Objective::leastTwist ? c.moreTwist : c.largerResidual.value();
    const auto behind = std::make_tuple(c.fewerInBand, c.moreShims, third, c.largerSum.value());
    const decltype(behind) level{};
    c.isAsGood = behind == level;
    c.isBetter = behind < level;
    return c;
}

} // namespace caprail
