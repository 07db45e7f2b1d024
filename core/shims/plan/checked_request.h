// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <map>
#include <shims/plan/stack_plan.h>
#include <shims/solver/solver.h>
#include <string>
#include <vector>

namespace caprail::solver {

/// A plan request that has been checked, in the solver's whole numbers, and the way back to ids and lengths.
/// Positions and shims are put into an order that depends on their figures only, never on that of the request.
class CheckedRequest {
public:
    /// Refuses what planStacks refuses.
    static Result<CheckedRequest> from(const PlanRequest& request);

    [[nodiscard]] const Instance& instance() const { return m_instance; }
    /// The open positions in the order of instance().seats, by their index in the request.
    [[nodiscard]] const std::vector<std::size_t>& open() const { return m_open; }
    /// One unit of the instance, in nanometres.
    [[nodiscard]] std::int64_t unit() const { return m_unit; }
    [[nodiscard]] Length lengthOf(std::int64_t units) const { return Length(units * m_unit); }

    /// The first free shim of a class, by id.
    [[nodiscard]] const std::string& firstOf(std::size_t cls) const { return m_ids[cls].front(); }
    /// The shims of one stack: of each class the first.
    [[nodiscard]] std::vector<std::string> namesOf(const std::vector<Part>& stack) const;

    /// Names the shims of a solution; all else is counted from them, and for what is left unmet the nearest stack
    /// sought. Once `stop` says true that takes a millisecond at most.
    [[nodiscard]] StackPlan name(const Solution& solution, const Stop& stop) const;

    /// The instance with one seat changed, for the remedies. Takes an index into instance().seats.
    [[nodiscard]] Instance withSeat(std::size_t seat, const Seat& changed) const;

private:
    explicit CheckedRequest(const PlanRequest& request) : m_request(&request) {}
    Result<void> checkShims();
    Result<void> checkPositions();
    Result<void> checkStiffness() const;
    void buildLoad();
    void nameLoads(StackPlan& plan, const Solution& solution) const;
    void buildInstance();
    /// What the position would be left with.
    [[nodiscard]] Length residualOf(const PlanPosition& position, const std::vector<std::string>& shims) const;
    /// What a pinned stack that is in band leaves; null for any other position.
    [[nodiscard]] std::optional<Length> pinnedResidual(const PlanPosition& position) const;
    void findNearest(StackPlan& plan, const std::vector<int>& left, const Stop& stop) const;

    const PlanRequest* m_request;
    std::map<std::string, Length> m_thickness;     ///< by shim id
    std::map<std::string, std::string> m_pinnedAt; ///< position id by pinned shim id
    Instance m_instance;
    std::vector<std::vector<std::string>> m_ids; ///< of the free shims of each class
    std::vector<std::size_t> m_open;
    std::int64_t m_unit = 1;
    double m_forceScale = 1; ///< whole numbers of the solver per unit of force
};

/// The forces that residuals make, in the request's unit of force.
struct Loads {
    std::vector<double> forces; ///< in the order of the positions; empty without a stiffness
    double largest = 0;         ///< largest |force|
    double sumSquare = 0;
};
Loads loadsFrom(const PlanRequest& request, const std::vector<Length>& residuals);

/// 2·(cap−1) − (caps−1), times the side: the weight of a residual in the twist sum.
int twistWeight(const PlanPosition& position, int caps);
/// The caps of the request, or the largest cap among its positions.
int capsOf(const PlanRequest& request);

} // namespace caprail::solver
