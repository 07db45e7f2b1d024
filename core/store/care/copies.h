// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <ledger/ledger.h>
#include <base/date.h>

namespace caprail {

/// How two ledgers are related, told by their seals.
struct LedgerComparison {
    std::int64_t common = 0; ///< entries that both begin with
    std::int64_t onlyInFirst = 0;
    std::int64_t onlyInSecond = 0;
    [[nodiscard]] bool isSame() const { return onlyInFirst == 0 && onlyInSecond == 0; }
    /// Neither is the beginning of the other.
    [[nodiscard]] bool haveParted() const { return onlyInFirst != 0 && onlyInSecond != 0; }
};
LedgerComparison compare(const Ledger& first, const Ledger& second);

/// A name beside the record that is free: "smith 2026-05-04.caprail-backup" for "smith.caprail", then
/// "smith 2026-05-04 (2).caprail-backup" and so on. The ending keeps it out of lists of records.
std::string datedBackupName(const std::string& record, Date day);
/// The same for a record as it was found after a write was cut off: "smith 2026-05-04 cut off.caprail-backup". Its
/// journal's name, which is the same with "-journal", is free too.
std::string cutOffBackupName(const std::string& record, Date day);

/// Puts the record at `copy` in the place of the one at `record`, in one step of the file system. What was there is
/// kept as `keptAs` first: by SQLite's backup, or, where it is too damaged to be read, by giving it that name. Refuses
/// a copy that is not sound, a record that another program has open, and to overwrite `keptAs`; then nothing has
/// changed. A journal that a cut-off write left beside a damaged record goes with it. The restored record and the one
/// that is kept have mode and group of the record.
Result<void> restoreRecord(const std::string& copy, const std::string& record, const std::string& keptAs);
/// The same for one who holds the writer's lock of `record` already.
Result<void> restoreUnderLock(const std::string& copy, const std::string& record, const std::string& keptAs);

} // namespace caprail
