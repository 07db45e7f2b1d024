// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <assessment/assessment.h>
#include <ledger/remarks.h>
#include <shop/record_figures.h>
#include <base/say.h>

namespace caprail {

/// How far a record has come, by its gates.
enum class JobState { unknown, locked, trialFitOpen, closingOpen, signedOff };
template <> struct WordsOf<JobState> {
    static constexpr std::array<Word<JobState>, 5> list{{{JobState::unknown, Core::mark("not read yet")},
                                                         {JobState::locked, Core::mark("measuring")},
                                                         {JobState::trialFitOpen, Core::mark("trial fit open")},
                                                         {JobState::closingOpen, Core::mark("closing open")},
                                                         {JobState::signedOff, Core::mark("signed off")}}};
};

/// What came of the last verify round of the present build.
enum class RoundResult { none, begun, held, moved, fallen };
template <> struct WordsOf<RoundResult> {
    static constexpr std::array<Word<RoundResult>, 5> list{{{RoundResult::none, Core::mark("none")},
                                                            {RoundResult::begun, Core::mark("begun")},
                                                            {RoundResult::held, Core::mark("all held")},
                                                            {RoundResult::moved, Core::mark("moved")},
                                                            {RoundResult::fallen, Core::mark("no longer counts")}}};
};

/// What a list says of a record in one line. The first group is known from a glance at the file, the rest once the
/// whole ledger was read and assessed.
struct RecordSummary {
    std::string customer, engine, serial;
    UtcTime lastEntry;
    std::string who; ///< made the last entry
    std::int64_t entries = 0;

    JobState state = JobState::unknown;
    std::int64_t build = 1;
    RoundResult roundResult = RoundResult::none;
    std::int64_t round = 0;             ///< number of the last round; 0: none
    std::int64_t pulled = 0, moved = 0; ///< fasteners in it
    std::int64_t out = 0, stale = 0;    ///< checks out of their band or failed; stale checks
    std::string templateName;           ///< it was begun from; empty: none is noted
    std::string layout;                 ///< "5 mains of 2, 8 rods, 4 throws"
    std::string people;                 ///< who made entries, one a line
    std::optional<Date> due;            ///< the earliest calibration of its instruments that falls due
    friend bool operator==(const RecordSummary&, const RecordSummary&) = default;
};

/// What a record holds for its shop: the line, the words that a search finds it by, and the figures to compare.
struct RecordDigest {
    RecordSummary summary;
    std::string words;
    RecordFigures figures;
};

/// A pure function of the ledger: no clock, no file.
RecordDigest digest(const Ledger& ledger);

} // namespace caprail
