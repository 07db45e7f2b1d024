// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <array>
#include <base/words.h>

namespace caprail {

/// What is looked at in a trial fit with the girdle on. (That it lies the right way round is an entry of its own.)
enum class TrialItem { dipstick, pickupTube, counterweights, rodBolts, turnsFreely, keyway };
template <> struct WordsOf<TrialItem> {
    static constexpr std::array<Word<TrialItem>, 6> list{
        {{TrialItem::dipstick, Core::mark("dipstick clear")},
         {TrialItem::pickupTube, Core::mark("pickup tube clear")},
         {TrialItem::counterweights, Core::mark("counterweights clear")},
         {TrialItem::rodBolts, Core::mark("rod bolts clear")},
         {TrialItem::turnsFreely, Core::mark("two turns by hand, nothing binds")},
         {TrialItem::keyway, Core::mark("keyway agrees at top dead centre")}}};
};
/// Whether an item is answered once per throw.
constexpr bool isPerThrow(TrialItem item) {
    return item == TrialItem::counterweights || item == TrialItem::rodBolts;
}
/// Whether a clearance can be measured for it; the others are a pass or a fail.
constexpr bool mayBeMeasured(TrialItem item) {
    return item != TrialItem::turnsFreely && item != TrialItem::keyway;
}

/// What was found.
enum class TrialResult { pass, fail, measured };
template <> struct WordsOf<TrialResult> {
    static constexpr std::array<Word<TrialResult>, 3> list{{{TrialResult::pass, Core::mark("pass")},
                                                            {TrialResult::fail, Core::mark("fail")},
                                                            {TrialResult::measured, Core::mark("measured")}}};
};

} // namespace caprail
