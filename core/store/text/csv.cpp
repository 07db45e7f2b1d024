// SPDX-License-Identifier: GPL-3.0-or-later
#include <store/text/csv.h>

#include <algorithm>
#include <map>
#include <store/file/new_file.h>
#include <base/plain_text.h>

namespace caprail {

namespace {

constexpr std::string_view lineEnd = "\r\n";

std::string cellText(const Cell& cell) {
    if (const auto* n = std::get_if<std::int64_t>(&cell)) {
        return std::to_string(*n);
    }
    const auto* text = std::get_if<std::string>(&cell);
    return text == nullptr ? std::string() : csvField(*text);
}

/// What every table begins with, so that each can be read by itself.
std::string beginning(const Ledger& ledger, const Entry& entry) {
    const std::int64_t strike = ledger.struckBy(entry.sequence);
    return std::to_string(entry.sequence) + "," + format(entry.time) + "," + csvField(entry.person) + "," +
           (strike == 0 ? "" : std::to_string(strike));
}

std::map<std::string, std::string> tablesOf(const Ledger& ledger) {
    std::map<std::string, std::string> tables;
    std::string& entries = tables["entries"];
    entries = "sequence,time,person,struck_by,kind,seal";
    entries += lineEnd;
    for (const Entry& entry : ledger.entries()) {
        const KindInfo& info = kindOf(entry.body);
        const std::string begins = beginning(ledger, entry);
        entries += begins + "," + std::string(info.kind) + "," + toHex(entry.seal);
        entries += lineEnd;
        std::string& table = tables[std::string(info.kind)];
        if (table.empty()) {
            table = "sequence,time,person,struck_by";
            for (const Column& column : info.columns) {
                table += "," + column.name;
            }
            table += lineEnd;
        }
        table += begins;
        for (const Cell& cell : cellsOf(entry.body)) {
            table += "," + cellText(cell);
        }
        table += lineEnd;
    }
    return tables;
}

/// A number as people type it, with its unit: "-0.5 thou", "+4°". No spreadsheet takes it for a formula.
bool isTypedNumber(std::string_view text) {
    text.remove_prefix(1);
    const auto end = text.find_first_not_of("0123456789.,");
    const std::string_view unit = end == std::string_view::npos ? "" : text.substr(end);
    return end != 0 && !text.empty() && std::ranges::all_of(unit, [](char c) {
               return c == ' ' || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') ||
                      static_cast<unsigned char>(c) >= 0x80;
           });
}

/// Whether a spreadsheet may take a text for a formula and run it: it begins with = + - @, in either width, a tab or a
/// carriage return.
bool isFormula(std::string_view text) {
    constexpr std::string_view signs[] = {"=", "+", "-", "@", "\t", "\r", "＝", "＋", "－", "＠"};
    const bool begins = std::ranges::any_of(signs, [&](std::string_view sign) { return text.starts_with(sign); });
    return begins && !((text[0] == '+' || text[0] == '-') && isTypedNumber(text));
}

} // namespace

std::string csvField(std::string_view given) {
    const std::string text = (isFormula(given) ? "'" : "") + visibleLines(given);
    if (text.find_first_of(",\"\r\n") == std::string::npos) {
        return text;
    }
    std::string field = "\"";
    for (const char c : text) {
        field += c;
        if (c == '"') {
            field += '"';
        }
    }
    return field + "\"";
}

Result<void> exportCsv(const Ledger& ledger, const std::string& folder) {
    return makeNewFolder(folder, [&](const std::string& unfinished) -> Result<void> {
        for (const auto& [name, text] : tablesOf(ledger)) {
            if (auto written = writeInside(unfinished + "/" + name + ".csv", text); !written) {
                return written;
            }
        }
        return {};
    });
}

} // namespace caprail
