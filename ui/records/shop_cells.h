// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// What stands in one cell of the list of records: its text, its ink, and the number it is sorted by.
#include <QString>
#include <QVariant>
#include <optional>
#include <shop/shop_index.h>

namespace caprail {

/// The columns of the list, in order.
namespace shopcolumn {
enum Column { customer, engine, state, round, out, stale, lastEntry, who, due, file, columns };
}

/// A JobState's sign that reads without colour, and its word: "◑ trial fit open".
QString jobStateText(JobState state);
QString shopHeader(int column);
/// `now`: what the clock says; later entries are shown as such, and calibrations are due by it.
QString shopCell(const ShopRow& row, int column, UtcTime now);
/// A column's value as it is sorted; none for a column that is sorted as text.
std::optional<std::int64_t> shopNumber(const ShopRow& row, int column);
/// The colour of a readable row's cell; null: the usual one.
QVariant shopInk(const ShopRow& row, int column, UtcTime now);
/// The whole row for a screen reader; for a file that is no record, why.
QString shopSentence(const ShopRow& row, UtcTime now);

} // namespace caprail
