// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <ledger/entries.h>
#include <span>

namespace caprail {

/// What is known of one entry kind without its C++ type: made from the struct's own description.
struct KindInfo {
    std::string_view kind;  ///< name in files, also the name of its table
    std::string_view title; ///< how its history line begins
    std::vector<Column> columns;
    std::vector<std::size_t> canonicalOrder; ///< column indices sorted by name, for the seal
};

/// All kinds, in the order of `Body`'s alternatives.
std::span<const KindInfo> allKinds();
/// The kind of a body.
const KindInfo& kindOf(const Body&);
/// The index of a kind by name in `allKinds()`; refuses unknown names.
Result<std::size_t> kindIndex(std::string_view kind);

/// The cells of a body, one per column of its kind.
std::vector<Cell> cellsOf(const Body&);
/// A body from its cells; refuses, naming the column, what its kind does not allow. `cells` has one per column.
Result<Body> bodyFrom(std::size_t kindIndex, const std::vector<Cell>& cells);

} // namespace caprail
