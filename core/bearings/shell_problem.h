// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// One family of bearings with the shells that fit it, as a search problem. Private to this folder.
#include <bearings/shell_search.h>
#include <bearings/shell_selection.h>

namespace caprail {

/// Like shells: one thickness, one side. Which of them is taken does not matter to the search.
struct ShellClass {
    Length thickness;
    ShellHalf half = ShellHalf::either;
    std::vector<std::string> ids; ///< in order
};

struct ShellFamily {
    std::vector<const BearingToFit*> bearings; ///< in the order of their names
    std::vector<ShellClass> classes;
    std::vector<std::vector<ShellChoice>> inBand, outOfBand; ///< by bearing; cost = |clearance − target| in nanometres

    [[nodiscard]] std::vector<int> stock() const;
    /// The most pairs that the shelf holds, whatever their thickness.
    [[nodiscard]] std::size_t mostPairs() const;
};

/// Splits bearings and shelf by family, in the order of the families' names. Shells of a family without a bearing are
/// left out.
std::vector<ShellFamily> familiesOf(const std::vector<BearingToFit>& bearings, const std::vector<ShelfShell>& shelf);

/// Largest minus smallest clearance among the choices with shells; 0 below two.
std::int64_t spreadOf(const std::vector<ShellChoice>& chosen);

} // namespace caprail
