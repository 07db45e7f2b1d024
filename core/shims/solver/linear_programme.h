// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstddef>
#include <deque>
#include <shims/solver/instance.h>
#include <shims/solver/pricing.h>
#include <utility>
#include <vector>

namespace caprail::solver {

/// The restricted master programme of column generation, as column_generation.h tells: minimise cost·x, rows of seats:
/// = 1, of classes (and of all shims, and of seats left out): ≤ supply; x ≥ 0. It begins with every seat going without;
/// a seat that still does in the end costs `missing`. Revised primal simplex with a dense inverse.
class LinearProgramme {
public:
    /// With rows for these classes; the market must outlast it.
    LinearProgramme(const Market& market, double missing, std::vector<std::size_t> classes);

    /// Lets those join at once that cost least by other prices, a few for each seat: most of the programme's own stacks
    /// are among them.
    void joinBy(const Prices& prices);

    /// Lets the stacks join that pay most, one for each seat. False when none pays. `bound` is that of the prices.
    bool join(double& bound);

    /// The same over all stacks there are.
    bool join(const StackPrices& all, const std::vector<StackPrices::Wanted>& wanted);

    /// The value of the programme over the stacks that have joined.
    [[nodiscard]] double value() const;

    /// Solves over the stacks that have joined; false if it gave up.
    bool solve();

    /// In whole numbers.
    [[nodiscard]] Prices prices() const;

private:
    [[nodiscard]] std::size_t shimRow() const { return m_rows - 2; }
    [[nodiscard]] std::size_t leftOutRow() const { return m_rows - 1; }
    [[nodiscard]] double supply(std::size_t row) const;
    static void take(double reduced, std::size_t kind, std::size_t which, double& least, std::size_t& bestKind,
                     std::size_t& best);
    [[nodiscard]] double reducedCost(std::size_t seat, const Offer& offer) const;

    void addColumn(std::size_t row, double times);
    bool pivot(std::size_t kind, std::size_t which, double reduced);

    const Market& m_market;
    std::size_t m_seats;
    std::vector<std::size_t> m_classOf; ///< per row after those of the seats
    std::vector<std::size_t> m_rowOf;   ///< per class
    std::size_t m_rows;
    std::vector<double> m_inverse; ///< of the basis, column by column
    std::vector<double> m_value;   ///< of the basic variables
    std::vector<double> m_dual;
    std::vector<double> m_step;
    std::vector<std::pair<std::size_t, Offer>> m_joined; ///< by seat
    std::deque<std::vector<Part>> m_made;                ///< parts of those that were not on offer
    std::vector<char> m_isIn;
};

/// The classes that the seats can ask for more of than there are, each taking the offer that wants most. The others
/// bind nobody: their rows would only make the inverse large.
std::vector<std::size_t> scarceClasses(const Market& market);

} // namespace caprail::solver
