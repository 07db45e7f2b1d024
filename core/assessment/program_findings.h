// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// Findings that the program itself opens while it folds a ledger. Like those of a person they hold the closing gate until
/// somebody with a name says what was decided.
#include <assessment/facts.h>
#include <fasteners/preload.h>

namespace caprail {

/// Preload and share of proof, torsion counted, of a group that is tightened by torque. Refuses, saying what is missing, a
/// group without torque, thread, grade or a known lubricant, one tightened otherwise, and what judgeTorque refuses.
Result<TorqueJudgement> judgeGroup(const FastenerGroupSet&, std::int64_t scatterPercent, const Units&);

/// Opens «proof-N» for each group, set by entry N, whose torque goes over 90 % of proof at the lower friction, or of which
/// that cannot be told, since thread, grade or lubricant is not named or not known; and takes away those that nobody took yet and that no group in force gives rise to any more.
void reviewProof(Facts&);

/// Counts a fastener that was brought to its full value, and opens «single-use-N» where a piece that is used once was
/// tightened again by entry N.
void countTightening(Facts&, const Seen<FastenerTightened>&);

} // namespace caprail
