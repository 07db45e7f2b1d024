// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <assessment/assessment.h>

namespace caprail {

/// Whether an entry makes sense on top of these facts: its places, shims, people, instruments, rounds and findings
/// exist, its values are possible, no shim lies in two stacks. One sentence says what is wrong and what to do. This is
/// what a replay demands of every live entry.
Result<void> admit(const Facts&, std::string_view person, const Body&);

/// Whether a person may make this entry now: `admit`, and the gates: a trial fit behind its gate, a closing step behind
/// the closing gate and in its order, nothing but notes, photos and a new build after the sign-off, strikes that leave
/// every later entry standing; the order of the work (work_order.h); and what is plausible (plausibility.h), which a `!`
/// behind the typed value insists on. What the window and `caprail append` ask before they store.
Result<void> mayAppend(const Ledger&, const Facts&, const Assessment&, std::string_view person, const Body&,
                       const Units& units = {});

} // namespace caprail
