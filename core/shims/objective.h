// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <array>
#include <base/words.h>

namespace caprail {

/// What counts when two plans serve the same number of positions with the same number of shims.
enum class Objective {
    smallestResidual, ///< the smallest largest |residual|, then the smallest sum of |residual|
    leastTwist,       ///< the smallest |twist sum|, then the smallest sum of |residual|
    leastLoad         ///< the smallest largest |force|, then the smallest sum of the forces' squares
};
template <> struct WordsOf<Objective> {
    static constexpr std::array<Word<Objective>, 3> list{
        {{Objective::smallestResidual, Core::mark("smallest residual")},
         {Objective::leastTwist, Core::mark("least twist")},
         {Objective::leastLoad, Core::mark("least load")}}};
};

} // namespace caprail
