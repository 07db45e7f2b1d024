// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// The figures of each record as rows, so that the database compares engines and nobody reads all of them: `banded` (a
/// value of a banded quantity, nanometres), `movement` (pulls in verify rounds, millidegrees), `instrument`.
#include <catalogue/connection.h>
#include <shop/record_figures.h>

namespace caprail {

/// The three tables of an index, and what they are searched by.
std::vector<std::string> figureTables(const Dialect& dialect);

/// Sorts places as the engine has them when it is compared byte by byte: "main-2" before "main-10", "2L" before "10L".
std::string placeOrder(const std::string& place);

/// Writes the figures of one record after another; its statements are prepared once.
class FigureWriter {
public:
    explicit FigureWriter(Connection& connection) : m_connection(&connection) {}
    /// In place of those that are there. To be called in a transaction.
    Result<void> put(std::int64_t listing, const RecordFigures& figures);
    Result<void> remove(std::int64_t listing);

private:
    Result<void> putBanded(std::int64_t listing, const RecordFigures& figures);
    Result<void> putMovements(std::int64_t listing, const RecordFigures& figures);
    Result<void> putInstruments(std::int64_t listing, const RecordFigures& figures);

    Connection* m_connection;
    std::optional<Query> m_banded, m_movement, m_instrument;
    std::optional<Query> m_drop[3];
};

} // namespace caprail
