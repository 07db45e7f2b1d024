// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <assessment/assessment.h>

namespace caprail {

/// Whether an entry makes sense on top of these facts: its places, shims, people, instruments, rounds and findings
/// exist, its values are possible, no shim lies in two stacks. One sentence says what is wrong and what to do. This is
/// what a replay demands of every live entry.
Result<void> admit(const Facts&, std::string_view person, const Body&);
/// The same without the person: what a screen asks early, to say a refusal before anything is stored.
Result<void> makesSense(const Facts&, const Body&);

/// Whether a person may make this entry now: `admit`, and the gates: a trial fit behind its gate, a closing step behind
/// the closing gate and in its order, nothing but notes, photos, signatures and a new build after the sign-off, strikes that leave
/// every later entry standing; the order of the work (work_order.h); and what is plausible (plausibility.h), which a `!`
/// behind the typed value insists on. What the window and `caprail append` ask before they store. The one place for such
/// rules: whatever a screen refuses before it stores, this refuses too.
///
/// Whether a strike may be made is found by folding the ledger without the struck entry. `afterwards`, where it is given,
/// gets what came of that: the facts as `fold` makes them once the strike is in the ledger, so that a long one is not
/// folded twice. It stays empty for other entries, and where closing steps must be judged by their gates again.
Result<void> mayAppend(const Ledger&, const Facts&, const Assessment&, std::string_view person, const Body&,
                       const Units& units = {}, std::optional<Facts>* afterwards = nullptr);

/// A closing step or the sign-off: what counts only where its gate was open when it was made.
bool isClosing(const Body&);
/// Notes, photos, signatures and the beginning of a new build: what may follow a sign-off.
bool isAllowedAfterClosing(const Body&);
/// Whether the entry `target` is one that may be struck at all, in a ledger that had `size` entries: refuses numbers
/// that it did not have, strikes, and what says where the record comes from.
Result<void> mayBeStruck(const Ledger&, std::int64_t target, std::int64_t size);

} // namespace caprail
