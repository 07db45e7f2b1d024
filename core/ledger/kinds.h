// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <ledger/entries.h>
#include <span>

namespace caprail {

/// One member of an entry's canonical text (canonical.cpp), in the order in which they stand there.
struct CanonicalMember {
    enum class Of { kind, person, sequence, time, column };
    std::string name; ///< in quotes, with a comma before it and a colon behind
    Of of = Of::column;
    std::size_t column = 0; ///< its index
};

/// What is known of one entry kind without its C++ type: made from the struct's own description.
struct KindInfo {
    std::string_view kind;  ///< name in files, also the name of its table
    std::string_view title; ///< how its history line begins
    std::vector<Column> columns;
    std::vector<CanonicalMember> canonical; ///< sorted by name, for the seal
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
/// The same, made in its place: a ledger of 100 000 entries moves none. After a refusal `body` is of that kind, and
/// what it holds means nothing.
Result<void> readBody(std::size_t kindIndex, std::span<const CellView> cells, Body& body);

} // namespace caprail
