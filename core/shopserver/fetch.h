// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <catalogue/connection.h>
#include <functional>
#include <ledger/entry.h>
#include <stop_token>

namespace caprail {

struct Fetched {
    std::int64_t entries = 0, photos = 0;
    Seal seal; ///< of the last entry
};
/// Told after every few entries and each photo.
using FetchProgress = std::function<void(std::int64_t done, std::int64_t of)>;

/// Makes the record of this first seal again, as a new file at `out`: the same entries with the same seals and the same
/// bytes of photos, by the way in which the text of a ledger is imported, which verifies each seal. Refuses, and leaves
/// nothing: a first seal that the database does not know, rows that do not verify or are not complete, and an `out`
/// that exists.
Result<Fetched> fetchRecord(Connection& database, std::string_view identity, const std::string& out,
                            const std::stop_token& stop = {}, const FetchProgress& progress = {});

/// Verifies what a database holds of the record of this first seal, without a file: every seal over every entry, and
/// the bytes of its photos. Refuses in a sentence that names the first that does not fit.
Result<Fetched> verifyHeld(Connection& database, std::string_view identity);

} // namespace caprail
