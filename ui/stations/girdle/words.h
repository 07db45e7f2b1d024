// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QString>
#include <assessment/assessment.h>
#include <session/plan_runner.h>
#include <work/block_load.h>

namespace caprail {

/// The survey in two lines: places read, spread, repeatability.
QString surveySentence(const Assessment& assessment, const Units& units);
/// What the rings about the places mean at the rechecks.
QString ringLegend(const Facts& facts, const Units& units);
/// Offset, pitch, roll and twist, each with its sign and what it means, and the largest local error.
QString flushnessSentence(const Assessment& assessment, const Units& units);
/// A residual as short as it is written beside a stud, with its sign: "+0.3", "−0.5", "0".
QString signedShort(Length length, const Units& units);
/// That nobody set the residual band, and which one is taken: to end a list of remarks, or as a sentence of its own.
QString usualBandNote(const ResidualBand& band, const Units& units);
QString usualBandSentence(const ResidualBand& band, const Units& units);
/// "Proven best: 10 of 10 in band with 17 shims …" or why there is no plan; says so when it was made for a band that
/// nobody set.
QString planSentence(const PlanOutcome& outcome, const Units& units);
/// Unmet positions: the nearest stack, and what to buy or lap.
QString unmetSentence(const PlanOutcome& outcome, const Units& units);
/// How far the stacks as built are from the plan.
QString comparisonSentence(const PlanComparison& comparison, const Units& units);
/// What the readings of a place add up to: median, count, range, ±.
QString gapSentence(const GapResult& gap, const Units& units);

/// "up" where the girdle pulls the cap up, "down" where it presses it down, "none".
QString loadWord(Force force, const Units& units);
/// "▲ 38 lbf up": by shape and word.
QString loadText(Force force, const Units& units);
/// The largest load and where, the plate's stress and energy; or what is missing to know it.
QString loadSentence(const BlockLoad& load, Rail rail, const Units& units);

} // namespace caprail
