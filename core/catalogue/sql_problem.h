// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// What a failure of Qt Sql means for a person. For this folder alone.
#include <QSqlError>
#include <catalogue/place.h>

namespace caprail {

struct SqlProblem {
    std::string code; ///< SQLSTATE or SQLite's primary result code; empty where there is none
    bool isOffline = false;
    std::string sentence;
};

/// A statement that failed. `isAlive`: the connection is still there.
SqlProblem statementProblem(const QSqlError& error, const DatabasePlace& place, bool isAlive);
/// A connection that could not be made.
SqlProblem openingProblem(const QSqlError& error, const DatabasePlace& place);
/// The driver is not installed.
SqlProblem driverProblem(const DatabasePlace& place);

} // namespace caprail
