// SPDX-License-Identifier: GPL-3.0-or-later
#include <QJsonDocument>
#include <QJsonObject>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <ledger/entry_json.h>
#include <ledger/expectations.h>
#include <ledger/history_line.h>
#include <ledger/ledger.h>
#include <set>

using namespace caprail;
using testing::HasSubstr;

namespace {

Ledger sample() {
    Ledger ledger;
    ledger.append({1'700'000'000'000}, "Ada \"Quick\" Torq\n", PersonAdded{"Ada", "assembler"});
    ledger.append({1'700'000'001'000}, "Ada", LayoutSet{});
    ledger.append({1'700'000'002'000}, "Ada",
                  GapReading{{3, Side::right}, 1, {thou(57.5), "22+23+12.5 thou"}, "FEELER-1"});
    ledger.append({1'700'000'003'000}, "Ada", StackBuilt{{3, Side::right}, {{"S001", "S014"}}});
    ledger.append({1'700'000'004'000}, "Ada", Struck{3, "wrong leaf"});
    return ledger;
}

} // namespace

TEST(CountTyped, is_refused_with_the_range_of_its_own_field) {
    EXPECT_EQ(expectedCount(LayoutSet::kind, "pickup_cap").smallest, 1);
    EXPECT_EQ(expectedCount(LayoutSet::kind, "pickup_cap").largest, 9);
    EXPECT_EQ(expectedCount(RulesSet::kind, "largest_stack").smallest, 0) << "0: no limit";
    EXPECT_EQ(expectedCount(FastenerGroupSet::kind, "count").largest, 1'000'000) << "what is not known is any count";
}

TEST(GapTyped, without_a_unit_is_thousandths_from_ten_on_and_asked_back_below) {
    const auto read = [](std::string_view text, const Units& units = {}) {
        return readLength(text, units, GapReading::kind, "gap", "the gap at cap 3 right");
    };
    for (const auto& [text, gap] : {std::pair("39", thou(39)), {"57.5", thou(57.5)}, {" 62 ", thou(62)}, {"10", thou(10)}}) {
        ASSERT_TRUE(read(text)) << text;
        EXPECT_EQ(read(text)->value, gap) << text;
        EXPECT_EQ(fitOfTyped(*read(text)), TypedFit::agrees) << text;
    }
    EXPECT_EQ(read("0.0575")->value, thou(57.5)) << "inches as ever";
    for (const char* text : {"1.5", "9", "575", "05", "57,5", "39 in"}) {
        EXPECT_FALSE(read(text)) << text;
    }
    Units metric;
    metric.length = LengthUnit::millimetre;
    EXPECT_FALSE(read("39", metric)) << "39 mm is no gap, and nobody said thousandths";
    EXPECT_FALSE(readLength("39", {}, JournalReading::kind, "diameter")) << "a journal may be inches";
}

TEST(Ledger, numbers_and_chains_its_entries) {
    const Ledger ledger = sample();
    Ledger again;
    for (const Entry& entry : ledger.entries()) {
        ASSERT_TRUE(again.appendSealed(entry));
    }
    EXPECT_EQ(again.seal(), ledger.seal());
    EXPECT_EQ(ledger.at(3).sequence, 3);
}

TEST(Ledger, holds_entries_that_are_small_whatever_the_largest_kind_may_hold) {
    // A record of 200 000 entries holds as many of these; what is seldom filled must not take room in each.
    EXPECT_LE(sizeof(Entry), 216U);
    EXPECT_LE(sizeof(GapReading), 112U);
    EXPECT_LE(sizeof(RoundOutcome), 96U);
}

TEST(Ledger, knows_which_entries_are_struck_and_by_which) {
    const Ledger ledger = sample();
    EXPECT_EQ(ledger.struckBy(3), 5);
    EXPECT_FALSE(ledger.isStruck(2));
}

TEST(Ledger, refuses_an_altered_a_missing_and_a_moved_entry) {
    const Ledger ledger = sample();
    Ledger altered;
    ASSERT_TRUE(altered.appendSealed(ledger.at(1)));
    Entry changed = ledger.at(2);
    changed.body.get<LayoutSet>().caps = 4;
    EXPECT_THAT(altered.appendSealed(changed).error().sentence, HasSubstr("seal of entry 2"));
    changed = ledger.at(2);
    changed.time.milliseconds += 1;
    EXPECT_FALSE(altered.appendSealed(changed));
    changed = ledger.at(2);
    changed.person = "Eve";
    EXPECT_FALSE(altered.appendSealed(changed));
    EXPECT_THAT(altered.appendSealed(ledger.at(3)).error().sentence, HasSubstr("stands where entry 2"));
    Ledger otherStart;
    otherStart.append({1}, "Eve", PersonAdded{"Eve", ""});
    EXPECT_FALSE(otherStart.appendSealed(ledger.at(2)));
}

