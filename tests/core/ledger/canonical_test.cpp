// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>
#include <ledger/entry_json.h>
#include <ledger/ledger.h>

using namespace caprail;

namespace {

/// The person as the canonical text writes it, with its quotes.
std::string written(const std::string& person) {
    Ledger ledger;
    const std::string text = canonicalText(ledger.append({1'700'000'000'000}, person, PersonAdded{"Ada", ""}));
    const auto begin = text.find("\"person\":") + 9;
    return text.substr(begin, text.find(",\"role\"") - begin);
}

} // namespace

TEST(Canonical, writes_every_escape_of_rfc_8785_and_no_other) {
    // RFC 8785, section 3.2.2.2 (from memory): two-letter escapes where there is one, else \u00xx in small letters.
    const std::pair<const char*, const char*> escapes[] = {{"\"", "\\\""},  {"\\", "\\\\"},      {"\b", "\\b"},
                                                           {"\f", "\\f"},   {"\n", "\\n"},       {"\r", "\\r"},
                                                           {"\t", "\\t"},   {"\x01", "\\u0001"}, {"\x0b", "\\u000b"},
                                                           {"\x1f", "\\u001f"}};
    for (const auto& [text, escape] : escapes) {
        EXPECT_EQ(written(text), "\"" + std::string(escape) + "\"");
        EXPECT_EQ(written("a" + std::string(text) + "b"), "\"a" + std::string(escape) + "b\"");
        EXPECT_EQ(written(std::string(text) + text), "\"" + std::string(escape) + escape + "\"");
    }
    for (const std::string plain : {" ", "/", "'", "<&>", "\x7f", "é", "′", "𝟓", "!", "#", "[", "]"}) {
        EXPECT_EQ(written(plain), "\"" + plain + "\"");
    }
}

TEST(Canonical, escapes_every_control_character_so_that_it_is_read_back) {
    for (char c = 1; c < 0x20; ++c) {
        Ledger ledger;
        const Entry& entry = ledger.append({1'700'000'000'000}, "Ada", NoteAdded{"", std::string("a") + c + "b"});
        const std::string text = canonicalText(entry);
        EXPECT_EQ(text.find(c), std::string::npos) << static_cast<int>(c);
        const auto draft = fromJson(toJsonLine(entry));
        ASSERT_TRUE(draft) << draft.error().sentence;
        EXPECT_EQ(draft->body.get<NoteAdded>().text, std::string("a") + c + "b");
    }
}

TEST(Canonical, is_to_the_letter_what_the_developers_page_says) {
    Ledger ledger;
    const Entry& entry = ledger.append({1'700'000'000'000}, "Ada", BandSet{"residual", {thou(-1), "-1 thou"}, {thou(1), ""}, {}, "x"});
    EXPECT_EQ(canonicalText(entry),
              "{\"band\":\"residual\",\"hi_nm\":25400,\"hi_typed\":\"\",\"kind\":\"band_set\",\"lo_nm\":-25400,"
              "\"lo_typed\":\"-1 thou\",\"person\":\"Ada\",\"sequence\":1,\"source\":\"x\","
              "\"time\":\"2023-11-14T22:13:20.000Z\"}");
}
