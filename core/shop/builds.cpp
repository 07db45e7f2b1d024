// SPDX-License-Identifier: GPL-3.0-or-later
#include <assessment/ledger_fold.h>
#include <shop/builds.h>

namespace caprail {

std::vector<Build> buildsOf(const Ledger& ledger) {
    std::vector<Build> builds;
    LedgerFold folding(ledger);
    for (; !folding.atEnd(); folding.next()) {
        const Entry& entry = folding.entry();
        if (ledger.isStruck(entry.sequence)) {
            continue;
        }
        const auto* next = entry.body.as<BuildBegun>();
        if (builds.empty() || next != nullptr) {
            if (!builds.empty()) {
                builds.back().facts = folding.facts();
            }
            builds.push_back({next == nullptr ? 1 : next->build,
                              entry.time,
                              entry.time,
                              next == nullptr ? std::string() : next->why,
                              {}});
        }
        builds.back().last = entry.time;
    }
    if (!builds.empty()) {
        builds.back().facts = folding.take();
    }
    return builds;
}

} // namespace caprail
