// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <store/sqlite/database.h>
#include <vector>

namespace caprail {

/// Copies a damaged record to `copy` for salvage, with its journal if a crash left one; blocks that the disk does not
/// give are taken as zeros. What was done is told in `sentences`.
Result<void> copyDamaged(const std::string& damaged, const std::string& copy, std::vector<std::string>& sentences);

/// Opens the copy so that as much as possible can be read. Where its header or schema is damaged, the pages of the
/// schema are taken from a fresh record: they are alike in all records, because createSchema makes them in one way.
/// Refuses when the tables cannot be found even so.
Result<std::unique_ptr<Database>> openDamaged(const std::string& copy, std::vector<std::string>& sentences);

} // namespace caprail
