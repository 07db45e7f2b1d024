// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// Which half shells from the shelf go into which bearing.
#include <base/problem.h>
#include <base/words.h>
#include <bearings/shell_half.h>
#include <functional>
#include <optional>
#include <string>
#include <units/band.h>
#include <units/format.h>
#include <units/length.h>
#include <vector>

namespace caprail {

/// A half shell on the shelf.
struct ShelfShell {
    std::string id;
    Length thickness; ///< at the crown, measured or as marked
    ShellHalf half = ShellHalf::either;
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

/// Called between two askings of `shouldStop`, on the same thread, while there is a better selection than the last one
/// that it took; what it is given gives that selection, not proven.
using BetterShells = std::function<void(const std::function<ShellSelection()>& selection)>;

/// In this order of importance: most bearings in band; most bearings fitted; smallest Σ |clearance − target|; smallest
/// spread; then a fixed rule: the same input gives the same selection on any machine, whatever its order. A selection
/// is there at once and gets better by large-neighbourhood search; meanwhile an exact branch and bound over classes of
/// like shells, with a bound from Lagrange multipliers on the shelf, proves that none is better. `shouldStop` is asked
/// some thousand times a second; once it says true the best selection so far is given within 5 ms, not proven. Families
/// are solved one by one. Refuses, naming it: no bearings, more than 32 bearings or 200 shells, two bearings or two
/// shells of one name or without a name, a thickness, housing or journal that is not above zero or above 1 m, a target
/// outside its band.
Result<ShellSelection> selectShells(const std::vector<BearingToFit>& bearings, const std::vector<ShelfShell>& shelf,
                                    const Units& units = {}, const std::function<bool()>& shouldStop = {},
                                    const BetterShells& better = {});

} // namespace caprail
