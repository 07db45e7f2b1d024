// SPDX-License-Identifier: GPL-3.0-or-later
/// A signing key as the text of a file: a title, and a line “what: value” for each of its parts.
#include <signing/signing_key.h>

#include <base/hex.h>
#include <base/say.h>
#include <charconv>
#include <map>
#include <span>

namespace caprail {

namespace {

constexpr std::string_view title = "Caprail signing key 1";
constexpr std::uint32_t fewestRounds = 1'000, mostRounds = 50'000'000; ///< no file makes the program work for hours

using Lines = std::map<std::string, std::string, std::less<>>;

Problem noKey() {
    return {Core::say("This is not the text of a signing key, or it was changed: use a copy of it.")};
}

Result<Lines> linesOf(std::string_view text) {
    Lines lines;
    bool isFirst = true;
    while (!text.empty()) {
        const std::size_t end = text.find('\n');
        const std::string_view line = text.substr(0, end);
        text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
        const std::size_t colon = line.find(": ");
        if (isFirst ? line != title : colon == std::string_view::npos) {
            return tl::unexpected(noKey());
        }
        if (!isFirst && !lines.emplace(line.substr(0, colon), line.substr(colon + 2)).second) {
            return tl::unexpected(noKey());
        }
        isFirst = false;
    }
    return isFirst ? Result<Lines>(tl::unexpected(noKey())) : lines;
}

bool take(Lines& lines, std::string_view name, std::span<std::uint8_t> bytes) {
    const auto at = lines.find(name);
    const bool isGood = at != lines.end() && readHex(at->second, bytes);
    if (at != lines.end()) {
        lines.erase(at);
    }
    return isGood;
}

/// False for a day that is none; one that is not there is good.
bool take(Lines& lines, std::string_view name, std::optional<Date>& day) {
    const auto at = lines.find(name);
    if (at == lines.end()) {
        return true;
    }
    const auto read = parseDate(at->second);
    lines.erase(at);
    day = read ? std::optional(*read) : std::nullopt;
    return read.has_value();
}

bool take(Lines& lines, std::uint32_t& rounds) {
    const auto at = lines.find("rounds");
    if (at == lines.end()) {
        return false;
    }
    const std::string text = at->second;
    lines.erase(at);
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), rounds);
    return error == std::errc() && end == text.data() + text.size() && rounds >= fewestRounds && rounds <= mostRounds;
}

} // namespace

std::string noteText(const KeyNote& note) {
    return "name: " + note.name + "\npublic key: " + hexOf(note.publicKey.bytes) + "\n" +
           (note.validFrom ? "valid from: " + format(*note.validFrom) + "\n" : "") +
           (note.validUntil ? "valid until: " + format(*note.validUntil) + "\n" : "");
}

std::string keyText(const SigningKey& key) {
    std::string text = std::string(title) + "\n" + noteText(key.note);
    if (const auto* plain = std::get_if<SecretKey>(&key.secret)) {
        return text + "secret key: " + hexOf(plain->bytes()) + "\n";
    }
    const auto& wrapped = std::get<WrappedSecret>(key.secret);
    return text + "salt: " + hexOf(wrapped.salt) + "\nrounds: " + std::to_string(wrapped.rounds) +
           "\nnonce: " + hexOf(wrapped.nonce) + "\nwrapped: " + hexOf(wrapped.sealed) + "\n";
}

Result<SigningKey> keyFromText(std::string_view text) {
    auto lines = linesOf(text);
    if (!lines) {
        return tl::unexpected(lines.error());
    }
    KeyNote note;
    note.name = (*lines)["name"];
    lines->erase("name");
    bool isGood = take(*lines, "public key", note.publicKey.bytes);
    isGood = take(*lines, "valid from", note.validFrom) && isGood;
    isGood = take(*lines, "valid until", note.validUntil) && isGood;
    if (lines->contains("secret key")) {
        std::array<std::uint8_t, 32> bytes{};
        isGood = take(*lines, "secret key", bytes) && isGood && lines->empty();
        const SecretKey secret(bytes);
        auto made = makeKey(note.name, note.validFrom, note.validUntil, secret);
        return isGood && made && made->note == note ? made : Result<SigningKey>(tl::unexpected(noKey()));
    }
    WrappedSecret wrapped;
    isGood = take(*lines, "salt", wrapped.salt) && isGood;
    isGood = take(*lines, wrapped.rounds) && isGood;
    isGood = take(*lines, "nonce", wrapped.nonce) && isGood;
    isGood = take(*lines, "wrapped", wrapped.sealed) && isGood && lines->empty();
    // Its name and days are judged as those of a new key are.
    const auto named = makeKey(note.name, note.validFrom, note.validUntil, SecretKey({}));
    return isGood && named ? Result<SigningKey>(SigningKey{note, wrapped}) : Result<SigningKey>(tl::unexpected(noKey()));
}

} // namespace caprail
