// SPDX-License-Identifier: GPL-3.0-or-later
#include <ledger/remarks.h>

#include <units/say.h>

namespace caprail {

std::vector<LedgerRemark> clockRemarks(const Ledger& ledger, std::optional<UtcTime> now) {
    constexpr std::int64_t slack = std::int64_t{10} * 60 * 1000; // two computers' clocks may differ by so much
    std::vector<LedgerRemark> remarks;
    bool wasInFuture = false;
    const Entry* before = nullptr;
    for (const Entry& entry : ledger.entries()) {
        if (before != nullptr && entry.time < before->time) {
            remarks.push_back({entry.sequence,
                               Core::say("Entry %1 (%2) is older than entry %3 (%4): look at the clock.",
                                         entry.sequence, format(entry.time), before->sequence, format(before->time))});
        }
        const bool isAhead = now && entry.time.milliseconds > now->milliseconds + slack;
        if (isAhead && !wasInFuture) {
            remarks.push_back({entry.sequence, Core::say("Entry %1 (%2) lies in the future: look at the clock.",
                                                         entry.sequence, format(entry.time))});
        }
        wasInFuture = isAhead;
        before = &entry;
    }
    return remarks;
}

} // namespace caprail
