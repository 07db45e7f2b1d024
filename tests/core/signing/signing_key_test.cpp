// SPDX-License-Identifier: GPL-3.0-or-later
/// Keys as files, behind a passphrase, with days of their own.
#include <gmock/gmock.h>
#include <signing/signing_key.h>

using namespace caprail;
using testing::HasSubstr;

namespace {

constexpr std::uint32_t fewRounds = 1'000; // the strength is not what is tried here
const std::array<std::uint8_t, 16> salt{1, 2, 3};
const std::array<std::uint8_t, 12> nonce{4, 5, 6};

SecretKey secretOf(std::uint8_t first) {
    return SecretKey({first, 7, 7});
}

SigningKey plainKey() {
    auto key = makeKey("Kestrel Lane", *parseDate("2026-01-01"), *parseDate("2027-12-31"), secretOf(1));
    EXPECT_TRUE(key);
    return *key;
}

std::string replaced(std::string text, const std::string& what, const std::string& with) {
    const auto at = text.find(what);
    EXPECT_NE(at, std::string::npos) << what;
    return text.replace(at, what.size(), with);
}

} // namespace

TEST(SigningKey, is_read_back_from_its_own_text) {
    const SigningKey key = plainKey();
    const auto read = keyFromText(keyText(key));
    ASSERT_TRUE(read) << read.error().sentence;
    EXPECT_EQ(read->note, key.note);
    EXPECT_FALSE(read->isProtected());
    EXPECT_EQ(unlock(*read, "")->bytes(), secretOf(1).bytes());
}

TEST(SigningKey, behind_a_passphrase_opens_with_it_alone) {
    const auto wrapped = protect(plainKey(), "three blue pistons", salt, nonce, fewRounds);
    ASSERT_TRUE(wrapped);
    const std::string text = keyText(*wrapped);
    EXPECT_THAT(text, testing::Not(HasSubstr("secret key")));
    const auto read = keyFromText(text);
    ASSERT_TRUE(read) << read.error().sentence;
    EXPECT_TRUE(read->isProtected());
    EXPECT_EQ(unlock(*read, "three blue pistons")->bytes(), secretOf(1).bytes());
    for (const char* wrong : {"", "three blue piston", "Three blue pistons", "three blue pistons "}) {
        const auto opened = unlock(*read, wrong);
        ASSERT_FALSE(opened) << wrong;
        EXPECT_THAT(opened.error().sentence, HasSubstr("does not open the key “Kestrel Lane”"));
    }
}

TEST(SigningKey, behind_a_passphrase_cannot_be_given_another_name_or_other_days) {
    const std::string text = keyText(*protect(plainKey(), "three blue pistons", salt, nonce, fewRounds));
    const SigningKey other = *makeKey("x", {}, {}, secretOf(2));
    for (const std::string& altered :
         {replaced(text, "Kestrel Lane", "Kestrel Line"), replaced(text, "2027-12-31", "2099-12-31"),
          replaced(text, "valid from: 2026-01-01\n", ""), replaced(text, "rounds: 1000", "rounds: 1001")}) {
        const auto read = keyFromText(altered);
        ASSERT_TRUE(read) << altered;
        EXPECT_FALSE(unlock(*read, "three blue pistons")) << altered;
    }
}

TEST(SigningKey, text_that_was_changed_is_no_key) {
    const std::string text = keyText(plainKey());
    for (const std::string& bad :
         {std::string(), std::string("Caprail signing key 2\n"), replaced(text, "secret key: 01", "secret key: 02"),
          replaced(text, "name: Kestrel Lane", "name: "), replaced(text, "2026-01-01", "2026-13-01"),
          replaced(text, "2027-12-31", "2025-12-31"), text + "more: of it\n", text + text,
          replaced(text, "secret key: 0107", "secret key: 01"), replaced(text, "public key: ", "public key: 0")}) {
        const auto read = keyFromText(bad);
        ASSERT_FALSE(read) << bad;
        EXPECT_THAT(read.error().sentence, HasSubstr("not the text of a signing key"));
    }
    const std::string wrapped = keyText(*protect(plainKey(), "pistons", salt, nonce, fewRounds));
    EXPECT_FALSE(keyFromText(replaced(wrapped, "rounds: 1000", "rounds: 4000000000"))) << "it would never end";
    EXPECT_FALSE(keyFromText(replaced(wrapped, "rounds: 1000", "rounds: 1")));
}

TEST(SigningKey, every_cut_off_text_is_no_key) {
    const std::string text = keyText(plainKey());
    for (std::size_t length = 0; length + 1 < text.size(); ++length) {
        EXPECT_FALSE(keyFromText(std::string_view(text).substr(0, length))) << length;
    }
}

TEST(SigningKey, has_a_name_on_one_line_and_days_in_order) {
    for (const char* name : {"", "   ", "two\nlines", "hidden\u202etext"}) {
        EXPECT_THAT(makeKey(name, {}, {}, secretOf(1)).error().sentence, HasSubstr("cannot be the name of a key"));
    }
    EXPECT_FALSE(makeKey(std::string(61, 'x'), {}, {}, secretOf(1)));
    EXPECT_TRUE(makeKey(std::string(60, 'x'), {}, {}, secretOf(1)));
    EXPECT_THAT(makeKey("x", *parseDate("2026-02-01"), *parseDate("2026-01-31"), secretOf(1)).error().sentence,
                HasSubstr("lies before its first"));
    EXPECT_TRUE(makeKey("x", *parseDate("2026-02-01"), *parseDate("2026-02-01"), secretOf(1)));
}

TEST(SigningKey, is_used_from_its_first_day_to_its_last) {
    const KeyNote note = plainKey().note;
    EXPECT_THAT(mayBeUsedOn(note, *parseDate("2025-12-31")).error().sentence, HasSubstr("not yet on 2025-12-31"));
    EXPECT_TRUE(mayBeUsedOn(note, *parseDate("2026-01-01")));
    EXPECT_TRUE(mayBeUsedOn(note, *parseDate("2027-12-31")));
    EXPECT_THAT(mayBeUsedOn(note, *parseDate("2028-01-01")).error().sentence,
                HasSubstr("expired: its last day was 2027-12-31"));
    EXPECT_TRUE(mayBeUsedOn(KeyNote{"x", {}, {}, {}}, *parseDate("1970-01-01")));
}

TEST(SigningKey, has_a_passphrase_that_is_not_empty_and_only_once) {
    EXPECT_THAT(protect(plainKey(), "", salt, nonce, fewRounds).error().sentence, HasSubstr("is empty"));
    const auto wrapped = protect(plainKey(), "pistons", salt, nonce, fewRounds);
    EXPECT_THAT(protect(*wrapped, "pistons", salt, nonce, fewRounds).error().sentence,
                HasSubstr("has a passphrase already"));
}

TEST(SigningKey, fingerprint_is_the_beginning_of_the_hash_of_the_key) {
    // sha256sum of 32 zero bytes begins 66687aadf862bd776c8fc18b8e9f8e20.
    EXPECT_EQ(fingerprint(PublicKey{}), "6668-7aad-f862-bd77-6c8f-c18b-8e9f-8e20");
}
