// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// The columns of the list of records, made from the fields of the summary (record_summary.h); the file comes last.
#include <shop/shop_row.h>
#include <vector>

namespace caprail {

struct ListColumn {
    std::string_view name; ///< of the field
    const char* title;     ///< in English; say it with Core::say
    int width;             ///< in characters
    bool isNumber;         ///< sorted by `order`; else by its text
    std::string (*text)(const ShopRow&, const Seeing&);
    std::int64_t (*order)(const ShopRow&);
    Tone (*tone)(const ShopRow&, const Seeing&);
};
/// In the order in which they are shown.
const std::vector<ListColumn>& listColumns();

/// Which column lists a field; a name that has none does not compile where the answer is wanted at compile time.
/// "file" is the last.
constexpr int listColumn(std::string_view name) {
    int at = 0, found = -1;
    eachSummaryField([&](const auto& column) {
        if (column.listed.title != nullptr) {
            found = column.name == name ? at : found;
            ++at;
        }
    });
    return name == "file" ? at : found;
}

/// A JobState's sign that reads without colour, and its word: "◑ trial fit open".
std::string signedWord(JobState state);
/// Something stands in the future, or is overdue: what the list says of a row by the clock.
bool isOverdue(const RecordSummary& summary, UtcTime now);
/// The whole row for a screen reader; for a file that is no record, why.
std::string listSentence(const ShopRow& row, const Seeing& seeing);
/// The row in words alone, as the command line prints it: "a.caprail: Orrin Vale, V8 KL-2207, measuring, 2 out".
std::string listLine(const ShopRow& row, const Seeing& seeing);
/// The line over such lines: what stands in them, in order; what is empty is left out of a line.
std::string listHead();

} // namespace caprail