TEST(Seal, chains_with_sha_256) {
    // FIPS 180-4 example "abc" (NIST cryptographic examples; from memory).
    EXPECT_EQ(sha256Hex("abc"), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    const Seal seal = sealOver({}, "x");
    EXPECT_EQ(*sealFromHex(toHex(seal)), seal);
    EXPECT_FALSE(sealFromHex("12"));
    EXPECT_FALSE(sealFromHex(std::string(64, 'G')));
    EXPECT_EQ(shortForm(Seal{}), "0000-0000-0000-0000-0000");
}

TEST(Canonical, is_json_with_sorted_members_and_nothing_to_spare) {
    // RFC 8785: members sorted, no white space. Qt's compact writer sorts too, so it is an independent witness.
    const Ledger ledger = sample();
    for (const Entry& entry : ledger.entries()) {
        const std::string text = canonicalText(entry);
        const auto document = QJsonDocument::fromJson(QByteArray::fromStdString(text));
        ASSERT_TRUE(document.isObject()) << text;
        EXPECT_EQ(document.toJson(QJsonDocument::Compact).toStdString(), text);
    }
}

TEST(Canonical, escapes_what_json_must_and_nothing_else) {
    const auto textOf = [](const std::string& note) {
        return canonicalText(Entry{7, {1'700'000'000'000}, "Ada", NoteAdded{"", note}, {}});
    };
    const auto expected = [](const std::string& note) {
        return R"({"kind":"note_added","person":"Ada","place":"","sequence":7,"text":")" + note +
               R"(","time":"2023-11-14T22:13:20.000Z"})";
    };
    EXPECT_EQ(textOf("57.5 thou, ±0.1 µm / 1"), expected("57.5 thou, ±0.1 µm / 1"));
    EXPECT_EQ(textOf("a\"b"), expected(R"(a\"b)"));
    EXPECT_EQ(textOf("a\\"), expected(R"(a\\)"));
    EXPECT_EQ(textOf("\b\f\n\r\t"), expected(R"(\b\f\n\r\t)"));
    EXPECT_EQ(textOf(std::string("\0\x01\x1f\x7f", 4)), expected("\\u0000\\u0001\\u001f\x7f"));
    // An optional column that is empty leaves no comma behind, first or last.
    EXPECT_EQ(canonicalText(Entry{1, {0}, "", RoundOutcome{}, {}}),
              R"({"fastener":"main-1L","instrument":"","kind":"round_outcome","outcome":"held","person":"","round":1,)"
              R"("sequence":1,"time":"1970-01-01T00:00:00.000Z"})");
}

TEST(Kinds, every_kind_survives_its_columns) {
    const auto kinds = allKinds();
    ASSERT_EQ(kinds.size(), Body::count);
    std::set<std::string_view> names;
    for (std::size_t i = 0; i < kinds.size(); ++i) {
        EXPECT_TRUE(names.insert(kinds[i].kind).second) << kinds[i].kind << " stands twice";
        std::set<std::string> columns{"sequence", "time", "person", "kind", "seal"};
        std::vector<Cell> cells;
        for (const Column& column : kinds[i].columns) {
            EXPECT_TRUE(columns.insert(column.name).second) << kinds[i].kind << "." << column.name << " stands twice";
            if (column.type == Column::Type::integer) {
                cells.emplace_back(std::int64_t{1});
            } else if (!column.words.empty()) {
                cells.emplace_back(std::string(column.words.back()));
            } else if (column.name == "position") {
                cells.emplace_back(std::string("3R"));
            } else if (column.name == "journal") {
                cells.emplace_back(std::string("main-2"));
            } else if (column.name == "fastener") {
                cells.emplace_back(std::string("main-2L-outer"));
            } else if (column.name == "calibrated" || column.name == "due" || column.name == "machined_on" ||
                       column.name == "date" || column.name.starts_with("valid_")) {
                cells.emplace_back(std::string("2026-02-28"));
            } else if (column.name == "taken") {
                cells.emplace_back(std::string("2026-02-28T14:05:06"));
            } else {
                cells.emplace_back(std::string("text"));
            }
        }
        const auto body = bodyFrom(i, cells);
        ASSERT_TRUE(body) << kinds[i].kind << ": " << body.error().sentence;
        EXPECT_EQ(body->index(), i);
        EXPECT_EQ(cellsOf(*body), cells) << kinds[i].kind;
    }
}

