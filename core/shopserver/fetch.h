// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <catalogue/connection.h>
#include <functional>
#include <ledger/entry.h>
#include <stop_token>
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

/// The records that a person means by a seal (64 digits, or the short form as a sheet has it, of the first entry, of the
/// last, or of any between) or by the engine's serial number, in any letter case. Empty when there is none.
Result<std::vector<HeldRecord>> recordsMeantBy(Connection& database, std::string_view sealOrSerial);
/// The one that is meant; refuses when there is none, and when there are several, which it names.
Result<HeldRecord> recordMeantBy(Connection& database, std::string_view sealOrSerial);

struct Fetched {
    std::int64_t entries = 0, photos = 0;
    Seal seal; ///< of the last entry
};
/// Told after every few entries and each photo.
using FetchProgress = std::function<void(std::int64_t done, std::int64_t of)>;

/// Makes the record of this first seal again, as a new file at `out`: the same entries with the same seals and the same
/// bytes of photos, by the way in which the text of a ledger is imported, which verifies each seal. Refuses, and leaves
/// nothing: a first seal that the database does not know, rows that do not verify or are not complete, and an `out` that
/// exists.
Result<Fetched> fetchRecord(Connection& database, std::string_view identity, const std::string& out,
                            const std::stop_token& stop = {}, const FetchProgress& progress = {});

/// Verifies what a database holds of the record of this first seal, without a file: every seal over every entry, and
/// the bytes of its photos. Refuses in a sentence that names the first that does not fit.
Result<Fetched> verifyHeld(Connection& database, std::string_view identity);

} // namespace caprail
