// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <base/say.h>
#include <cmath>
#include <map>
#include <set>
#include <shims/plan/checked_request.h>
#include <shims/plan/stack_plan.h>
#include <utility>

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

/// Whether a difference of loads is more than the planner tells apart.
std::int64_t signOf(double difference, double whole) {
    const double least = 1e-6 * whole;
    return difference > least ? 1 : difference < -least ? -1 : 0;
}

/// How far the built stacks stay behind the best plan in one figure; negative where they are ahead.
std::int64_t behindIn(PlanFigure figure, const PlanComparison& c) {
    switch (figure) {
    case PlanFigure::inBand:
        return c.fewerInBand;
    case PlanFigure::shims:
        return c.moreShims;
    case PlanFigure::largestResidual:
        return c.largerResidual.value();
    case PlanFigure::twistSum:
        return c.moreTwist;
    case PlanFigure::sumResidual:
        return c.largerSum.value();
    case PlanFigure::largestLoad:
        return signOf(c.largerLoad, c.largestLoad);
    case PlanFigure::sumSquareLoad:
        return signOf(c.largerSquares, c.sumSquareLoad);
    case PlanFigure::none:
        break;
    }
    return 0;
}

/// A plan's figure and its bound, the smaller of the two first.
std::pair<double, double> figureAndBound(PlanFigure figure, const StackPlan& plan) {
    const auto whole = [](std::int64_t smaller, std::int64_t larger) {
        return std::pair(static_cast<double>(smaller), static_cast<double>(larger));
    };
    const PlanBound& bound = plan.bound;
    switch (figure) {
    case PlanFigure::inBand:
        return whole(plan.inBand, bound.inBand);
    case PlanFigure::shims:
        return whole(bound.shims, plan.shims);
    case PlanFigure::largestResidual:
        return whole(bound.largestResidual.value(), plan.largestResidual.value());
    case PlanFigure::twistSum:
        return whole(bound.twistSum, plan.twistSum);
    case PlanFigure::sumResidual:
        return whole(bound.sumResidual.value(), plan.sumResidual.value());
    case PlanFigure::largestLoad:
        return {bound.largestLoad, plan.largestLoad};
    case PlanFigure::sumSquareLoad:
        return {bound.sumSquareLoad, plan.sumSquareLoad};
    case PlanFigure::none:
        break;
    }
    return {};
}

} // namespace

std::array<PlanFigure, 4> figuresOf(Objective objective) {
    using enum PlanFigure;
    switch (objective) {
    case Objective::leastTwist:
        return {inBand, shims, twistSum, sumResidual};
    case Objective::leastLoad:
        return {inBand, shims, largestLoad, sumSquareLoad};
    case Objective::smallestResidual:
        break;
    }
    return {inBand, shims, largestResidual, sumResidual};
}

ShareOfBound shareOfBound(const StackPlan& plan, Objective objective) {
    for (const PlanFigure figure : figuresOf(objective)) {
        const auto [smaller, larger] = figureAndBound(figure, plan);
        const bool isLoad = figure == PlanFigure::largestLoad || figure == PlanFigure::sumSquareLoad;
        if (isLoad ? signOf(larger - smaller, larger) > 0 : smaller < larger) {
            return {figure, smaller / larger};
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
    const solver::Loads loads = solver::loadsFrom(request, residuals);
    c.largestLoad = loads.largest;
    c.sumSquareLoad = loads.sumSquare;
    c.twistSum = twist < 0 ? -twist : twist;
    c.fewerInBand = best.inBand - c.inBand;
    c.moreShims = c.shims - best.shims;
    c.largerResidual = c.largestResidual - best.largestResidual;
    c.largerSum = c.sumResidual - best.sumResidual;
    c.moreTwist = c.twistSum - best.twistSum;
    c.largerLoad = c.largestLoad - best.largestLoad;
    c.largerSquares = c.sumSquareLoad - best.sumSquareLoad;
    for (const PlanFigure figure : figuresOf(request.objective)) {
        if (const std::int64_t behind = behindIn(figure, c); behind != 0) {
            c.decides = figure;
            c.isBetter = behind < 0;
            break;
        }
    }
    return c;
}

} // namespace caprail
