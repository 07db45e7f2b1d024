// SPDX-License-Identifier: GPL-3.0-or-later
#include <signing/signing_key.h>

#include <base/hex.h>
#include <base/plain_text.h>
#include <base/say.h>
#include <cstring>
#include <nettle/chacha-poly1305.h>
#include <nettle/memops.h>
#include <nettle/pbkdf2.h>

namespace caprail {

namespace {

constexpr std::size_t longestName = 60;

/// ChaCha20-Poly1305 under the key that a passphrase makes, with the note as what it is bound to.
chacha_poly1305_ctx cipherOf(std::string_view passphrase, const WrappedSecret& wrapped, const KeyNote& note) {
    std::array<std::uint8_t, CHACHA_POLY1305_KEY_SIZE> key{};
    pbkdf2_hmac_sha256(passphrase.size(), bytesOf(passphrase), wrapped.rounds, wrapped.salt.size(), wrapped.salt.data(),
                       key.size(), key.data());
    chacha_poly1305_ctx cipher{};
    chacha_poly1305_set_key(&cipher, key.data());
    ::explicit_bzero(key.data(), key.size());
    chacha_poly1305_set_nonce(&cipher, wrapped.nonce.data());
    const std::string bound = noteText(note);
    chacha_poly1305_update(&cipher, bound.size(), bytesOf(bound));
    return cipher;
}

} // namespace

Result<SigningKey> makeKey(const std::string& name, std::optional<Date> from, std::optional<Date> until,
                           const SecretKey& secret) {
    if (name.find_first_not_of(' ') == std::string::npos || name.size() > longestName ||
        hiddenIn(name, TextShape::line)) {
        return refuse(Core::say("“%1” cannot be the name of a key: use 1 to 60 characters on one line.",
                                name.substr(0, 80)));
    }
    if (from && until && *until < *from) {
        return refuse(Core::say("The key's last day, %1, lies before its first, %2.", format(*until), format(*from)));
    }
    return SigningKey{{name, publicKeyOf(secret), from, until}, secret};
}

Result<SigningKey> protect(const SigningKey& key, std::string_view passphrase, const std::array<std::uint8_t, 16>& salt,
                           const std::array<std::uint8_t, 12>& nonce, std::uint32_t rounds) {
    const auto* secret = std::get_if<SecretKey>(&key.secret);
    if (secret == nullptr) {
        return refuse(Core::say("The key “%1” has a passphrase already.", key.note.name));
    }
    if (passphrase.empty()) {
        return refuse(Core::say("The passphrase is empty: give one, or make the key without."));
    }
    WrappedSecret wrapped{salt, rounds, nonce, {}};
    chacha_poly1305_ctx cipher = cipherOf(passphrase, wrapped, key.note);
    const auto& plain = secret->bytes();
    chacha_poly1305_encrypt(&cipher, plain.size(), wrapped.sealed.data(), plain.data());
    chacha_poly1305_digest(&cipher, CHACHA_POLY1305_DIGEST_SIZE, wrapped.sealed.data() + plain.size());
    ::explicit_bzero(&cipher, sizeof cipher);
    return SigningKey{key.note, wrapped};
}

Result<SecretKey> unlock(const SigningKey& key, std::string_view passphrase) {
    if (const auto* plain = std::get_if<SecretKey>(&key.secret)) {
        return *plain;
    }
    const auto& wrapped = std::get<WrappedSecret>(key.secret);
    chacha_poly1305_ctx cipher = cipherOf(passphrase, wrapped, key.note);
    std::array<std::uint8_t, 32> bytes{};
    std::array<std::uint8_t, CHACHA_POLY1305_DIGEST_SIZE> digest{};
    chacha_poly1305_decrypt(&cipher, bytes.size(), bytes.data(), wrapped.sealed.data());
    chacha_poly1305_digest(&cipher, digest.size(), digest.data());
    ::explicit_bzero(&cipher, sizeof cipher);
    const bool isGood = memeql_sec(digest.data(), wrapped.sealed.data() + bytes.size(), digest.size()) != 0;
    const SecretKey secret(bytes);
    ::explicit_bzero(bytes.data(), bytes.size());
    if (!isGood || publicKeyOf(secret) != key.note.publicKey) {
        return refuse(Core::say("The passphrase does not open the key “%1”: type it again.", key.note.name));
    }
    return secret;
}

Result<void> mayBeUsedOn(const KeyNote& note, Date day) {
    if (note.validFrom && day < *note.validFrom) {
        return refuse(Core::say("The key “%1” is valid from %2 on, not yet on %3.", note.name,
                                format(*note.validFrom), format(day)));
    }
    if (note.validUntil && *note.validUntil < day) {
        return refuse(Core::say("The key “%1” expired: its last day was %2. What it signed until then stays signed; "
                                "make a new one, and tell its fingerprint.",
                                note.name, format(*note.validUntil)));
    }
    return {};
}

std::string signedStatement(std::int64_t entry, std::string_view sealDigits, const KeyNote& note) {
    return "Caprail signature 1\nseal: " + std::string(sealDigits) + "\nentry: " + std::to_string(entry) + "\n" +
           noteText(note);
}

} // namespace caprail
