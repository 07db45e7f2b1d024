// SPDX-License-Identifier: GPL-3.0-or-later
#include <assessment/signatures.h>

#include <algorithm>
#include <base/hex.h>
#include <base/say.h>

namespace caprail {

namespace {

constexpr std::size_t mostSignatures = 100;

/// Of its digits as they stand in the entry.
Result<KeyNote> noteOf(const SealSigned& signature) {
    auto key = publicKeyFromHex(signature.publicKey);
    if (!key) {
        return tl::unexpected(key.error());
    }
    return KeyNote{signature.keyName, *key, signature.validFrom, signature.validUntil};
}

SignatureFact factOf(const Ledger& ledger, const Entry& entry, const SealSigned& signature) {
    SignatureFact fact{entry.sequence, entry.time, entry.person, {}, signature.signedEntry, {}};
    fact.key.name = signature.keyName;
    if (auto note = noteOf(signature)) {
        fact.key = std::move(*note);
    }
    for (const auto& judged :
         {verify(signature), signsEntryOf(ledger, signature), wasKeyValid(signature, entry.time)}) {
        if (!judged && fact.fault.empty()) {
            fact.fault = judged.error().sentence;
        }
    }
    fact.coversAll = fact.holds() && signature.signedEntry == entry.sequence - 1 &&
                     std::ranges::all_of(ledger.entriesFrom(entry.sequence + 1),
                                         [](const Entry& later) { return later.body.is<SealSigned>(); });
    return fact;
}

std::string digitsOf(const KeyNote& key, std::size_t count) {
    std::string digits = count == 64 ? hexOf(key.publicKey.bytes) : fingerprint(key.publicKey);
    std::erase(digits, '-');
    return digits;
}

} // namespace

std::vector<SignatureFact> signaturesOf(const Ledger& ledger) {
    std::vector<SignatureFact> facts;
    const auto& entries = ledger.entries();
    for (std::size_t i = entries.size(); i-- > 0;) {
        if (const auto* signature = entries[i].body.as<SealSigned>()) {
            facts.push_back(factOf(ledger, entries[i], *signature));
            if (facts.size() == mostSignatures) {
                break;
            }
        }
    }
    std::ranges::reverse(facts);
    return facts;
}

Result<SealSigned> signLastSeal(const Ledger& ledger, const KeyNote& key, const SecretKey& secret, Date today) {
    if (ledger.empty()) {
        return refuse(Core::say("There is no entry yet, and nothing to sign."));
    }
    if (auto valid = mayBeUsedOn(key, today); !valid) {
        return tl::unexpected(valid.error());
    }
    SealSigned made{ledger.size(), toHex(ledger.seal()),           key.name, hexOf(key.publicKey.bytes),
                    key.validFrom, key.validUntil, {}};
    made.signature = hexOf(signedBy(secret, signedStatement(made.signedEntry, made.signedSeal, key)));
    return made;
}

Result<void> verify(const SealSigned& signature) {
    const auto note = noteOf(signature);
    if (!note) {
        return tl::unexpected(note.error());
    }
    if (const auto seal = sealFromHex(signature.signedSeal); !seal) {
        return tl::unexpected(seal.error());
    }
    SignatureBytes bytes{};
    if (!readHex(signature.signature, bytes)) {
        return refuse(Core::say("A signature is 128 hexadecimal digits, but “%1” is not.",
                                std::string_view(signature.signature).substr(0, 140)));
    }
    if (!verifies(note->publicKey, signedStatement(signature.signedEntry, signature.signedSeal, *note), bytes)) {
        return refuse(Core::say("The signature is not that of the key “%1” over entry %2: it, or what it signs, was "
                                "altered.",
                                signature.keyName, signature.signedEntry));
    }
    return {};
}

Result<void> signsEntryOf(const Ledger& ledger, const SealSigned& signature) {
    if (signature.signedEntry < 1 || signature.signedEntry > ledger.size()) {
        return refuse(Core::say("The signature is over entry %1, which this record does not have.",
                                signature.signedEntry));
    }
    if (toHex(ledger.at(signature.signedEntry).seal) != signature.signedSeal) {
        return refuse(Core::say("The signature is over another seal than that of entry %1: it was made for another "
                                "record, or this one was rewritten since.",
                                signature.signedEntry));
    }
    return {};
}

Result<void> wasKeyValid(const SealSigned& signature, UtcTime made) {
    const auto note = noteOf(signature);
    return note ? mayBeUsedOn(*note, dateOf(made)) : Result<void>(tl::unexpected(note.error()));
}

std::optional<std::string> readKeyDigits(std::string_view typed) {
    std::string digits;
    for (const char c : typed) {
        if (c != '-' && c != ' ') {
            digits += c >= 'A' && c <= 'F' ? static_cast<char>(c - 'A' + 'a') : c;
        }
    }
    const bool isHex = digits.find_first_not_of("0123456789abcdef") == std::string::npos;
    return isHex && (digits.size() == 32 || digits.size() == 64) ? std::optional(digits) : std::nullopt;
}

SignedByAnswer isSignedBy(const Ledger& ledger, std::string_view keyDigits) {
    const auto signatures = signaturesOf(ledger);
    const SignatureFact* best = nullptr;
    for (const SignatureFact& one : signatures) {
        if (digitsOf(one.key, keyDigits.size()) == keyDigits && (best == nullptr || !best->coversAll) &&
            (best == nullptr || one.holds() || !best->holds())) {
            best = &one;
        }
    }
    if (best == nullptr) {
        return {false, Core::say("No entry is signed by that key.")};
    }
    return {best->coversAll, sentenceOf(*best)};
}

CheckState stateOf(const SignatureFact& signature) {
    return !signature.holds() ? CheckState::out : signature.coversAll ? CheckState::good : CheckState::tooCloseToCall;
}

std::string sentenceOf(const SignatureFact& signature) {
    const std::string who = signature.key.name + " (" + fingerprint(signature.key.publicKey) + ")";
    if (!signature.holds()) {
        return Core::say("The signature in entry %1, in the name of %2, does not hold: %3", signature.entry, who,
                         signature.fault);
    }
    return signature.coversAll
               ? Core::say("Signed by %1 in entry %2: all entries before it, and none was added since.", who,
                           signature.entry)
               : Core::say("Signed by %1 in entry %2, up to entry %3; what was added since is not signed.", who,
                           signature.entry, signature.signedEntry);
}

} // namespace caprail
