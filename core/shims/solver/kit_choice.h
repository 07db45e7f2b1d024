// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstddef>
#include <cstdint>
#include <shims/solver/instance.h>
#include <vector>

namespace caprail::solver {

/// A part of the kit that a plan uses up to the last shim.
struct WholeKit {
    std::vector<int> count; ///< per class
    std::int64_t total = 0; ///< thickness of all of it
};

/// Which shims a plan of just so many can use, when all its stacks together must be about as thick as the thickest
/// shims of the kit are: what a choice is thinner than those is its loss, and small losses come from few choices. So
/// the kit alone often settles what no pricing can see: the sum of all residuals takes few values, or none.
///
/// A loss is made of steps away from the thickest: leaving out a shim thicker than the thinnest of those costs the
/// difference, as does taking one that is thinner still; as many are left out as are taken. The choices are counted off
/// one class after the other, with a table of the losses that the classes to come can still make.
class KitChoice {
public:
    /// Choices of just `shims` shims with a total in [least, most].
    KitChoice(const Instance& instance, int shims, std::int64_t least, std::int64_t most, WorkClock& clock);

    /// False when there is room for so many choices that it is not worth looking at them; then nothing else is known.
    [[nodiscard]] bool isTight() const { return m_isTight; }
    /// All totals that some choice has, rising. Only when tight.
    [[nodiscard]] std::vector<std::int64_t> totals() const;
    /// The choices with a total in [least, most], up to `room` of them.
    [[nodiscard]] std::vector<WholeKit> list(std::int64_t least, std::int64_t most, std::size_t room,
                                             WorkClock& clock) const;

private:
    using Row = std::vector<std::uint64_t>;
    struct Listing;
    [[nodiscard]] const Row& row(std::size_t cls, int balance) const;
    [[nodiscard]] bool canMake(std::size_t cls, int balance, std::int64_t from, std::int64_t to) const;
    void listFrom(std::size_t cls, int balance, std::int64_t loss, Listing& listing) const;

    const Instance& m_instance;
    std::vector<int> m_thickest;  ///< per class, how many of it are among the thickest
    std::int64_t m_reference = 0; ///< thickness of the thinnest of those
    std::int64_t m_topTotal = 0;
    std::int64_t m_leastLoss = 0;
    std::int64_t m_mostLoss = -1;
    int m_spread = 0; ///< balances −m_spread … m_spread
    bool m_isTight = false;
    std::vector<Row> m_rows; ///< per class and balance: bit l set when the classes from it on can make loss l
};

} // namespace caprail::solver
