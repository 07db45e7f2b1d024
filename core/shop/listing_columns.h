// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// The table `listing`: one row a record, with what is known of its file and every field of its summary by its name.
/// The index of a folder and a shop's database have the same columns and are read by the same statements. Days are
/// counted from 1970-01-01, moments in milliseconds from then (UTC), the words of an enumeration by their number.
#include <catalogue/connection.h>
#include <shop/shop_row.h>

namespace caprail {

/// How the columns are declared in an index: "path BLOB NOT NULL UNIQUE, size INTEGER, …", without the id.
std::string listingDeclared(const Dialect& dialect);
/// As they are selected, the id first; read them with `listingFrom`.
std::string listingSelected(const Dialect& dialect);
/// Into an index: adds the row of its path or replaces it, and gives its id; `bindListing` binds it, and the column
/// `line` with it (listing_line.h).
std::string listingPut();

void bindListing(Query& put, const ShopRow& row);
/// Refuses a row that holds what nobody wrote there.
Result<ShopRow> listingFrom(const Query& row);

} // namespace caprail
