// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <assessment/facts.h>

namespace caprail {

/// The first entry of a ledger that was not allowed when it was made.
struct NotAllowed {
    std::int64_t entry = 0;
    std::string person, title; ///< who made it, and what it is: "Signed off"
    std::string why;           ///< a sentence
};

struct LedgerReview {
    std::optional<NotAllowed> first; ///< none: every entry was allowed
    /// False when the ledger strikes and closes so often that not every entry could be judged. No honest one does.
    bool isWhole = true;
};

/// Judges a whole ledger by the rules that entries typed in the window meet (`mayAppend`), each entry against what
/// stood when it was made: gates, places, people, the order of closing, nothing but notes after the sign-off, strikes
/// that leave every later entry standing. By the rules of this program: an entry that older rules allowed is named too.
/// An entry that only an entry struck later stood in the way of is not named: what is left makes sense. Gates are
/// worked out only where an entry needs one, so the time is that of folding, not of assessing at each entry.
LedgerReview reviewLedger(const Ledger& ledger);

/// "Entry 12 (“Signed off”, by Mira) was not allowed when it was made, by the rules of Caprail 0.1.0: Closing is
/// locked: …"
std::string sentenceOf(const NotAllowed& found, std::string_view version);
/// "The sign-off in entry 12, by Mira, was never valid: Closing is locked: …"
std::string sentenceOf(const NeverValid& closing);

} // namespace caprail
