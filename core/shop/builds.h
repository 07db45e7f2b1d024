// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <assessment/facts.h>

namespace caprail {

/// One build of the engine that a record is about: the facts at its end, or now for the last one.
struct Build {
    std::int64_t number = 1;
    UtcTime begun, last; ///< of its first and last live entry
    std::string why;     ///< it was begun; empty for the first
    Facts facts;
};

/// Every build in order; none for an empty ledger. Struck entries count for nothing.
std::vector<Build> buildsOf(const Ledger& ledger);

} // namespace caprail
