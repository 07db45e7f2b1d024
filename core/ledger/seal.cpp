// SPDX-License-Identifier: GPL-3.0-or-later
#include <ledger/entry.h>

#include <cstdlib>
#include <memory>
#include <openssl/evp.h>
#include <units/say.h>

namespace caprail {

namespace {

/// SHA-256 of OpenSSL's library, which uses the processor's own instructions where it has them. A seal is some hundred
/// bytes long, so looking the algorithm up and making a context once, not for each, is most of what can be saved.
class Sha256 {
public:
    Sha256() : m_context(EVP_MD_CTX_new()) {
        require(m_context != nullptr && EVP_DigestInit_ex2(m_context.get(), algorithm(), nullptr) == 1);
    }
    void add(const void* bytes, std::size_t count) { require(EVP_DigestUpdate(m_context.get(), bytes, count) == 1); }
    /// The hash of what was added since the last result.
    Seal result() {
        Seal hash;
        require(EVP_DigestFinal_ex(m_context.get(), hash.bytes.data(), nullptr) == 1);
        require(EVP_DigestInit_ex2(m_context.get(), nullptr, nullptr) == 1);
        return hash;
    }
    /// One per thread, made once.
    static Sha256& ofThisThread() {
        thread_local Sha256 hash;
        return hash;
    }

private:
    struct Free {
        void operator()(EVP_MD_CTX* context) const { EVP_MD_CTX_free(context); }
    };
    static const EVP_MD* algorithm() {
        static const EVP_MD* const sha256 = EVP_MD_fetch(nullptr, "SHA256", nullptr);
        return sha256;
    }
    /// A library without SHA-256, or no memory for some bytes: nothing can be sealed, and nothing may go unsealed.
    static void require(bool holds) {
        if (!holds) {
            std::abort();
        }
    }
    std::unique_ptr<EVP_MD_CTX, Free> m_context;
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
    Sha256& hash = Sha256::ofThisThread();
    hash.add(previous.bytes.data(), previous.bytes.size());
    hash.add(canonical.data(), canonical.size());
    return hash.result();
}

std::string sha256Hex(std::string_view bytes) {
    Sha256& hash = Sha256::ofThisThread();
    hash.add(bytes.data(), bytes.size());
    return toHex(hash.result());
}

} // namespace caprail
