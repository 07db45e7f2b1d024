// SPDX-License-Identifier: GPL-3.0-or-later
#include <ledger/entry.h>

#include <base/hex.h>
#include <base/say.h>
#include <nettle/sha2.h>

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

} // namespace

std::string toHex(const Seal& seal) {
    return hexOf(seal.bytes);
}

Result<Seal> sealFromHex(std::string_view text) {
    Seal seal;
    if (!readHex(text, seal.bytes)) {
        return refuse(Core::say("A seal is 64 hexadecimal digits, but “%1” is not.", text.substr(0, 80)));
    }
    return seal;
}

std::string shortForm(const Seal& seal) {
    return inGroupsOfFour(toHex(seal).substr(0, 20));
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
