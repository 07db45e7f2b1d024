// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <ledger/entry.h>
#include <units/format.h>

namespace caprail {

/// An entry in one line for people, as it is said at the bench, and then what else is known of it: "Gap at cap 3 right,
/// pass 1: 0.0575 in (typed “57.5 thou”) · with FEELER-1". Every kind has its sentence (entry_sentence.h). Empty fields
/// are left out. Texts are shown visibly (base/plain_text.h): a line is one line, whatever a record holds.
std::string historyLine(const Body&, const Units&);

} // namespace caprail
