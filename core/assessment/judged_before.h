// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// What an entry would change after something had been judged by it: such a change needs a reason, and is a deviation that
/// reaches the customer.
#include <assessment/facts.h>

namespace caprail {

/// The newest entry that was judged by what `body` changes, as the facts stand before it; 0: it changes nothing, or
/// nothing was judged by that yet.
std::int64_t judgedBefore(const Facts&, const Body& body);

/// The reason that an entry gives for a change; null: its kind has none to give.
const std::string* reasonOf(const Body&);
/// Whether the entry changes something that was judged, and does not say why.
bool lacksReason(const Facts&, const Body&);
/// The same entry with that reason; unchanged where its kind has none to give.
Body withReason(Body, std::string why);

} // namespace caprail
