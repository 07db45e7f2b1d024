// SPDX-License-Identifier: GPL-3.0-or-later
/// A record signed, and what becomes of the signature when the record is altered, cut off or sealed anew.
#include "bench.h"

#include <assessment/review.h>
#include <assessment/signatures.h>
#include <base/hex.h>
#include <gmock/gmock.h>

using namespace caprail;
using testing::HasSubstr;

namespace {

constexpr Date today{20'000};

struct Signer {
    explicit Signer(std::uint8_t first, const std::string& name = "Kestrel Lane") : secret({first, 9, 9}) {
        note = makeKey(name, {}, {}, secret)->note;
    }
    [[nodiscard]] SealSigned over(const Ledger& ledger) const {
        const auto made = signLastSeal(ledger, note, secret, today);
        EXPECT_TRUE(made);
        return *made;
    }
    [[nodiscard]] std::string digits() const { return hexOf(note.publicKey.bytes); }
    SecretKey secret;
    KeyNote note;
};

const Signer kestrel(1);
const Signer other(2, "Somebody else");

/// The entries of a ledger with seals of their own, as whoever rewrites a file would make them; `change` may alter each.
template <class Change> Ledger sealedAnew(const Ledger& from, std::int64_t count, const Change& change) {
    Ledger ledger;
    for (const Entry& entry : from.entries()) {
        if (entry.sequence <= count) {
            Body body = entry.body;
            change(entry.sequence, body);
            ledger.append(entry.time, entry.person, std::move(body));
        }
    }
    return ledger;
}
constexpr auto asItIs = [](std::int64_t, Body&) {};

} // namespace

TEST(Signatures, one_over_the_last_seal_covers_the_whole_record) {
    Bench bench;
    bench.make(kestrel.over(bench.ledger));
    const auto signatures = signaturesOf(bench.ledger);
    ASSERT_EQ(signatures.size(), 1U);
    EXPECT_TRUE(signatures[0].holds()) << signatures[0].fault;
    EXPECT_TRUE(signatures[0].coversAll);
    EXPECT_EQ(signatures[0].signedEntry, bench.ledger.size() - 1);
    EXPECT_THAT(sentenceOf(signatures[0]), HasSubstr("Signed by Kestrel Lane (" + fingerprint(kestrel.note.publicKey)));
    EXPECT_TRUE(isSignedBy(bench.ledger, kestrel.digits()).isYes);
    EXPECT_TRUE(isSignedBy(bench.ledger, *readKeyDigits(fingerprint(kestrel.note.publicKey))).isYes);
    EXPECT_FALSE(reviewLedger(bench.ledger).first);
}

TEST(Signatures, of_another_key_is_no_answer_to_who_asks_for_this_one) {
    Bench bench;
    bench.make(other.over(bench.ledger));
    EXPECT_FALSE(isSignedBy(bench.ledger, kestrel.digits()).isYes);
    EXPECT_THAT(isSignedBy(bench.ledger, kestrel.digits()).sentence, HasSubstr("No entry is signed by that key"));
}

TEST(Signatures, what_is_added_later_is_not_signed_until_it_is_signed_again) {
    Bench bench;
    bench.make(kestrel.over(bench.ledger));
    const auto signedUpTo = bench.ledger.size() - 1;
    bench.make(NoteAdded{"", "added after the signature"});
    const SignedByAnswer no = isSignedBy(bench.ledger, kestrel.digits());
    EXPECT_FALSE(no.isYes);
    EXPECT_THAT(no.sentence, HasSubstr("up to entry " + std::to_string(signedUpTo) + "; what was added since"));
    bench.make(kestrel.over(bench.ledger));
    EXPECT_TRUE(isSignedBy(bench.ledger, kestrel.digits()).isYes);
}

TEST(Signatures, a_second_one_of_another_key_leaves_the_first_as_good_as_it_was) {
    Bench bench;
    bench.make(kestrel.over(bench.ledger));
    bench.make(other.over(bench.ledger));
    EXPECT_TRUE(isSignedBy(bench.ledger, kestrel.digits()).isYes);
    EXPECT_TRUE(isSignedBy(bench.ledger, other.digits()).isYes);
}

TEST(Signatures, an_altered_record_that_was_sealed_anew_is_not_signed) {
    Bench bench;
    bench.make(kestrel.over(bench.ledger));
    const Ledger forged = sealedAnew(bench.ledger, bench.ledger.size(), [](std::int64_t, Body& body) {
        if (auto* engine = body.as<EngineDescribed>()) {
            engine->serial = "KL-9999";
        }
    });
    const SignedByAnswer answer = isSignedBy(forged, kestrel.digits());
    EXPECT_FALSE(answer.isYes);
    EXPECT_THAT(answer.sentence, testing::AllOf(HasSubstr("does not hold"), HasSubstr("over another seal")));
    ASSERT_TRUE(reviewLedger(forged).first);
    EXPECT_EQ(reviewLedger(forged).first->entry, forged.size());
}

TEST(Signatures, a_truncated_record_has_lost_its_signature_or_what_it_is_over) {
    Bench bench;
    const auto before = bench.ledger.size();
    bench.make(NoteAdded{"", "the last finding"});
    const SealSigned made = kestrel.over(bench.ledger);
    bench.make(made);
    EXPECT_FALSE(isSignedBy(sealedAnew(bench.ledger, before, asItIs), kestrel.digits()).isYes) << "without it";
    Ledger moved = sealedAnew(bench.ledger, before, asItIs);
    moved.append({1'800'000'000'000}, "Mira", made);
    EXPECT_FALSE(isSignedBy(moved, kestrel.digits()).isYes) << "with the note that it is over left out";
    EXPECT_FALSE(signaturesOf(moved).front().holds());
}

TEST(Signatures, a_record_signed_anew_by_a_key_of_the_same_name_is_told_by_its_fingerprint) {
    Bench bench;
    const Signer imposter(3, "Kestrel Lane");
    bench.make(imposter.over(bench.ledger));
    EXPECT_TRUE(signaturesOf(bench.ledger).front().holds()) << "it is a good signature, of another key";
    EXPECT_FALSE(isSignedBy(bench.ledger, kestrel.digits()).isYes);
}

TEST(Signatures, one_whose_parts_were_changed_is_refused) {
    Bench bench;
    const SealSigned good = kestrel.over(bench.ledger);
    const auto refusal = [&](auto change) {
        SealSigned bad = good;
        change(bad);
        const auto made = bench.tryTo(bad);
        EXPECT_FALSE(made);
        return made ? std::string() : made.error().sentence;
    };
    EXPECT_THAT(refusal([](auto& s) { s.keyName = "Somebody else"; }), HasSubstr("was altered"));
    EXPECT_THAT(refusal([](auto& s) { s.validUntil = Date{30'000}; }), HasSubstr("was altered"));
    EXPECT_THAT(refusal([](auto& s) { --s.signedEntry; }), HasSubstr("was altered"));
    EXPECT_THAT(refusal([](auto& s) { s.publicKey = other.digits(); }), HasSubstr("was altered"));
    EXPECT_THAT(refusal([](auto& s) { s.signature[5] = s.signature[5] == '0' ? '1' : '0'; }), HasSubstr("was altered"));
    EXPECT_THAT(refusal([](auto& s) { s.signature.pop_back(); }), HasSubstr("128 hexadecimal digits"));
    EXPECT_THAT(refusal([](auto& s) { s.publicKey[0] = 'X'; }), HasSubstr("64 hexadecimal digits"));
    EXPECT_THAT(refusal([](auto& s) { s.signedSeal.clear(); }), HasSubstr("A seal is 64"));
    EXPECT_TRUE(bench.tryTo(good));
}

TEST(Signatures, one_over_an_entry_that_is_not_there_or_has_another_seal_is_refused) {
    Bench longer;
    longer.make(NoteAdded{"", "one more"});
    const Signer& k = kestrel;
    Bench bench;
    EXPECT_THAT(bench.tryTo(k.over(longer.ledger)).error().sentence, HasSubstr("which this record does not have"));
    bench.make(NoteAdded{"", "another one"});
    EXPECT_THAT(bench.tryTo(k.over(longer.ledger)).error().sentence, HasSubstr("over another seal"));
}

TEST(Signatures, cannot_be_struck) {
    Bench bench;
    const auto at = bench.make(kestrel.over(bench.ledger));
    EXPECT_THAT(bench.tryTo(Struck{at, "no longer wanted"}).error().sentence, HasSubstr("is a signature: it stays"));
}

TEST(Signatures, may_follow_the_sign_off) {
    Bench bench;
    bench.readyToClose();
    bench.close();
    bench.make(SignedOff{"Assembled and checked as recorded."});
    bench.make(kestrel.over(bench.ledger));
    EXPECT_TRUE(bench.facts.isClosed());
    EXPECT_FALSE(reviewLedger(bench.ledger).first);
}

TEST(Signatures, of_a_key_that_was_not_valid_then_do_not_hold) {
    const auto key = makeKey("Kestrel Lane", {}, Date{19'000}, kestrel.secret);
    Bench bench;
    EXPECT_THAT(signLastSeal(bench.ledger, key->note, kestrel.secret, today).error().sentence, HasSubstr("expired"));
    // Signed by a clock that was set back, and stored at the true time: 2023-11-14, day 19 675.
    const auto backdated = signLastSeal(bench.ledger, key->note, kestrel.secret, Date{18'000});
    ASSERT_TRUE(backdated);
    bench.make(*backdated);
    EXPECT_THAT(signaturesOf(bench.ledger).front().fault, HasSubstr("expired"));
    EXPECT_FALSE(isSignedBy(bench.ledger, kestrel.digits()).isYes);
    EXPECT_TRUE(reviewLedger(bench.ledger).first);
}

TEST(Signatures, there_is_none_over_an_empty_ledger) {
    EXPECT_THAT(signLastSeal(Ledger(), kestrel.note, kestrel.secret, today).error().sentence,
                HasSubstr("nothing to sign"));
}

TEST(Signatures, a_key_is_asked_for_by_either_of_its_two_forms) {
    const std::string finger = fingerprint(kestrel.note.publicKey);
    EXPECT_EQ(readKeyDigits(finger)->size(), 32U);
    EXPECT_EQ(readKeyDigits(kestrel.digits()), kestrel.digits());
    std::string upper = finger;
    std::ranges::transform(upper, upper.begin(), [](unsigned char c) { return static_cast<char>(std::toupper(c)); });
    EXPECT_EQ(readKeyDigits(upper), readKeyDigits(finger));
    for (const std::string& bad : {std::string("Kestrel"), finger.substr(0, 38), kestrel.digits() + "0", std::string()}) {
        EXPECT_FALSE(readKeyDigits(bad)) << bad;
    }
}
