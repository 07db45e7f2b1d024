// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <base/date.h>
#include <optional>
#include <signing/ed25519.h>
#include <variant>

namespace caprail {

/// What everyone may know of a signing key.
struct KeyNote {
    std::string name; ///< whose: "Sand Engines"
    PublicKey publicKey;
    std::optional<Date> validFrom = {}, validUntil = {}; ///< both days are in it; none: no limit
    friend bool operator==(const KeyNote&, const KeyNote&) = default;
};

/// A secret key that only a passphrase opens: PBKDF2-HMAC-SHA-256 (RFC 8018) makes a key of it, and that opens
/// ChaCha20-Poly1305 (RFC 8439), which holds the note too: one that was changed no longer opens.
struct WrappedSecret {
    std::array<std::uint8_t, 16> salt{};
    std::uint32_t rounds = 0;
    std::array<std::uint8_t, 12> nonce{};
    std::array<std::uint8_t, 48> sealed{}; ///< the secret, and 16 bytes by which a change is told
};

struct SigningKey {
    KeyNote note;
    std::variant<SecretKey, WrappedSecret> secret;
    [[nodiscard]] bool isProtected() const { return std::holds_alternative<WrappedSecret>(secret); }
};

/// As many as OWASP's Password Storage Cheat Sheet (2023) asks of PBKDF2-HMAC-SHA-256; from memory.
inline constexpr std::uint32_t usualRounds = 600'000;

/// A key of these 32 random bytes. Refuses a name that is empty, longer than 60 bytes or not one plain line, and a
/// last day before the first.
Result<SigningKey> makeKey(const std::string& name, std::optional<Date> from, std::optional<Date> until,
                           const SecretKey& secret);
/// The same key behind a passphrase; `salt` and `nonce` are random and used once. Refuses an empty passphrase, and a key
/// that is behind one already.
Result<SigningKey> protect(const SigningKey& key, std::string_view passphrase, const std::array<std::uint8_t, 16>& salt,
                           const std::array<std::uint8_t, 12>& nonce, std::uint32_t rounds = usualRounds);
/// The secret, by its passphrase where it has one (else that is not looked at). Refuses a wrong one.
Result<SecretKey> unlock(const SigningKey& key, std::string_view passphrase);
/// Refuses to use a key before its first day or after its last.
Result<void> mayBeUsedOn(const KeyNote& note, Date day);

/// The bytes that are signed for a seal (64 hexadecimal digits) of an entry: a few lines of plain text, so that any
/// program that knows Ed25519 can verify them.
std::string signedStatement(std::int64_t entry, std::string_view sealDigits, const KeyNote& note);

/// A key as the text of a file, and read back. Refuses what is no such text, and a secret that is not that of its public
/// key.
std::string keyText(const SigningKey& key);
Result<SigningKey> keyFromText(std::string_view text);

/// The lines of a key's text that everyone may know; what a wrapped secret is bound to.
std::string noteText(const KeyNote& note);

} // namespace caprail
