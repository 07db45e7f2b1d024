// SPDX-License-Identifier: GPL-3.0-or-later
#include <shop/builds.h>

namespace caprail {

std::vector<Build> buildsOf(const Ledger& ledger) {
    std::vector<Build> builds;
    Facts facts;
    for (const Entry& entry : ledger.entries()) {
        if (ledger.isStruck(entry.sequence)) {
            continue;
        }
        const auto* next = std::get_if<BuildBegun>(&entry.body);
        if (builds.empty() || next != nullptr) {
            if (!builds.empty()) {
                builds.back().facts = facts;
            }
            builds.push_back({next == nullptr ? 1 : next->build,
                              entry.time,
                              entry.time,
                              next == nullptr ? std::string() : next->why,
                              {}});
        }
        apply(facts, entry);
        builds.back().last = entry.time;
    }
    if (!builds.empty()) {
        builds.back().facts = std::move(facts);
    }
    return builds;
}

} // namespace caprail
