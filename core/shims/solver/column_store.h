// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstdint>
#include <functional>
#include <memory>
#include <shims/solver/columns.h>
#include <shims/solver/open_seats.h>
#include <shims/solver/pool.h>
#include <shims/solver/price_hull.h>
#include <shims/solver/pricing.h>
#include <shims/solver/question.h>
#include <vector>

namespace caprail::solver {

/// The columns of the packing problem, the stacks of each seat: listed as far as a question needs them and there is
/// room, and the prices on shims that bound what any plan over them costs.
class ColumnStore {
public:
    ColumnStore(const OpenSeats& open, WorkClock& clock);

    /// Lists the stacks of a place of up to `size` shims with |residual| ≤ `window`; false if there is no room.
    bool extend(std::size_t seat, int size, std::int64_t window);
    enum class Listing { complete, extended, noRoom };
    /// Lists some of those that a plan could contain by the present prices and that are not listed.
    Listing listMore(const Question& question);
    /// Lists all stacks that by the present prices a plan can contain, through the table of costs; false if there is no
    /// table, or no room.
    bool listByPrice(const Question& question);
    /// Lists all stacks that a plan could contain, one way or the other; false if there is no room for them.
    bool listAll(const Question& question);
    /// Whether all of them are listed.
    [[nodiscard]] bool isListed(const Question& question) const;
    [[nodiscard]] Columns columnsFor(const Question& question) const;
    /// Grows whenever other stacks are listed.
    [[nodiscard]] std::size_t revision() const { return m_revision; }
    /// Which lists columnsFor() takes; another number when they are others.
    [[nodiscard]] std::size_t listingFor(const Question& question) const {
        return 2 * m_revision + (isListedByPrice(question) ? 1U : 0U);
    }
    /// About how many stacks of so many shims serve a seat.
    [[nodiscard]] double expectedStacks(std::size_t seat, int size) const;

    /// Prices for the number of shims.
    [[nodiscard]] const Prices& prices() const { return m_prices; }
    void forgetPrices() { m_prices = {}; }
    /// Improves them for the question; the bound that they give on the shims of a plan that answers it, times scale.
    std::int64_t raisePrices(const Question& question, int rounds);
    /// The bound that the present ones give.
    [[nodiscard]] std::int64_t boundFor(const Question& question);

private:
    [[nodiscard]] const Instance& instance() const { return m_open.instance(); }
    [[nodiscard]] std::vector<StackPrices::Wanted> wantedFor(const Question& question) const;
    StackPrices* tableFor(const Question& question);
    [[nodiscard]] bool isListedByPrice(const Question& question) const;
    [[nodiscard]] std::vector<Unlisted> unlistedFor(const Question& question) const;
    [[nodiscard]] std::function<std::vector<std::int64_t>(const Prices&)> costOf(std::vector<Unlisted> unlisted) const;

    const OpenSeats& m_open;
    WorkClock& m_clock;
    std::vector<Pool> m_pools;
    Prices m_prices;
    std::unique_ptr<StackPrices> m_table;
    /// All stacks that by their prices a plan that answers this question can contain, per seat.
    std::vector<StackPrices::Listed> m_byPrice;
    Question m_byPriceFor;
    std::size_t m_revision = 0;
};

} // namespace caprail::solver
