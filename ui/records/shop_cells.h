// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// The list of records on a screen: moments in local time, and the inks of what stands out (shop/list_columns.h).
#include <QVariant>
#include <base/csv.h>
#include <session/look.h>
#include <shop/list_columns.h>
#include <shop/listing_pages.h>

namespace caprail {

/// As the screen sees the list at a moment.
Seeing onScreen(UtcTime now);
/// The ink of a tone; null: the usual one.
QVariant inkOf(Tone tone, const Look& look);

/// What a model of records says of a row in a role; days are judged by `now`. Rows that cannot be reached now are in
/// the quiet ink.
QVariant shopCell(const ShopRow& row, int column, int role, UtcTime now, bool isReachable);
/// What a group of records is called, by what they are grouped by.
QString groupName(ListingWish::Grouping by, const std::string& customer, JobState state);
/// What the head of a group says.
QString groupHead(const QString& name, std::int64_t records);
/// Of a group's head, whose text goes over all columns.
QVariant headCell(const QString& head, int column, int role);
QVariant shopHeader(int column, int role);

/// The list as a table for a spreadsheet: its head, and a row.
void addHead(CsvWriter& csv);
void addRow(CsvWriter& csv, const ShopRow& row, const Seeing& seeing);

} // namespace caprail
