// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <ledger/kinds.h>

namespace caprail {

/// Whether the texts of an entry can be seen for what they are (base/plain_text.h): names stand on one line, what
/// somebody wrote at length (a note, a reason, a statement) may stand over several. Refuses, naming the column and the
/// character, controls, marks that turn the writing direction and, in names, characters without a width. Asked of every
/// entry that is made or imported; a record that holds such a text from before is read, and shown visibly.
Result<void> checkTexts(std::string_view person, const Body& body);

} // namespace caprail
