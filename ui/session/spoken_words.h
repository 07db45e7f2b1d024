// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QString>
#include <ledger/entry.h>
#include <units/format.h>

namespace caprail {

/// An entry in as few words as a person wants to hear or read from a metre away: "cap 3 right, 0.0575 in",
/// "main 2 left held". What is no reading is called by the name of its kind.
QString spokenWords(const Entry& entry, const Units& units);

} // namespace caprail
