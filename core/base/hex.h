// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// Bytes as hexadecimal digits: hashes, keys, signatures.
#include <cstdint>
#include <span>
#include <string>
#include <string_view>

namespace caprail {

/// The bytes of a text, as hashes and ciphers take them.
inline const std::uint8_t* bytesOf(std::string_view text) {
    return reinterpret_cast<const std::uint8_t*>(text.data());
}

/// Two small digits a byte.
std::string hexOf(std::span<const std::uint8_t> bytes);
/// Fills `bytes` from two small hexadecimal digits each; false, with `bytes` undefined, when the text is not exactly
/// that.
[[nodiscard]] bool readHex(std::string_view text, std::span<std::uint8_t> bytes);
/// In groups of four digits, "3f2a-91c0-…", for people to compare.
std::string inGroupsOfFour(std::string_view digits);

} // namespace caprail
