// SPDX-License-Identifier: GPL-3.0-or-later
// The stiffness of a request, and the forces that its plans make.
#include <algorithm>
#include <base/say.h>
#include <cmath>
#include <shims/plan/checked_request.h>
#include <shims/solver/forces.h>

namespace caprail::solver {

Loads loadsFrom(const PlanRequest& request, const std::vector<Length>& residuals) {
    const std::size_t n = request.positions.size();
    Loads loads;
    for (std::size_t i = 0; i < n && !request.stiffness.empty(); ++i) {
        double force = 0;
        for (std::size_t j = 0; j < n; ++j) {
            force += request.stiffness[i * n + j] * inMillimetres(residuals[j]);
        }
        loads.forces.push_back(force);
        loads.largest = std::max(loads.largest, std::abs(force));
        loads.sumSquare += force * force;
    }
    return loads;
}

Result<void> CheckedRequest::checkStiffness() const {
    const std::vector<double>& k = m_request->stiffness;
    const std::size_t n = m_request->positions.size();
    if (k.empty()) {
        if (m_request->objective == Objective::leastLoad && n > 0) {
            return refuse(Core::say("Least load needs the stiffness of the girdle: describe its plate first."));
        }
        return {};
    }
    if (k.size() != n * n) {
        return refuse(Core::say("The stiffness must have one row and one column for each of the %1 positions.", n));
    }
    double largest = 0;
    for (const double value : k) {
        largest = std::max(largest, std::abs(value));
        if (!std::isfinite(value)) {
            return refuse(Core::say("The stiffness holds something that is no number."));
        }
    }
    for (std::size_t i = 0; i < n; ++i) {
        for (std::size_t j = 0; j < i; ++j) {
            if (std::abs(k[i * n + j] - k[j * n + i]) > 1e-6 * largest) {
                return refuse(Core::say("The stiffness is not symmetric between the positions %1 and %2: what one does "
                                        "to the other must be the same both ways.",
                                        m_request->positions[i].id, m_request->positions[j].id));
            }
        }
    }
    return {};
}

/// Puts the stiffness into whole numbers: times the power of two that keeps every force within `forceRange`.
void CheckedRequest::buildLoad() {
    const PlanRequest& r = *m_request;
    const std::size_t n = r.positions.size();
    const auto widest = [&](std::size_t position) {
        const Band band = bandAt(r, r.positions[position]);
        return inMillimetres(std::max(band.lo().magnitude(), band.hi().magnitude()));
    };
    double most = 0;
    for (std::size_t i = 0; i < n; ++i) {
        double row = 0;
        for (std::size_t j = 0; j < n; ++j) {
            row += std::abs(r.stiffness[i * n + j]) * widest(j);
        }
        most = std::max(most, row);
    }
    const auto room = static_cast<double>(forceRange);
    m_forceScale = most > 0 ? std::exp2(std::floor(std::log2(room / most))) : 1;
    const double perUnit = inMillimetres(Length(m_unit)) * m_forceScale;
    const auto column = [&](std::size_t position) {
        Forces list;
        for (std::size_t row = 0; row < n; ++row) {
            list.push_back(std::llround(r.stiffness[row * n + position] * perUnit));
        }
        return list;
    };
    m_instance.fixedLoad.assign(n, 0);
    for (std::size_t i = 0; i < n; ++i) {
        if (const auto residual = pinnedResidual(r.positions[i])) {
            Seat pinned;
            pinned.load = column(i);
            addTo(m_instance.fixedLoad, pinned, residual->value() / m_unit);
        }
    }
    for (std::size_t k = 0; k < m_open.size(); ++k) {
        m_instance.seats[k].load = column(m_open[k]);
    }
}

void CheckedRequest::nameLoads(StackPlan& plan, const Solution& solution) const {
    std::vector<Length> residuals;
    for (const PlannedStack& stack : plan.stacks) {
        residuals.push_back(stack.inBand ? stack.residual : Length());
    }
    Loads loads = loadsFrom(*m_request, residuals);
    plan.loads = std::move(loads.forces);
    plan.largestLoad = loads.largest;
    plan.sumSquareLoad = loads.sumSquare;
    if (m_instance.isBy(Objective::leastLoad)) {
        const auto bound = [&](std::int64_t whole, double perForce, double own) {
            return plan.proven ? own : std::min(own, static_cast<double>(whole) / perForce);
        };
        plan.bound.largestLoad = bound(solution.leastLoad, m_forceScale, plan.largestLoad);
        const double perShifted = std::ldexp(m_forceScale, -squareShift);
        plan.bound.sumSquareLoad = bound(solution.leastSquares, perShifted * perShifted, plan.sumSquareLoad);
    }
}

} // namespace caprail::solver
