// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// In which order fasteners are tightened and verified: what leads the work at the engine leads the next step too.
#include <assessment/facts.h>
#include <map>
#include <optional>

namespace caprail {

/// The fasteners of a kind in the order of tightening: the order that their groups name, else from the centre outwards
/// (common practice, no source). A fastener that the named order leaves out comes last. Empty without a layout.
std::vector<FastenerId> tighteningOrder(const Facts& facts, FastenerKind kind);
/// The same if these were the kind's groups.
std::vector<FastenerId> tighteningOrder(const Facts& facts, FastenerKind kind,
                                        const std::vector<FastenerGroupSet>& groups);
/// Main caps, then rods: the order of a verify round.
std::vector<FastenerId> verifyOrder(const Facts& facts);
/// The first fastener of a bearing's cap, in the order of tightening, that is not tight as specified: a bore is measured with
/// its cap at torque. None: all are, or there is no layout.
std::optional<FastenerId> looseAt(const Facts& facts, JournalId journal);
/// Place in the order of its own kind, counted from 1, for the diagram.
std::map<FastenerId, int> sequenceNumbers(const std::vector<FastenerId>& order);

/// The round that is under way: begun, not complete, and nothing yet came between. Null: none.
const RoundFact* roundUnderWay(const Facts& facts);
/// Fasteners of a round that still need an outcome that counts, in order.
std::vector<FastenerId> stillToPull(const Facts& facts, const RoundFact& round);

} // namespace caprail
