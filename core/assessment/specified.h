// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// Whether what was recorded is what was specified, and whether an outcome of a verify round counts.
#include <assessment/facts.h>
#include <optional>
#include <string>
#include <units/format.h>

namespace caprail {

/// The same to the digit typed, in whichever unit either was typed. A wrench's own error (ISO 6789: ±4 %) belongs to the
/// scatter of the preload and not in here.
bool isSameAsTyped(const Entered<Torque>&, const Entered<Torque>&);
bool isSameAsTyped(const Entered<Angle>&, const Entered<Angle>&);

/// Whether these values are the group's: torque and angle to the digit typed, a stretch within its tolerance.
bool isAsSpecified(const FastenerTightened&, const FastenerGroupSet&);
/// Whether a fastener was brought to what is specified for it, and was not loosened since.
bool isTightAsSpecified(const Facts&, FastenerId);

/// Whether a torque lies outside what a wrench may be used for, as far as its range is known: without a lower limit marked
/// on it, from 20 % of its largest value (ISO 6789).
bool isOutsideRange(const InstrumentAdded& wrench, Torque pulled);

/// When an instrument's calibration falls due: as it was said, else of a wrench a year after it (ISO 6789); none:
/// never, or nobody knows.
std::optional<Date> dueOf(const InstrumentAdded&);

/// The wrench of an outcome: its own, else the one that its round was begun with; empty: none is named.
std::string wrenchOf(const Facts&, const RoundOutcome&);

/// What is wrong with a wrench for a torque pulled in this entry: not named, not known then, of a kind that pulls no
/// torque, without a stated range, or used outside it. None: nothing.
std::optional<std::string> wrenchFault(const Facts&, const std::string& wrench, std::int64_t entry, Torque pulled,
                                       const Units&);

/// Why an outcome of a verify round counts for nothing: not verified as its group is, without a torque, at another than
/// the specified one, with a wrench that does not fit; a stretch outside its band; by the person who tightened it where
/// the shop's rule asks for a second one. None: it counts.
std::optional<std::string> whyNotCounted(const Facts&, const Seen<RoundOutcome>&, const Units& = {});

/// Whether every verified fastener has an outcome in the round that counts.
bool isComplete(const Facts&, const RoundFact&);

} // namespace caprail
