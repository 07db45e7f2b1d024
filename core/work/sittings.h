// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <ledger/ledger.h>
#include <string>
#include <vector>

namespace caprail {

/// A stretch of work without a gap of more than an hour between its entries (common practice, no source).
struct Sitting {
    UtcTime first, last;
    std::size_t entries = 0;
    [[nodiscard]] std::int64_t minutes() const { return (last.milliseconds - first.milliseconds) / 60'000; }
};

/// The sittings of a ledger from entry `from` (1: all) on, by the entries' own times; an entry that is older than the one
/// before it begins a new one.
std::vector<Sitting> sittingsOf(const Ledger& ledger, std::int64_t from = 1);
/// "12 sittings, 31.5 hours in all"
std::string describeWork(const std::vector<Sitting>&, char decimalMark = '.');

} // namespace caprail
