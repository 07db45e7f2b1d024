// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// Fastener groups as sets of places: who belongs to which, and what a group says without its maker having said it.
#include <assessment/facts.h>
#include <fasteners/joint.h>

namespace caprail {

/// How many fasteners a row (pan rail, front, rear) has: what its common group counts, or the highest number that a group
/// of places lists. 0 for the kinds that the layout counts.
int rowCount(const std::vector<FastenerGroupSet>& groups, FastenerKind kind);
int rowCount(const Facts&, FastenerKind);

/// The groups of a kind, in the order of their keys.
std::vector<FastenerGroupSet> groupsOf(const Facts&, FastenerKind);
/// The thread of the group that speaks for a fastener. Refuses where there is no such group, and what parseThread refuses.
Result<Thread> threadOf(const Facts&, FastenerId);

/// Every fastener of a kind, as the layout or the row counts them. Empty without a layout.
std::vector<FastenerId> fastenersOf(const Facts&, FastenerKind);
/// Those that this group speaks for now: a narrower group takes its places out of a wider one. So the girdle's group has
/// as many as the layout ties, whatever count was typed.
std::vector<FastenerId> membersOf(const Facts&, const GroupKey&);

/// "main 1 to 4", "pan rail 3, 7 to 9"; place by place where only one side of a number is meant. Empty for none.
std::string describePlaces(const std::vector<FastenerId>& places);

/// What is at a place: as its group says, else a stud with its nut at main caps and under the girdle, a bolt elsewhere.
FastenerPiece pieceOf(const FastenerGroupSet&);
FastenerPiece pieceOf(const Facts&, FastenerId);

/// By what a round tells that such a fastener holds. One tightened by angle, to yield or by stretch is never pulled:
/// that proves nothing, and can ruin it.
VerifyMethod verifiedBy(const FastenerGroupSet&);
/// Whether tightening it twice is one time too many.
bool isSingleUse(const FastenerGroupSet&);
/// By how much a stretch may differ from the specified one (0.0003 in unless the group says: common practice, no source).
Length stretchTolerance(const FastenerGroupSet&);
/// Spring rates of such a fastener and of what it clamps.
struct JointStiffness {
    Stiffness fastener, clamped;
};
/// From the joint's dimensions; none where the group does not give them, or gives what cannot be.
std::optional<JointStiffness> jointStiffness(const FastenerGroupSet&);
/// Whether there is a value to bring it to. A group may stand without, while its maker's figure is looked for.
bool isSpecified(const FastenerGroupSet&);

/// Whether two groups ask for the same: what was tightened or measured by one stands under the other.
bool asksForTheSame(const FastenerGroupSet&, const FastenerGroupSet&);

} // namespace caprail
