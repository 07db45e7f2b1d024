// SPDX-License-Identifier: GPL-3.0-or-later
#include <ledger/entry.h>

#include <algorithm>
#include <charconv>

namespace caprail {

namespace {

constexpr std::size_t longestNumber = 20;
/// A control character takes six characters, and the quotes two more.
constexpr std::size_t longestText(std::string_view text) {
    return 6 * text.size() + 2;
}

/// Whether every character of a text stands for itself in JSON. Written so that the compiler takes many at a time:
/// nearly every text does, and all are asked on opening.
bool standsForItself(std::string_view text) {
    unsigned escaped = 0;
    for (const char c : text) {
        const auto byte = static_cast<unsigned char>(c);
        escaped |= static_cast<unsigned>(byte < 0x20) | static_cast<unsigned>(byte == '"') |
                   static_cast<unsigned>(byte == '\\');
    }
    return escaped == 0;
}

/// What stands for a character in a JSON string as RFC 8785 (section 3.2.2.2) wants it: the two-letter escapes where
/// there is one, \u00xx for the other control characters, everything else as it is.
std::string escaped(char c) {
    static constexpr std::string_view digits = "0123456789abcdef";
    switch (c) {
    case '"':
        return "\\\"";
    case '\\':
        return "\\\\";
    case '\b':
        return "\\b";
    case '\f':
        return "\\f";
    case '\n':
        return "\\n";
    case '\r':
        return "\\r";
    case '\t':
        return "\\t";
    default:
        break;
    }
    const auto byte = static_cast<unsigned char>(c);
    return byte >= 0x20 ? std::string(1, c) : std::string("\\u00") + digits[byte >> 4] + digits[byte & 15];
}

} // namespace

void CanonicalWriter::copy(std::string_view bytes) {
    m_end = std::copy(bytes.begin(), bytes.end(), m_end);
}

void CanonicalWriter::text(std::string_view text) {
    *m_end++ = '"';
    if (standsForItself(text)) {
        copy(text);
    } else {
        for (const char c : text) {
            copy(escaped(c));
        }
    }
    *m_end++ = '"';
}

void CanonicalWriter::number(std::int64_t number) {
    m_end = std::to_chars(m_end, m_end + longestNumber, number).ptr;
}

std::string_view CanonicalWriter::write(std::int64_t sequence, std::string_view time, std::string_view person,
                                        const KindInfo& info, std::span<const CellView> cells) {
    // Room for all of it first, so that nothing that is written asks again.
    std::size_t most = longestText(info.kind) + longestText(person) + longestText(time) + longestNumber + 1;
    for (const CanonicalMember& member : info.canonical) {
        most += member.name.size();
    }
    for (const CellView& cell : cells) {
        const auto* held = std::get_if<std::string_view>(&cell);
        most += held == nullptr ? longestNumber : longestText(*held);
    }
    if (m_memory.size() < most) {
        m_memory.resize(most);
    }
    m_end = m_memory.data();
    for (const CanonicalMember& member : info.canonical) {
        const CellView* const cell = member.of == CanonicalMember::Of::column ? &cells[member.column] : nullptr;
        if (cell != nullptr && std::holds_alternative<std::monostate>(*cell)) {
            continue;
        }
        copy(member.name);
        switch (member.of) {
        case CanonicalMember::Of::kind:
            text(info.kind);
            break;
        case CanonicalMember::Of::person:
            text(person);
            break;
        case CanonicalMember::Of::sequence:
            number(sequence);
            break;
        case CanonicalMember::Of::time:
            text(time);
            break;
        case CanonicalMember::Of::column:
            if (const auto* n = std::get_if<std::int64_t>(cell)) {
                number(*n);
            } else {
                text(std::get<std::string_view>(*cell));
            }
        }
    }
    m_memory.front() = '{'; // for the comma of the first member
    *m_end++ = '}';
    return {m_memory.data(), m_end};
}

std::string canonicalText(std::int64_t sequence, UtcTime time, std::string_view person, const KindInfo& info,
                          const std::vector<Cell>& cells) {
    return std::string(CanonicalWriter().write(sequence, format(time), person, info, viewsOf(cells)));
}

std::string canonicalText(const Entry& entry) {
    return canonicalText(entry.sequence, entry.time, entry.person, kindOf(entry.body), cellsOf(entry.body));
}

bool operator==(const Entry& a, const Entry& b) {
    return a.seal == b.seal && canonicalText(a) == canonicalText(b);
}

} // namespace caprail
