// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <ledger/ledger.h>
#include <optional>

namespace caprail {

/// Something that whoever reads a record should know about an entry, and that is no fault of the file.
struct LedgerRemark {
    std::int64_t entry = 0;
    std::string sentence;
};

/// Whether a moment lies so far after `now` that one of the two clocks must be wrong: more than ten minutes.
bool isInFuture(UtcTime moment, UtcTime now);

/// Entries that a clock was wrong for, in order: one whose time is older than that of the entry before it, and, where
/// `now` is given, one that lies in the future by more than ten minutes. Of entries in a row that lie in the future
/// only the first is named.
std::vector<LedgerRemark> clockRemarks(const Ledger& ledger, std::optional<UtcTime> now);

/// That entries of this record came in from a text without seals, in order.
std::vector<LedgerRemark> outsideRemarks(const Ledger& ledger);

/// What the salvages of this record say, in order: from what file, with what losses. Struck ones too: that a record was
/// salvaged is not taken back.
std::vector<LedgerRemark> salvageRemarks(const Ledger& ledger);

} // namespace caprail
