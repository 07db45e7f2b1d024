// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <shims/plan/checked_request.h>
#include <shims/plan/stack_plan.h>
#include <shims/solver/solver.h>
#include <shims/solver/whole_division.h>

namespace caprail {

namespace {

using solver::ceilDivide;
using solver::floorDivide;

/// The residual to aim at when the thickness can be chosen freely: 0, or the end of the band nearest to it.
Length wanted(Band band) {
    return std::clamp(Length(), band.lo(), band.hi());
}

Length stackThickness(const solver::CheckedRequest& checked, const std::vector<solver::Part>& stack) {
    std::int64_t total = 0;
    for (const solver::Part& part : stack) {
        total += checked.instance().thickness[part.cls] * part.count;
    }
    return checked.lengthOf(total);
}

const PlannedStack& stackAt(const StackPlan& plan, const std::string& position) {
    return *std::find_if(plan.stacks.begin(), plan.stacks.end(),
                         [&](const PlannedStack& s) { return s.position == position; });
}

/// What the two remedies have in common: the request, and the seat in the solver's instance that is to be met.
struct Case {
    const PlanRequest& request;
    const StackPlan& plan;
    const PlanOptions& options;
    const solver::CheckedRequest& checked;
    std::size_t seat;
    [[nodiscard]] const PlanPosition& position() const { return request.positions[checked.open()[seat]]; }
    [[nodiscard]] Band band() const { return bandAt(request, position()); }
    [[nodiscard]] const solver::Seat& asked() const { return checked.instance().seats[seat]; }

    /// The stack of the seat in the best plan in which it is as `changed` says; none where it is left out.
    [[nodiscard]] std::optional<std::vector<solver::Part>> solve(const solver::Seat& changed) const {
        if (changed.lo > changed.hi) {
            return std::nullopt;
        }
        solver::Solution solution = solver::solve(checked.withSeat(seat, changed), options.stop);
        return std::move(solution.stacks[seat]);
    }

    /// Plans anew with the kit changed; keeps the remedy if that serves more positions, this one among them. Where the
    /// best plan would rather serve another with the new shim, this one is given the stack that it was thought of for.
    [[nodiscard]] std::optional<Remedy> tryOut(Remedy remedy, PlanRequest changed,
                                               const std::vector<std::string>& stack) const {
        remedy.position = position().id;
        auto better = planStacks(changed, {options.stop, {}});
        if (better && !stackAt(*better, remedy.position).inBand) {
            changed.positions[checked.open()[seat]].pinned = stack;
            better = planStacks(changed, {options.stop, {}});
            if (better) {
                better->stacks[checked.open()[seat]].pinned = false;
            }
        }
        if (!better || better->inBand <= plan.inBand || !stackAt(*better, remedy.position).inBand) {
            return std::nullopt;
        }
        remedy.plan = std::move(*better);
        return remedy;
    }
};

/// One shim of a thickness to be chosen stands for whatever is missing: the seat may be left short by anything from
/// nothing to what `most` takes up, and its residual does not matter, because the new shim settles it. `slack`: what
/// may be left above what is wanted, where no shim to be had is thick enough to leave just that.
std::optional<Remedy> buyWith(const Case& c, Length slack) {
    const std::int64_t unit = c.checked.unit();
    solver::Seat changed = c.asked();
    const Length room = c.position().gap - wanted(c.band());
    if (room <= Length()) {
        return std::nullopt; // the rail stands proud: no shim can help
    }
    Length thickest = c.request.shims.empty() ? room : Length();
    for (const PlanShim& shim : c.request.shims) {
        thickest = std::max(thickest, shim.thickness);
    }
    changed.hi = floorDivide(room.value() - 1, unit);
    changed.lo = ceilDivide((room - thickest - slack).value(), unit);
    changed.residualCounts = false;
    changed.most =
        c.request.largestStack == 0 ? changed.most : std::min(changed.most, std::max(0, c.request.largestStack - 1));
    const auto parts = c.solve(changed);
    if (!parts) {
        return std::nullopt;
    }
    Remedy remedy;
    remedy.kind = Remedy::Kind::buy;
    remedy.thickness = std::min(room - stackThickness(c.checked, *parts), thickest);
    PlanRequest withIt = c.request;
    withIt.shims.push_back({boughtShimId, remedy.thickness});
    std::vector<std::string> stack = c.checked.namesOf(*parts);
    stack.emplace_back(boughtShimId);
    return c.tryOut(std::move(remedy), std::move(withIt), stack);
}

/// Just as thick as is missing; else as thick as can be had, if that leaves a residual in band.
std::optional<Remedy> buy(const Case& c) {
    auto remedy = buyWith(c, Length());
    return remedy ? remedy : buyWith(c, c.band().hi() - wanted(c.band()));
}

/// The seat may be proud of what is wanted by as much as `proud`, which lapping one shim of its stack takes off; as
/// above, the lapped shim takes the residual up.
std::optional<Remedy> lapAway(const Case& c, Length proud) {
    const std::int64_t unit = c.checked.unit();
    solver::Seat changed = c.asked();
    const Length room = c.position().gap - wanted(c.band());
    changed.lo = std::max(changed.lo, ceilDivide(room.value(), unit));
    changed.hi = floorDivide((room + proud).value(), unit);
    changed.residualCounts = false;
    const auto parts = c.solve(changed);
    if (!parts || parts->empty()) {
        return std::nullopt;
    }
    const Length off = std::min(stackThickness(c.checked, *parts) - room, mostToLap);
    if (off <= Length()) {
        return std::nullopt;
    }
    Remedy remedy;
    remedy.kind = Remedy::Kind::lap;
    remedy.shim = c.checked.firstOf(parts->front().cls); // the thickest: the one that is best held on the plate
    PlanRequest withIt = c.request;
    for (PlanShim& shim : withIt.shims) {
        if (shim.id == remedy.shim) {
            remedy.from = shim.thickness;
            remedy.thickness = shim.thickness - off;
            shim.thickness = remedy.thickness;
        }
    }
    if (remedy.thickness < thinnestLapped) {
        return std::nullopt;
    }
    return c.tryOut(std::move(remedy), std::move(withIt), c.checked.namesOf(*parts));
}

/// Down to what is wanted; else as near to it as may be lapped, if that is in band.
std::optional<Remedy> lap(const Case& c) {
    auto remedy = lapAway(c, mostToLap);
    return remedy ? remedy : lapAway(c, mostToLap + wanted(c.band()) - c.band().lo());
}

} // namespace

Result<std::vector<Remedy>> whatWouldHelp(const PlanRequest& request, const StackPlan& plan,
                                          const PlanOptions& options) {
    const auto checked = solver::CheckedRequest::from(request);
    if (!checked) {
        return tl::unexpected(checked.error());
    }
    std::vector<Remedy> remedies;
    for (const UnmetPosition& unmet : plan.unmet) {
        for (std::size_t seat = 0; seat < checked->open().size(); ++seat) {
            const Case c{request, plan, options, *checked, seat};
            if (c.position().id != unmet.position) {
                continue;
            }
            for (auto* const remedy : {buy, lap}) {
                if (options.stop && options.stop()) {
                    return remedies;
                }
                if (auto found = remedy(c)) {
                    remedies.push_back(std::move(*found));
                }
            }
        }
    }
    return remedies;
}

} // namespace caprail
