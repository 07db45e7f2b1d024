// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <base/problem.h>
#include <string>
#include <string_view>

namespace caprail {

/// Where a database is, and how people are told of it. It never holds a password: that stands in the user's ~/.pgpass
/// or in the service file.
struct DatabasePlace {
    enum class Kind { sqlite, postgres };
    Kind kind = Kind::sqlite;
    std::string where; ///< SQLite: the file's path, or ":memory:"; PostgreSQL: a connection string of libpq
    std::string shownAs;

    static DatabasePlace file(const std::string& path) { return {Kind::sqlite, path, path}; }
    static DatabasePlace inMemory() { return {Kind::sqlite, ":memory:", ":memory:"}; }
};

/// A shop's database as a person names it: a service of libpq («shop», described in ~/.pg_service.conf), a URL
/// («postgresql://bench@host/caprail»), or words of a connection string («host=/run/postgresql dbname=caprail»).
/// Refuses, in one sentence that says nothing of it again, an empty name, one with a password in it, and what libpq
/// would not read. What it leaves out, the service, the environment and libpq fill in; TLS with a verified server is
/// asked for unless one of them says otherwise (`askForTls`).
Result<DatabasePlace> parseService(std::string_view typed);

/// Has libpq ask for TLS and verify the server (sslmode verify-full) where neither name, service nor environment says
/// anything; a Unix socket needs none. It sets an environment variable: to be called before other threads run. Opening
/// a connection calls it too.
void askForTls();

} // namespace caprail
