// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// The shop's own checks, as they stand: yes or no, measured in a band, or a photo.
#include <assessment/check.h>
#include <optional>

namespace caprail {

/// One place of one of the shop's checks. A value is held against the band with the instrument's limit of error, or is not
/// proven while that is not known; a photo must still be in the record. Answers to an earlier wording are stale.
Standing ownStandingOf(const Facts&, const OwnPlace&, const Units&);

/// "windage tray clear of every throw", with its place where it has several.
std::string titleOf(const OwnCheckSet&, std::int64_t place);

/// Every place of the checks that hold the trial fit, closing, or a closing step; in the order in which they were set.
std::vector<OwnPlace> ownPlaces(const Facts&, OwnCheckHolds, std::optional<ClosingStep> step = {});

} // namespace caprail
