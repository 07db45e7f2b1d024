// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <shop/record_summary.h>

namespace caprail {

/// What a record's publication says of it, as `publish` of migrations/003_publish.sql takes it: JSON objects whose
/// members are the columns of its tables.

/// The row of `listing`: the file's name and size, and every field of the summary. `fileName` is shown visibly.
std::string listingJson(const RecordSummary& summary, std::string_view fileName, std::int64_t size);
/// The rows of `banded`, `movement` and `instrument`.
std::string figuresJson(const RecordFigures& figures);
/// Each word of a text once, folded as a search folds what is typed, parted by spaces: what the record is found by. No
/// longer than the server takes.
std::string distinctWords(std::string_view text);

} // namespace caprail
