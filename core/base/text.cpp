// SPDX-License-Identifier: GPL-3.0-or-later
#include <base/text.h>

#include <charconv>

namespace caprail {

namespace {

constexpr std::string_view whiteSpace = " \t\r\n\v\f";

bool isDigit(char c) {
    return c >= '0' && c <= '9';
}

} // namespace

std::string_view trimmed(std::string_view text) {
    const auto first = text.find_first_not_of(whiteSpace);
    return first == std::string_view::npos ? std::string_view()
                                           : text.substr(first, text.find_last_not_of(whiteSpace) - first + 1);
}

std::string lowered(std::string_view text) {
    std::string out(text);
    for (char& c : out) {
        c = c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    }
    return out;
}

std::string capitalLetters(std::string_view text) {
    std::string out(text);
    bool isAfterC3 = false; // U+00E0 to U+00FE are C3 A0 to C3 BE, their capitals C3 80 to C3 9E; U+00F7 is ÷
    for (char& c : out) {
        const auto byte = static_cast<unsigned char>(c);
        if ((c >= 'a' && c <= 'z') || (isAfterC3 && byte >= 0xA0 && byte <= 0xBE && byte != 0xB7)) {
            c = static_cast<char>(byte - 0x20);
        }
        isAfterC3 = byte == 0xC3;
    }
    return out;
}

std::string quotedText(std::string_view text) {
    constexpr std::size_t longest = 40;
    if (text.size() <= longest) {
        return "“" + std::string(text) + "”";
    }
    std::size_t end = longest;
    while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xC0U) == 0x80U) {
        --end;
    }
    return "“" + std::string(text.substr(0, end)) + "…”";
}

HeadAndRest headAndRest(std::string_view text) {
    text = trimmed(text);
    const auto end = text.find_first_of(whiteSpace);
    return {text.substr(0, end), end == std::string_view::npos ? std::string_view() : trimmed(text.substr(end))};
}

bool isBlank(std::string_view text) {
    return text.find_first_not_of(" \t\n\r") == std::string_view::npos;
}

std::vector<std::string_view> partedBy(std::string_view text, std::string_view marks) {
    std::vector<std::string_view> parts;
    for (;;) {
        const auto end = text.find_first_of(marks);
        parts.push_back(trimmed(text.substr(0, end)));
        if (end == std::string_view::npos) {
            return parts;
        }
        text.remove_prefix(end + 1);
    }
}

std::vector<std::string_view> partsOf(std::string_view text, std::initializer_list<std::string_view> marks) {
    std::vector<std::string_view> parts;
    std::size_t begin = 0;
    const auto finish = [&](std::size_t end) {
        if (end > begin) {
            parts.push_back(text.substr(begin, end - begin));
        }
    };
    for (std::size_t at = 0; at < text.size();) {
        std::size_t between = whiteSpace.find(text[at]) == std::string_view::npos ? 0 : 1;
        for (const std::string_view mark : marks) {
            between = text.substr(at).starts_with(mark) ? mark.size() : between;
        }
        if (between > 0) {
            finish(at);
            begin = at + between;
        }
        at += between > 0 ? between : 1;
    }
    finish(text.size());
    return parts;
}

std::optional<Decimal> takeDecimal(std::string_view& text, char mark) {
    Decimal number;
    int count = 0;
    std::size_t i = 0;
    for (; i < text.size(); ++i) {
        const char c = text[i];
        if (isDigit(c)) {
            if (++count > 15) {
                return {};
            }
            number.digits = number.digits * 10 + (c - '0');
            number.decimals += number.hasMark ? 1 : 0;
        } else if ((c == '.' || (c == mark && mark == ',')) && !number.hasMark) {
            number.hasMark = true;
        } else {
            break;
        }
    }
    if (count == 0) {
        return {};
    }
    text.remove_prefix(i);
    return number;
}

std::optional<double> decimalNumber(std::string_view text) {
    const auto number = takeDecimal(text, ',');
    if (!number || !text.empty()) {
        return {};
    }
    double power = 1; // exact up to 10^22, so that the division rounds once
    for (int i = 0; i < number->decimals; ++i) {
        power *= 10;
    }
    return static_cast<double>(number->digits) / power;
}

std::optional<int> wholeNumber(std::string_view text) {
    int value = 0;
    if (text.empty() || text.size() > 6 || !isDigit(text.front())) {
        return {};
    }
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    return error == std::errc() && end == text.data() + text.size() ? std::optional(value) : std::nullopt;
}

} // namespace caprail
