// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// The search under the shell selection: each bearing takes one of its choices, the choices use up a stock of like
/// shells, and the sum of costs is to be least. Private to this folder.
#include <cstdint>
#include <functional>
#include <optional>
#include <vector>

namespace caprail {

/// A pair of shells for one bearing, by class of like shells; −1 twice: none.
struct ShellChoice {
    std::int64_t cost = 0; ///< 0 or more
    int upper = -1, lower = -1;
    std::int64_t clearance = 0; ///< nanometres; means nothing without shells
    [[nodiscard]] bool hasShells() const { return upper >= 0; }
};

struct ShellProblem {
    std::vector<std::vector<ShellChoice>> choices; ///< by bearing
    std::vector<int> stock;                        ///< shells of each class
};

struct ShellAssignment {
    std::int64_t cost = 0;
    std::vector<ShellChoice> chosen; ///< by bearing
};

struct ShellSearchResult {
    std::optional<ShellAssignment> best; ///< none: there is none at or below the limit, if complete
    bool isComplete = true;              ///< false: stopped before the search was through
};

/// The cheapest assignment of a cost of at most `limit`. Branch and bound, depth first; the bound relaxes the stock
/// with one Lagrange multiplier per class, found by subgradient steps at the root (Fisher, The Lagrangian relaxation
/// method for solving integer programming problems, Management Science 27 (1981), from memory). Ties go to the first in
/// the order of the bearings and their choices. `shouldStop` may be empty.
ShellSearchResult cheapestAssignment(const ShellProblem& problem, std::int64_t limit,
                                     const std::function<bool()>& shouldStop);

/// The problem without the choices that no assignment of a cost of at most `limit` can use, by reduced cost.
ShellProblem reduced(const ShellProblem& problem, std::int64_t limit, const std::function<bool()>& shouldStop);

} // namespace caprail
