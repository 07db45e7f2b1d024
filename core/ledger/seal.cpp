// SPDX-License-Identifier: GPL-3.0-or-later
#include <ledger/entry.h>

#include <nettle/sha2.h>
#include <base/say.h>

namespace caprail {

namespace {

/// SHA-256 (FIPS 180-4) of Nettle's library, which uses the processor's own instructions where it has them. It is
/// small: a program that opens one record and ends spends more time on loading a larger library than on all its seals.
class Sha256 {
public:
    Sha256() { sha256_init(&m_state); }
    void add(const void* bytes, std::size_t count) {
        sha256_update(&m_state, count, static_cast<const std::uint8_t*>(bytes));
    }
    /// The hash of what was added.
    Seal result() {
        Seal hash;
        sha256_digest(&m_state, hash.bytes.size(), hash.bytes.data());
        return hash;
    }

private:
    sha256_ctx m_state{};
};

std::string hexOf(const std::uint8_t* bytes, std::size_t count) {
    static constexpr std::string_view digits = "0123456789abcdef";
    std::string text;
    text.reserve(count * 2);
    for (std::size_t i = 0; i < count; ++i) {
        text += digits[bytes[i] >> 4];
        text += digits[bytes[i] & 15];
    }
    return text;
}

int nibble(char c) {
    if (c >= '0' && c <= '9') {
        return c - '0';
    }
    return c >= 'a' && c <= 'f' ? c - 'a' + 10 : -1;
}

} // namespace

std::string toHex(const Seal& seal) {
    return hexOf(seal.bytes.data(), seal.bytes.size());
}

Result<Seal> sealFromHex(std::string_view text) {
    Seal seal;
    bool good = text.size() == 2 * seal.bytes.size();
    for (std::size_t i = 0; good && i < seal.bytes.size(); ++i) {
        const int high = nibble(text[2 * i]);
        const int low = nibble(text[2 * i + 1]);
        good = high >= 0 && low >= 0;
        seal.bytes[i] = static_cast<std::uint8_t>((high << 4 | low) & 255);
    }
    if (!good) {
        return refuse(Core::say("A seal is 64 hexadecimal digits, but “%1” is not.", text.substr(0, 80)));
    }
    return seal;
}

std::string shortForm(const Seal& seal) {
    std::string text = toHex(seal).substr(0, 20);
    for (std::size_t at = 16; at > 0; at -= 4) {
        text.insert(at, 1, '-');
    }
    return text;
}

Seal sealOver(const Seal& previous, std::string_view canonical) {
    Sha256 hash;
    hash.add(previous.bytes.data(), previous.bytes.size());
    hash.add(canonical.data(), canonical.size());
    return hash.result();
}

std::string sha256Hex(std::string_view bytes) {
    Sha256 hash;
    hash.add(bytes.data(), bytes.size());
    return toHex(hash.result());
}

} // namespace caprail
