// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <shop/shop_row.h>

namespace caprail {

/// A row of the index in one piece of bytes, beside its columns. A start reads tens of thousands of rows at once, and
/// Qt Sql makes a value of each cell: this way there is one a row. Whole numbers are written in groups of seven bits,
/// signs in the lowest; texts by their length. It is of this version of the index alone.
std::string packed(const ShopRow& row);
/// Nothing when it is not what `packed` wrote.
std::optional<ShopRow> unpacked(std::int64_t id, std::string_view line);

} // namespace caprail
