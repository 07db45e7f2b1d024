// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QString>
#include <assessment/assessment.h>
#include <map>
#include <planview/plan_content.h>

namespace caprail {

/// The fasteners of a kind in the order of tightening: the order that their group names, else from the centre outwards
/// (common practice, no source). A fastener that the named order leaves out comes last. Empty without a layout.
std::vector<FastenerId> tighteningOrder(const Facts& facts, FastenerKind kind);
/// The same if these were the kind's groups.
std::vector<FastenerId> tighteningOrder(const Facts& facts, FastenerKind kind,
                                        const std::vector<FastenerGroupSet>& groups);
/// Main caps, then rods: the order of a verify round.
std::vector<FastenerId> verifyOrder(const Facts& facts);
/// Place in the order of its own kind, counted from 1, for the diagram.
std::map<QString, int> sequenceNumbers(const std::vector<FastenerId>& order);

/// The round that is under way: begun, not complete, and nothing yet came between. Null: none.
const RoundFact* roundUnderWay(const Facts& facts);
/// Fasteners of a round that still need an outcome, in order.
std::vector<FastenerId> stillToPull(const Facts& facts, const RoundFact& round);

/// "main outer", "rod": what a group is called in tables.
QString groupName(const FastenerGroupSet& group);
/// What is specified for a fastener in words: "75.0 lbf·ft in 3 steps (25.0, 50.0, 75.0), 7/16-20, engine oil"; says so
/// when nothing is.
QString specifiedText(const Facts& facts, FastenerId fastener, const Units& units);
/// What it was brought to: "75.0 lbf·ft", "40.0 lbf·ft + 90.0°", "0.0063 in stretch".
QString broughtTo(const FastenerTightened& tightened, const Units& units);
/// The entry that brings a fastener to exactly what is specified; refuses where nothing is.
Result<FastenerTightened> asSpecified(const Facts& facts, FastenerId fastener, const std::string& instrument);
/// Tightened, not loosened since, and at the value that is specified now.
bool isAtSpecified(const Facts& facts, FastenerId fastener);

/// What a movement did: the window of the new gap on both sides of its cap, and what became stale by it. Empty for a
/// rod and for one that held.
QString consequenceText(const Facts& facts, const Assessment& assessment, const Seen<RoundOutcome>& moved,
                        const Units& units);

/// Diagram: fasteners with what they were brought to, numbered in sequence. Needs a layout.
PlanContent tightenedContent(const Facts& facts, FastenerKind kind, const Units& units);
/// Diagram: the fasteners of a group as it is typed, numbered in its sequence, under its steps. Needs a layout.
PlanContent groupContent(const Facts& facts, const FastenerGroupSet& group, const Units& units);
/// Diagram: what a round found so far. Needs a layout.
PlanContent roundContent(const Facts& facts, const RoundFact* round, const Units& units);

} // namespace caprail
