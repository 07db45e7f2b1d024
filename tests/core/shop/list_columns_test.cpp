// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>
#include <shop/list_columns.h>

namespace caprail {
namespace {

using testing::ElementsAre;

constexpr Seeing noon{{1'777'890'000'000}, [](UtcTime time) { return format(time).substr(0, 10); }};

ShopRow row() {
    ShopRow r;
    r.file.path = "2026/kl.caprail";
    r.reading = FileReading::assessed;
    r.summary.customer = "Orrin Vale";
    r.summary.engine = "6.2 V8";
    r.summary.serial = "KL-2207";
    r.summary.state = JobState::closingOpen;
    r.summary.entries = 12;
    r.summary.lastEntry = {1'777'800'000'000};
    r.summary.who = "Mira";
    return r;
}

const ListColumn& column(std::string_view field) {
    return listColumns()[static_cast<std::size_t>(listColumn(field))];
}
std::string cell(const ShopRow& r, std::string_view field) {
    return column(field).text(r, noon);
}

TEST(ListColumns, stand_in_the_order_of_the_fields_with_the_file_last) {
    std::vector<std::string> titles;
    for (const ListColumn& column : listColumns()) {
        titles.emplace_back(column.title);
    }
    EXPECT_THAT(titles, ElementsAre("Customer", "Engine", "State", "Verify round", "Out", "Stale", "Last entry", "Who",
                                    "Calibration due", "File"));
    static_assert(listColumn("customer") == 0 && listColumn("last_entry") == 6 && listColumn("file") == 9);
    static_assert(listColumn("serial") == -1, "a field without a column of its own");
}

TEST(ListColumns, say_a_value_with_a_sign_a_dash_for_none_and_nothing_while_it_is_not_known) {
    ShopRow r = row();
    EXPECT_EQ(cell(r, "out"), "–");
    r.summary.out = 2;
    EXPECT_EQ(cell(r, "out"), "✕ 2");
    r.summary.build = 2;
    EXPECT_EQ(cell(r, "engine"), "6.2 V8, KL-2207 (build 2)");
    r.summary.round = 3;
    r.summary.roundResult = RoundResult::moved;
    r.summary.moved = 1;
    EXPECT_EQ(cell(r, "round"), "✕ 3: 1 moved");
    r.summary.state = JobState::unknown;
    r.summary.stale = 0;
    EXPECT_EQ(cell(r, "stale"), "");
    EXPECT_EQ(cell(r, "state"), "… not read yet");
}

TEST(ListColumns, tell_a_clock_that_was_wrong_and_a_calibration_that_is_overdue) {
    ShopRow r = row();
    r.summary.lastEntry = {noon.now.milliseconds + 3'600'000};
    EXPECT_EQ(cell(r, "last_entry"), "2026-05-04 (future)");
    EXPECT_EQ(column("last_entry").tone(r, noon), Tone::close);
    r.summary.due = *parseDate("2026-05-03");
    EXPECT_EQ(cell(r, "calibration_due"), "2026-05-03 overdue");
    EXPECT_EQ(column("calibration_due").tone(r, noon), Tone::out);
    r.summary.state = JobState::signedOff;
    EXPECT_EQ(cell(r, "calibration_due"), "2026-05-03") << "nobody works on it any more";
}

TEST(ListColumns, sort_days_that_are_not_known_behind_all_others_and_files_that_are_no_records_last) {
    ShopRow known = row();
    known.summary.due = *parseDate("2999-01-01");
    const ListColumn& due = column("calibration_due");
    EXPECT_TRUE(due.isNumber);
    EXPECT_LT(due.order(known), due.order(row()));
    ShopRow letter = row();
    letter.reading = FileReading::foreign;
    const ListColumn& state = column("state");
    EXPECT_GT(state.order(letter), state.order(row()));
    EXPECT_FALSE(column("who").isNumber);
}

TEST(ListLine, says_in_words_alone_what_the_list_says) {
    ShopRow r = row();
    EXPECT_EQ(listLine(r, noon), "2026/kl.caprail: Orrin Vale, 6.2 V8 KL-2207, ready to close, 2026-05-03, Mira");
    r.summary.round = 2;
    r.summary.roundResult = RoundResult::held;
    r.summary.out = 1;
    r.summary.stale = 3;
    EXPECT_EQ(listLine(r, noon), "2026/kl.caprail: Orrin Vale, 6.2 V8 KL-2207, ready to close, round 2 all held, 1 out, "
                                 "3 stale, 2026-05-03, Mira");
    r.reading = FileReading::foreign;
    r.sentence = "It is a letter.";
    EXPECT_EQ(listLine(r, noon), "2026/kl.caprail: no record. It is a letter.");
    EXPECT_EQ(listHead(), "file: customer, engine, state, round, out, stale, last entry, who");
    EXPECT_EQ(listSentence(r, noon), "✕ 2026/kl.caprail — no record: It is a letter.");
}

TEST(ListSentence, names_each_column_that_says_something) {
    EXPECT_EQ(listSentence(row(), noon), "Customer: Orrin Vale; Engine: 6.2 V8, KL-2207; State: ◕ ready to close; "
                                         "Last entry: 2026-05-03; Who: Mira; File: 2026/kl.caprail");
}

} // namespace
} // namespace caprail
