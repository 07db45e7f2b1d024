// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// What the straightedge says of a built stack's residual: between two exchanges of shims, or by a feel that was tried.
#include <assessment/facts.h>
#include <measure/statistics.h>
#include <measure/uncertainty.h>
#include <optional>

namespace caprail {

/// Some shims of a stack for others.
struct Exchange {
    std::vector<std::string> out, in;
    Length change; ///< thickness in less thickness out
};

/// A residual as the straightedge knows it.
struct FeltResidual {
    Length residual; ///< middle of where it lies
    Uncertainty uncertainty;
};

/// A recheck that drags, rocks with a stack t thicker and is loose with one t′ thinner: the residual lies within −t′ to
/// +t, whatever the leaves were worth. What is left is the micrometer's error in t and t′ and the straightedge's flatness
/// (which bends the line that it feels along). U is the smaller of two that both hold: half the bracket and the U of
/// what is left, or k times the root of the squares with the bracket as a rectangle.
/// None where it is not bracketed, or one of the exchanges was felt otherwise.
/// `shims`: how readings of shims scatter (budget_of.h).
std::optional<FeltResidual> bracketOf(const Facts&, const Seen<RecheckMade>&, const Scatter& shims);

/// What is left of the uncertainty at one end of a bracket once an exchange was felt as it should be: that of its
/// thickness, and of a straightedge's flatness as it is known now.
Uncertainty bracketEnd(const Facts&, const Exchange&, const std::string& straightedge, const Scatter& shims);

/// A recheck that drags, by a person whose feel was tried with that straightedge within the year before: the residual
/// lies within −δ to +δ of the study (feel_study.h), and the straightedge's flatness besides. None otherwise.
std::optional<FeltResidual> byFeel(const Facts&, const Seen<RecheckMade>&);

/// The exchange that makes the stack at a position thicker (or, below zero, thinner) by as near as can be to `wanted`,
/// and by no less than half of it: up to two shims for up to two others, by measured thickness. Within 0.0001 in of what
/// is wanted the exchange of fewer shims comes first, then the nearer one, then by name. None when the kit's free shims
/// have none.
std::optional<Exchange> exchangeFor(const Facts&, Position, Length wanted);

/// Whether an exchange can be made at this stack: what goes out lies in it, what goes in is measured and free.
Result<Exchange> exchangeOf(const Facts&, Position, const std::vector<std::string>& out,
                            const std::vector<std::string>& in);

} // namespace caprail
