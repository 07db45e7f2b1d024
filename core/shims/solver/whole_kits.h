// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstdint>
#include <optional>
#include <shims/solver/incumbent.h>
#include <shims/solver/kit_choice.h>
#include <shims/solver/question.h>
#include <shims/solver/search.h>
#include <vector>

namespace caprail::solver {

/// What the kit as a whole says, where a plan needs next to all of it: which choices of its shims add up to the gaps at
/// all, hence which sums of residuals there are; and plans found by sharing such a choice out by lot.
///
/// All of it holds for plans that serve all seats with just so many shims as no plan can do without: `fewestShims`.
class WholeKits {
public:
    WholeKits(const Instance& instance, Incumbent& incumbent, WorkClock& clock)
        : m_instance(instance), m_incumbent(incumbent), m_clock(clock) {}

    /// “No” if no choice of shims adds up; else shares out those that do for up to `steps` stacks.
    Answer decide(const Limits& limits, int fewestShims, std::int64_t steps);
    /// What the twist is at least, by what its residuals allow together; with what is pinned.
    [[nodiscard]] std::int64_t leastTwist(const Limits& limits, int fewestShims) const;
    /// What the sum of |residual| is at least, from `atLeast` on, by what goes together; with what is pinned.
    [[nodiscard]] std::int64_t leastSum(const Limits& limits, int fewestShims, std::int64_t atLeast) const;

private:
    [[nodiscard]] std::optional<KitChoice> choiceFor(const Limits& limits, int fewestShims) const;
    [[nodiscard]] std::optional<std::vector<std::int64_t>> sumsOfResiduals(const Limits& limits, int fewestShims) const;

    const Instance& m_instance;
    Incumbent& m_incumbent;
    WorkClock& m_clock;
};

} // namespace caprail::solver
