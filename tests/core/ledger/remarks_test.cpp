// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <ledger/entry_texts.h>
#include <ledger/history_line.h>
#include <ledger/remarks.h>

using namespace caprail;
using testing::HasSubstr;

namespace {

constexpr UtcTime morning{1'777'887'000'000};
constexpr std::int64_t hour = 3'600'000;

Ledger at(std::initializer_list<std::int64_t> hours) {
    Ledger ledger;
    for (const std::int64_t h : hours) {
        ledger.append({morning.milliseconds + h * hour}, "Ada", NoteAdded{"", "x"});
    }
    return ledger;
}

std::vector<std::int64_t> entriesOf(const std::vector<LedgerRemark>& remarks) {
    std::vector<std::int64_t> entries;
    for (const LedgerRemark& remark : remarks) {
        entries.push_back(remark.entry);
    }
    return entries;
}

} // namespace

TEST(Clock, names_each_entry_that_is_older_than_the_one_before) {
    const auto remarks = clockRemarks(at({0, 1, 0, 0, 2, -9000, 3}), {});
    EXPECT_THAT(entriesOf(remarks), testing::ElementsAre(3, 6));
    EXPECT_THAT(remarks.front().sentence, HasSubstr("Entry 3 (2026-05-04T09:30:00.000Z) is older than entry 2"));
    EXPECT_THAT(remarks.front().sentence, HasSubstr("look at the clock"));
}

TEST(Clock, names_the_first_of_the_entries_that_lie_in_the_future) {
    const Ledger ledger = at({0, 9000, 9001, 0, 0});
    EXPECT_THAT(entriesOf(clockRemarks(ledger, UtcTime{morning.milliseconds + hour})), testing::ElementsAre(2, 4));
    EXPECT_THAT(entriesOf(clockRemarks(ledger, {})), testing::ElementsAre(4)) << "without a clock there is no future";
    EXPECT_TRUE(clockRemarks(at({0, 0, 1}), UtcTime{morning.milliseconds + hour}).empty());
}

TEST(Salvage, is_told_with_its_losses) {
    Ledger ledger = at({0});
    Salvaged salvaged{"smith.caprail", 4096, std::string(64, 'a'), "1111-2222-3333-4444-5555", {{"4"}}, {{"1", "7-9"}}};
    ledger.append(morning, "Caprail", salvaged);
    const auto remarks = salvageRemarks(ledger);
    ASSERT_EQ(remarks.size(), 1U);
    for (const char* words : {"Entry 2", "2026-05-04", "smith.caprail", "4096", "aaaaaaaaaaaaaaaa", "1111-2222",
                              "fit: 4.", "Lost: 1, 7-9."}) {
        EXPECT_THAT(remarks.front().sentence, HasSubstr(words));
    }
    EXPECT_THAT(historyLine(salvaged, {}), HasSubstr("Salvaged from smith.caprail"));
}

TEST(Texts, of_names_stand_on_one_line_and_hide_nothing) {
    EXPECT_TRUE(checkTexts("Ada Torq", EngineDescribed{"Kestrel Lane", "Orrin Vale", "V8", "KL-1", "a\nlong note"}));
    EXPECT_THAT(checkTexts("Ada\nTorq", NoteAdded{"", "x"}).error().sentence, HasSubstr("“person”"));
    EXPECT_THAT(checkTexts("Ada", EngineDescribed{"", "Orrin\u202eVale", "", "", ""}).error().sentence,
                testing::AllOf(HasSubstr("“customer”"), HasSubstr("U+202E")));
    EXPECT_THAT(checkTexts("Ada", NoteAdded{"", "a\x1b[2J"}).error().sentence, HasSubstr("U+001B"));
    EXPECT_TRUE(checkTexts("Ada", NoteAdded{"", "first\nsecond"}));
    EXPECT_FALSE(checkTexts("Ada", NoteAdded{"3R\n", "x"})) << "a place is a name";
}

TEST(HistoryLine, is_one_line_whatever_the_record_holds) {
    const std::string line = historyLine(NoteAdded{"", "a\n42  2026-05-04  Mira  Signed off\x1b[8m\u202e"}, {});
    EXPECT_EQ(line.find_first_of("\n\x1b"), std::string::npos) << line;
    EXPECT_THAT(line, HasSubstr("a↵42"));
}
