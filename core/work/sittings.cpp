// SPDX-License-Identifier: GPL-3.0-or-later
#include <work/sittings.h>

#include <base/say.h>
#include <units/format.h>

namespace caprail {

std::vector<Sitting> sittingsOf(const Ledger& ledger, std::int64_t from) {
    constexpr std::int64_t longestGap = std::int64_t{60} * 60'000;
    std::vector<Sitting> list;
    for (const Entry& entry : ledger.entriesFrom(from)) {
        const UtcTime time = entry.time;
        const std::int64_t gap = list.empty() ? 0 : time.milliseconds - list.back().last.milliseconds;
        if (list.empty() || gap < 0 || gap > longestGap) {
            list.push_back({time, time, 0});
        }
        list.back().last = time;
        ++list.back().entries;
    }
    return list;
}

std::string describeWork(const std::vector<Sitting>& sittings, char decimalMark) {
    std::int64_t minutes = 0;
    for (const Sitting& sitting : sittings) {
        minutes += sitting.minutes();
    }
    return Core::count(sittings.size(), Core::mark("%1 sitting, %2 hours"), Core::mark("%1 sittings, %2 hours in all"),
                       formatNumber(static_cast<double>(minutes) / 60.0, 1, decimalMark));
}

} // namespace caprail
