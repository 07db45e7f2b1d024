// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <base/say.h>
#include <numeric>
#include <set>
#include <shims/plan/checked_request.h>
#include <shims/plan/nearest.h>
#include <shims/solver/forces.h>
#include <shims/solver/whole_division.h>
#include <tuple>
#include <units/format.h>

namespace caprail::solver {

namespace {
/// The reach tables count to 254; no real stack comes near.
constexpr int largestStackOfAll = 254;

} // namespace

int capsOf(const PlanRequest& request) {
    int caps = request.caps;
    if (caps == 0) {
        for (const PlanPosition& p : request.positions) {
            caps = std::max(caps, p.cap);
        }
    }
    return caps;
}

int twistWeight(const PlanPosition& position, int caps) {
    return (2 * (position.cap - 1) - (caps - 1)) * position.side;
}

Result<void> CheckedRequest::checkShims() {
    for (const PlanShim& shim : m_request->shims) {
        if (shim.thickness <= Length()) {
            return refuse(
                Core::say("Shim %1 has a thickness of %2: give its measured or marked thickness, more than 0.", shim.id,
                          format(shim.thickness, LengthUnit::inch)));
        }
        if (!m_thickness.emplace(shim.id, shim.thickness).second) {
            return refuse(Core::say("The kit has two shims called %1: give each its own id.", shim.id));
        }
    }
    return {};
}

Result<void> CheckedRequest::checkPositions() {
    const int caps = capsOf(*m_request);
    std::set<std::string> ids;
    for (const PlanPosition& p : m_request->positions) {
        if (!ids.insert(p.id).second) {
            return refuse(Core::say("Position %1 is listed twice: give each position once.", p.id));
        }
        if (p.cap < 1 || p.cap > caps) {
            return refuse(Core::say("Position %1 is at cap %2, but the caps run from 1 to %3: correct its cap.", p.id,
                                    p.cap, caps));
        }
        if (p.side != -1 && p.side != 1) {
            return refuse(Core::say("Position %1 is neither left nor right: give its side.", p.id));
        }
        if (!p.pinned) {
            continue;
        }
        if (m_request->largestStack > 0 && static_cast<int>(p.pinned->size()) > m_request->largestStack) {
            return refuse(Core::say(
                "Position %1 is pinned with %2 shims, but the largest stack is %3: unpin it or allow larger stacks.",
                p.id, p.pinned->size(), m_request->largestStack));
        }
        for (const std::string& shim : *p.pinned) {
            if (m_thickness.count(shim) == 0) {
                return refuse(Core::say("Position %1 is pinned with shim %2, which is not in the kit or is set aside: "
                                        "unpin it or put the shim back.",
                                        p.id, shim));
            }
            const auto [at, isNew] = m_pinnedAt.emplace(shim, p.id);
            if (!isNew) {
                return refuse(
                    Core::say("Shim %1 is pinned twice, at position %2 and at position %3: unpin one of them.", shim,
                              at->second, p.id));
            }
        }
    }
    return {};
}

Result<CheckedRequest> CheckedRequest::from(const PlanRequest& request) {
    CheckedRequest checked(request);
    if (request.largestStack < 0) {
        return refuse(Core::say("The largest stack is given as %1 shims: give 1 or more, or 0 for no limit.",
                                request.largestStack));
    }
    if (request.caps < 0) {
        return refuse(Core::say(
            "The engine is given %1 caps: give their number, or 0 to count them from the positions.", request.caps));
    }
    if (auto ok = checked.checkShims(); !ok) {
        return tl::unexpected(ok.error());
    }
    if (auto ok = checked.checkPositions(); !ok) {
        return tl::unexpected(ok.error());
    }
    if (auto ok = checked.checkStiffness(); !ok) {
        return tl::unexpected(ok.error());
    }
    checked.buildInstance();
    return checked;
}

void CheckedRequest::buildInstance() {
    const PlanRequest& r = *m_request;
    std::int64_t unit = 0;
    for (const PlanPosition& p : r.positions) {
        unit = std::gcd(unit, p.gap.value());
    }
    for (const PlanShim& s : r.shims) {
        unit = std::gcd(unit, s.thickness.value());
    }
    m_unit = unit == 0 ? 1 : unit;

    std::vector<const PlanShim*> shims;
    for (const PlanShim& s : r.shims) {
        if (m_pinnedAt.count(s.id) == 0) {
            shims.push_back(&s);
        }
    }
    std::sort(shims.begin(), shims.end(), [](const PlanShim* a, const PlanShim* b) {
        return a->thickness != b->thickness
                   ? a->thickness > b->thickness
                   : std::make_tuple(a->id.size(), a->id) < std::make_tuple(b->id.size(), b->id);
    });
    for (const PlanShim* s : shims) {
        const std::int64_t t = s->thickness.value() / m_unit;
        if (m_instance.thickness.empty() || m_instance.thickness.back() != t) {
            m_instance.thickness.push_back(t);
            m_instance.count.push_back(0);
            m_ids.emplace_back();
        }
        ++m_instance.count.back();
        m_ids.back().push_back(s->id);
    }

    const int caps = capsOf(r);
    const int most = r.largestStack == 0 ? largestStackOfAll : std::min(r.largestStack, largestStackOfAll);
    m_instance.objective = r.objective;
    for (std::size_t i = 0; i < r.positions.size(); ++i) {
        const PlanPosition& p = r.positions[i];
        if (!p.pinned) {
            m_open.push_back(i);
            continue;
        }
        if (const auto residual = pinnedResidual(p)) {
            const std::int64_t units = residual->value() / m_unit;
            m_instance.fixedLargest = std::max(m_instance.fixedLargest, magnitude(units));
            m_instance.fixedSum += magnitude(units);
            m_instance.fixedTwist += twistWeight(p, caps) * units;
        }
    }
    std::sort(m_open.begin(), m_open.end(), [&r](std::size_t a, std::size_t b) {
        const auto key = [&r](std::size_t i) {
            return std::tie(r.positions[i].gap, r.positions[i].cap, r.positions[i].side, r.positions[i].id);
        };
        return key(a) < key(b);
    });
    for (std::size_t i : m_open) {
        const PlanPosition& p = r.positions[i];
        Seat seat;
        seat.gap = p.gap.value() / m_unit;
        const Band band = bandAt(r, p);
        seat.lo = seat.gap - floorDivide(band.hi().value(), m_unit);
        seat.hi = seat.gap - ceilDivide(band.lo().value(), m_unit);
        seat.most = std::min(most, m_instance.shims());
        seat.weight = twistWeight(p, caps);
        m_instance.seats.push_back(seat);
    }
    if (m_instance.isBy(Objective::leastLoad)) {
        buildLoad();
    }
}

Length CheckedRequest::residualOf(const PlanPosition& position, const std::vector<std::string>& shims) const {
    Length residual = position.gap;
    for (const std::string& shim : shims) {
        residual -= m_thickness.at(shim);
    }
    return residual;
}

std::optional<Length> CheckedRequest::pinnedResidual(const PlanPosition& position) const {
    if (!position.pinned) {
        return {};
    }
    const Length residual = residualOf(position, *position.pinned);
    return bandAt(*m_request, position).contains(residual) ? std::optional(residual) : std::nullopt;
}

std::vector<std::string> CheckedRequest::namesOf(const std::vector<Part>& stack) const {
    std::vector<std::string> names;
    for (const Part& part : stack) {
        names.insert(names.end(), m_ids[part.cls].begin(), m_ids[part.cls].begin() + part.count);
    }
    return names;
}

Instance CheckedRequest::withSeat(std::size_t seat, const Seat& changed) const {
    Instance out = m_instance;
    out.seats[seat] = changed;
    return out;
}

StackPlan CheckedRequest::name(const Solution& solution, const Stop& stop) const {
    const PlanRequest& r = *m_request;
    StackPlan plan;
    plan.proven = solution.proven;
    plan.stacks.resize(r.positions.size());
    std::vector<int> left = m_instance.count;
    for (std::size_t k = 0; k < m_open.size(); ++k) {
        if (!solution.stacks[k]) {
            continue;
        }
        for (const Part& part : *solution.stacks[k]) {
            auto& ids = m_ids[part.cls];
            for (int n = 0; n < part.count; ++n) {
                plan.stacks[m_open[k]].shims.push_back(ids[ids.size() - static_cast<std::size_t>(left[part.cls])]);
                --left[part.cls];
            }
        }
    }
    std::int64_t twist = 0;
    int pinnedInBand = 0;
    int pinnedShims = 0;
    const int caps = capsOf(r);
    for (std::size_t i = 0; i < r.positions.size(); ++i) {
        const PlanPosition& p = r.positions[i];
        PlannedStack& stack = plan.stacks[i];
        stack.position = p.id;
        stack.pinned = p.pinned.has_value();
        if (p.pinned) {
            stack.shims = *p.pinned;
            pinnedShims += static_cast<int>(stack.shims.size());
        }
        stack.residual = residualOf(p, stack.shims);
        stack.inBand = bandAt(r, p).contains(stack.residual);
        plan.shims += static_cast<int>(stack.shims.size());
        if (stack.inBand) {
            ++plan.inBand;
            pinnedInBand += p.pinned ? 1 : 0;
            plan.largestResidual = std::max(plan.largestResidual, stack.residual.magnitude());
            plan.sumResidual += stack.residual.magnitude();
            twist += twistWeight(p, caps) * stack.residual.value();
        }
    }
    plan.twistSum = magnitude(twist);
    plan.bound.inBand = solution.mostServed + pinnedInBand;
    plan.bound.shims = solution.fewestShims + pinnedShims;
    plan.bound.largestResidual = lengthOf(solution.leastLargest);
    plan.bound.sumResidual = lengthOf(solution.leastSum);
    plan.bound.twistSum = solution.leastTwist * m_unit;
    nameLoads(plan, solution);
    findNearest(plan, left, stop);
    return plan;
}

void CheckedRequest::findNearest(StackPlan& plan, const std::vector<int>& left, const Stop& stop) const {
    Instance free;
    std::vector<std::size_t> origin;
    for (std::size_t i = 0; i < left.size(); ++i) {
        if (left[i] > 0) {
            free.thickness.push_back(m_instance.thickness[i]);
            free.count.push_back(left[i]);
            origin.push_back(i);
        }
    }
    // A solver that was stopped still owes these: a millisecond for all of them.
    int grace = 20;
    WorkClock clock([&] { return stop && stop() && --grace < 0; });
    NearestStack nearest(free, m_unit);
    for (std::size_t i = 0; i < plan.stacks.size(); ++i) {
        const PlannedStack& stack = plan.stacks[i];
        if (stack.inBand) {
            continue;
        }
        UnmetPosition unmet{stack.position, stack.shims, stack.residual};
        const auto at = std::find(m_open.begin(), m_open.end(), i);
        if (at != m_open.end()) {
            const Seat& asked = m_instance.seats[static_cast<std::size_t>(at - m_open.begin())];
            for (const Part& part : nearest.find(asked.gap, bandAt(*m_request, m_request->positions[i]), asked.most, clock)) {
                const std::size_t cls = origin[part.cls];
                const auto& ids = m_ids[cls];
                for (int n = 0; n < part.count; ++n) {
                    unmet.nearest.push_back(ids[ids.size() - static_cast<std::size_t>(left[cls] - n)]);
                }
                unmet.residual -= lengthOf(m_instance.thickness[cls] * part.count);
            }
        }
        plan.unmet.push_back(std::move(unmet));
    }
}

} // namespace caprail::solver
