// SPDX-License-Identifier: GPL-3.0-or-later
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <ledger/entry_json.h>
#include <ledger/strict_json.h>
#include <random>

using namespace caprail;
using testing::HasSubstr;

namespace {

std::string refusalOf(std::string_view json) {
    const auto good = checkJson(json);
    return good ? std::string("taken") : good.error().sentence;
}

} // namespace

TEST(StrictJson, takes_what_rfc_8259_allows) {
    for (const char* json : {R"({})", R"([])", R"( {"a":[1,-0,0.5,1e9,-1.5E-3,true,false,null,"x"],"b":{"a":{}}} )",
                             R"("\ud83d\udd27 \u00e9 \\ \/")", "{\"\xc3\xa9\":\"\xf0\x9f\x94\xa7\"}", "\xef\xbb\xbf{}",
                             R"(0)", R"([{"a":1},{"a":1}])"}) {
        EXPECT_TRUE(checkJson(json)) << json << ": " << refusalOf(json);
    }
}

TEST(StrictJson, refuses_a_member_given_twice_however_it_is_spelled) {
    for (const char* json : {R"({"a":1,"a":1})", R"({"a":1,"b":2,"\u0061":3})", R"([{"x":{"a":[],"c":1,"a":[]}}])",
                             R"({"":1,"":2})", R"({"\ud83d\udd27":1,"🔧":2})"}) {
        EXPECT_THAT(refusalOf(json), HasSubstr("given twice")) << json;
    }
}

TEST(StrictJson, refuses_half_a_character_and_what_is_none) {
    for (const char* json : {R"("\ud800")", R"("\udc00")", R"("\ud800\ud800")", R"("\udfff\ud800")", R"({"\ud83d":1})",
                             R"("\ud83dx")", R"("\ud83d\n")"}) {
        EXPECT_THAT(refusalOf(json), testing::AnyOf(HasSubstr("half a character"), HasSubstr("does not belong")))
            << json;
    }
    EXPECT_THAT(refusalOf(R"("\ufdd0")"), HasSubstr("not a character"));
    EXPECT_THAT(refusalOf("\"\xef\xbf\xbf\""), HasSubstr("not a character"));
    EXPECT_THAT(refusalOf("\"\xed\xa0\x80\""), HasSubstr("UTF-8"));
    EXPECT_THAT(refusalOf("\"\xc0\x80\""), HasSubstr("UTF-8"));
}

TEST(StrictJson, refuses_what_is_no_json) {
    for (const char* json : {"",           " ",      "{",    "[",    "]",     "{]",    "[}",      "{\"a\"}", "{\"a\":}",
                             "{\"a\":1,}", "[1,]",   "[,]",  "{,}",  "[1 2]", "{a:1}", "{'a':1}", "01",      "-",
                             "1.",         ".5",     "1e",   "+1",   "nul",   "truee", "\"",      "\"\\",    "\"\\x\"",
                             "\"\\u12\"",  "\"\n\"", "{}{}", "{} x", "[1]]",  "NaN",   "// x\n{}"}) {
        EXPECT_FALSE(checkJson(json)) << json;
    }
    EXPECT_FALSE(checkJson(std::string(100'000, '['))) << "nested without end";
    EXPECT_FALSE(checkJson(std::string("\"a\0b\"", 5)));
}

TEST(StrictJson, takes_time_in_proportion_to_the_text) {
    std::string json = "{";
    for (int i = 0; i < 200'000; ++i) {
        json += (i == 0 ? "\"" : ",\"") + std::to_string(i) + "\":0";
    }
    EXPECT_TRUE(checkJson(json + "}"));
    EXPECT_FALSE(checkJson(json + ",\"7\":1}"));
}

/// Another reader as a witness: what Qt reads and writes again is taken; what is taken, Qt reads.
TEST(StrictJson, agrees_with_another_reader_on_what_json_is) {
    std::mt19937 random(5);
    const std::string seed =
        QJsonDocument(QJsonObject{{"kind", "gap_reading"}, {"a", QJsonArray{1, -2.5, true, QJsonValue(), "é\n\"\\🔧"}}})
            .toJson()
            .toStdString();
    ASSERT_TRUE(checkJson(seed)) << refusalOf(seed);
    constexpr std::string_view letters = "{}[]\",:\\u0dD8e1-+.tn \n\xc3\xa9\xf0";
    int taken = 0;
    for (int round = 0; round < 20'000; ++round) {
        std::string json = seed;
        for (auto changes = 1 + random() % 3; changes > 0; --changes) {
            const std::size_t at = random() % json.size();
            random() % 2 == 0 ? json.replace(at, 1, 1, letters[random() % letters.size()])
                              : json.erase(at, random() % 2);
        }
        const auto document = QJsonDocument::fromJson(QByteArray::fromStdString(json));
        if (checkJson(json)) {
            ++taken;
            EXPECT_FALSE(document.isNull()) << json;
        }
    }
    EXPECT_GT(taken, 1'000);
}

TEST(EntryJson, refuses_what_two_readers_would_read_differently) {
    const auto refusal = [](const char* json) {
        const auto draft = fromJson(json);
        return draft ? std::string("taken") : draft.error().sentence;
    };
    EXPECT_THAT(refusal(R"({"kind":"note_added","text":"\ud800"})"), HasSubstr("half a character"));
    EXPECT_THAT(refusal(R"({"kind":"note_added","text":"held","text":"moved"})"), HasSubstr("“text” is given twice"));
}

TEST(EntryJson, what_is_made_now_brings_no_number_time_or_seal) {
    const auto may = [](const char* json) {
        const auto draft = fromJson(json);
        EXPECT_TRUE(draft) << json;
        const auto good = mayBeMadeNow(*draft);
        return good ? std::string("may") : good.error().sentence;
    };
    EXPECT_EQ(may(R"({"kind":"note_added","text":"x","person":"Ada"})"), "may");
    EXPECT_THAT(may(R"({"kind":"note_added","text":"x","time":"2020-01-01T00:00:00Z"})"), HasSubstr("“time”"));
    EXPECT_THAT(may(R"({"kind":"note_added","text":"x","sequence":7})"), HasSubstr("“sequence”"));
    const std::string sealed = R"({"kind":"note_added","text":"x","seal":")" + std::string(64, '0') + "\"}";
    EXPECT_THAT(may(sealed.c_str()), HasSubstr("“seal”"));
}
