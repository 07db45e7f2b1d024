// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// The best selection for one family: a first one at once, better ones meanwhile, and the proof. Private to this
/// folder.
#include <bearings/shell_incumbent.h>

namespace caprail {

class ShellSolver {
public:
    ShellSolver(const ShellFamily& family, packing::WorkClock& clock);

    /// A selection found in a moment, and bettered a little. Throws packing::Stopped.
    void begin();
    /// Goes on until it is proven that no better one is on the shelf. Throws packing::Stopped.
    void prove();
    /// What there is instead when it was stopped before it began: some tenths of a millisecond.
    void beginInGrace();

    [[nodiscard]] const ShellFamily& family() const { return m_family; }
    [[nodiscard]] const ShellIncumbent& incumbent() const { return m_incumbent; }
    [[nodiscard]] bool isProven() const { return m_isProven; }

private:
    void fewestNotInBand();
    void fewestWithoutAndCost();
    void leastSpread();
    std::optional<std::vector<ShellChoice>> anyWithin(const ShellProblem& problem, std::int64_t width);
    [[nodiscard]] ShellProblem problemWith(std::size_t without) const;
    void improveMeanwhile();

    const ShellFamily& m_family;
    packing::WorkClock& m_clock;
    ShellIncumbent m_incumbent;
    ShellImprover m_improver;
    std::size_t m_notInBand = 0; ///< proven: no selection has fewer
    bool m_isProven = false;
};

} // namespace caprail
