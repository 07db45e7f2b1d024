// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <shop/shop_row.h>

namespace caprail {

/// What of a list of records is shown.
struct ListFilter {
    enum class State { all, locked, trialFitOpen, closingOpen, signedOff, needsAttention, unreadable };
    enum class Due { all, overdue, soon };
    State state = State::all; ///< `needsAttention`: something is out, stale or moved
    Due due = Due::all;       ///< of engines still worked on; `soon`: within thirty days, the overdue ones too
    std::string person = {};  ///< who made any entry; empty: anyone
    friend bool operator==(const ListFilter&, const ListFilter&) = default;
};

/// Whether a row is shown; days are judged by `now`.
bool passes(const ListFilter& filter, const ShopRow& row, UtcTime now);

/// The same as conditions of SQL on `listing`, each beginning with " AND "; `texts` gets their parameters in order.
/// `position` is the function of the dialect.
std::string conditionsOf(const ListFilter& filter, UtcTime now, std::string_view position,
                         std::vector<std::string>& texts);

} // namespace caprail
