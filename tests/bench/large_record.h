// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// Believable ledgers of any length, made in a moment: the sample in the middle of its survey, gone on with for very
/// long. Every entry is one that the window would have taken at that point (large_record_test.cpp sees to it).
#include <cstdint>
#include <ledger/ledger.h>
#include <string>

namespace caprail::largerecord {

enum class Manner {
    worked, ///< as on a stand: rounds, tightening, gaps and journals measured anew, notes, findings, strikes
    heaped, ///< nothing ever falls: readings, notes and findings pile up at the same few places
};

/// `count` entries, sealed; `samples` is the folder of the sample builds. No fewer than the sample's own.
Ledger ledgerOf(const std::string& samples, std::int64_t count, Manner manner = Manner::worked);

/// Makes a record of such a ledger in `path` by importing its text, which is written beside it and removed again.
/// Ends the program with a sentence where that fails.
void makeRecord(const std::string& samples, const std::string& path, std::int64_t count,
                Manner manner = Manner::worked);

} // namespace caprail::largerecord
