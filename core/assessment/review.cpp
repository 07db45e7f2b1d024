// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <assessment/admission.h>
#include <assessment/ledger_fold.h>
#include <assessment/review.h>
#include <assessment/signatures.h>
#include <base/say.h>

namespace caprail {

namespace {

/// Which gate an entry is judged by; the closing gate's assessment holds all checks.
std::optional<GateKind> gateFor(const Body& body) {
    if (body.is<TrialFitResult>()) {
        return GateKind::trialFit;
    }
    if (isAnyOf<ClosingStepDone, SignedOff, JudgedAgain>(body)) {
        return GateKind::closing;
    }
    return {};
}

class Review {
public:
    explicit Review(const Ledger& ledger) : m_ledger(ledger), m_fold(ledger) {
        for (const Entry& entry : ledger.entries()) {
            if (entry.body.is<Struck>()) {
                m_strikes.push_back(entry.sequence);
            }
        }
    }

    LedgerReview run() {
        for (; !m_fold.atEnd() && m_fold.isWhole() && !isFound(m_fold.entry().sequence); m_fold.next()) {
            const Entry& entry = m_fold.entry();
            if (auto allowed = judge(entry); !allowed) {
                name(entry, allowed.error().sentence);
            }
        }
        m_review.isWhole = m_fold.isWhole();
        return std::move(m_review);
    }

private:
    [[nodiscard]] bool isFound(std::int64_t before) const { return m_review.first && m_review.first->entry <= before; }

    void name(const Entry& entry, const std::string& why) {
        if (!m_review.first || entry.sequence < m_review.first->entry) {
            m_review.first = {entry.sequence, entry.person, Core::say(kindOf(entry.body).title), why};
        }
    }

    Result<void> judge(const Entry& entry) {
        static const Assessment none;
        if (isAnyOf<Salvaged, BroughtIn>(entry.body)) {
            return admit(m_fold.facts(), entry.person, entry.body);
        }
        if (const auto* signature = entry.body.as<SealSigned>()) {
            if (auto valid = wasKeyValid(*signature, entry.time); !valid) {
                return valid;
            }
        }
        if (const auto* strike = entry.body.as<Struck>()) {
            return judgeStrike(entry, *strike);
        }
        if (const auto gate = gateFor(entry.body)) {
            const Assessment* gates = m_fold.gatesAsMade(*gate);
            const Facts* facts = gates == nullptr ? nullptr : m_fold.asMade();
            return facts == nullptr ? Result<void>() : mayAppend(m_ledger, *facts, *gates, entry.person, entry.body);
        }
        if (m_fold.closedBy() != 0 && !isAllowedAfterClosing(entry.body)) {
            return refuse(Core::say("This build was signed off in entry %1.", m_fold.closedBy()));
        }
        auto allowed = mayAppend(m_ledger, m_fold.facts(), none, entry.person, entry.body);
        if (allowed || !m_fold.isReachedOver()) {
            return allowed;
        }
        // What stood in its way, or what it needs, may have been struck since.
        const Facts* facts = m_fold.asMade();
        if (facts != nullptr) {
            if (auto then = mayAppend(m_ledger, *facts, none, entry.person, entry.body); !then) {
                return then;
            }
        }
        if (!m_ledger.isStruck(entry.sequence)) {
            nameStrikeThatFells(entry, allowed.error().sentence);
        }
        return {};
    }

    Result<void> judgeStrike(const Entry& entry, const Struck& strike) {
        if (m_fold.closedBy() != 0 && strike.entry != m_fold.closedBy()) {
            return refuse(Core::say("This build is signed off: strike the sign-off (entry %1) before any other entry.",
                                    m_fold.closedBy()));
        }
        auto ok = admit(m_fold.facts(), entry.person, entry.body);
        if (!ok && m_fold.isReachedOver()) { // who strikes may have been struck since
            const Facts* facts = m_fold.asMade();
            ok = facts == nullptr ? Result<void>() : admit(*facts, entry.person, entry.body);
        }
        if (!ok) {
            return ok;
        }
        if (!m_struck.insert(strike.entry).second) {
            return refuse(Core::say("Entry %1 was struck already.", strike.entry));
        }
        return mayBeStruck(m_ledger, strike.entry, entry.sequence - 1);
    }

    /// A live entry that made sense when it was made makes none without what was struck since: one of the strikes was
    /// not allowed.
    void nameStrikeThatFells(const Entry& entry, const std::string& why) {
        for (auto at = std::ranges::upper_bound(m_strikes, entry.sequence);
             at != m_strikes.end() && !isFound(*at) && m_fold.isWhole(); ++at) {
            const std::int64_t struck = m_ledger.at(*at).body.get<Struck>().entry;
            const auto facts = struck < entry.sequence ? m_fold.asOf(*at) : std::nullopt;
            if (facts && !admit(*facts, entry.person, entry.body)) {
                name(m_ledger.at(*at), Core::say("Entry %1 needs entry %2: %3", entry.sequence, struck, why));
            }
        }
    }

    const Ledger& m_ledger;
    LedgerFold m_fold;
    LedgerReview m_review;
    std::vector<std::int64_t> m_strikes; ///< their numbers, in order
    std::set<std::int64_t> m_struck;     ///< entries that the strikes so far took back
};

} // namespace

LedgerReview reviewLedger(const Ledger& ledger) {
    return Review(ledger).run();
}

std::string sentenceOf(const NotAllowed& found, std::string_view version) {
    return Core::say("Entry %1 (“%2”, by %3) was not allowed when it was made, by the rules of Caprail %4: %5",
                     found.entry, found.title, found.person, version, found.why);
}

std::string sentenceOf(const NeverValid& closing) {
    return closing.step ? Core::say("The closing step “%1” in entry %2, by %3, was never valid: %4",
                                    shown(*closing.step), closing.entry, closing.person, closing.why)
                        : Core::say("The sign-off in entry %1, by %2, was never valid: %3", closing.entry,
                                    closing.person, closing.why);
}

} // namespace caprail
