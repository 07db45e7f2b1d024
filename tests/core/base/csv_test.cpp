// SPDX-License-Identifier: GPL-3.0-or-later
#include <base/csv.h>
#include <gtest/gtest.h>

using namespace caprail;

namespace {

std::string cell(std::string_view text) {
    return CsvWriter().text(text).written();
}

} // namespace

TEST(CsvWriter, quotes_where_it_must) {
    // RFC 4180, 2.5 to 2.7, from memory.
    EXPECT_EQ(cell("aaa"), "aaa");
    EXPECT_EQ(cell("b\r\nbb"), "\"b\r\nbb\"");
    EXPECT_EQ(cell("say \"when\""), "\"say \"\"when\"\"\"");
    EXPECT_EQ(cell("1,5"), "\"1,5\"");
    EXPECT_EQ(cell(""), "");
}

TEST(CsvWriter, lets_no_text_be_taken_for_a_formula) {
    // What a spreadsheet would run is text there; numbers as people type them stay as they are.
    EXPECT_EQ(cell("=1+1"), "'=1+1");
    EXPECT_EQ(cell("@SUM(A1)"), "'@SUM(A1)");
    EXPECT_EQ(cell("+cmd"), "'+cmd");
    EXPECT_EQ(cell("-2+3+cmd|' /C calc'!A0"), "'-2+3+cmd|' /C calc'!A0");
    EXPECT_EQ(cell("\t=1"), "'␉=1");
    EXPECT_EQ(cell("\r=1"), "'↵=1");
    EXPECT_EQ(cell("-"), "'-");
    EXPECT_EQ(cell("=HYPERLINK(\"x\")"), "\"'=HYPERLINK(\"\"x\"\")\"");
    EXPECT_EQ(cell("'quoted'"), "''quoted'") << "one is dropped when it is read back";
    EXPECT_EQ(cell("'=1"), "''=1");
    EXPECT_EQ(cell("a=1"), "a=1") << "only at the beginning";
    EXPECT_EQ(cell("-0.5"), "-0.5");
    EXPECT_EQ(cell("-0.5 thou"), "-0.5 thou");
    EXPECT_EQ(cell("+4°"), "+4°");
    EXPECT_EQ(cell("x\u202ey"), "x⟨U+202E⟩y");
}

TEST(CsvWriter, parts_cells_and_ends_lines_also_behind_an_empty_first_cell) {
    CsvWriter csv({"name", "value"});
    csv.empty().number(-5).endLine();
    csv.text("x").number(std::optional<std::int64_t>()).endLine();
    EXPECT_EQ(csv.written(), "name,value\r\n,-5\r\nx,\r\n");
}
