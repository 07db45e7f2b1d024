// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// Readings of a record in the words of core/bearings. Private to this folder.
#include <assessment/figures.h>
#include <bearings/clearance.h>
#include <span>

namespace caprail {

std::vector<DiameterReading> diametersOf(std::span<const Seen<JournalReading>> journal);

} // namespace caprail
