// SPDX-License-Identifier: GPL-3.0-or-later
#include <shopserver/held_records.h>

#include <base/hex.h>
#include <base/say.h>
#include <shopserver/photo_sender.h>
#include <store/care/check.h>

namespace caprail {

namespace {

/// Calls `take` for the rows of a list; `value` is the parameter of `where`, if it has one.
Result<void> eachListed(Connection& database, const std::string& where, const std::string* value,
                        const std::function<Result<void>(const HeldRecord&)>& take) {
    auto query = database.prepare("SELECT identity, head, entries, customer, engine, serial, path FROM listing WHERE " +
                                  where + " ORDER BY id");
    if (!query) {
        return tl::unexpected(query.error());
    }
    if (value != nullptr) {
        query->bind(1, *value);
    }
    return query->each([&](const Query& row) {
        return take({row.text(0), row.text(1), row.integer(2), row.text(3), row.text(4), row.text(5), row.text(6)});
    });
}

Result<std::vector<HeldRecord>> listed(Connection& database, const std::string& where, const std::string& value) {
    std::vector<HeldRecord> records;
    auto done = eachListed(database, where, &value, [&](const HeldRecord& record) -> Result<void> {
        records.push_back(record);
        return {};
    });
    return done ? Result<std::vector<HeldRecord>>(std::move(records)) : tl::unexpected(done.error());
}

} // namespace

std::string describe(const HeldRecord& record) {
    const std::string seal = inGroupsOfFour(record.identity.substr(0, 20));
    std::string names = record.customer;
    names += names.empty() || record.engine.empty() ? record.engine : ", " + record.engine;
    return record.serial.empty() ? Core::say("%1 (first seal %2)", names.empty() ? record.fileName : names, seal)
                                 : Core::say("%1, serial %2 (first seal %3)", names.empty() ? record.fileName : names,
                                             record.serial, seal);
}

Result<std::vector<HeldRecord>> recordsMeantBy(Connection& database, std::string_view sealOrSerial) {
    if (const auto digits = readShortForm(std::string(sealOrSerial))) {
        // The last seal of the list first; a sheet may have been printed long before, and its seal be any entry's: for
        // that one the entries are read through, which takes its time.
        for (const char* where : {"starts_with(identity, ?)", "starts_with(head, ?)",
                                  "id IN (SELECT record FROM publication WHERE starts_with(encode(head, 'hex'), ?))",
                                  "id IN (SELECT record FROM entry WHERE starts_with(encode(seal, 'hex'), ?))"}) {
            auto records = listed(database, where, *digits);
            if (!records || !records->empty()) {
                return records;
            }
        }
    }
    return listed(database, "lower(serial) = lower(?)", std::string(sealOrSerial));
}

Result<HeldRecord> recordMeantBy(Connection& database, std::string_view sealOrSerial) {
    const auto records = recordsMeantBy(database, sealOrSerial);
    if (!records) {
        return tl::unexpected(records.error());
    }
    if (records->empty()) {
        return refuse(Core::say("The database %1 holds no record with the seal or serial number “%2”.",
                                database.place().shownAs, sealOrSerial));
    }
    if (records->size() == 1) {
        return records->front();
    }
    std::string names;
    for (const HeldRecord& record : *records) {
        names += (names.empty() ? "" : "; ") + describe(record);
    }
    return refuse(Core::say("Several records of %1 are meant by “%2”: name one by its first seal: %3.",
                            database.place().shownAs, sealOrSerial, names));
}

Result<void> eachRecord(Connection& database, const std::function<Result<void>(const HeldRecord&)>& take) {
    return eachListed(database, "true", nullptr, take);
}

Result<DatabaseSums> sumsOf(Connection& database) {
    auto query =
        database.prepare("SELECT (SELECT count(*) FROM record), (SELECT CAST(coalesce(sum(entries), 0) AS bigint) FROM "
                         "record), (SELECT count(*) FROM attachment), (SELECT CAST(coalesce(sum(size), 0) AS bigint) "
                         "FROM attachment)");
    const auto row = query ? query->step() : tl::unexpected(query.error());
    if (!row) {
        return tl::unexpected(row.error());
    }
    return DatabaseSums{query->integer(0), query->integer(1), query->integer(2), query->integer(3)};
}

Result<bool> takeAway(Connection& database, std::string_view identity) {
    auto query = database.prepare("SELECT CAST(take_away(?) AS integer)");
    if (!query) {
        return tl::unexpected(query.error());
    }
    query->bindBytes(1, bytesOfHex(identity));
    const auto row = query->step();
    return row ? Result<bool>(*row && query->integer(0) != 0) : tl::unexpected(row.error());
}

} // namespace caprail
