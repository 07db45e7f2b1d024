// SPDX-License-Identifier: GPL-3.0-or-later
/// The tables of results, and the folder of tables with its dictionary.
#include "shop_records.h"

#include <algorithm>
#include <gmock/gmock.h>
#include <shop/result_tables.h>
#include <shop/table_export.h>
#include <store/file/read_file.h>

namespace caprail {
namespace {

using testing::HasSubstr;

/// The sample of a whole job.
const RecordFile& closedRecord() {
    static const auto file = RecordFile::open(SAMPLE_BUILDS "/closed.caprail", OpenMode::readOnly);
    EXPECT_TRUE(file) << file.error().sentence;
    return *file;
}

const ResultTable& tableNamed(const std::vector<ResultTable>& tables, std::string_view name) {
    const auto at = std::ranges::find(tables, name, &ResultTable::name);
    EXPECT_NE(at, tables.end()) << name;
    return *at;
}

std::size_t columnOf(const ResultTable& table, std::string_view name) {
    const auto at = std::ranges::find(table.columns, name, &ResultColumn::name);
    EXPECT_NE(at, table.columns.end()) << name;
    return static_cast<std::size_t>(at - table.columns.begin());
}

} // namespace

TEST(ResultTables, have_a_cell_for_each_column_and_a_number_only_where_there_is_a_unit) {
    const Facts facts = fold(closedRecord().ledger());
    for (const ResultTable& table : resultTables(facts, assess(facts))) {
        EXPECT_FALSE(table.rows.empty()) << table.name << ": the sample has something of everything";
        for (const auto& row : table.rows) {
            ASSERT_EQ(row.size(), table.columns.size()) << table.name;
            for (std::size_t i = 0; i < row.size(); ++i) {
                const ResultColumn& column = table.columns[i];
                const bool isNumber =
                    std::holds_alternative<std::int64_t>(row[i]) || std::holds_alternative<double>(row[i]);
                const bool isText = std::holds_alternative<std::string>(row[i]);
                EXPECT_FALSE(isNumber && (column.unit.empty() || column.unit == "UTC")) << table.name << "." << column.name;
                EXPECT_FALSE(isText && !column.unit.empty() && column.unit != "UTC") << table.name << "." << column.name;
                EXPECT_FALSE(column.meaning.empty()) << table.name << "." << column.name;
                EXPECT_EQ(column.unit == "nm", column.name.ends_with("_nm")) << table.name << "." << column.name;
            }
        }
    }
}

TEST(ResultTables, say_what_the_assessment_says) {
    const Facts facts = fold(closedRecord().ledger());
    const Assessment a = assess(facts);
    const auto tables = resultTables(facts, a);
    const ResultTable& stacks = tableNamed(tables, "results_stacks");
    ASSERT_EQ(stacks.rows.size(), a.stacks.size());
    std::size_t at = 0;
    for (const auto& [position, stack] : a.stacks) {
        const auto& row = stacks.rows[at++];
        EXPECT_EQ(row[columnOf(stacks, "position")], ResultCell(code(position)));
        EXPECT_EQ(row[columnOf(stacks, "carried_residual_nm")], ResultCell(stack.carriedResidual->value()));
        EXPECT_EQ(row[columnOf(stacks, "carried_expanded_uncertainty_nm")],
                  ResultCell(*stack.carriedUncertainty.expanded()));
    }
    EXPECT_EQ(tableNamed(tables, "results_checks").rows.size(), a.checks.size());
    const ResultTable& fasteners = tableNamed(tables, "results_fasteners");
    for (const auto& row : fasteners.rows) {
        EXPECT_EQ(row[columnOf(fasteners, "is_loose")], ResultCell(std::int64_t{0}));
    }
}

TEST(ResultTables, leave_empty_what_is_not_known) {
    Ledger ledger = shoptest::shortLedger("Orrin Vale", "V8");
    const Facts facts = fold(ledger);
    for (const ResultTable& table : resultTables(facts, assess(facts))) {
        for (const auto& row : table.rows) {
            for (std::size_t i = 0; i < row.size(); ++i) {
                if (table.columns[i].name.find("uncertainty") != std::string_view::npos) {
                    EXPECT_NE(row[i], ResultCell(std::int64_t{0})) << table.name;
                    EXPECT_NE(row[i], ResultCell(0.0)) << table.name;
                }
            }
        }
    }
}

TEST(TableExport, tells_every_column_of_every_table_in_its_dictionary) {
    const shoptest::Folder folder;
    const Facts facts = fold(closedRecord().ledger());
    const auto done = exportTables(closedRecord().ledger(), facts, assess(facts), folder / "tables");
    ASSERT_TRUE(done) << done.error().sentence;
    const auto dictionary = readWholeFile(folder / "tables/dictionary.csv", 1 << 20);
    ASSERT_TRUE(dictionary);
    int columns = 0;
    for (const auto& file : std::filesystem::directory_iterator(folder / "tables")) {
        const std::string text = *readWholeFile(file.path().string(), 1 << 24);
        const std::string name = file.path().stem().string();
        std::string head = text.substr(0, text.find("\r\n")) + ",";
        for (std::size_t from = 0, comma = 0; (comma = head.find(',', from)) != std::string::npos; from = comma + 1) {
            EXPECT_THAT(*dictionary, HasSubstr("\r\n" + name + "," + head.substr(from, comma - from) + ","));
            ++columns;
        }
    }
    EXPECT_GT(columns, 200);
    EXPECT_THAT(*dictionary, HasSubstr("\r\ngap_reading,gap_nm,nm,"));
    EXPECT_THAT(*dictionary, HasSubstr("\r\nresults_gaps,expanded_uncertainty_nm,nm,"));
}

TEST(TableExport, begins_each_file_with_a_byte_order_mark_where_it_is_asked_to) {
    const shoptest::Folder folder;
    const Ledger ledger = shoptest::shortLedger("Orrin Vale", "V8");
    const Facts facts = fold(ledger);
    ASSERT_TRUE(exportTables(ledger, facts, assess(facts), folder / "with", {.withByteOrderMark = true}));
    ASSERT_TRUE(exportTables(ledger, facts, assess(facts), folder / "without"));
    std::size_t files = 0;
    for (const auto& file : std::filesystem::directory_iterator(folder / "with")) {
        ++files;
        const std::string with = *readWholeFile(file.path().string(), 1 << 20);
        EXPECT_TRUE(with.starts_with("\xEF\xBB\xBF")) << file.path();
        EXPECT_EQ(with.substr(3), *readWholeFile(folder / "without/" + file.path().filename().string(), 1 << 20));
    }
    EXPECT_GE(files, 5U) << "entries, kinds of entries, results, a dictionary";
}

TEST(TableExport, never_overwrites_and_leaves_nothing_half_made) {
    const shoptest::Folder folder;
    const Ledger ledger = shoptest::shortLedger("Orrin Vale", "V8");
    const Facts facts = fold(ledger);
    ASSERT_TRUE(exportTables(ledger, facts, assess(facts), folder / "tables"));
    EXPECT_FALSE(exportTables(ledger, facts, assess(facts), folder / "tables"));
    std::ofstream(folder / "full") << "x";
    EXPECT_FALSE(exportTables(ledger, facts, assess(facts), folder / "full")) << "a file stands there";
}

} // namespace caprail
