// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// Is a measured value inside its band, once its uncertainty is counted?
#include <optional>
#include <string>
#include <units/band.h>
#include <units/format.h>
#include <base/words.h>

namespace caprail {

enum class Verdict { in, out, tooCloseToCall };
template <> struct WordsOf<Verdict> {
    static constexpr std::array<Word<Verdict>, 3> list{{{Verdict::in, Core::mark("in")},
                                                        {Verdict::out, Core::mark("out")},
                                                        {Verdict::tooCloseToCall, Core::mark("too close to call")}}};
};

/// Guarded: the decision rule with guard bands of ISO 14253-1 and JCGM 106:2012 (8.3): in only when the whole interval
/// x ± U lies inside the band, out only when it lies wholly outside. Simple acceptance (JCGM 106, 8.2) looks at x
/// alone.
enum class DecisionRule { guarded, simple };
template <> struct WordsOf<DecisionRule> {
    static constexpr std::array<Word<DecisionRule>, 2> list{
        {{DecisionRule::guarded, Core::mark("guard bands")}, {DecisionRule::simple, Core::mark("simple acceptance")}}};
};

/// `expandedUncertainty` in nanometres, finite and 0 or more: anything else is a bug and throws std::invalid_argument.
Verdict judge(Length x, double expandedUncertainty, Band band, DecisionRule rule);

/// The values that would be judged in: the band less a guard band of U at both ends, inwards to whole nanometres. None
/// when U is more than half the band's width: then no reading can pass, and only a better measurement helps.
std::optional<Band> acceptanceZone(Band band, double expandedUncertainty, DecisionRule rule);

/// "0.0024 in ± 0.00012 in is in (0.0020 to 0.0027 in, guard bands)."; where no value could pass, it says so.
std::string describeVerdict(Length x, double expandedUncertainty, Band band, DecisionRule rule, const Units& units);

} // namespace caprail
