// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstddef>
#include <shims/solver/instance.h>

namespace caprail::solver {

struct Limits;

/// States from which no plan was found, kept from one search to the next over the same stacks: one that gave up is
/// begun again with more steps, or for a smaller figure, and must not prove the same twice. C. Lecoutre, L. Saïs, S.
/// Tabary, V. Vidal, “Nogood recording from restarts”, IJCAI 2007; from memory.
class Failures {
public:
    void forget() { m_table.clear(); }
    /// Forgets those that need not hold for the search to come: of another listing of stacks, or of narrower limits.
    /// (How much |residual| there was room for is remembered with each.)
    void prepareFor(const Limits& limits, std::size_t listing);
    /// What the limits had come to when the search ended: they may have been tightened by a plan that it found.
    void endedWith(const Limits& limits);
    [[nodiscard]] TranspositionTable& table() { return m_table; }

private:
    TranspositionTable m_table;
    int m_shims = 0;
    std::int64_t m_window = 0;
    std::int64_t m_twist = 0;
    std::size_t m_listing = 0;
};

} // namespace caprail::solver
