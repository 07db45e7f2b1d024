// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstdint>
#include <shims/solver/instance.h>
#include <vector>

namespace caprail::solver {

/// The fewest shims that make each total, out of what is left of the kit just now: the bounded subset-sum problem by
/// dynamic programming, in some microseconds (S. Martello, P. Toth, “Knapsack Problems”, Wiley 1990, chapters 3 and 4;
/// from memory). Several shims of a class are taken in lots of 1, 2, 4 …
///
/// Totals are counted in steps. While the largest gap fits the table a step is one unit; for finer units lengths are
/// rounded to whole steps, and what comes out is to be looked at again in units.
class FewestShims {
public:
    explicit FewestShims(const Instance& instance);

    /// Fills the table for totals up to `most` units, out of `left` (per class). Of equal stacks that one is taken that
    /// has the classes named first in `order`; classes that are not in it are not used, nor those of a shelf that goes
    /// beyond the table.
    void fill(const std::vector<int>& left, const std::vector<std::uint16_t>& order, std::int64_t most,
              WorkClock& clock);

    [[nodiscard]] std::int64_t step() const { return m_step; }
    /// In whole steps; `none` or more: no stack.
    [[nodiscard]] int fewest(std::int64_t steps) const { return m_rows[m_items.size() * m_width + index(steps)]; }
    static constexpr int none = 191;
    /// A stack of that many; its total in units is about `steps`.
    void take(std::int64_t steps, std::vector<Part>& stack) const;

private:
    static std::size_t index(std::int64_t steps) { return static_cast<std::size_t>(steps); }
    struct Item {
        std::uint16_t cls = 0;
        std::uint16_t count = 0;
        std::size_t steps = 0;
    };
    const Instance& m_instance;
    std::int64_t m_step = 1;
    std::size_t m_width = 0;
    std::vector<Item> m_items;
    std::vector<std::uint8_t> m_rows; ///< after each item: per total the fewest shims
};

} // namespace caprail::solver
