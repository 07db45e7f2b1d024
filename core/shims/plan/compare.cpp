// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <base/say.h>
#include <cmath>
#include <map>
#include <set>
#include <shims/plan/checked_request.h>
#include <shims/plan/stack_plan.h>
#include <tuple>

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

/// Whether a difference is more than the planner tells apart.
std::int64_t signOf(double difference, double whole) {
    const double least = 1e-6 * whole;
    return difference > least ? 1 : difference < -least ? -1 : 0;
}

} // namespace

ShareOfBound shareOfBound(const StackPlan& plan, Objective objective) {
    using Figure = ShareOfBound::Figure;
    const PlanBound& bound = plan.bound;
    struct Pair {
        Figure figure;
        double smaller;
        double larger;
    };
    const auto whole = [](Figure figure, std::int64_t smaller, std::int64_t larger) {
        return Pair{figure, static_cast<double>(smaller), static_cast<double>(larger)};
    };
    const bool byLoad = objective == Objective::leastLoad;
    const Pair third =
        byLoad ? Pair{Figure::largestLoad, bound.largestLoad, plan.largestLoad}
        : objective == Objective::leastTwist
            ? whole(Figure::twistSum, bound.twistSum, plan.twistSum)
            : whole(Figure::largestResidual, bound.largestResidual.value(), plan.largestResidual.value());
    const Pair fourth = byLoad ? Pair{Figure::sumSquareLoad, bound.sumSquareLoad, plan.sumSquareLoad}
                               : whole(Figure::sumResidual, bound.sumResidual.value(), plan.sumResidual.value());
    for (const Pair& pair : {whole(Figure::inBand, plan.inBand, bound.inBand),
                             whole(Figure::shims, bound.shims, plan.shims), third, fourth}) {
        if (pair.smaller < pair.larger) {
            return {pair.figure, pair.smaller / pair.larger};
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
    std::vector<Length> residuals; // as they make loads
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
            residuals.push_back(residual);
        } else {
            residuals.push_back(Length());
        }
    }
    for (const double f : solver::forcesFrom(request, residuals)) {
        c.largestLoad = std::max(c.largestLoad, std::abs(f));
        c.sumSquareLoad += f * f;
    }
    c.twistSum = twist < 0 ? -twist : twist;
    c.fewerInBand = best.inBand - c.inBand;
    c.moreShims = c.shims - best.shims;
    c.largerResidual = c.largestResidual - best.largestResidual;
    c.largerSum = c.sumResidual - best.sumResidual;
    c.moreTwist = c.twistSum - best.twistSum;
    c.largerLoad = c.largestLoad - best.largestLoad;
    c.largerSquares = c.sumSquareLoad - best.sumSquareLoad;
    const bool byLoad = request.objective == Objective::leastLoad;
    const std::int64_t third = byLoad                                       ? signOf(c.largerLoad, c.largestLoad)
                               : request.objective == Objective::leastTwist ? c.moreTwist
                                                                            : c.largerResidual.value();
    const std::int64_t fourth = byLoad ? signOf(c.largerSquares, c.sumSquareLoad) : c.largerSum.value();
    const auto behind = std::make_tuple(c.fewerInBand, c.moreShims, third, fourth);
    const decltype(behind) level{};
    c.isAsGood = behind == level;
    c.isBetter = behind < level;
    return c;
}

} // namespace caprail
