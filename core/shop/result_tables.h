// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// What is worked out of a record, as tables for another program: gaps, stacks, clearances, fastenings, rounds, checks.
/// The CSV files, `show --json` and the dictionary are all made from these.
#include <assessment/assessment.h>
#include <string_view>
#include <variant>
#include <vector>

namespace caprail {

/// Nothing is known; a whole number; a number; a text.
using ResultCell = std::variant<std::monostate, std::int64_t, double, std::string>;

struct ResultColumn {
    std::string_view name;    ///< with its unit: "gap_nm"
    std::string_view unit;    ///< "nm", "mN·m", "1"; empty: it is a text
    std::string_view meaning; ///< a few English words, whatever language the program speaks
};

struct ResultTable {
    std::string_view name; ///< "results_gaps"
    std::string_view meaning;
    std::vector<ResultColumn> columns;
    std::vector<std::vector<ResultCell>> rows; ///< a cell for each column
};

/// What a residual is known by, as tables say it: "bracket".
std::string_view carrierOf(ResidualBy by);

/// Every table, also one without rows; each row says what the assessment says, to the nanometre and without rounding.
/// What is not known is an empty cell, never 0.
std::vector<ResultTable> resultTables(const Facts& facts, const Assessment& assessment);

} // namespace caprail
