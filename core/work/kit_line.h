// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// What is typed at the girdle station about shims.
#include <assessment/facts.h>
#include <units/format.h>

namespace caprail {

/// Reads what is typed to add shims to the kit: one by name ("S001 10 thou"), a run of names ("S001-S012 10 thou"), or
/// a count of one marked size ("12 x 10 thou", "12 × 0.254 mm"), which are named on from the largest S number of the
/// kit. Refuses what cannot be read, a run that goes backwards, more than 200 at once, and a name that the kit has.
Result<std::vector<ShimAdded>> parseKitLine(std::string_view text, const Units& units, const Facts& facts,
                                            std::string_view bag);

/// Reads a micrometer reading: a shim's name then the value ("S014 0.0098"), or the value alone for `selected`.
/// Refuses an unknown shim and a value that cannot be read.
Result<ShimMeasured> parseShimReading(std::string_view text, const Units& units, const Facts& facts,
                                      const std::string& selected);

/// Reads shim names ("S014 S022, S003") for a stack at a position. Refuses unknown ones, and what `makesSense` refuses:
/// one named twice, those set aside. A dash alone means a bare position.
Result<std::vector<std::string>> parseStack(std::string_view text, const Facts& facts, Position at);

/// The kit's next free name of the form S001; `ahead`: the one so many after it.
std::string nextShimName(const Facts& facts, int ahead = 0);

} // namespace caprail
