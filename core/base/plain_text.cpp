// SPDX-License-Identifier: GPL-3.0-or-later
#include <base/plain_text.h>

#include <algorithm>

namespace caprail {

namespace {

constexpr char32_t replacement = 0xfffd;
constexpr char32_t nonJoiner = 0x200c;
constexpr char32_t joiner = 0x200d;

bool isWithin(char32_t c, char32_t first, char32_t last) {
    return c >= first && c <= last;
}

bool isControl(char32_t c) {
    return c < 0x20 || isWithin(c, 0x7f, 0x9f);
}

/// What breaks a line or turns the rest of it, wherever it stands.
bool isSeparatorOrOverride(char32_t c) {
    return isWithin(c, 0x2028, 0x202e) || isWithin(c, 0x2066, 0x2069);
}

/// Marks of direction, and what takes no room.
bool isUnseen(char32_t c) {
    return c == 0xad || c == 0x34f || c == 0x61c || c == 0x180e || c == 0x200b || isWithin(c, 0x200e, 0x200f) ||
           isWithin(c, 0x2060, 0x2065) || isWithin(c, 0x206a, 0x206f) || c == 0x115f || c == 0x1160 || c == 0x3164 ||
           c == 0xffa0 || c == 0xfeff || isWithin(c, 0xfff9, 0xfffb) || isWithin(c, 0xe0000, 0xe0fff);
}

/// A joiner belongs to the spelling only where it follows a letter of a script that has them, or joins pictures.
bool isStrayJoiner(char32_t c, char32_t before) {
    return (c == nonJoiner || c == joiner) && before < 0x600;
}

bool isHidden(char32_t c, char32_t before) {
    return isControl(c) || isSeparatorOrOverride(c) || isUnseen(c) || isStrayJoiner(c, before);
}

bool isPlainAscii(std::string_view text) {
    return std::ranges::all_of(text, [](char c) { return c >= 0x20 && c < 0x7f; });
}

/// Calls `see(character, bytes, code before)` for each character.
template <class See> void eachCharacter(std::string_view text, See see) {
    char32_t before = 0;
    while (!text.empty()) {
        const Character character = firstCharacter(text);
        see(character, text.substr(0, character.size), before);
        before = character.code;
        text.remove_prefix(character.size);
    }
}

void appendShown(std::string& out, char32_t c) {
    if (c == '\n' || c == '\r') {
        out += "↵";
    } else if (c < 0x20) {
        appendCharacter(out, 0x2400 + c);
    } else if (c == 0x7f) {
        appendCharacter(out, 0x2421);
    } else {
        out += "⟨" + codePoint(c) + "⟩";
    }
}

std::string shown(std::string_view bytes, bool linesStay) {
    if (isPlainAscii(bytes)) {
        return std::string(bytes);
    }
    std::string out;
    out.reserve(bytes.size() + 16);
    const auto isLineEnd = [&](std::string_view itself) {
        const auto at = static_cast<std::size_t>(itself.data() - bytes.data());
        return itself == "\n" || bytes.substr(at).starts_with("\r\n");
    };
    eachCharacter(bytes, [&](const Character& character, std::string_view itself, char32_t before) {
        if (!character.isGood) {
            appendCharacter(out, replacement);
        } else if (character.code == '\n' && before == '\r' && !linesStay) {
            return; // the two are one line break
        } else if (isHidden(character.code, before) && !(linesStay && isLineEnd(itself))) {
            appendShown(out, character.code);
        } else {
            out += itself;
        }
    });
    return out;
}

void appendEscape(std::string& out, char32_t unit) {
    static constexpr std::string_view digits = "0123456789abcdef";
    out += "\\u";
    for (int shift = 12; shift >= 0; shift -= 4) {
        out += digits[unit >> shift & 15];
    }
}

} // namespace

Character firstCharacter(std::string_view utf8) {
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(utf8[i]); };
    const unsigned char lead = byte(0);
    if (lead < 0x80) {
        return {lead, 1, true};
    }
    const std::size_t size = lead >= 0xf0 ? 4 : lead >= 0xe0 ? 3 : 2;
    if (lead < 0xc2 || lead > 0xf4 || size > utf8.size()) {
        return {replacement, 1, false};
    }
    char32_t code = lead & (0x7fU >> size);
    for (std::size_t i = 1; i < size; ++i) {
        if ((byte(i) & 0xc0) != 0x80) {
            return {replacement, 1, false};
        }
        code = code << 6 | (byte(i) & 0x3f);
    }
    const bool isOverlong = (size == 3 && code < 0x800) || (size == 4 && code < 0x10000);
    if (isOverlong || isWithin(code, 0xd800, 0xdfff) || code > 0x10ffff) {
        return {replacement, 1, false};
    }
    return {code, size, true};
}

void appendCharacter(std::string& utf8, char32_t code) {
    const auto add = [&](char32_t bits) { utf8 += static_cast<char>(static_cast<unsigned char>(bits)); };
    if (code < 0x80) {
        add(code);
        return;
    }
    if (code < 0x800) {
        add(0xc0 | code >> 6);
    } else if (code < 0x10000) {
        add(0xe0 | code >> 12);
        add(0x80 | (code >> 6 & 0x3f));
    } else {
        add(0xf0 | code >> 18);
        add(0x80 | (code >> 12 & 0x3f));
        add(0x80 | (code >> 6 & 0x3f));
    }
    add(0x80 | (code & 0x3f));
}

std::optional<char32_t> hiddenIn(std::string_view utf8, TextShape shape) {
    std::optional<char32_t> found;
    if (isPlainAscii(utf8)) {
        return found;
    }
    eachCharacter(utf8, [&](const Character& character, std::string_view, char32_t before) {
        const char32_t c = character.code;
        const bool mayStand = shape == TextShape::line
                                  ? !isHidden(c, before)
                                  : c == '\n' || c == '\t' || !(isControl(c) || isSeparatorOrOverride(c));
        if (!found && !mayStand) {
            found = c;
        }
    });
    return found;
}

std::string codePoint(char32_t code) {
    static constexpr std::string_view digits = "0123456789ABCDEF";
    std::string text;
    for (; code != 0 || text.size() < 4; code >>= 4) {
        text.insert(text.begin(), digits[code & 15]);
    }
    return "U+" + text;
}

std::string visibly(std::string_view bytes) {
    return shown(bytes, false);
}

std::string visibleLines(std::string_view bytes) {
    return shown(bytes, true);
}

std::string visibleJson(std::string_view json) {
    std::string out;
    out.reserve(json.size());
    eachCharacter(json, [&](const Character& character, std::string_view itself, char32_t before) {
        const char32_t c = character.code;
        // A control below a space stands between the members only: in a string it is escaped already.
        if ((c < 0x80 && c != 0x7f) || !character.isGood || !isHidden(c, before)) {
            out += itself;
        } else if (c < 0x10000) {
            appendEscape(out, c);
        } else {
            appendEscape(out, 0xd800 + ((c - 0x10000) >> 10));
            appendEscape(out, 0xdc00 + (c & 0x3ff));
        }
    });
    return out;
}

} // namespace caprail
