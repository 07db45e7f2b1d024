// SPDX-License-Identifier: GPL-3.0-or-later
#include <base/csv.h>

#include <algorithm>
#include <base/plain_text.h>

namespace caprail {

namespace {

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
/// carriage return. One that begins with an apostrophe gets another, so that whoever drops one from each cell that has it
/// reads every text back as it was.
bool needsApostrophe(std::string_view text) {
    constexpr std::string_view signs[] = {"=", "+", "-", "@", "\t", "\r", "＝", "＋", "－", "＠", "'"};
    const bool begins = std::ranges::any_of(signs, [&](std::string_view sign) { return text.starts_with(sign); });
    return begins && !((text[0] == '+' || text[0] == '-') && isTypedNumber(text));
}

} // namespace

std::string harmlessCell(std::string_view cell) {
    return (needsApostrophe(cell) ? "'" : "") + visibleLines(cell);
}

CsvWriter::CsvWriter(std::initializer_list<std::string_view> head) {
    for (const std::string_view title : head) {
        text(title);
    }
    endLine();
}

CsvWriter& CsvWriter::text(std::string_view cell) {
    return plain(harmlessCell(cell));
}

CsvWriter& CsvWriter::number(std::int64_t cell) {
    return plain(std::to_string(cell));
}

CsvWriter& CsvWriter::plain(std::string_view cell) {
    if (m_isBegun) {
        m_text += ',';
    }
    m_isBegun = true;
    if (cell.find_first_of(",\"\r\n") == std::string_view::npos) { // section 2, rules 5 to 7
        m_text += cell;
        return *this;
    }
    m_text += '"';
    for (const char c : cell) {
        m_text += c;
        if (c == '"') {
            m_text += '"';
        }
    }
    m_text += '"';
    return *this;
}

void CsvWriter::endLine() {
    m_text += "\r\n";
    m_isBegun = false;
}

} // namespace caprail
