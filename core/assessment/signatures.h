// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// Signatures in a ledger: made, judged, and told to whoever asks by whom a record is signed.
#include <assessment/check.h>
#include <ledger/ledger.h>
#include <signing/signing_key.h>

namespace caprail {

/// A signature of a ledger, and whether it holds.
struct SignatureFact {
    std::int64_t entry = 0; ///< that holds it
    UtcTime time;
    std::string person;
    KeyNote key;
    std::int64_t signedEntry = 0;
    std::string fault; ///< why it does not hold, a sentence; empty: it holds
    /// Every entry before it is signed, and nothing but signatures follows it.
    bool coversAll = false;
    [[nodiscard]] bool holds() const { return fault.empty(); }
};

/// The signatures of a ledger in order, each verified; of very many the last 100 alone.
std::vector<SignatureFact> signaturesOf(const Ledger& ledger);

/// Signs the last seal. Refuses an empty ledger, and a key that is not valid on `today`.
Result<SealSigned> signLastSeal(const Ledger& ledger, const KeyNote& key, const SecretKey& secret, Date today);

/// Whether the signature is that of its public key over the entry and seal that it names. Refuses one that is not, and
/// parts that are no such thing.
Result<void> verify(const SealSigned& signature);
/// Whether the entry that it names has that seal in this ledger.
Result<void> signsEntryOf(const Ledger& ledger, const SealSigned& signature);
/// Whether its key was valid when it was made.
Result<void> wasKeyValid(const SealSigned& signature, UtcTime made);

/// What a person gives to say a key: all 64 digits of the public key, or the 32 of its fingerprint, with or without
/// dashes and in either case. Gives small digits without dashes; none: it is neither.
std::optional<std::string> readKeyDigits(std::string_view typed);

/// Whether a ledger is signed by the key with these digits.
struct SignedByAnswer {
    bool isYes = false;
    std::string sentence;
};
/// Yes: a signature of that key holds and covers all entries. What was added after it, or does not hold, is no.
SignedByAnswer isSignedBy(const Ledger& ledger, std::string_view keyDigits);

/// Good: it holds and covers all; too close to call: something was added since; out: it does not hold.
CheckState stateOf(const SignatureFact& signature);
/// "Signed by Sand Engines (3f2a-…) in entry 399: all entries before it, and none was added since."
std::string sentenceOf(const SignatureFact& signature);

} // namespace caprail
