// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <catalogue/connection.h>
#include <vector>

namespace caprail {

/// A record as a shop's database lists it.
struct HeldRecord {
    std::string identity; ///< seal of its first entry, 64 hexadecimal digits
    std::string head;     ///< of its last
    std::int64_t entries = 0;
    std::string customer, engine, serial, fileName;
};
/// "Orrin Vale, 6.2 V8, serial 4711 (first seal 3f2a-…)", for a person to choose by.
std::string describe(const HeldRecord& record);

/// The records that a person means by a seal (64 digits, or the short form as a sheet has it, of the first entry, of
/// the last, or of any between) or by the engine's serial number, in any letter case. Empty when there is none.
Result<std::vector<HeldRecord>> recordsMeantBy(Connection& database, std::string_view sealOrSerial);
/// The one that is meant; refuses when there is none, and when there are several, which it names.
Result<HeldRecord> recordMeantBy(Connection& database, std::string_view sealOrSerial);

/// Calls `take` for every record, in the order in which they came; memory stays flat.
Result<void> eachRecord(Connection& database, const std::function<Result<void>(const HeldRecord&)>& take);

struct DatabaseSums {
    std::int64_t records = 0, entries = 0, photos = 0, photoBytes = 0;
};
/// How much a database holds. Counted from the rows of its records, not of its entries.
Result<DatabaseSums> sumsOf(Connection& database);

/// Takes a whole record away, with its entries and the photos that no other has; false when the database does not hold
/// it. It cannot be undone but by publishing the record again. Refuses who is no keeper.
Result<bool> takeAway(Connection& database, std::string_view identity);

} // namespace caprail
