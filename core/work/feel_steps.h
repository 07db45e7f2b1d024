// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// The steps that a person's feel is tried with: shims of the kit laid between two rests, and the order in which they
/// are tried.
#include <assessment/facts.h>
#include <units/format.h>

namespace caprail {

/// A step of known height above (positive) or below the rests, and the shims that make it.
struct FeelStep {
    Length height;
    std::vector<std::string> shims;
};

struct FeelSteps {
    std::vector<std::string> rests; ///< the straightedge lies on these two; empty: none in the kit are alike
    Length rest;                    ///< their height
    std::vector<FeelStep> steps;    ///< by height, lowest first
};

/// Steps about a tenth of a thousandth of an inch apart up to half a thousandth either way, from measured shims that lie
/// in no stack: the two that are most alike are the rests, one or two of the others make each step. Fewer where the kit
/// has no more; without two shims that agree to 0.00005 in none at all.
FeelSteps proposeFeelSteps(const Facts&);

/// Reads what the straightedge rests on: measured shims, whose mean height counts ("S001 S002"), or a length. Refuses what
/// cannot be read, and shims that are unknown or not measured.
Result<Length> parseFeelRest(std::string_view text, const Units&, const Facts&);

/// Reads steps as they are typed: heights with their sign ("-0.3 thou"), or shims of the kit joined by a plus sign
/// ("S014+S022"), parted by commas or semicolons. A step of shims is as high as they measure, less `rest`. Refuses what
/// cannot be read, a shim that is unknown, not measured or named twice in one step, and fewer than two heights.
Result<std::vector<FeelStep>> parseFeelSteps(std::string_view text, const Units&, const Facts&, Length rest);
/// As it is typed: "S014+S022; S015; 0.0002 in".
std::string feelStepsText(const std::vector<FeelStep>&, const Units&);

/// The steps that a study was answered on so far, by height.
std::vector<FeelStep> stepsAnswered(const FeelStudyFact&);

/// The steps that are still to come until `answers` were given in all, each about equally often, in an order that `seed`
/// fixes and nobody can guess. Once there are as many, another round of all.
std::vector<FeelStep> stepsToCome(const std::vector<FeelStep>&, const FeelStudyFact*, std::size_t answers,
                                  std::uint32_t seed);

} // namespace caprail
