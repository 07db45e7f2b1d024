// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QString>
#include <bearings/shell_selection.h>
#include <session/record_session.h>

namespace caprail {

/// Thickness of a shell: mean of its measured readings, or as marked where there is none.
std::optional<Length> shellThickness(const Facts& facts, const std::string& shell);
/// Where a shell lies; nothing while it is on the shelf.
std::optional<JournalId> whereFitted(const Facts& facts, const std::string& shell);

/// What the selection needs from a record.
struct ShellRequest {
    std::vector<BearingToFit> bearings;
    std::vector<ShelfShell> shelf;
    QStringList leftOut; ///< bearings that cannot be asked for yet, each with why
};
/// Bearings whose vertical journal and housing are known: the housing as read, else the bore with shells plus the
/// shells that lie in it. Readings that stand alone count.
ShellRequest shellRequestFor(const Facts& facts, const Assessment& assessment);

/// The entries that bring a selection into the engine, in an order in which no shell lies in two bearings at once.
/// Refuses a trade of shells between bearings that no free shell can loosen, naming one.
Result<std::vector<ShellsFitted>> fittingsFor(const Facts& facts, const ShellSelection& selection);

} // namespace caprail
