// SPDX-License-Identifier: GPL-3.0-or-later
#include <ledger/entry.h>

namespace caprail {

namespace {

/// A JSON string as RFC 8785 (section 3.2.2.2) wants it: the two-letter escapes where there is one, \u00xx for the
/// other control characters, everything else as it is.
void appendString(std::string& out, std::string_view text) {
    static constexpr std::string_view digits = "0123456789abcdef";
    out += '"';
    std::size_t plain = 0; // where the run of characters that stand for themselves begins
    for (std::size_t at = 0; at < text.size(); ++at) {
        const char c = text[at];
        const auto byte = static_cast<unsigned char>(c);
        if (byte >= 0x20 && c != '"' && c != '\\') {
            continue;
        }
        out += text.substr(plain, at - plain);
        plain = at + 1;
        switch (c) {
        case '"':
            out += "\\\"";
            break;
        case '\\':
            out += "\\\\";
            break;
        case '\b':
            out += "\\b";
            break;
        case '\f':
            out += "\\f";
            break;
        case '\n':
            out += "\\n";
            break;
        case '\r':
            out += "\\r";
            break;
        case '\t':
            out += "\\t";
            break;
        default:
            out += "\\u00";
            out += digits[byte >> 4];
            out += digits[byte & 15];
        }
    }
    out += text.substr(plain);
    out += '"';
}

void appendName(std::string& out, std::string_view name) {
    out += out.size() > 1 ? ",\"" : "\"";
    out += name; // column names are plain ASCII identifiers
    out += "\":";
}

} // namespace

std::string canonicalText(std::int64_t sequence, UtcTime time, std::string_view person, const KindInfo& info,
                          const std::vector<Cell>& cells) {
    // The four members that every entry has, sorted; the kind's own are merged in between.
    struct Common {
        std::string_view name;
        std::string_view text;
    };
    const std::string timeText = format(time);
    const Common common[] = {{"kind", info.kind}, {"person", person}, {"sequence", {}}, {"time", timeText}};
    std::string out = "{";
    std::size_t next = 0;
    const auto appendCommonBefore = [&](std::string_view name) {
        for (; next < 4 && (name.empty() || common[next].name < name); ++next) {
            appendName(out, common[next].name);
            if (common[next].name == "sequence") {
                out += std::to_string(sequence);
            } else {
                appendString(out, common[next].text);
            }
        }
    };
    for (const std::size_t i : info.canonicalOrder) {
        const Cell& cell = cells[i];
        if (std::holds_alternative<std::monostate>(cell)) {
            continue;
        }
        appendCommonBefore(info.columns[i].name);
        appendName(out, info.columns[i].name);
        if (const auto* n = std::get_if<std::int64_t>(&cell)) {
            out += std::to_string(*n);
        } else {
            appendString(out, std::get<std::string>(cell));
        }
    }
    appendCommonBefore({});
    out += '}';
    return out;
}

std::string canonicalText(const Entry& entry) {
    return canonicalText(entry.sequence, entry.time, entry.person, kindOf(entry.body), cellsOf(entry.body));
}

bool operator==(const Entry& a, const Entry& b) {
    return a.seal == b.seal && canonicalText(a) == canonicalText(b);
}

} // namespace caprail
