// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstdint>
#include <optional>
#include <shims/solver/instance.h>
#include <shims/solver/reach.h>
#include <vector>

namespace caprail::solver {

/// One stack that serves a seat: a multiset of classes.
struct Candidate {
    std::uint32_t first = 0; ///< its parts stand at Pool::parts[first …]
    std::uint16_t parts = 0;
    std::uint16_t size = 0; ///< shims
    std::int64_t residual = 0;
};

/// The stacks that serve one seat, listed completely up to a size and a |residual|, and only as far as was asked.
class Pool {
public:
    Pool(const Instance& instance, const Reach& reach, std::size_t seat);

    /// Makes the list complete for stacks of up to `size` shims with |residual| ≤ `window` (never shrinks it).
    /// False when that would take more than `room` candidates; the list is then as it was.
    bool extend(int size, std::int64_t window, std::size_t room, WorkClock& clock);

    [[nodiscard]] const std::vector<Candidate>& candidates() const { return m_candidates; }
    [[nodiscard]] const Part* parts(const Candidate& c) const { return &m_parts[c.first]; }
    [[nodiscard]] int completeSize() const { return m_size; }
    [[nodiscard]] std::int64_t completeWindow() const { return m_window; }
    /// The largest |residual| in the band of this seat; a window of this size is the whole band.
    [[nodiscard]] std::int64_t wholeBand() const { return m_wholeBand; }
    /// Smallest size and smallest |residual| listed; −1 while the list is empty.
    [[nodiscard]] int smallestSize() const;
    [[nodiscard]] std::int64_t smallestResidual() const;

private:
    friend std::optional<std::vector<Part>> anyStack(const Instance&, const Reach&, const Seat&, int, WorkClock&);
    struct Walk;
    const Instance& m_instance;
    const Reach& m_reach;
    const Seat& m_seat;
    std::int64_t m_wholeBand = 0;
    int m_size = -1;
    std::int64_t m_window = -1;
    std::vector<Candidate> m_candidates;
    std::vector<Part> m_parts;
};

/// Some stack of up to `size` shims that serves the seat (the first by thickest shims), or none.
std::optional<std::vector<Part>> anyStack(const Instance& instance, const Reach& reach, const Seat& seat, int size,
                                          WorkClock& clock);

} // namespace caprail::solver
