// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <sheet/sections.h>
#include <sheet/wrench_marks.h>

namespace caprail::sheet {

/// Rounds that are printed fastener by fastener; what older ones found stands in the table of rounds.
inline constexpr std::size_t mostRounds = 30;

/// How these fasteners were tightened last, and what each verify round found: one row for all of which everything is said
/// alike, so that what is different is seen. Notes in `marks` what its signs at the torques mean.
void fastenersTables(const Writing& w, const QString& title, const std::vector<FastenerId>& fasteners, WrenchMarks& marks);

} // namespace caprail::sheet
