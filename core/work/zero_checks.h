// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <assessment/facts.h>
#include <functional>
#include <set>

namespace caprail {

/// The day on which a moment falls, where the work is done.
using DayOf = std::function<Date(UtcTime)>;

/// How one length instrument was used in the present build, and on how many of those days it was tried on its standard.
struct ZeroStanding {
    std::string instrument;
    std::set<Date> used;  ///< days with a reading made with it
    std::set<Date> tried; ///< days with a zero check
    [[nodiscard]] std::size_t untried() const;
};

/// Of every instrument that measured a length in this build by live entries, in order of their names.
std::vector<ZeroStanding> zeroStandings(const Ledger& ledger, const Facts& facts, const DayOf& dayOf = dateOf);
/// Instruments that measured something since `dayBegan` and were not tried on their standard since, in order of their
/// names. Only the entries since then are looked at.
std::vector<std::string> untriedSince(const Ledger& ledger, const Facts& facts, UtcTime dayBegan);
/// What an instrument read on its standard, less what the standard is.
inline Length errorOf(const ZeroChecked& check) {
    return check.reading.value - check.nominal.value;
}

} // namespace caprail
