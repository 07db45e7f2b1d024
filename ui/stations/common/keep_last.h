// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <algorithm>
#include <cstdint>
#include <vector>

namespace caprail {

/// Rows of one sort that a list in a window holds at most: nobody scrolls through more, and the history holds them all.
inline constexpr std::size_t mostInList = 200;

/// Keeps the newest of a list that is longer, by the entry that `entryOf` gives, in the order in which they were. Gives
/// how many it took out.
template <class T, class EntryOf> std::size_t keepLast(std::vector<T>& list, EntryOf entryOf) {
    if (list.size() <= mostInList) {
        return 0;
    }
    std::vector<std::int64_t> entries;
    entries.reserve(list.size());
    for (const T& one : list) {
        entries.push_back(entryOf(one));
    }
    const auto oldest = entries.end() - static_cast<std::ptrdiff_t>(mostInList);
    std::ranges::nth_element(entries, oldest);
    return std::erase_if(list, [&](const T& one) { return entryOf(one) < *oldest; });
}

} // namespace caprail
