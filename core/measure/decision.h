// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// The two choices of a build that decide how a measured value is held against its band.
#include <array>
#include <base/words.h>

namespace caprail {

/// Guarded: the decision rule with guard bands of ISO 14253-1 and JCGM 106:2012 (8.3): in only when the whole interval
/// x ± U lies inside the band, out only when it lies wholly outside. Simple acceptance (JCGM 106, 8.2) looks at x
/// alone.
enum class DecisionRule { guarded, simple };
template <> struct WordsOf<DecisionRule> {
    static constexpr std::array<Word<DecisionRule>, 2> list{
        {{DecisionRule::guarded, Core::mark("guarded")}, {DecisionRule::simple, Core::mark("simple")}}};
};

/// How the expanded uncertainty is covered: a fixed k = 2, or Student's t at 95.45 % for the effective degrees of
/// freedom.
enum class Coverage { two, student };
template <> struct WordsOf<Coverage> {
    static constexpr std::array<Word<Coverage>, 2> list{
        {{Coverage::two, Core::mark("k = 2")}, {Coverage::student, Core::mark("Student's t")}}};
};

} // namespace caprail
