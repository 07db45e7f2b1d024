// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstddef>
#include <cstdint>
#include <shims/solver/instance.h>
#include <shims/solver/pool.h>
#include <vector>

namespace caprail::solver {

/// What the stacks cost that a seat can have, all of them, without listing them: a table over (first class, shims,
/// total) of the least cost of so many shims of that total, all of that class or thinner ones. It finds the cheapest
/// stack of a seat at once, and lists just those that cost no more than a limit.
class StackPrices {
public:
    /// For stacks of up to `mostShims` shims and a total up to `mostTotal`.
    StackPrices(const Instance& instance, int mostShims, std::int64_t mostTotal, WorkClock& clock);

    /// Whether the table has a bearable size.
    [[nodiscard]] static bool canBe(const Instance& instance, int mostShims, std::int64_t mostTotal);
    [[nodiscard]] int mostShims() const { return m_mostShims; }

    /// Fills the table: a shim costs `perShim` and its price.
    void set(const Prices& prices, std::int64_t perShim, WorkClock& clock);

    /// Stacks of up to `most` shims with a total in [lo, hi].
    struct Wanted {
        int most = 0;
        std::int64_t lo = 0;
        std::int64_t hi = -1;
    };
    /// The least cost of any; `never` if there are none.
    [[nodiscard]] std::int64_t least(const Wanted& wanted) const;
    /// The cheapest.
    [[nodiscard]] std::vector<Part> cheapest(const Wanted& wanted) const;

    /// Stacks in a list, with their parts one after the other.
    struct Listed {
        std::vector<Candidate> candidates;
        std::vector<Part> parts;
    };
    /// Lists those that cost up to `limit`, with their residual to `gap`; false if they are more than `room`.
    bool list(const Wanted& wanted, std::int64_t limit, std::int64_t gap, std::size_t room, Listed& out,
              WorkClock& clock) const;

private:
    struct Walk;
    [[nodiscard]] const std::int32_t* row(std::size_t cls, int shims) const {
        return &m_table[(cls * static_cast<std::size_t>(m_mostShims + 1) + static_cast<std::size_t>(shims)) * m_width];
    }
    std::int32_t* row(std::size_t cls, int shims) {
        return &m_table[(cls * static_cast<std::size_t>(m_mostShims + 1) + static_cast<std::size_t>(shims)) * m_width];
    }
    bool walk(std::size_t cls, int shims, std::int64_t total, std::int64_t budget, Walk& w) const;

    const Instance& m_instance;
    int m_mostShims;
    std::size_t m_width;
    std::vector<std::int32_t> m_cost; ///< of a shim, per class
    std::vector<std::int32_t> m_table;
};

} // namespace caprail::solver
