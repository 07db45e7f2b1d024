// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// The search under the shell selection: each bearing takes one of its choices, the choices use up a stock of like
/// shells, and the sum of costs is to be least. Private to this folder.
#include <cstdint>
#include <optional>
#include <packing/work_clock.h>
#include <vector>

namespace caprail {

/// A pair of shells for one bearing, by class of like shells; −1 twice: none.
struct ShellChoice {
    std::int64_t cost = 0;      ///< 0 or more
    std::int64_t clearance = 0; ///< nanometres; means nothing without shells
    std::int16_t upper = -1, lower = -1;
    std::int16_t quota =
        -1; ///< a class of the stock that it takes one of besides the shells: so many may be out of band
    bool isInBand = false;
    [[nodiscard]] bool hasShells() const { return upper >= 0; }
};

struct ShellProblem {
    std::vector<std::vector<ShellChoice>> choices; ///< by bearing
    std::vector<int> stock;                        ///< shells of each class, then what each quota allows
};

struct ShellAssignment {
    std::int64_t cost = 0;
    std::vector<ShellChoice> chosen; ///< by bearing
};

/// The cheapest assignment of a cost of at most `limit`; none: there is none. Branch and bound, depth first; the bound
/// is Lagrangian (packing/lagrangian.h), with one price per class of the stock, at the root. Ties go to the first in
/// the order of the bearings and their choices. Throws packing::Stopped.
std::optional<ShellAssignment> cheapestAssignment(const ShellProblem& problem, std::int64_t limit,
                                                  packing::WorkClock& clock);

/// The problem without the choices that no assignment of a cost of at most `limit` can use, by reduced cost.
ShellProblem reduced(const ShellProblem& problem, std::int64_t limit, packing::WorkClock& clock);

} // namespace caprail
