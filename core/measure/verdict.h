// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// Is a measured value inside its band, once its uncertainty is counted?
#include <base/words.h>
#include <measure/decision.h>
#include <measure/uncertainty.h>
#include <optional>
#include <string>
#include <units/band.h>
#include <units/format.h>

namespace caprail {

enum class Verdict { in, out, tooCloseToCall };
template <> struct WordsOf<Verdict> {
    static constexpr std::array<Word<Verdict>, 3> list{{{Verdict::in, Core::mark("in")},
                                                        {Verdict::out, Core::mark("out")},
                                                        {Verdict::tooCloseToCall, Core::mark("too close to call")}}};
};

/// `expandedUncertainty` in nanometres, finite and 0 or more: anything else is a bug and throws std::invalid_argument.
Verdict judge(Length x, double expandedUncertainty, Band band, DecisionRule rule);
/// None while the uncertainty is not known: nothing is then proven, whatever the rule.
std::optional<Verdict> judge(Length x, const Uncertainty&, Band band, DecisionRule rule);

/// The values that would be judged in: the band less a guard band of U at both ends, inwards to whole nanometres. None
/// when U is more than half the band's width: then no reading can pass, and only a better measurement helps.
std::optional<Band> acceptanceZone(Band band, double expandedUncertainty, DecisionRule rule);

/// What stands beside a verdict (JCGM 106:2012).
struct Conformity {
    double probability = 0; ///< that the value lies in the band: Φ((hi − x)/u) − Φ((lo − x)/u) (7.4)
    double capability = 0;  ///< C_m = (hi − lo) / 4u (7.6.3); infinite for u = 0. Below 1: weakly measured
    [[nodiscard]] bool isWeak() const { return capability < 1; }
};
/// `standardUncertainty` in nanometres, finite and 0 or more; anything else throws std::invalid_argument.
Conformity conformity(Length x, double standardUncertainty, Band band);

/// A band for a value that cannot be below zero, such as a taper: judged at its upper end only. The lower end is put so
/// far below that no uncertainty reaches it.
Band atMost(Length largest);
/// Whether a band was made by `atMost`.
bool isUpperLimitOnly(Band);
/// "band 0.0018 to 0.0025 in", "at most 0.0005 in"
std::string describeLimits(Band, const Units&);

} // namespace caprail
