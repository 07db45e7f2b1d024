// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// Which readings of a bearing, a fit or a pickup term still stand: those made after the last thing that they rest on
/// changed.
#include <assessment/facts.h>
#include <span>

namespace caprail {

/// What made the bore readings of a bearing fall last: another torque on its cap, other shells, another specified
/// value.
Change boreInvalidatedBy(const Facts&, JournalId);
std::span<const Seen<JournalReading>> currentJournal(const Facts&, JournalId);
std::span<const Seen<BoreReading>> currentBores(const Facts&, JournalId);
std::span<const Seen<FitReading>> currentFits(const Facts&, const FitId&);
std::span<const Seen<PickupReading>> currentPickup(const Facts&, PickupTerm);

/// Thickness of a shell: mean of its measured readings, or as marked where there is none; none for an unknown shell.
std::optional<Length> shellThickness(const Facts&, std::string_view shell);

} // namespace caprail