TEST(Kinds, refuse_wrong_cells_by_column) {
    const std::size_t gap = *kindIndex("gap_reading");
    const auto refusal = [&](const std::vector<Cell>& cells) {
        const auto body = bodyFrom(gap, cells);
        return body ? std::string("taken") : body.error().sentence;
    };
    using I = std::int64_t;
    EXPECT_THAT(refusal({std::string("3X"), I{1}, I{5}, std::string(), std::string(), Cell(), Cell(), Cell()}), HasSubstr("“position”"));
    EXPECT_THAT(refusal({std::string("3R"), std::string("x"), I{5}, std::string(), std::string(), Cell(), Cell(), Cell()}),
                HasSubstr("“pass”"));
    EXPECT_THAT(refusal({std::string("3R"), I{1}, Cell(), std::string(), std::string(), Cell(), Cell(), Cell()}),
                HasSubstr("“gap_nm” is missing"));
    EXPECT_THAT(refusal({std::string("3R"), I{1}, I{1} << 62, std::string(), std::string(), Cell(), Cell(), Cell()}), HasSubstr("too large"));
    EXPECT_THAT(refusal({std::string("3R")}), HasSubstr("8"));
    EXPECT_FALSE(kindIndex("gap"));
}

TEST(EntryJson, a_line_gives_back_the_entry_with_its_seal) {
    const Ledger ledger = sample();
    for (const Entry& entry : ledger.entries()) {
        const auto draft = fromJson(toJsonLine(entry));
        ASSERT_TRUE(draft) << draft.error().sentence;
        EXPECT_EQ(draft->sequence, entry.sequence);
        EXPECT_EQ(draft->time, entry.time);
        EXPECT_EQ(draft->person, entry.person);
        EXPECT_EQ(draft->seal, entry.seal);
        EXPECT_EQ(cellsOf(draft->body), cellsOf(entry.body));
    }
}

TEST(EntryJson, takes_a_line_typed_by_hand) {
    const auto draft =
        fromJson(R"({"kind":"gap_reading","person":"Ada","position":"3R","pass":1,"gap_typed":"57.5 thou"})");
    ASSERT_TRUE(draft) << draft.error().sentence;
    EXPECT_EQ(draft->body.get<GapReading>().gap.value, thou(57.5));
    EXPECT_FALSE(draft->seal);
}

TEST(EntryJson, refuses_with_the_member_that_is_wrong) {
    const auto refusal = [](const char* json) {
        const auto draft = fromJson(json);
        return draft ? std::string("taken") : draft.error().sentence;
    };
    EXPECT_THAT(refusal("nonsense"), HasSubstr("not JSON"));
    EXPECT_THAT(refusal("[]"), HasSubstr("braces"));
    EXPECT_THAT(refusal("{}"), HasSubstr("“kind”"));
    EXPECT_THAT(refusal(R"({"kind":"gap"})"), HasSubstr("“gap”"));
    EXPECT_THAT(refusal(R"({"kind":"note_added","text":"x","colour":"red"})"), HasSubstr("“colour”"));
    EXPECT_THAT(refusal(R"({"kind":"gap_reading","position":"3R","pass":1.5,"gap_nm":1})"), HasSubstr("“pass”"));
    EXPECT_THAT(refusal(R"({"kind":"gap_reading","position":"3R","pass":1,"gap_typed":"9"})"),
                HasSubstr("9 thousandths"));
    EXPECT_THAT(refusal(R"({"kind":"gap_reading","position":"3R","pass":1,"gap_typed":"0.575"})"),
                HasSubstr("expected within"));
    EXPECT_THAT(refusal(R"({"kind":"note_added","text":5})"), HasSubstr("“text”"));
    EXPECT_THAT(refusal(R"({"kind":"note_added","text":"x","time":"noon"})"), HasSubstr("noon"));
    EXPECT_THAT(refusal(R"({"kind":"note_added","text":"x","seal":"12"})"), HasSubstr("seal"));
}
