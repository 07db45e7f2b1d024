// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <assessment/assessment.h>
#include <base/say.h>
#include <shop/record_figures.h>
#include <tuple>

namespace caprail {

/// How far a record has come, by its gates.
enum class JobState { unknown, locked, trialFitOpen, closingOpen, signedOff };
template <> struct WordsOf<JobState> {
    static constexpr std::array<Word<JobState>, 5> list{{{JobState::unknown, Core::mark("not read yet")},
                                                         {JobState::locked, Core::mark("measuring")},
                                                         {JobState::trialFitOpen, Core::mark("trial fit open")},
                                                         {JobState::closingOpen, Core::mark("ready to close")},
                                                         {JobState::signedOff, Core::mark("signed off")}}};
};

/// What came of the last verify round of the present build.
enum class RoundResult { none, begun, held, moved, voided };
template <> struct WordsOf<RoundResult> {
    static constexpr std::array<Word<RoundResult>, 5> list{{{RoundResult::none, Core::mark("none")},
                                                            {RoundResult::begun, Core::mark("begun")},
                                                            {RoundResult::held, Core::mark("all held")},
                                                            {RoundResult::moved, Core::mark("moved")},
                                                            {RoundResult::voided, Core::mark("no longer counts")}}};
};

struct ShopRow;

/// How a list sees its rows: what the clock says, and how a moment is written (in local time on a screen).
struct Seeing {
    UtcTime now;
    std::string (*moment)(UtcTime);
};
/// How a value of a list stands out; where it is shown, each has its colour.
enum class Tone { usual, quiet, accent, good, close, out, stale };

/// How a field of the summary is listed. What is left out follows from the field's type: a text is itself, a number is
/// said where it is not zero, a day is ISO 8601; numbers and days sort by value, texts as texts.
struct Listed {
    const char* title = nullptr; ///< marked for translation; null: the field has no column
    int width = 12;              ///< of the column, in characters
    std::string (*text)(const ShopRow&, const Seeing&) = nullptr;
    std::int64_t (*order)(const ShopRow&) = nullptr;
    Tone (*tone)(const ShopRow&, const Seeing&) = nullptr;
    bool isInLine = false; ///< in the one line that the command line prints of a record, in words alone
    std::string (*line)(const ShopRow&, const Seeing&) = nullptr;
};
/// The sayings of columns that say more than one field, or with a sign (list_columns.cpp).
namespace listed {
std::string engine(const ShopRow&, const Seeing&), engineLine(const ShopRow&, const Seeing&);
std::string state(const ShopRow&, const Seeing&), stateLine(const ShopRow&, const Seeing&);
std::string round(const ShopRow&, const Seeing&), roundLine(const ShopRow&, const Seeing&);
std::string out(const ShopRow&, const Seeing&), outLine(const ShopRow&, const Seeing&);
std::string stale(const ShopRow&, const Seeing&), staleLine(const ShopRow&, const Seeing&);
std::string lastEntry(const ShopRow&, const Seeing&), lastEntryLine(const ShopRow&, const Seeing&);
std::string due(const ShopRow&, const Seeing&);
std::int64_t stateOrder(const ShopRow&), roundOrder(const ShopRow&), dueOrder(const ShopRow&);
Tone stateTone(const ShopRow&, const Seeing&), roundTone(const ShopRow&, const Seeing&);
Tone outTone(const ShopRow&, const Seeing&), staleTone(const ShopRow&, const Seeing&);
Tone lastEntryTone(const ShopRow&, const Seeing&), dueTone(const ShopRow&, const Seeing&);
} // namespace listed

/// One field of the summary: its name in the index and in JSON, the member, and how it is listed.
template <class Struct, class Member> struct SummaryField {
    std::string_view name;
    Member Struct::*member;
    Listed listed{};
    bool isInJson = true;
};
template <class Struct, class Member>
constexpr SummaryField<Struct, Member> summaryField(std::string_view name, Member Struct::*member, Listed listed = {},
                                                    bool isInJson = true) {
    return {name, member, listed, isInJson};
}

/// What a list says of a record in one line. The first group is known from one row of the file, the rest once the
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

