// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <shims/plan/checked_request.h>
#include <shims/plan/stack_plan.h>
#include <shims/solver/solver.h>
#include <shims/solver/whole_division.h>

namespace caprail {

namespace {

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

/// What the two remedies have in common: the request, and the place in the solver's instance that is to be met.
struct Case {
    const PlanRequest& request;
    const StackPlan& plan;
    const PlanOptions& options;
    const solver::CheckedRequest& checked;
    std::size_t place;
    [[nodiscard]] const PlanPosition& position() const { return request.positions[checked.open()[place]]; }

    /// Plans anew with the kit changed; keeps the remedy if that serves more positions.
    [[nodiscard]] std::optional<Remedy> tryOut(Remedy remedy, const PlanRequest& changed) const {
        auto better = planStacks(changed, options);
        if (!better || better->inBand <= plan.inBand) {
            return std::nullopt;
        }
        remedy.position = position().id;
        remedy.plan = std::move(*better);
        return remedy;
    }
};

/// One shim of a thickness to be chosen stands for whatever is missing: the place may be left short by anything from
/// nothing to the thickest shim, and its residual does not matter, because the new shim takes it up.
std::optional<Remedy> buy(const Case& c) {
    const std::int64_t unit = c.checked.unit();
    solver::Place changed = c.checked.instance().places[c.place];
    const Length room = c.position().gap - wanted(c.request.band);
    if (room <= Length()) {
        return std::nullopt; // the rail stands proud: no shim can help
    }
    Length thickest;
    for (const PlanShim& shim : c.request.shims) {
        thickest = std::max(thickest, shim.thickness);
    }
    if (c.request.shims.empty()) {
        thickest = room;
    }
    changed.hi = solver::floorDivide(room.value() - 1, unit);
    changed.lo = solver::ceilDivide((room - thickest).value(), unit);
    changed.residualCounts = false;
    changed.most =
        c.request.largestStack == 0 ? changed.most : std::min(changed.most, std::max(0, c.request.largestStack - 1));
    const solver::Solution solution = solver::solve(c.checked.withPlace(c.place, changed), c.options.stop);
    if (!solution.stacks[c.place]) {
        return std::nullopt;
    }
    Remedy remedy;
    remedy.kind = Remedy::Kind::buy;
    remedy.thickness = room - stackThickness(c.checked, *solution.stacks[c.place]);
    PlanRequest withIt = c.request;
    withIt.shims.push_back({boughtShimId, remedy.thickness});
    return c.tryOut(std::move(remedy), withIt);
}

/// The place may be proud of what is wanted by as much as `proud`, which lapping one shim of its stack takes off; as
/// above, the lapped shim takes the residual up.
std::optional<Remedy> lapAway(const Case& c, Length proud) {
    const std::int64_t unit = c.checked.unit();
    solver::Place changed = c.checked.instance().places[c.place];
    const Length room = c.position().gap - wanted(c.request.band);
    changed.lo = std::max(changed.lo, solver::ceilDivide(room.value(), unit));
    changed.hi = solver::floorDivide((room + proud).value(), unit);
    changed.residualCounts = false;
    const solver::Solution solution = solver::solve(c.checked.withPlace(c.place, changed), c.options.stop);
    if (!solution.stacks[c.place] || solution.stacks[c.place]->empty()) {
        return std::nullopt;
    }
    const std::vector<solver::Part>& stack = *solution.stacks[c.place];
    const Length off = std::min(stackThickness(c.checked, stack) - room, mostToLap);
    if (off <= Length()) {
        return std::nullopt;
    }
    Remedy remedy;
    remedy.kind = Remedy::Kind::lap;
    remedy.shim = c.checked.firstOf(stack.front().cls); // the thickest: the one that is best held on the plate
    PlanRequest withIt = c.request;
    for (PlanShim& shim : withIt.shims) {
        if (shim.id == remedy.shim) {
            remedy.from = shim.thickness;
            remedy.thickness = shim.thickness - off;
            shim.thickness = remedy.thickness;
        }
    }
    if (remedy.thickness <= Length()) {
        return std::nullopt;
    }
    return c.tryOut(std::move(remedy), withIt);
}

/// Down to what is wanted; else as near to it as may be lapped, if that is in band.
std::optional<Remedy> lap(const Case& c) {
    auto remedy = lapAway(c, mostToLap);
    return remedy ? remedy : lapAway(c, mostToLap + wanted(c.request.band) - c.request.band.lo());
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
        for (std::size_t place = 0; place < checked->open().size(); ++place) {
            const Case c{request, plan, options, *checked, place};
            if (c.position().id != unmet.position) {
                continue;
            }
            for (auto* const remedy : {buy, lap}) {
                if (auto found = remedy(c)) {
                    remedies.push_back(std::move(*found));
                }
            }
        }
    }
    return remedies;
}

} // namespace caprail
