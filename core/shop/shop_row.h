// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <shop/folder_walk.h>
#include <shop/record_reader.h>

namespace caprail {

/// One line of the shop's list.
struct ShopRow {
    std::int64_t id = 0; ///< in the index; stays the same for a path
    FoundFile file;
    FileReading reading = FileReading::summarised;
    std::string sentence; ///< why it is no record that can be read; empty for records
    RecordSummary summary;
};

} // namespace caprail
