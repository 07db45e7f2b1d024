// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// Leads a recheck from the stack as built to a bracket around its residual: which shims to exchange next, and what the
/// straightedge should then say.
#include <assessment/assessment.h>
#include <assessment/bracket.h>

namespace caprail {

/// What the straightedge is laid on next; nothing: all was answered.
enum class RecheckAsk { asBuilt, thicker, thinner, nothing };

struct RecheckGuide {
    RecheckAsk ask = RecheckAsk::asBuilt;
    std::optional<Exchange> exchange; ///< for thicker and thinner: what to take out and lay in
    /// The exchange is small enough that, felt as it should be, this end of the bracket is proven to lie in the band.
    bool wouldProve = false;
    /// Why there is no exchange, why it will not suffice, or what cannot be as it was felt; empty: all is well.
    std::string doubt;
};

/// Who lays which straightedge on.
struct WhoFeels {
    std::string person, straightedge;
};

/// What comes next at a position. A bracket is led to where the stack is not good without one, or where it is `isWanted`.
/// Of the exchanges that would prove an end the largest is proposed, which is felt most surely: up to the band's end less
/// what is left of the uncertainty (a bracket is judged as a whole under either rule), and more than one that only
/// dragged. What another person, or
/// another straightedge, felt before is not gone on with: the stack as built is asked for anew.
RecheckGuide guideRecheck(const Facts&, const Assessment&, Position, const WhoFeels&, bool isWanted = false);

/// What was felt, as an entry: the exchange of the guide, and with it what was felt before of the same bracket.
RecheckMade recheckOf(const Facts&, Position, const RecheckGuide&, Feel, const WhoFeels&);

} // namespace caprail
