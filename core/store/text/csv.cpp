// SPDX-License-Identifier: GPL-3.0-or-later
#include <store/text/csv.h>

#include <base/csv.h>

namespace caprail {

namespace {

void write(CsvWriter& csv, const Cell& cell) {
    if (const auto* n = std::get_if<std::int64_t>(&cell)) {
        csv.number(*n);
    } else {
        const auto* text = std::get_if<std::string>(&cell);
        csv.text(text == nullptr ? std::string_view() : *text);
    }
}

/// What every table begins with, so that each can be read by itself.
void begin(CsvWriter& csv, const Ledger& ledger, const Entry& entry) {
    const std::int64_t strike = ledger.struckBy(entry.sequence);
    csv.number(entry.sequence).plain(format(entry.time)).text(entry.person);
    csv.number(strike == 0 ? std::nullopt : std::optional(strike));
}

std::map<std::string, CsvWriter> tablesOf(const Ledger& ledger) {
    std::map<std::string, CsvWriter> tables;
    CsvWriter& entries =
        tables.emplace("entries", CsvWriter({"sequence", "time", "person", "struck_by", "kind", "seal"})).first->second;
    for (const Entry& entry : ledger.entries()) {
        const KindInfo& info = kindOf(entry.body);
        begin(entries, ledger, entry);
        entries.plain(info.kind).plain(toHex(entry.seal)).endLine();
        CsvWriter& table = tables[std::string(info.kind)];
        if (table.written().empty()) {
            table.plain("sequence").plain("time").plain("person").plain("struck_by");
            for (const Column& column : info.columns) {
                table.plain(column.name);
            }
            table.endLine();
        }
        begin(table, ledger, entry);
        for (const Cell& cell : cellsOf(entry.body)) {
            write(table, cell);
        }
        table.endLine();
    }
    return tables;
}

} // namespace

std::map<std::string, std::string> csvTablesOf(const Ledger& ledger) {
    std::map<std::string, std::string> texts;
    for (const auto& [name, table] : tablesOf(ledger)) {
        texts.emplace(name, table.written());
    }
    return texts;
}

} // namespace caprail
