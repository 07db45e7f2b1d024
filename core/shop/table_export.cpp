// SPDX-License-Identifier: GPL-3.0-or-later
#include <shop/table_export.h>

#include <algorithm>
#include <base/csv.h>
#include <array>
#include <charconv>
#include <ledger/entry_schema.h>
#include <shop/result_tables.h>
#include <store/file/new_file.h>
#include <store/text/csv.h>

namespace caprail {

namespace {

/// The shortest text that reads back as the same number.
std::string numberText(double number) {
    std::array<char, 40> text{};
    const auto end = std::to_chars(text.data(), text.data() + text.size(), number).ptr;
    return {text.data(), end};
}

void write(CsvWriter& csv, const ResultCell& cell) {
    if (const auto* whole = std::get_if<std::int64_t>(&cell)) {
        csv.number(*whole);
    } else if (const auto* number = std::get_if<double>(&cell)) {
        csv.plain(numberText(*number));
    } else if (const auto* text = std::get_if<std::string>(&cell)) {
        csv.text(*text);
    } else {
        csv.empty();
    }
}

/// "gap, whole number of nanometres", "gap, as it was typed"
std::string wordsOf(const Column& column) {
    std::string words = column.name;
    const bool isTyped = words.ends_with("_typed");
    if (unitOf(column).size() > 1 || isTyped) {
        words.resize(words.rfind('_'));
    }
    std::ranges::replace(words, '_', ' ');
    return words + (isTyped ? ", as it was typed" : ", " + meaningOf(column));
}

std::string csvOf(const ResultTable& table) {
    CsvWriter csv;
    for (const ResultColumn& column : table.columns) {
        csv.plain(column.name);
    }
    csv.endLine();
    for (const auto& row : table.rows) {
        for (const ResultCell& cell : row) {
            write(csv, cell);
        }
        csv.endLine();
    }
    return csv.written();
}

std::string dictionaryOf(const std::vector<ResultTable>& results, const std::map<std::string, std::string>& entries) {
    CsvWriter csv({"table", "column", "unit", "meaning"});
    const auto add = [&](std::string_view table, std::string_view column, std::string_view unit, std::string_view meaning) {
        csv.plain(table).plain(column).plain(unit).plain(meaning).endLine();
    };
    add("dictionary", "table", "", "name of the file without .csv");
    add("dictionary", "column", "", "name of the column; empty: the row is about the table");
    add("dictionary", "unit", "", "of the numbers; 1: a plain number; empty: text");
    add("dictionary", "meaning", "",
        "in words. A text cell that begins with an apostrophe is read without that one: it keeps a spreadsheet from taking the "
        "text for a formula");
    for (const ResultTable& table : results) {
        add(table.name, "", "", table.meaning);
        for (const ResultColumn& column : table.columns) {
            add(table.name, column.name, column.unit, column.meaning);
        }
    }
    for (const auto& [name, text] : entries) {
        const auto kind = kindIndex(name);
        add(name, "", "", kind ? "Entries of the kind “" + std::string(allKinds()[*kind].title) + "”, struck ones too."
                               : std::string("Every entry of the record, in order."));
        add(name, "sequence", "1", "number of the entry");
        add(name, "time", "UTC", "when it was made, RFC 3339");
        add(name, "person", "", "who made it");
        add(name, "struck_by", "1", "number of the entry that withdrew it; empty: it stands");
        if (!kind) {
            add(name, "kind", "", "kind of the entry, and name of the table with its fields");
            add(name, "seal", "", "SHA-256 over the seal before and this entry");
            continue;
        }
        for (const Column& column : allKinds()[*kind].columns) {
            add(name, column.name, unitOf(column), wordsOf(column));
        }
    }
    return csv.written();
}

} // namespace

Result<void> exportTables(const Ledger& ledger, const Facts& facts, const Assessment& assessment,
                          const std::string& folder, const TableOptions& options) {
    const auto results = resultTables(facts, assessment);
    std::map<std::string, std::string> files = csvTablesOf(ledger);
    files.emplace("dictionary", dictionaryOf(results, files));
    for (const ResultTable& table : results) {
        files.emplace(table.name, csvOf(table));
    }
    return makeNewFolder(folder, [&](const std::string& unfinished) -> Result<void> {
        for (const auto& [name, text] : files) {
            const std::string mark = options.withByteOrderMark ? "\xEF\xBB\xBF" : "";
            if (auto written = writeInside(unfinished + "/" + name + ".csv", mark + text); !written) {
                return written;
            }
        }
        return {};
    });
}

} // namespace caprail
