// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// Fastener groups parted and put together again.
#include <array>
#include <assessment/fastener_groups.h>
#include <base/words.h>

namespace caprail {

/// What goes along when one place is touched.
enum class SplitBy { place, cap, side, ring };
template <> struct WordsOf<SplitBy> {
    static constexpr std::array<Word<SplitBy>, 4> list{{{SplitBy::place, Core::mark("this place alone")},
                                                        {SplitBy::cap, Core::mark("its whole cap")},
                                                        {SplitBy::side, Core::mark("its whole side")},
                                                        {SplitBy::ring, Core::mark("its whole ring")}}};
};
/// The places of the same kind that go with one.
std::vector<FastenerId> placesWith(const Facts&, FastenerId, SplitBy);

/// The entries that give some places of a group a group of their own, named so, which asks for the same until it is set
/// otherwise; where the group that they leave lists its places, it is restated without them. Refuses an empty or taken
/// name, no places, places that belong to another group, and all places of the group.
Result<std::vector<Body>> splitOff(const Facts&, const GroupKey& from, const std::string& name,
                                   const std::vector<FastenerId>& places);
/// The entry that dissolves a group of places: they fall back to the wider group. Refuses a group that lists no places,
/// and one whose places no wider group would speak for.
Result<FastenerGroupSet> joinBack(const Facts&, const GroupKey&);

} // namespace caprail
