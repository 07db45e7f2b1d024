// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <ledger/ledger.h>
#include <map>
#include <string>

namespace caprail {

/// The tables of a ledger as text (base/csv.h), by their names: "entries" with every entry, and one per kind that occurs,
/// with its fields; an empty field is one that was left out.
std::map<std::string, std::string> csvTablesOf(const Ledger& ledger);

} // namespace caprail
