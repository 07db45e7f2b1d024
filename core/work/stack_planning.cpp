// SPDX-License-Identifier: GPL-3.0-or-later
#include <work/stack_planning.h>

#include <algorithm>
#include <base/say.h>
#include <ledger/band_names.h>

namespace caprail {

namespace {

/// Where the rules set no limit, U is worked out for stacks up to so many shims; larger ones aim like these.
constexpr std::size_t mostShimsAimedFor = 8;

std::size_t largestAimedFor(const Facts& facts) {
    const auto limit = static_cast<std::size_t>(std::max<std::int64_t>(0, facts.rules.largestStack));
    return limit == 0 ? mostShimsAimedFor : std::min(limit, mostShimsAimedFor);
}

std::optional<Length> acceptedAt(const Assessment& assessment, Position p) {
    const auto gap = assessment.gaps.find(p);
    return gap == assessment.gaps.end() ? std::nullopt : gap->second.accepted;
}

bool isState(const Check* check, CheckState state) {
    return check != nullptr && check->state == state;
}

Band stretchedTo(Band band, Length residual) {
    return Band::between(std::min(band.lo(), residual), std::max(band.hi(), residual)).value();
}

/// Whether a plan may hold this stack at this position.
bool mayBePlanned(const Facts& facts, Position p, const std::vector<std::string>& shims) {
    const auto limit = facts.rules.largestStack;
    if (limit > 0 && static_cast<std::int64_t>(shims.size()) > limit) {
        return false;
    }
    return std::ranges::none_of(shims, [&](const std::string& name) {
        const auto shim = facts.shims.find(name);
        return shim == facts.shims.end() || shim->second.isSetAside ||
               std::ranges::any_of(facts.pins, [&](const auto& pin) {
                   return pin.first != p && std::ranges::find(pin.second, name) != pin.second.end();
               });
    });
}

bool stands(const Facts& facts, const Assessment& assessment, Position p, const PlanAims& aims) {
    const auto built = facts.stacks.find(p);
    const auto result = assessment.stacks.find(p);
    const Check* stack = assessment.find("stack:" + code(p));
    const Check* recheck = assessment.find("recheck:" + code(p));
    const bool isThere = built != facts.stacks.end() && result != assessment.stacks.end() && result->second.residual;
    if (!isThere || stack == nullptr || stack->state == CheckState::stale || stack->state == CheckState::out ||
        isState(recheck, CheckState::out) || !mayBePlanned(facts, p, built->second.shims)) {
        return false;
    }
    if (stack->isGood() || isState(recheck, CheckState::good)) {
        return true;
    }
    const auto aim = aims.at(p, built->second.shims.size());
    return (aim ? aim->band : residualBand(facts).band).contains(*result->second.residual);
}

/// Where a stack of a plan has to lie to be judged good, by its number of shims; null: anywhere in the band.
const PlanAim* aimFor(const PlanTask& task, const PlannedStack& stack) {
    const auto aims = task.aims.find(stack.position);
    return aims == task.aims.end()
               ? nullptr
               : &aims->second[std::clamp<std::size_t>(stack.shims.size(), 1, aims->second.size()) - 1];
}

/// The first stack of a plan that is in the band of the request and not in its own aim; with the aim it must keep to.
std::optional<std::pair<std::size_t, Band>> tooNearTheEnd(const PlanTask& task, const PlanRequest& request,
                                                          const StackPlan& plan, std::size_t from = 0) {
    for (std::size_t i = from; i < plan.stacks.size(); ++i) {
        const PlannedStack& stack = plan.stacks[i];
        const PlanAim* aim = aimFor(task, stack);
        const bool isPlanned = stack.inBand && !request.positions[i].pinned && !stack.shims.empty();
        if (isPlanned && aim != nullptr && !aim->band.contains(stack.residual)) {
            return std::pair(i, aim->band);
        }
    }
    return {};
}

/// Narrows the aims of the stacks that lie too near to the end; false: there are none.
bool narrow(const PlanTask& task, PlanRequest& request, const StackPlan& plan) {
    bool isNarrowed = false;
    auto found = tooNearTheEnd(task, request, plan);
    while (found) {
        request.positions[found->first].band = found->second;
        isNarrowed = true;
        found = tooNearTheEnd(task, request, plan, found->first + 1);
    }
    return isNarrowed;
}

/// Keeps what fits, for a solver that has no more time: only the rest is looked for again. Gives what was pinned so.
std::vector<std::size_t> keepWhatFits(PlanRequest& request, const StackPlan& plan) {
    std::vector<std::size_t> pinned;
    for (std::size_t i = 0; i < plan.stacks.size(); ++i) {
        const PlanPosition& p = request.positions[i];
        if (!p.pinned && plan.stacks[i].inBand && bandAt(request, p).contains(plan.stacks[i].residual)) {
            request.positions[i].pinned = plan.stacks[i].shims;
            pinned.push_back(i);
        }
    }
    return pinned;
}

std::string doubtOf(const PlanTask& task, const StackPlan& plan) {
    const std::string before = task.doubt.empty() ? "" : task.doubt + " ";
    for (const PlannedStack& stack : plan.stacks) {
        const PlanAim* aim = aimFor(task, stack);
        if (aim != nullptr && !aim->canBeProven) {
            return before + aim->sentence;
        }
    }
    return task.doubt;
}

void addAims(PlanTask& task, const std::string& id, Position p, const PlanAims& aims, std::size_t largest) {
    for (std::size_t shims = 1; shims <= largest; ++shims) {
        if (auto aim = aims.at(p, shims)) {
            task.aims[id].push_back(std::move(*aim));
        }
    }
}

bool reaches(const StackPlan& plan, const PlanBound& bound, Objective objective) {
    StackPlan seen = plan;
    seen.bound = bound;
    return shareOfBound(seen, objective).figure == PlanFigure::none;
}

} // namespace

ResidualBand residualBand(const Facts& facts) {
    const BandFact* band = facts.bandNamed(bands::residual);
    return band != nullptr ? ResidualBand{band->band, true}
                           : ResidualBand{*Band::between(tenths(-5), tenths(5)), false};
}

std::set<Position> standingStacks(const Facts& facts, const Assessment& assessment) {
    const PlanAims aims(facts, {});
    std::set<Position> standing;
    for (const auto& [p, built] : facts.stacks) {
        if (stands(facts, assessment, p, aims)) {
            standing.insert(p);
        }
    }
    return standing;
}

PlanTask planTaskFor(const Facts& facts, const Assessment& assessment, const Units& units, PlanScope scope,
                     const GirdleModel* girdle) {
    PlanTask task;
    task.band = residualBand(facts);
    task.isClosed = facts.isClosed();
    PlanRequest& request = task.request;
    request.band = task.band.band;
    request.largestStack = static_cast<int>(facts.rules.largestStack);
    request.objective = facts.rules.objective;
    if (!facts.layout || task.isClosed) {
        return task;
    }
    request.caps = facts.layout->caps();
    const PlanAims aims(facts, units);
    for (const Position p : facts.layout->positions()) {
        const auto gap = acceptedAt(assessment, p);
        if (!gap) {
            continue;
        }
        PlanPosition position{code(p), p.cap, p.side == Side::left ? -1 : 1, *gap};
        if (const auto pin = facts.pins.find(p); pin != facts.pins.end()) {
            position.pinned = pin->second;
        } else if (scope == PlanScope::openPlaces && stands(facts, assessment, p, aims)) {
            const StackResult& built = assessment.stacks.at(p);
            position.pinned = built.shims;
            position.band = stretchedTo(request.band, *built.residual);
            task.stays.insert(position.id);
            if (!assessment.find("stack:" + code(p))->isGood()) {
                addAims(task, position.id, p, aims, largestAimedFor(facts)); // for the doubt about it
            }
        } else {
            addAims(task, position.id, p, aims, largestAimedFor(facts));
            if (const auto first = task.aims.find(position.id); first != task.aims.end()) {
                position.band = first->second.front().band;
            }
        }
        request.positions.push_back(std::move(position));
    }
    for (const auto& [name, shim] : facts.shims) {
        if (!shim.isSetAside) {
            request.shims.push_back({name, shim.thickness()});
        }
    }
    if (girdle != nullptr) {
        giveStiffness(request, *girdle);
    }
    if (request.objective == Objective::leastLoad && request.stiffness.empty() && !request.positions.empty()) {
        request.objective = Objective::smallestResidual;
        task.doubt = Core::say("Least load cannot be aimed at while nobody described the girdle's plate: the plan has "
                               "the smallest residuals instead.");
    }
    return task;
}

Result<PlanAnswer> planForVerdicts(const PlanTask& task, const PlanOptions& options) {
    PlanRequest request = task.request;
    PlanOptions inner = options;
    if (options.better) {
        inner.better = [&](const std::function<StackPlan()>& plan) {
            StackPlan better = plan();
            if (!tooNearTheEnd(task, request, better)) {
                options.better([&] { return better; });
            }
        };
    }
    std::optional<PlanBound> widest;
    bool isCutShort = false;
    std::vector<std::size_t> kept;
    for (;;) {
        auto plan = planStacks(request, inner);
        if (!plan) {
            return tl::unexpected(plan.error());
        }
        isCutShort = isCutShort || !plan->proven;
        widest = widest.value_or(plan->bound);
        for (const std::size_t i : kept) {
            request.positions[i].pinned.reset();
            plan->stacks[i].pinned = false;
        }
        if (!narrow(task, request, *plan)) {
            plan->proven = !isCutShort && reaches(*plan, *widest, request.objective);
            plan->bound = *widest;
            std::string doubt = doubtOf(task, *plan);
            return PlanAnswer{std::move(request), std::move(*plan), std::move(doubt)};
        }
        kept = isCutShort ? keepWhatFits(request, *plan) : std::vector<std::size_t>();
    }
}

Feel expectedFeel(Length residual, const Band& band) {
    if (residual < band.lo()) {
        return Feel::rocks;
    }
    return residual > band.hi() ? Feel::loose : Feel::drags;
}

} // namespace caprail
