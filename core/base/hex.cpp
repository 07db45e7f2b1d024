// SPDX-License-Identifier: GPL-3.0-or-later
#include <base/hex.h>

namespace caprail {

namespace {

int nibble(char c) {
    if (c >= '0' && c <= '9') {
        return c - '0';
    }
    return c >= 'a' && c <= 'f' ? c - 'a' + 10 : -1;
}

} // namespace

std::string hexOf(std::span<const std::uint8_t> bytes) {
    static constexpr std::string_view digits = "0123456789abcdef";
    std::string text;
    text.reserve(bytes.size() * 2);
    for (const std::uint8_t byte : bytes) {
        text += digits[byte >> 4];
        text += digits[byte & 15];
    }
    return text;
}

bool readHex(std::string_view text, std::span<std::uint8_t> bytes) {
    if (text.size() != 2 * bytes.size()) {
        return false;
    }
    for (std::size_t i = 0; i < bytes.size(); ++i) {
        const int high = nibble(text[2 * i]);
        const int low = nibble(text[2 * i + 1]);
        if (high < 0 || low < 0) {
            return false;
        }
        bytes[i] = static_cast<std::uint8_t>((high << 4 | low) & 255);
    }
    return true;
}

std::string inGroupsOfFour(std::string_view digits) {
    std::string text;
    for (std::size_t at = 0; at < digits.size(); at += 4) {
        text += (at == 0 ? "" : "-") + std::string(digits.substr(at, 4));
    }
    return text;
}

} // namespace caprail
