// SPDX-License-Identifier: GPL-3.0-or-later
// What the kit that is left says about the open seats: so many shims must be thick enough for them, and where they only
// just are, the thickest cannot be done without. A shim that must be used is as good to branch on as a seat that must
// be served: D. E. Knuth, “Dancing links”, 2000 (“choose the item with the fewest options”); from memory.
#include <algorithm>
#include <shims/solver/search.h>

namespace caprail::solver {

/// What the open seats must take up together at least.
std::int64_t Search::leastTotal(const Frame& frame) {
    const std::int64_t room = isSumLimited() ? roomForSum(frame) : never;
    const std::int64_t window = std::min(m_limits.largestResidual, room);
    std::int64_t gaps = 0;
    bool countsAll = true;
    m_scratch.clear();
    for (const std::size_t p : m_open) {
        const Seat& seat = m_instance.seats[p];
        countsAll = countsAll && seat.residualCounts;
        gaps += seat.gap;
        m_scratch.push_back(seat.residualCounts ? std::max(seat.lo, seat.gap - window) : seat.lo);
    }
    std::sort(m_scratch.begin(), m_scratch.end());
    std::int64_t least = 0;
    for (std::size_t i = 0; i + static_cast<std::size_t>(frame.leftOut) < m_scratch.size(); ++i) {
        least += m_scratch[i];
    }
    return countsAll && frame.leftOut == 0 && room < never ? std::max(least, gaps - room) : least;
}

/// False when the thickest shims left, as many as may still be used, do not fill the open seats. Finds the classes that
/// cannot be done without: with the next thickest shims in their stead it would not be enough.
bool Search::canFill(const Frame& frame) {
    m_clock.book(static_cast<std::int64_t>(2 * m_left.size()));
    m_musts.clear();
    std::int64_t slack = -leastTotal(frame);
    int rest = m_limits.shims - frame.shims;
    std::size_t c = 0;
    for (; c < m_left.size() && rest > m_left[c]; ++c) {
        slack += m_left[c] * m_instance.thickness[c];
        rest -= m_left[c];
    }
    if (c < m_left.size()) {
        slack += rest * m_instance.thickness[c];
    }
    if (slack < 0) {
        return false;
    }
    // The shims after those, thickest first, as far as there are copies of one class to be replaced.
    const std::size_t last = c;
    m_scratch.assign(1, 0);
    const auto next = [&](std::size_t n) {
        while (m_scratch.size() <= n && c < m_left.size()) {
            for (; rest < m_left[c] && m_scratch.size() <= n; ++rest) {
                m_scratch.push_back(m_scratch.back() + m_instance.thickness[c]);
            }
            if (m_scratch.size() <= n) {
                ++c;
                rest = 0;
            }
        }
        return m_scratch[std::min(n, m_scratch.size() - 1)];
    };
    for (std::size_t i = 0; i < last; ++i) {
        if (m_left[i] > 0 && m_left[i] * m_instance.thickness[i] - next(static_cast<std::size_t>(m_left[i])) > slack) {
            m_musts.push_back(static_cast<std::uint16_t>(i));
        }
    }
    return true;
}

/// Finds the shim that must be used and has the fewest stacks to be in; false when one has none.
bool Search::chooseShim(Frame& frame) {
    frame.ofShim = 0;
    if (m_musts.empty() || m_open.size() < 2) {
        return true;
    }
    m_uses.assign(m_instance.classes(), 0);
    for (const std::size_t p : m_open) {
        const Live& live = frame.live[p];
        for (std::size_t i = live.begin; i < live.end; ++i) {
            m_clock.bookStep(i - live.begin, live.count(), 6);
            const Column& column = m_columns[p][m_arena[i]];
            for (std::uint16_t k = 0; k < column.partCount; ++k) {
                ++m_uses[column.parts[k].cls];
            }
        }
    }
    for (const std::uint16_t cls : m_musts) {
        if (m_uses[cls] == 0) {
            return false;
        }
        if (frame.ofShim == 0 || m_uses[cls] < frame.ofShim) {
            frame.ofShim = m_uses[cls];
            frame.shim = cls;
        }
    }
    return true;
}

/// The stacks that the shim can be in, of all open seats, the cheapest of each seat first.
std::vector<Search::Option> Search::stacksWith(std::uint16_t shim, const Frame& frame) {
    std::vector<Option> options;
    for (const std::size_t p : m_open) {
        if (isLong() && m_open.size() > 2) {
            orderByPrices(frame, p);
        }
        const Live& live = frame.live[p];
        for (std::size_t i = live.begin; i < live.end; ++i) {
            m_clock.bookStep(i - live.begin, live.count(), 6);
            const Column& c = m_columns[p][m_arena[i]];
            if (std::any_of(c.parts, c.parts + c.partCount, [shim](const Part& part) { return part.cls == shim; })) {
                options.push_back({i - live.begin, p, m_arena[i]});
            }
        }
    }
    std::stable_sort(options.begin(), options.end(), [](const Option& a, const Option& b) { return a.rank < b.rank; });
    return options;
}

/// Tries the stacks that the shim can be in, one by one; each, once tried, is out of the question below the others.
/// What fails below those fails altogether, since any plan with one that was tried was looked for in its own turn.
Search::Next Search::branchOnShim(std::size_t depth) {
    Frame& frame = frameAt(depth);
    const std::size_t mark = m_arena.size();
    for (const Option& option : stacksWith(frame.shim, frame)) {
        const auto at = std::find(m_open.begin(), m_open.end(), option.seat);
        const std::ptrdiff_t place = at - m_open.begin();
        *at = m_open.back();
        m_open.pop_back();
        Live& live = frame.live[option.seat];
        const Next result = tryColumn(depth, option.seat, option.index, Live(live));
        m_arena.resize(mark);
        m_chosen[option.seat] = -1;
        m_open.push_back(option.seat);
        std::swap(m_open[static_cast<std::size_t>(place)], m_open.back());
        if (result == Next::halt) {
            return result;
        }
        const auto end = m_arena.begin() + static_cast<std::ptrdiff_t>(live.end);
        (void)std::remove(m_arena.begin() + static_cast<std::ptrdiff_t>(live.begin), end, option.index);
        --live.end;
        if (live.isEmpty() && frame.leftOut == 0) {
            break;
        }
    }
    return Next::goOn;
}

} // namespace caprail::solver
