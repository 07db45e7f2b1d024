// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <ledger/entry.h>
#include <units/format.h>

namespace caprail {

/// An entry in one line for people, from its kind's own description: "Gap read: position 3R, pass 1, gap 0.0575 in
/// (typed “57.5 thou”), instrument FEELER-1". Empty fields are left out. Texts are shown visibly (base/plain_text.h):
/// a line is one line, whatever a record holds.
std::string historyLine(const Body&, const Units&);
/// One column for people: its name without underscores and unit, and its value in the chosen units.
struct NamedValue {
    std::string name;
    std::string value;
};
std::vector<NamedValue> namedValues(const Body&, const Units&);

} // namespace caprail
