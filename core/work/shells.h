// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <assessment/facts.h>
#include <bearings/shell_selection.h>

namespace caprail {

/// Where a shell lies; nothing while it is on the shelf.
std::optional<JournalId> whereFitted(const Facts& facts, std::string_view shell);

/// What the selection needs from a record.
struct ShellRequest {
    std::vector<BearingToFit> bearings;
    std::vector<ShelfShell> shelf;
    std::vector<std::string> leftOut; ///< bearings that cannot be asked for yet, each with why: "main 2: its band …"
};
/// Bearings whose vertical journal and housing are known: the housing as read, else the bore with shells plus the
/// shells that lie in it. Readings that stand alone count.
ShellRequest shellRequestFor(const Facts& facts);

/// The entries that bring a selection into the engine, in an order in which no shell lies in two bearings at once.
/// Refuses a trade of shells between bearings that no free shell can loosen, naming one.
Result<std::vector<ShellsFitted>> fittingsFor(const Facts& facts, const ShellSelection& selection);

} // namespace caprail
