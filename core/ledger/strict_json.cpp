// SPDX-License-Identifier: GPL-3.0-or-later
#include <ledger/strict_json.h>

#include <algorithm>
#include <string>
#include <base/plain_text.h>
#include <base/say.h>
#include <vector>

namespace caprail {

namespace {

constexpr std::size_t deepest = 100;

bool isSurrogate(char32_t c) {
    return c >= 0xd800 && c <= 0xdfff;
}
bool isNoncharacter(char32_t c) {
    return (c >= 0xfdd0 && c <= 0xfdef) || (c & 0xfffe) == 0xfffe;
}

/// Goes through the text once; objects and arrays stand on a stack of its own, so no text can exhaust the program's.
class Scanner {
public:
    explicit Scanner(std::string_view text) : m_text(text) {
        constexpr std::string_view mark = "\xef\xbb\xbf"; // some editors begin a file with it
        m_at = text.starts_with(mark) ? mark.size() : 0;
    }

    Result<void> run() {
        if (auto value = scanValue(); !value) {
            return value;
        }
        while (!m_open.empty()) {
            if (auto step = goOn(); !step) {
                return step;
            }
        }
        skipSpace();
        return m_at == m_text.size() ? Result<void>() : unexpected();
    }

private:
    struct Open {
        bool isObject = false;
        bool isFirst = true;
        std::vector<std::string> names;
    };

    Result<void> unexpected() const {
        return m_at < m_text.size()
                   ? refuse(Core::say("This is not JSON: “%1” does not belong at byte %2.",
                                      m_text.substr(m_at, firstCharacter(m_text.substr(m_at)).size), m_at))
                   : refuse(Core::say("This is not JSON: it ends too early, at byte %1.", m_at));
    }

    void skipSpace() { m_at = std::min(m_text.find_first_not_of(" \t\n\r", m_at), m_text.size()); }
    [[nodiscard]] char here() const { return m_at < m_text.size() ? m_text[m_at] : '\0'; }
    bool take(char c) {
        const bool isThere = m_at < m_text.size() && m_text[m_at] == c;
        m_at += isThere ? 1 : 0;
        return isThere;
    }

    /// One member, element, or the end of the innermost object or array.
    Result<void> goOn() {
        Open& open = m_open.back();
        skipSpace();
        if (take(open.isObject ? '}' : ']')) {
            return close();
        }
        if (!open.isFirst) {
            if (!take(',')) {
                return unexpected();
            }
            skipSpace();
        }
        open.isFirst = false;
        if (open.isObject) {
            std::string name;
            if (auto read = scanString(name); !read) {
                return read;
            }
            open.names.push_back(std::move(name));
            skipSpace();
            if (!take(':')) {
                return unexpected();
            }
        } else if (here() == ']') {
            return unexpected(); // after a comma
        }
        return scanValue();
    }

    Result<void> close() {
        auto& names = m_open.back().names;
        std::ranges::sort(names);
        const auto twice = std::ranges::adjacent_find(names);
        if (twice != names.end()) {
            return refuse(Core::say("The member “%1” is given twice: leave one of them out.", twice->substr(0, 60)));
        }
        m_open.pop_back();
        return {};
    }

    Result<void> scanValue() {
        skipSpace();
        const char c = here();
        if (c == '{' || c == '[') {
            ++m_at;
            m_open.push_back({c == '{', true, {}});
            return m_open.size() <= deepest ? Result<void>()
                                            : refuse(Core::say("This JSON is nested more than %1 deep.", deepest));
        }
        if (c == '"') {
            std::string ignored;
            return scanString(ignored);
        }
        for (const std::string_view literal : {"true", "false", "null"}) {
            if (m_text.substr(m_at).starts_with(literal)) {
                m_at += literal.size();
                return {};
            }
        }
        return scanNumber();
    }

    std::size_t digits() {
        const std::size_t begin = m_at;
        m_at = std::min(m_text.find_first_not_of("0123456789", m_at), m_text.size());
        return m_at - begin;
    }

    Result<void> scanNumber() {
        take('-');
        if (!take('0') && digits() == 0) {
            return unexpected();
        }
        if (take('.') && digits() == 0) {
            return unexpected();
        }
        if (here() == 'e' || here() == 'E') {
            ++m_at;
            if (!take('+')) {
                take('-');
            }
            if (digits() == 0) {
                return unexpected();
            }
        }
        return {};
    }

    Result<void> scanString(std::string& value) {
        if (!take('"')) {
            return unexpected();
        }
        while (!take('"')) {
            if (m_at >= m_text.size() || static_cast<unsigned char>(here()) < 0x20) {
                return unexpected();
            }
            if (take('\\')) {
                if (auto escape = scanEscape(value); !escape) {
                    return escape;
                }
                continue;
            }
            const Character character = firstCharacter(m_text.substr(m_at));
            if (!character.isGood) {
                return refuse(Core::say("This is not JSON: the text at byte %1 is not UTF-8.", m_at));
            }
            if (isNoncharacter(character.code)) {
                return refuse(noncharacter(character.code));
            }
            value += m_text.substr(m_at, character.size);
            m_at += character.size;
        }
        return {};
    }

    std::string noncharacter(char32_t character) const {
        return Core::say("The text at byte %1 holds %2, which is not a character: type it again.", m_at,
                         codePoint(character));
    }

    Result<void> scanEscape(std::string& value) {
        static constexpr std::string_view letters = "\"\\/bfnrt", meant = "\"\\/\b\f\n\r\t";
        if (const auto at = letters.find(here()); m_at < m_text.size() && at != std::string_view::npos) {
            value += meant[at];
            ++m_at;
            return {};
        }
        const std::size_t begin = m_at;
        char32_t character = 0;
        if (!take('u') || !scanUnit(character)) {
            return unexpected();
        }
        char32_t low = 0;
        if (character >= 0xd800 && character <= 0xdbff && take('\\') && take('u') && scanUnit(low) && low >= 0xdc00 &&
            low <= 0xdfff) {
            character = 0x10000 + ((character - 0xd800) << 10) + (low - 0xdc00);
        }
        if (isSurrogate(character)) {
            return refuse(Core::say("The text at byte %1 holds half a character (%2): type it again.", begin,
                                    codePoint(character)));
        }
        if (isNoncharacter(character)) {
            return refuse(noncharacter(character));
        }
        appendCharacter(value, character);
        return {};
    }

    /// Four hexadecimal digits.
    bool scanUnit(char32_t& unit) {
        static constexpr std::string_view digits = "0123456789abcdef";
        unit = 0;
        for (int i = 0; i < 4; ++i) {
            const char c = here();
            const auto digit = digits.find(c >= 'A' && c <= 'F' ? static_cast<char>(c - 'A' + 'a') : c);
            if (m_at >= m_text.size() || digit == std::string_view::npos) {
                return false;
            }
            unit = unit << 4 | static_cast<char32_t>(digit);
            ++m_at;
        }
        return true;
    }

    std::string_view m_text;
    std::size_t m_at = 0;
    std::vector<Open> m_open;
};

} // namespace

Result<void> checkJson(std::string_view text) {
    return Scanner(text).run();
}

} // namespace caprail
