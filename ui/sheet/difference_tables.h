// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QString>
#include <QStringList>
#include <set>
#include <shop/build_comparison.h>
#include <units/format.h>
#include <vector>

namespace caprail {

/// One table of the difference between two builds, in words: the same for paper and screen.
struct DifferenceTable {
    QString title;
    QString remark;    ///< what its columns mean; may be empty
    QStringList heads; ///< the first names the place, the last says whether it changed, in a word
    std::vector<QStringList> rows;
    std::set<std::size_t> changes; ///< rows whose difference is beyond its uncertainty
};

/// Bearings, journals and bores, gaps and stacks, fits, torques, verify rounds; those that neither build measured are
/// left out. Lengths in the units given.
std::vector<DifferenceTable> differenceTables(const BuildComparison& comparison, const Units& units);
/// "Build 1, 2026-05-04 to 2026-05-06, signed off"
QString buildLine(const BuildSide& side);

} // namespace caprail