    /// Every field, once. The index's table, what is written into it and read from it, the JSON of the command line,
    /// its line and the columns of the list, in this order, are made from it.
    static constexpr auto fields() {
        using S = RecordSummary;
        return std::make_tuple(
            summaryField("customer", &S::customer, {.title = Core::mark("Customer"), .width = 19, .isInLine = true}),
            summaryField("engine", &S::engine,
                         {.title = Core::mark("Engine"),
                          .width = 28,
                          .text = listed::engine,
                          .isInLine = true,
                          .line = listed::engineLine}),
            summaryField("serial", &S::serial), summaryField("build", &S::build),
            summaryField("state", &S::state,
                         {.title = Core::mark("State"),
                          .width = 19,
                          .text = listed::state,
                          .order = listed::stateOrder,
                          .tone = listed::stateTone,
                          .isInLine = true,
                          .line = listed::stateLine}),
            summaryField("round", &S::round,
                         {.title = Core::mark("Verify round"),
                          .width = 24,
                          .text = listed::round,
                          .order = listed::roundOrder,
                          .tone = listed::roundTone,
                          .isInLine = true,
                          .line = listed::roundLine}),
            summaryField("round_result", &S::roundResult), summaryField("pulled", &S::pulled, {}, false),
            summaryField("moved", &S::moved),
            summaryField("out", &S::out,
                         {.title = Core::mark("Out"),
                          .width = 7,
                          .text = listed::out,
                          .tone = listed::outTone,
                          .isInLine = true,
                          .line = listed::outLine}),
            summaryField("stale", &S::stale,
                         {.title = Core::mark("Stale"),
                          .width = 8,
                          .text = listed::stale,
                          .tone = listed::staleTone,
                          .isInLine = true,
                          .line = listed::staleLine}),
            summaryField("last_entry", &S::lastEntry,
                         {.title = Core::mark("Last entry"),
                          .width = 27,
                          .text = listed::lastEntry,
                          .tone = listed::lastEntryTone,
                          .isInLine = true,
                          .line = listed::lastEntryLine}),
            summaryField("entries", &S::entries),
            summaryField("who", &S::who, {.title = Core::mark("Who"), .width = 18, .isInLine = true}),
            summaryField("calibration_due", &S::due,
                         {.title = Core::mark("Calibration due"),
                          .width = 23,
                          .text = listed::due,
                          .order = listed::dueOrder,
                          .tone = listed::dueTone}),
            summaryField("template", &S::templateName), summaryField("layout", &S::layout),
            summaryField("people", &S::people, {}, false));
    }
    friend bool operator==(const RecordSummary&, const RecordSummary&) = default;
};

/// A member that `fields()` forgot would be lost on the way through the index: with one more, this does not compile.
inline void everyMember(const RecordSummary& summary) {
    [[maybe_unused]] const auto& [customer, engine, serial, lastEntry, who, entries, state, build, roundResult, round,
                                  pulled, moved, out, stale, templateName, layout, people, due] = summary;
}
static_assert(std::tuple_size_v<decltype(RecordSummary::fields())> == 18, "each member is a field");

/// Calls `visit(field)` for every field of the summary, in order.
template <class Visit> constexpr void eachSummaryField(Visit visit) {
    std::apply([&](const auto&... column) { (visit(column), ...); }, RecordSummary::fields());
}

/// What a record holds for its shop: the line, the words that a search finds it by, and the figures to compare.
struct RecordDigest {
    RecordSummary summary;
    std::string words;
    RecordFigures figures;
};

/// A pure function of the ledger: no clock, no file.
RecordDigest digest(const Ledger& ledger);

} // namespace caprail
