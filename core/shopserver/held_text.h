// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <shopserver/fetch.h>

namespace caprail {

/// Takes what a database holds of a record, in one state of it: the lines of its ledger in order, then its photos,
/// piece after piece.
struct HeldTaker {
    std::function<Result<void>(const std::string& canonical, const Seal& seal)> entry;
    std::function<Result<void>(const std::string& sha256, std::string_view piece)> photo; ///< in hexadecimal digits
};

/// Reads a record's rows through a taker; memory stays flat. Numbers must follow, and the last seal be the one that the
/// database calls the last; the first, the record's. Every photo that an entry names must come whole and fit its hash,
/// and no other is taken. Refuses what the taker refuses.
Result<Fetched> readHeld(Connection& database, std::string_view identity, const HeldTaker& take,
                         const std::stop_token& stop, const FetchProgress& progress);

} // namespace caprail
