// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <assessment/facts.h>
#include <string>
#include <string_view>
#include <vector>

namespace caprail {

/// "main shells: Norwood 7312 P, lot 7731"
std::string describe(const PartEntered&);
/// The parts fitted at a place ("3R", "main-3", "main-3R"): those entered for it, and those of the engine as a whole that
/// every such place has one of (shells and crank at a main, studs at a position). Nothing for no place.
std::vector<const Seen<PartEntered>*> partsAt(const Facts&, std::string_view place);
/// Where a photo of a part's number says that it belongs: "part:crank".
std::string photoPlaceOf(const PartEntered&);

} // namespace caprail
