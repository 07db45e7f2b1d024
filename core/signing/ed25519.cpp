// SPDX-License-Identifier: GPL-3.0-or-later
#include <signing/ed25519.h>

#include <base/hex.h>
#include <base/say.h>
#include <cstring>
#include <nettle/eddsa.h>
#include <nettle/sha2.h>

namespace caprail {

SecretKey::~SecretKey() {
    ::explicit_bzero(m_bytes.data(), m_bytes.size());
}

PublicKey publicKeyOf(const SecretKey& secret) {
    PublicKey key;
    ed25519_sha512_public_key(key.bytes.data(), secret.bytes().data());
    return key;
}

SignatureBytes signedBy(const SecretKey& secret, std::string_view message) {
    SignatureBytes signature{};
    const PublicKey key = publicKeyOf(secret);
    ed25519_sha512_sign(key.bytes.data(), secret.bytes().data(), message.size(), bytesOf(message), signature.data());
    return signature;
}

bool verifies(const PublicKey& key, std::string_view message, const SignatureBytes& signature) {
    return ed25519_sha512_verify(key.bytes.data(), message.size(), bytesOf(message), signature.data()) == 1;
}

std::string fingerprint(const PublicKey& key) {
    sha256_ctx state{};
    sha256_init(&state);
    sha256_update(&state, key.bytes.size(), key.bytes.data());
    std::array<std::uint8_t, 16> first{};
    sha256_digest(&state, first.size(), first.data());
    return inGroupsOfFour(hexOf(first));
}

Result<PublicKey> publicKeyFromHex(std::string_view text) {
    PublicKey key;
    if (!readHex(text, key.bytes)) {
        return refuse(Core::say("A public key is 64 hexadecimal digits, but “%1” is not.", text.substr(0, 80)));
    }
    return key;
}

} // namespace caprail
