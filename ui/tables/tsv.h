// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// Rows as they go to the clipboard for a spreadsheet: cells parted by tabs, a line each.
#include <QAbstractItemModel>
#include <vector>

namespace caprail {

/// The shown text of these lines, every column. A cell that a spreadsheet would take for a formula is made harmless
/// (base/csv.h); a tab or a line break in a cell becomes a blank, so that the columns stay what they are.
QString tsvOf(const QAbstractItemModel& model, const std::vector<int>& lines);
/// Of all lines.
QString tsvOf(const QAbstractItemModel& model);
/// Puts it on the clipboard.
void copyToClipboard(const QString& text);

} // namespace caprail
