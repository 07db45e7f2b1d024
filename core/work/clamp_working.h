// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <assessment/facts.h>
#include <string>
#include <units/format.h>
#include <vector>

namespace caprail {

/// What a fastener clamps with, from a pair of torques; none where its thread is not known.
std::optional<Force> clampOf(const Facts&, const ClampChecked&);

/// Every clamp check of a fastener, the last first: the force and how it was found, and how it stands to the preload that
/// its specification aims at. Empty where none was made.
std::vector<std::string> clampWorking(const Facts&, FastenerId, const Units&);

} // namespace caprail
