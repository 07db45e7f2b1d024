// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// What the makers of the result tables share.
#include <shop/result_tables.h>

namespace caprail::results {

inline constexpr std::string_view stateMeaning =
    "good, out, too close to call, not proven, stale or not done; empty: nothing judges it";
inline constexpr std::string_view uncertaintyMeaning = "U, the expanded uncertainty (k about 2); empty: not known";
inline constexpr std::string_view positionMeaning = "cap, from the front, and side: 3R";

ResultCell cellOf(const std::optional<double>& number);
ResultCell cellOf(const std::optional<Length>& length);
/// The state's word; empty where there is no such check.
ResultCell checkStateOf(const Assessment& assessment, CheckKind kind, const Subject& subject);
/// The whole number of a typed quantity, empty where it was not given.
template <class Q> ResultCell cellOf(const Rare<Entered<Q>>& typed) {
    return typed ? ResultCell(typed->value.value()) : ResultCell();
}

ResultTable fastenersTable(const Facts& facts);
ResultTable roundsTable(const Facts& facts);
ResultTable closingTable(const Facts& facts, const Assessment& assessment);

} // namespace caprail::results
