// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// Which half shells from the shelf go into which bearing.
#include <functional>
#include <optional>
#include <string>
#include <units/band.h>
#include <units/format.h>
#include <units/length.h>
#include <base/problem.h>
#include <base/words.h>
#include <vector>

namespace caprail {

/// Where a half shell may lie: some have an oil hole or groove and fit only one half.
enum class ShellSide { either, upper, lower };
template <> struct WordsOf<ShellSide> {
    static constexpr std::array<Word<ShellSide>, 3> list{{{ShellSide::either, Core::mark("either")},
                                                          {ShellSide::upper, Core::mark("upper")},
                                                          {ShellSide::lower, Core::mark("lower")}}};
};

/// A half shell on the shelf.
struct ShelfShell {
    std::string id;
    Length thickness; ///< at the crown, measured or as marked
    ShellSide side = ShellSide::either;
    std::string family; ///< width and kind, whatever must agree: "main", "main thrust", "rod"; may be empty
};

/// A bearing that wants two half shells.
struct BearingToFit {
    std::string id;
    Length housing; ///< bore without shells, cap at full torque
    Length journal; ///< diameter, square to the parting line
    Band band;      ///< of the clearance
    Length target;  ///< inside the band
    std::string family;
};

/// What one bearing gets.
struct ShellPair {
    std::string bearing;
    std::string upper, lower; ///< empty: no shells were left for it
    Length clearance;         ///< housing − both shells − journal
    bool isFitted = false;
    bool isInBand = false;
};

struct ShellSelection {
    std::vector<ShellPair> pairs; ///< in the order of the bearings asked for
    std::size_t inBand = 0, fitted = 0;
    Length sumOfDeviations; ///< Σ |clearance − target| over the fitted bearings
    /// Largest minus smallest clearance over the fitted bearings of one family, summed over the families.
    Length spread;
    bool isProven = false; ///< no better selection exists; false: the best found before it was stopped
    std::string sentence;
};

/// In this order of importance: most bearings in band; most bearings fitted; smallest Σ |clearance − target|; smallest
/// spread; then the first in one fixed order of names, so that the same input always gives the same selection. Exact
/// branch and bound over classes of like shells, with a bound from Lagrange multipliers on the shelf; `shouldStop` is
/// asked often, and once it says true the best selection so far is given, not proven. Families are solved one by one.
/// Refuses, naming it: no bearings, more than 32 bearings or 200 shells, two bearings or two shells of one name or
/// without a name, a thickness, housing or journal that is not above zero or above 1 m, a target outside its band.
Result<ShellSelection> selectShells(const std::vector<BearingToFit>& bearings, const std::vector<ShelfShell>& shelf,
                                    const Units& units = {}, const std::function<bool()>& shouldStop = {});

} // namespace caprail
