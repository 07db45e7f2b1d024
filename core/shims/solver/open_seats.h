// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstdint>
#include <memory>
#include <shims/solver/incumbent.h>
#include <shims/solver/instance.h>
#include <shims/solver/question.h>
#include <shims/solver/reach.h>
#include <vector>

namespace caprail::solver {

/// Presolve: the seats that there is something to decide about, and what can be said of them at once. A seat whose
/// gap is in band stays bare, since fewer than no shims there is not; a seat that no stack of the kit serves is
/// hopeless.
class OpenSeats {
public:
    /// Once the clock stops it, what was not looked at yet counts as open.
    OpenSeats(const Instance& all, WorkClock& clock);

    /// The seats that are left; what the bare ones add to the figures counts as pinned.
    [[nodiscard]] const Instance& instance() const { return m_instance; }
    [[nodiscard]] std::size_t count() const { return m_instance.seats.size(); }
    [[nodiscard]] int bare() const { return static_cast<int>(m_bare.size()); }
    [[nodiscard]] bool isComplete() const { return m_isComplete; }
    [[nodiscard]] const Reach& reach() const { return *m_reach; }
    /// The largest |residual| of any seat's band.
    [[nodiscard]] std::int64_t wholeBand() const { return m_wholeBand; }

    /// The largest |residual| in the band of the seat.
    [[nodiscard]] std::int64_t bandOf(std::size_t seat) const;
    /// No stack that serves the seat has fewer shims.
    [[nodiscard]] int fewest(std::size_t seat) const { return m_fewest[seat]; }
    /// The sum of those over all seats but the dearest.
    [[nodiscard]] int fewestInAll(int leftOut) const;
    /// The most shims that one seat can have in a plan that answers the question.
    [[nodiscard]] int most(std::size_t seat, const Question& question) const;
    /// So many seats at least go without, because the kit is not thick enough for more (the capacity bound).
    [[nodiscard]] int leastLeftOut() const;
    /// Fewer shims than this are not thick enough together, even the thickest.
    [[nodiscard]] int fewestByThickness(int leftOut) const;
    /// The smallest |residual| that any stack of so many shims can give at a seat.
    [[nodiscard]] std::int64_t leastResidual(std::size_t seat, int size) const;
    /// What so many shims leave of the gaps at least, taken from the thickest.
    [[nodiscard]] std::int64_t unfilled(int shims) const;

    /// Back to the seats as given.
    [[nodiscard]] Stacks asGiven(const Stacks& stacks) const;

private:
    void sortOut(std::size_t seat);
    bool isHopeless(const Seat& seat, int& fewest);
    void keep(std::size_t seat, int fewest);

    const Instance& m_all;
    WorkClock& m_clock;
    Instance m_instance;
    std::vector<std::size_t> m_origin; ///< of m_instance's seats in m_all
    std::vector<std::size_t> m_bare;   ///< in m_all
    std::unique_ptr<Reach> m_reach;
    std::vector<int> m_fewest;
    std::int64_t m_wholeBand = 0;
    bool m_isComplete = false;
};

} // namespace caprail::solver
