// SPDX-License-Identifier: GPL-3.0-or-later
#include <assessment/admission.h>
#include <assessment/ledger_fold.h>
#include <base/say.h>

namespace caprail {

namespace {

constexpr std::size_t alwaysAllowed = 4'000'000; ///< steps, so that no real record is ever given up
constexpr std::size_t allowedPerEntry = 50;
constexpr std::size_t perAssessment = 200; ///< steps of an assessment beside one per entry

/// What is written beside the work: no gate rests on it.
bool isAside(const Body& body) {
    return isAnyOf<NoteAdded, AttachmentAdded, Salvaged, PartEntered, ZeroChecked, ValueConfirmed, BroughtIn,
                   SealSigned>(body);
}

/// Whether the closing gate stands as it stood after such an entry, so that one assessment serves a run of them.
bool leavesGates(const Body& body) {
    return isAside(body) || isClosing(body);
}

} // namespace

bool LedgerFold::spend(std::size_t steps) {
    m_spent += steps;
    m_isWhole = m_isWhole && m_spent <= alwaysAllowed + allowedPerEntry * m_ledger.entries().size();
    return m_isWhole;
}

void LedgerFold::fold(Facts& facts, const Entry& entry) const {
    if (!entry.body.is<Struck>() && !m_neverValid.contains(entry.sequence)) {
        apply(facts, entry);
    }
}

void LedgerFold::next() {
    const Entry& made = entry();
    if (isClosing(made.body)) {
        judgeClosing();
    } else if (!m_ledger.isStruck(made.sequence)) {
        fold(m_facts, made);
    }
    if (made.body.is<BuildBegun>()) {
        m_closedBy = 0;
    } else if (const auto* strike = made.body.as<Struck>()) {
        m_lastStrikeBefore = made.sequence;
        m_closedBy = strike->entry == m_closedBy ? 0 : m_closedBy;
    }
    if (!leavesGates(made.body)) {
        m_isTrialGateKnown = m_isTrialGateKnown && made.body.is<TrialFitResult>();
        if (!m_isTrialGateKnown) {
            m_assessment.reset();
        }
        m_isClosingGateKnown = false;
    }
    m_latestStrike = std::max(m_latestStrike, m_ledger.struckBy(made.sequence));
    ++m_next;
}

/// A closing step or sign-off is folded when it was allowed when it was made, and else noted.
void LedgerFold::judgeClosing() {
    const Entry& made = entry();
    const bool isSignOff = made.body.is<SignedOff>();
    const auto allowed = closingMayBeMade();
    const bool isStruck = m_ledger.isStruck(made.sequence);
    if (allowed) {
        m_closedBy = isSignOff ? made.sequence : m_closedBy;
        if (!isStruck) {
            apply(m_facts, made);
        }
        return;
    }
    m_neverValid.insert(made.sequence);
    if (!isStruck) {
        const auto* step = made.body.as<ClosingStepDone>();
        m_facts.neverValid.push_back({made.sequence, made.time, made.person,
                                      step != nullptr ? std::optional(step->step) : std::nullopt,
                                      allowed.error().sentence});
        m_facts.lastEntry = made.sequence;
    }
}

Result<void> LedgerFold::closingMayBeMade() {
    const Facts* facts = asMade();
    const Assessment* gates = facts == nullptr ? nullptr : gatesAsMade(GateKind::closing);
    facts = gates == nullptr ? nullptr : asMade();
    if (facts == nullptr) {
        return refuse(Core::say("This ledger strikes and closes too often for its gates to be checked."));
    }
    return mayAppend(m_ledger, *facts, *gates, entry().person, entry().body);
}

const Facts* LedgerFold::asMade() {
    if (!isReachedOver()) {
        return &m_facts;
    }
    if (!m_asMade || m_lastStrikeBefore > static_cast<std::int64_t>(m_asMadeNext)) {
        m_asMade.emplace(); // a strike since took something back: from the beginning
        m_asMadeNext = 0;
    }
    if (!spend(m_next - m_asMadeNext)) {
        return nullptr;
    }
    for (; m_asMadeNext < m_next; ++m_asMadeNext) {
        const Entry& before = m_ledger.entries()[m_asMadeNext];
        const std::int64_t by = m_ledger.struckBy(before.sequence);
        if (by == 0 || by > entry().sequence) {
            fold(*m_asMade, before);
        }
    }
    return &*m_asMade;
}

std::optional<Facts> LedgerFold::asOf(std::int64_t strike) {
    if (!spend(m_next)) {
        return {};
    }
    Facts facts;
    for (std::size_t i = 0; i < m_next; ++i) {
        const Entry& before = m_ledger.entries()[i];
        const std::int64_t by = m_ledger.struckBy(before.sequence);
        if (by == 0 || by > strike) {
            fold(facts, before);
        }
    }
    return facts;
}

const Assessment* LedgerFold::gatesAsMade(GateKind kind) {
    const bool isKnown = m_assessment && (kind == GateKind::trialFit ? m_isTrialGateKnown : m_isClosingGateKnown);
    if (!isKnown) {
        const Facts* facts = asMade();
        const std::size_t inThisBuild =
            facts == nullptr ? 0 : m_next - std::min(m_next, static_cast<std::size_t>(facts->buildEntry));
        if (facts == nullptr || !spend(perAssessment + inThisBuild)) {
            return nullptr;
        }
        m_assessment = assess(*facts);
        m_isTrialGateKnown = m_isClosingGateKnown = true;
    }
    return &*m_assessment;
}

} // namespace caprail
