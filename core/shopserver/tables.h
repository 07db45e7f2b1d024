// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <catalogue/connection.h>

namespace caprail {

/// The tables of a shop's database are made and brought up to date by numbered migrations, plain SQL in
/// `core/shopserver/migrations`. What was applied stands in `caprail.migration`, each with its SHA-256.

/// The newest number that this program knows.
std::int64_t newestTables();

struct MadeTables {
    std::int64_t before = 0; ///< the number that the database had; 0: it had no tables
    std::int64_t now = 0;
};
/// Makes roles and tables where there are none, or applies the migrations that are missing, in one transaction: all or
/// nothing. Where none is missing, nothing is changed. The login needs to be a caprail_keeper; to make the first ones,
/// it must be allowed to make roles and schemas. Refuses a server older than PostgreSQL 14, a database that is not in
/// UTF-8, one of a newer program, and one whose migrations were others.
Result<MadeTables> makeTables(Connection& database);

/// Refuses a database without tables, with those of an older or a newer program, and with altered ones; each with what
/// to do.
Result<void> checkTables(Connection& database);

} // namespace caprail
