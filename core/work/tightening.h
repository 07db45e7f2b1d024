// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// In which order fasteners are tightened and pulled again, and what is specified for each.
#include <assessment/facts.h>
#include <map>

namespace caprail {

/// The fasteners of a kind in the order of tightening: the order that their group names, else from the centre outwards
/// (common practice, no source). A fastener that the named order leaves out comes last. Empty without a layout.
std::vector<FastenerId> tighteningOrder(const Facts& facts, FastenerKind kind);
/// The same if these were the kind's groups.
std::vector<FastenerId> tighteningOrder(const Facts& facts, FastenerKind kind,
                                        const std::vector<FastenerGroupSet>& groups);
/// Main caps, then rods: the order of a verify round.
std::vector<FastenerId> verifyOrder(const Facts& facts);
/// Destination in the order of its own kind, counted from 1, for the diagram.
std::map<FastenerId, int> sequenceNumbers(const std::vector<FastenerId>& order);

/// The round that is under way: begun, not complete, and nothing yet came between. Null: none.
const RoundFact* roundUnderWay(const Facts& facts);
/// Fasteners of a round that still need an outcome, in order.
std::vector<FastenerId> stillToPull(const Facts& facts, const RoundFact& round);

/// The entry that brings a fastener to exactly what is specified; refuses where nothing is.
Result<FastenerTightened> asSpecified(const Facts& facts, FastenerId fastener, const std::string& instrument);
/// Tightened, not loosened since, and at the value that is specified now.
bool isAtSpecified(const Facts& facts, FastenerId fastener);

} // namespace caprail
