// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <ledger/entry.h>

namespace caprail {

/// What one line of the text form says: an entry, where number, time and seal may be missing (a line typed by hand).
struct EntryDraft {
    std::optional<std::int64_t> sequence;
    std::optional<UtcTime> time;
    std::string person;
    Body body;
    std::optional<Seal> seal;
};

/// One line of the text form of a ledger: the canonical text with the member "seal" (64 hexadecimal digits) added.
std::string toJsonLine(const Entry&);

/// Reads one JSON object. Member names are the column names of its kind, with "kind", "person" and, optionally,
/// "sequence", "time", "seal". A quantity may be given by its typed text alone: {"gap_typed": "57.5 thou"} without
/// "gap_nm" is read as a person's input in inches and pound-feet. Refuses unknown members and wrong types, by name, and
/// what two readers could read differently (strict_json.h).
Result<EntryDraft> fromJson(std::string_view json);

/// For an entry that is to be made now: refuses a draft that brings a number, a time or a seal of its own, since only
/// the ledger and the clock give those.
Result<void> mayBeMadeNow(const EntryDraft& draft);

} // namespace caprail
