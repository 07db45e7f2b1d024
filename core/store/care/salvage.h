// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <ledger/entry.h>
#include <string>
#include <vector>

namespace caprail {

struct SalvageReport {
    std::int64_t kept = 0;          ///< entries of the damaged file that are in the new record
    std::int64_t added = 0;         ///< entries behind them that say what was salvaged
    std::vector<std::int64_t> lost; ///< numbers, in the damaged file, of entries that could not be kept
    std::vector<std::int64_t>
        unsealed; ///< numbers of kept entries whose own seal did not fit: altered, or next to a loss
    std::vector<std::string> sentences; ///< what was repaired, and why entries were lost; at most 100
    /// True when nothing that could be seen was lost: the entries kept then have the seals that they had.
    [[nodiscard]] bool isWhole() const { return lost.empty() && unsealed.empty(); }
};

/// Makes a new record from what can still be read of a damaged or altered one, which is not touched: a copy of it is
/// worked on. Entries that were lost close up, so later ones get new numbers and seals; strikes follow the entries that
/// they strike. Entries beyond the last readable one cannot be known of. The new record ends with entries (`Salvaged`,
/// by `salvager`, at the time `now`) that say for ever from what it was made, with which losses. Refuses to overwrite,
/// and when not one entry can be read; after a refusal nothing is left.
Result<SalvageReport> salvage(const std::string& damaged, const std::string& newRecord, UtcTime now);

/// Who makes the entries of a salvage.
inline constexpr const char* salvager = "Caprail";

} // namespace caprail
