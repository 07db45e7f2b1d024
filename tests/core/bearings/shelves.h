// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// Made-up bearings and shelves for the tests of the shell selection, and the order in which selections are compared.
#include <bearings/shell_selection.h>
#include <random>
#include <tuple>

namespace caprail::shelves {

struct Case {
    std::vector<BearingToFit> bearings;
    std::vector<ShelfShell> shelf;
};

/// `step`: shells come in multiples of it (a large step gives many ties); `sided`: some shells fit one side only.
inline Case make(unsigned seed, int bearings, int shells, Length step, bool sided) {
    std::mt19937 random(seed);
    const auto within = [&](int lo, int hi) { return std::uniform_int_distribution<int>(lo, hi)(random); };
    Case c;
    for (int i = 0; i < bearings; ++i) {
        BearingToFit b;
        b.id = "main-" + std::to_string(i + 1);
        b.journal = tenths(24'480) + nanometres(within(-2, 2) * 1'270);
        b.housing = tenths(26'405) + nanometres(within(-4, 4) * 1'270);
        b.band = Band::between(tenths(20), tenths(26)).value();
        b.target = tenths(23);
        c.bearings.push_back(b);
    }
    const int most = static_cast<int>(std::max<std::int64_t>(1, 12'700 / step.value()));
    for (int i = 0; i < shells; ++i) {
        ShelfShell s;
        s.id = "S" + std::to_string(100 + i);
        s.thickness = tenths(951) + step * within(-most, most);
        s.half = !sided ? ShellHalf::either : static_cast<ShellHalf>(within(0, 2));
        c.shelf.push_back(s);
    }
    return c;
}

/// Smaller is better: not in band, not fitted, off target, spread.
using Rank = std::tuple<std::size_t, std::size_t, std::int64_t, std::int64_t>;

inline Rank rankOf(const ShellSelection& s) {
    return {s.pairs.size() - s.inBand, s.pairs.size() - s.fitted, s.sumOfDeviations.value(), s.spread.value()};
}

} // namespace caprail::shelves
