// SPDX-License-Identifier: GPL-3.0-or-later
// What a limit on the forces leaves to the open seats. Each force is a sum over seats, so it lies between what the
// least and what the largest residual of each would make of it: interval propagation, as for linear constraints
// (Wolsey, chapter 7).
#include <algorithm>
#include <shims/solver/search.h>
#include <shims/solver/whole_division.h>
#include <utility>

namespace caprail::solver {

/// The least and the largest that each force can come to, and the residuals that each open seat has to offer.
void Search::spread(const Frame& frame, Forces& lowest, Forces& highest) {
    lowest = frame.forces;
    highest = frame.forces;
    m_span.assign(m_columns.size(), {0, 0});
    for (const std::size_t p : m_open) {
        const Live& live = frame.live[p];
        m_clock.book(static_cast<std::int64_t>(live.count() + lowest.size()));
        auto& [least, most] = m_span[p];
        for (std::size_t i = live.begin; i < live.end; ++i) {
            const std::int64_t residual = m_columns[p][m_arena[i]].residual;
            const bool isFirst = i == live.begin && frame.leftOut == 0; // a seat left out makes nothing
            least = isFirst ? residual : std::min(least, residual);
            most = isFirst ? residual : std::max(most, residual);
        }
        const Seat& seat = m_instance.seats[p];
        for (std::size_t row = 0; row < seat.load.size(); ++row) {
            const std::int64_t a = seat.load[row] * least;
            const std::int64_t b = seat.load[row] * most;
            lowest[row] += std::min(a, b);
            highest[row] += std::max(a, b);
        }
    }
}

/// Sheds the stacks of a seat that push some force beyond the limit whatever the others do; true if there were any.
bool Search::shedByForces(Frame& frame, std::size_t seat, const Forces& lowest, const Forces& highest) {
    const auto [least, most] = m_span[seat];
    std::int64_t from = least;
    std::int64_t to = most;
    const Seat& at = m_instance.seats[seat];
    for (std::size_t row = 0; row < at.load.size(); ++row) {
        const std::int64_t k = at.load[row];
        if (k == 0) {
            continue;
        }
        const std::int64_t up = m_limits.load - (lowest[row] - std::min(k * least, k * most));
        const std::int64_t down = -m_limits.load - (highest[row] - std::max(k * least, k * most));
        to = std::min(to, k > 0 ? floorDivide(up, k) : floorDivide(-down, -k));
        from = std::max(from, k > 0 ? ceilDivide(down, k) : ceilDivide(-up, -k));
    }
    if (from <= least && to >= most) {
        return false;
    }
    Live& live = frame.live[seat];
    const Live was = std::exchange(live, Live::at(live.begin));
    for (std::size_t i = was.begin; i < was.end; ++i) {
        const Column& c = m_columns[seat][m_arena[i]];
        if (c.residual >= from && c.residual <= to) {
            live.add(c);
            m_arena[live.end++] = m_arena[i];
        }
    }
    return live.count() < was.count();
}

/// False when the open seats cannot keep the forces within the limits; else without the stacks that cannot.
bool Search::forcesCanClose(Frame& frame) {
    Forces lowest;
    Forces highest;
    for (int rounds = 0; rounds < 3; ++rounds) {
        spread(frame, lowest, highest);
        std::int64_t squares = 0;
        for (std::size_t row = 0; row < lowest.size(); ++row) {
            const std::int64_t least = lowest[row] > 0 ? lowest[row] : highest[row] < 0 ? -highest[row] : 0;
            if (least > m_limits.load) {
                return false;
            }
            squares += squareOf(least);
        }
        if (squares > m_limits.squares) {
            return false;
        }
        if (m_limits.load >= never) {
            return true;
        }
        bool hasShed = false;
        int empty = 0;
        for (const std::size_t p : m_open) {
            hasShed = shedByForces(frame, p, lowest, highest) || hasShed;
            empty += frame.live[p].isEmpty() ? 1 : 0;
        }
        if (empty > frame.leftOut) {
            return false;
        }
        if (!hasShed) {
            return true;
        }
    }
    return true;
}

} // namespace caprail::solver
