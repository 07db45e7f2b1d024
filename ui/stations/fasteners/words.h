// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// What the fasteners station says and draws.
#include <QString>
#include <assessment/assessment.h>
#include <planview/plan_content.h>

namespace caprail {

/// "main outer", "rod": what a group is called in tables.
QString groupName(const FastenerGroupSet& group);
/// How fasteners that are never pulled again are verified; empty where they are pulled.
QString verifiedText(VerifyMethod method);
/// What a round found at one fastener: "held", "moved 4.0°", "its mark lines up".
QString foundText(const RoundOutcome& outcome, const Units& units);
/// What is specified for a fastener in words: "75.0 lbf·ft in 3 steps (25.0, 50.0, 75.0), 7/16-20, engine oil"; says so
/// when nothing is.
QString specifiedText(const Facts& facts, FastenerId fastener, const Units& units);
/// What it was brought to: "75.0 lbf·ft", "40.0 lbf·ft + 90.0°", "0.0063 in stretch".
QString broughtTo(const FastenerTightened& tightened, const Units& units);

/// What a movement did: the window of the new gap on both sides of its cap, and what became stale by it. Empty for a
/// rod and for one that held.
QString consequenceText(const Facts& facts, const Assessment& assessment, const Seen<RoundOutcome>& moved,
                        const Units& units);
/// What to set on a wrench with an extension for `wanted`, as typed: the working, or why not.
QString extensionText(Torque wanted, const QString& length, const QString& offset, const QString& angle,
                      const Units& units);

/// Diagram: fasteners with what they were brought to, numbered in sequence. Needs a layout.
PlanContent tightenedContent(const Facts& facts, FastenerKind kind, const Units& units);
/// Diagram: the fasteners of a group as it is typed, numbered in its sequence, under its steps. Needs a layout.
PlanContent groupContent(const Facts& facts, const FastenerGroupSet& group, const Units& units);
/// Diagram: what a round found so far. Needs a layout.
PlanContent roundContent(const Facts& facts, const RoundFact* round, const Units& units);

} // namespace caprail
