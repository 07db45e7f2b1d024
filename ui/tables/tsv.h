// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// Rows as they go to the clipboard: for a spreadsheet, cells parted by tabs, a line each; for a document, a table.
#include <QAbstractItemModel>
#include <vector>

namespace caprail {

/// The shown text of these lines, every column. A cell that a spreadsheet would take for a formula is made harmless
/// (base/csv.h); a tab or a line break in a cell becomes a blank, so that the columns stay what they are.
QString tsvOf(const QAbstractItemModel& model, const std::vector<int>& lines);
/// The same as a table for a document (HTML), under its columns' titles.
QString htmlOf(const QAbstractItemModel& model, const std::vector<int>& lines);
/// Puts both on the clipboard: whoever pastes them takes what it can.
void copyToClipboard(const QAbstractItemModel& model, const std::vector<int>& lines);
/// All lines.
void copyToClipboard(const QAbstractItemModel& model);

} // namespace caprail
