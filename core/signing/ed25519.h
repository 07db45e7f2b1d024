// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// Ed25519 (RFC 8032, section 5.1) of Nettle's library: nothing of it is worked out here.
#include <array>
#include <base/problem.h>
#include <cstdint>
#include <string>
#include <string_view>

namespace caprail {

struct PublicKey {
    std::array<std::uint8_t, 32> bytes{};
    friend bool operator==(const PublicKey&, const PublicKey&) = default;
};

/// The 32 bytes that only their owner has. They are wiped from memory when they are let go of.
class SecretKey {
public:
    explicit SecretKey(const std::array<std::uint8_t, 32>& bytes) : m_bytes(bytes) {}
    SecretKey(const SecretKey&) = default;
    SecretKey& operator=(const SecretKey&) = default;
    ~SecretKey();
    [[nodiscard]] const std::array<std::uint8_t, 32>& bytes() const { return m_bytes; }

private:
    std::array<std::uint8_t, 32> m_bytes;
};

using SignatureBytes = std::array<std::uint8_t, 64>;

PublicKey publicKeyOf(const SecretKey&);
SignatureBytes signedBy(const SecretKey&, std::string_view message);
/// Whether the signature is that of this key's owner over exactly these bytes.
[[nodiscard]] bool verifies(const PublicKey&, std::string_view message, const SignatureBytes&);

/// The first 128 bits of the key's SHA-256 as eight groups of four digits: what two people compare over the telephone.
std::string fingerprint(const PublicKey&);
/// Refuses anything but 64 small hexadecimal digits.
Result<PublicKey> publicKeyFromHex(std::string_view text);

} // namespace caprail
