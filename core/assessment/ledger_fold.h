// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <assessment/assessment.h>
#include <set>

namespace caprail {

/// Folds a ledger entry by entry into two states: `facts()`, in which struck entries were never made (what the record
/// says now), and on request the facts and gates as they stood when an entry was made, when what was struck later still
/// counted. Closing steps and the sign-off are judged by the latter: one that was made behind a locked gate, or out of
/// its order, counts for nothing and is noted in Facts::neverValid.
///
/// The second state costs nothing where no later strike reaches back over the entry, which is nearly always; else the
/// ledger is folded again up to there. A ledger that would need this without end (it was made for that) is given up
/// after a number of steps in proportion to its length: what was not judged then counts as never valid.
class LedgerFold {
public:
    explicit LedgerFold(const Ledger& ledger) : m_ledger(ledger) {}

    [[nodiscard]] bool atEnd() const { return m_next >= m_ledger.entries().size(); }
    /// The entry that `next` folds.
    [[nodiscard]] const Entry& entry() const { return m_ledger.entries()[m_next]; }
    void next();

    /// From all entries before `entry()`, struck ones left out.
    [[nodiscard]] const Facts& facts() const { return m_facts; }
    [[nodiscard]] Facts take() { return std::move(m_facts); }

    /// Whether an entry before this one was struck after it: only then do `facts()` and `asMade()` differ.
    [[nodiscard]] bool isReachedOver() const { return m_latestStrike > entry().sequence; }
    /// The facts as they stood when `entry()` was made; null: given up. Valid until the next call of anything.
    const Facts* asMade();
    /// The same without the entries that a strike up to `strike` took back: to find the strike that is at fault.
    std::optional<Facts> asOf(std::int64_t strike);
    /// A gate as it stood when `entry()` was made, in an assessment that outlives the call; null: given up.
    const Assessment* gatesAsMade(GateKind kind);
    /// The valid sign-off that closed the build when `entry()` was made, 0: it was open.
    [[nodiscard]] std::int64_t closedBy() const { return m_closedBy; }
    /// False once something was given up.
    [[nodiscard]] bool isWhole() const { return m_isWhole; }

private:
    bool spend(std::size_t steps);
    void fold(Facts& facts, const Entry& entry) const;
    [[nodiscard]] Result<void> closingMayBeMade();
    void judgeClosing();

    const Ledger& m_ledger;
    std::size_t m_next = 0;
    Facts m_facts;
    std::int64_t m_latestStrike = 0;     ///< the newest strike of an entry before this one
    std::int64_t m_lastStrikeBefore = 0; ///< the newest strike that stands before this one
    std::int64_t m_closedBy = 0;
    std::set<std::int64_t> m_neverValid;

    std::optional<Facts> m_asMade; ///< of the entries below m_asMadeNext, strikes before m_asMadeNext obeyed
    std::size_t m_asMadeNext = 0;

    std::optional<Assessment> m_assessment; ///< as made; none: something was folded since that a gate may rest on
    bool m_isTrialGateKnown = false;        ///< it still gives the trial-fit gate
    bool m_isClosingGateKnown = false;      ///< it still gives the closing gate
    std::size_t m_spent = 0;
    bool m_isWhole = true;
};

} // namespace caprail
