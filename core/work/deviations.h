// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// What was changed after something had been judged by it, as the customer reads it: what the facts hold, and what was
/// struck, of which they know nothing.
#include <assessment/assessment.h>

namespace caprail {

/// Of what sort a change is, in the order in which a line counts them.
enum class DeviationSort { limits, specification, accepted, moved, outcome, reading, part, fastener, instrument, insisted, outside };
template <> struct WordsOf<DeviationSort> {
    static constexpr std::array<Word<DeviationSort>, 11> list{{{DeviationSort::limits, Core::mark("limits or rules")},
                                                               {DeviationSort::specification, Core::mark("specification")},
                                                               {DeviationSort::accepted, Core::mark("accepted again")},
                                                               {DeviationSort::moved, Core::mark("“moved” struck")},
                                                               {DeviationSort::outcome, Core::mark("outcome struck")},
                                                               {DeviationSort::reading, Core::mark("reading struck")},
                                                               {DeviationSort::part, Core::mark("part or washer")},
                                                               {DeviationSort::fastener, Core::mark("fastener")},
                                                               {DeviationSort::instrument, Core::mark("instrument")},
                                                               {DeviationSort::insisted, Core::mark("insisted on")},
                                                               {DeviationSort::outside, Core::mark("from outside")}}};
};
DeviationSort sortOf(const DeviationKind&);

/// All changes of the present build in the order in which they were made: those of the facts, and outcomes and readings
/// that were struck. An entry is struck as part of the work where nothing was read between it and its strike and it is
/// itself no outcome: such a slip of a band or a rule is not listed. `facts` is `fold(ledger)`; `units` are those in which
/// a struck entry is quoted.
std::vector<Deviation> deviationsOf(const Ledger& ledger, const Facts& facts, const Units& units = {});

/// What a list says of it: with the title of a check in place of its code.
std::string sentenceOf(Deviation, const Assessment&, const Units& units = {});

/// "Changed after something had been judged by it: limits or rules: 1, part or washer: 2." or that nothing was.
std::string deviationsLine(const std::vector<Deviation>&);

} // namespace caprail
