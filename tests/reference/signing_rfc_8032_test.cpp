// SPDX-License-Identifier: GPL-3.0-or-later
/// RFC 8032 (Edwards-Curve Digital Signature Algorithm), section 7.1, Ed25519: TEST 1, TEST 2, TEST 3 and TEST SHA(abc).
/// From memory, and compared with copies of the section in public test suites. And section 5.1.7: a signature whose S is
/// not below the order of the group is refused.
#include <base/hex.h>
#include <gmock/gmock.h>
#include <signing/ed25519.h>

using namespace caprail;

namespace {

struct Vector {
    const char* name;
    const char* secret;
    const char* publicKey;
    const char* message;
    const char* signature;
};

constexpr Vector vectors[] = {
    {"TEST 1", "9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60",
     "d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a", "",
     "e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e06522490155"
     "5fb8821590a33bacc61e39701cf9b46bd25bf5f0595bbe24655141438e7a100b"},
    {"TEST 2", "4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb",
     "3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c", "72",
     "92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da"
     "085ac1e43e15996e458f3613d0f11d8c387b2eaeb4302aeeb00d291612bb0c00"},
    {"TEST 3", "c5aa8df43f9f837bedb7442f31dcb7b166d38535076f094b85ce3a2e0b4458f7",
     "fc51cd8e6218a1a38da47ed00230f0580816ed13ba3303ac5deb911548908025", "af82",
     "6291d657deec24024827e69c3abe01a30ce548a284743a445e3680d7db5ac3ac"
     "18ff9b538d16f290ae67f760984dc6594a7c15e9716ed28dc027beceea1ec40a"},
    {"TEST SHA(abc)", "833fe62409237b9d62ec77587520911e9a759cec1d19755b7da901b96dca3d42",
     "ec172b93ad5e563bf4932c70e1245034c35467ef2efd4d64ebf819683467e2bf",
     "ddaf35a193617abacc417349ae20413112e6fa4e89a97ea20a9eeee64b55d39a"
     "2192992a274fc1a836ba3c23a3feebbd454d4423643ce80e2a9ac94fa54ca49f",
     "dc2a4459e7369633a52b1bf277839a00201009a3efbf3ecb69bea2186c26b589"
     "09351fc9ac90b3ecfdfbc7c66431e0303dca179c138ac17ad9bef1177331a704"}};

template <std::size_t N> std::array<std::uint8_t, N> bytesOf(std::string_view hex) {
    std::array<std::uint8_t, N> bytes{};
    EXPECT_TRUE(readHex(hex, bytes)) << hex;
    return bytes;
}

std::string messageOf(std::string_view hex) {
    std::string message(hex.size() / 2, '\0');
    EXPECT_TRUE(readHex(hex, std::span(reinterpret_cast<std::uint8_t*>(message.data()), message.size())));
    return message;
}

} // namespace

TEST(Rfc8032, every_vector_is_signed_and_verified) {
    for (const Vector& v : vectors) {
        const SecretKey secret(bytesOf<32>(v.secret));
        const std::string message = messageOf(v.message);
        EXPECT_EQ(hexOf(publicKeyOf(secret).bytes), v.publicKey) << v.name;
        EXPECT_EQ(hexOf(signedBy(secret, message)), v.signature) << v.name;
        EXPECT_TRUE(verifies(PublicKey{bytesOf<32>(v.publicKey)}, message, bytesOf<64>(v.signature))) << v.name;
    }
}

TEST(Rfc8032, one_changed_bit_anywhere_is_refused) {
    for (const Vector& v : vectors) {
        const std::string message = messageOf(v.message);
        const PublicKey key{bytesOf<32>(v.publicKey)};
        for (std::size_t bit = 0; bit < 512; ++bit) {
            auto signature = bytesOf<64>(v.signature);
            signature[bit / 8] = static_cast<std::uint8_t>(signature[bit / 8] ^ (1U << (bit % 8)));
            EXPECT_FALSE(verifies(key, message, signature)) << v.name << ", bit " << bit;
        }
        EXPECT_FALSE(verifies(key, message + "x", bytesOf<64>(v.signature))) << v.name;
    }
}

/// The same signature with the order of the group added to its second half (worked out apart from this program).
TEST(Rfc8032, a_signature_has_one_form_only) {
    const Vector& v = vectors[0];
    EXPECT_FALSE(verifies(PublicKey{bytesOf<32>(v.publicKey)}, "",
                          bytesOf<64>("e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e06522490155"
                                      "4c8c7872aa064e049dbb3013fbf29380d25bf5f0595bbe24655141438e7a101b")));
}
