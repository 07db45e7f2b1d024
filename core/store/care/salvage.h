// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <ledger/entry.h>
#include <string>
#include <vector>

namespace caprail {

struct SalvageReport {
    std::int64_t kept = 0;          ///< entries in the new record
    std::vector<std::int64_t> lost; ///< numbers, in the damaged file, of entries that could not be kept
    std::vector<std::int64_t>
        unsealed; ///< numbers of kept entries whose own seal did not fit: altered, or next to a loss
    std::vector<std::string> sentences; ///< what was repaired, and why entries were lost; at most 100
    /// True when nothing that could be seen was lost: the new record then has the seals of the old one.
    [[nodiscard]] bool isWhole() const { return lost.empty() && unsealed.empty(); }
};

/// Makes a new record from what can still be read of a damaged or altered one, which is not touched: a copy of it is
/// worked on. Entries that were lost close up, so later ones get new numbers and seals; strikes follow the entries that
/// they strike. Entries beyond the last readable one cannot be known of. Refuses to overwrite, and when not one entry
/// can be read; after a refusal nothing is left.
Result<SalvageReport> salvage(const std::string& damaged, const std::string& newRecord);

} // namespace caprail
