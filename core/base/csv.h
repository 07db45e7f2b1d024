// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// The one way in which tables for a spreadsheet are written (RFC 4180: commas, CRLF, quotes doubled; UTF-8).
#include <cstdint>
#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>

namespace caprail {

/// A text as it may be given to a spreadsheet: with an apostrophe before what would be taken for a formula, and what
/// cannot be seen made visible.
std::string harmlessCell(std::string_view cell);

/// A table, cell by cell:
///
///     CsvWriter csv({"shim", "thickness_nm"});
///     csv.text(shim.name).number(shim.thickness.value()).endLine();
///
/// A text cell is never taken for a formula: a spreadsheet would work out one that begins with = + - @, a tab or a
/// carriage return, so an apostrophe is put before it, and before one that is there (typed numbers such as "-0.5 thou" stay as they are); and what
/// cannot be seen in it is made visible (base/plain_text.h). Numbers are written as they are, −5 too.
class CsvWriter {
public:
    CsvWriter() = default;
    explicit CsvWriter(std::initializer_list<std::string_view> head);

    /// What a person typed, or a name that may hold anything.
    CsvWriter& text(std::string_view cell);
    CsvWriter& number(std::int64_t cell);
    /// A number, a date or a word of the program's own, as it is to stand there.
    CsvWriter& plain(std::string_view cell);
    CsvWriter& empty() { return plain({}); }
    /// The number, or an empty cell.
    CsvWriter& number(std::optional<std::int64_t> cell) { return cell ? number(*cell) : empty(); }
    void endLine();

    [[nodiscard]] const std::string& written() const { return m_text; }

private:
    std::string m_text;
    bool m_isBegun = false; ///< the line has a cell
};

} // namespace caprail
