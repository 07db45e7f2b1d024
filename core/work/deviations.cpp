// SPDX-License-Identifier: GPL-3.0-or-later
#include <work/deviations.h>

#include <algorithm>
#include <base/say.h>
#include <ledger/history_line.h>
#include <map>

namespace caprail {

namespace {

bool isReading(const Body& body) {
    return isAnyOf<JournalReading, BoreReading, FitReading, GapReading, PickupReading, ShimMeasured, ShellMeasured>(
        body);
}
/// What somebody found, or did to something that had been measured.
bool isOutcome(const Body& body) {
    return isAnyOf<RoundOutcome, RecheckMade, TrialFitResult, OwnCheckAnswered, TurningTorqueRead, ClampChecked,
                   FindingOpened, FindingSettled, PartChanged, WasherWorked, FastenerLoosened, SignedOff>(body);
}
/// What others are judged by: a slip, until something was read.
bool isJudge(const Body& body) {
    return isAnyOf<BandSet, RulesSet, FastenerGroupSet, InstrumentAdded, OwnCheckSet>(body);
}

/// What an entry answers: the next live one of the same kind and subject answers it again.
struct SubjectOf {
    template <class... Parts> static std::string of(const Parts&... parts) {
        std::string key;
        ((key += text(parts) + "|"), ...);
        return key;
    }
    static std::string text(std::int64_t n) { return std::to_string(n); }
    static std::string text(const std::string& s) { return s; }
    static std::string text(Position p) { return code(p); }
    static std::string text(JournalId j) { return code(j); }
    static std::string text(FastenerId f) { return code(f); }
    template <class E>
        requires std::is_enum_v<E>
    static std::string text(E e) {
        return std::string(word(e));
    }

    std::string operator()(const RoundOutcome& e) const { return of(e.fastener); }
    std::string operator()(const RecheckMade& e) const { return of(e.position); }
    std::string operator()(const TrialFitResult& e) const { return of(e.item, e.throwNumber); }
    std::string operator()(const OwnCheckAnswered& e) const { return of(e.ownCheck, e.place); }
    std::string operator()(const TurningTorqueRead& e) const { return of(e.stage); }
    std::string operator()(const ClampChecked& e) const { return of(e.fastener); }
    std::string operator()(const FindingOpened& e) const { return of(e.finding); }
    std::string operator()(const FindingSettled& e) const { return of(e.finding); }
    std::string operator()(const PartChanged& e) const { return of(e.part, e.place); }
    std::string operator()(const WasherWorked& e) const { return of(e.position); }
    std::string operator()(const FastenerLoosened& e) const { return of(e.fastener); }
    std::string operator()(const JournalReading& e) const { return of(e.journal, e.station, e.direction); }
    std::string operator()(const BoreReading& e) const { return of(e.journal, e.station); }
    std::string operator()(const FitReading& e) const { return of(e.fit, e.place); }
    std::string operator()(const GapReading& e) const { return of(e.position, e.pass); }
    std::string operator()(const PickupReading& e) const { return of(e.term); }
    std::string operator()(const ShimMeasured& e) const { return of(e.shim); }
    std::string operator()(const ShellMeasured& e) const { return of(e.shell); }
    std::string operator()(const BandSet& e) const { return of(e.band); }
    std::string operator()(const FastenerGroupSet& e) const { return codeOf(keyOf(e)); }
    std::string operator()(const InstrumentAdded& e) const { return of(e.instrument); }
    std::string operator()(const OwnCheckSet& e) const { return of(e.ownCheck); }
    template <class Other> std::string operator()(const Other&) const { return {}; }
};

using SubjectKey = std::pair<std::size_t, std::string>;
SubjectKey subjectOf(const Body& body) {
    return {body.index(), body.visit(SubjectOf{})};
}

/// The strikes of this build that reach the customer, and for each what stands there now.
class Strikes {
public:
    Strikes(const Ledger& ledger, const Facts& facts, const Units& units) : m_ledger(ledger), m_units(units) {
        const auto entries = ledger.entriesFrom(facts.buildEntry);
        std::int64_t newestReading = 0;
        for (const Entry& entry : entries) {
            newestReading = isReading(entry.body) || isOutcome(entry.body) ? entry.sequence : newestReading;
            if (const auto* strike = entry.body.as<Struck>()) {
                take(entry, *strike, newestReading);
            }
        }
        if (!m_wanted.empty()) {
            lookForAnswers(entries);
        }
    }
    [[nodiscard]] std::vector<Deviation> list() && { return std::move(m_list); }

private:
    void take(const Entry& strikeEntry, const Struck& strike, std::int64_t newestReading) {
        if (strike.entry < 1 || strike.entry > m_ledger.size()) {
            return;
        }
        const Entry& entry = m_ledger.at(strike.entry);
        const bool wasJudgedBy = isJudge(entry.body) && newestReading > strike.entry;
        if (!isReading(entry.body) && !isOutcome(entry.body) && !wasJudgedBy) {
            return;
        }
        const auto* outcome = entry.body.as<RoundOutcome>();
        OutcomeStruck what{historyLine(entry.body, m_units), strike.why, strike.entry, entry.person,
                           outcome != nullptr && outcome->outcome == Outcome::moved, isReading(entry.body)};
        m_wanted[subjectOf(entry.body)].push_back(m_list.size());
        m_list.push_back({strikeEntry.sequence, strikeEntry.time, strikeEntry.person, std::move(what)});
    }

    void lookForAnswers(std::span<const Entry> entries) {
        for (const Entry& entry : entries) {
            if (m_ledger.isStruck(entry.sequence) || entry.body.is<Struck>()) {
                continue;
            }
            const auto wanted = m_wanted.find(subjectOf(entry.body));
            if (wanted == m_wanted.end()) {
                continue;
            }
            for (const std::size_t at : wanted->second) {
                auto& what = std::get<OutcomeStruck>(m_list[at].what);
                if (what.again == 0 && entry.sequence > what.entry) {
                    constexpr std::int64_t minute = 60'000;
                    what.again = entry.sequence;
                    what.againSaid = historyLine(entry.body, m_units);
                    what.againBy = entry.person;
                    what.minutes = (entry.time.milliseconds - m_ledger.at(what.entry).time.milliseconds) / minute;
                }
            }
        }
    }

    const Ledger& m_ledger;
    const Units& m_units;
    std::map<SubjectKey, std::vector<std::size_t>> m_wanted; ///< indices into m_list
    std::vector<Deviation> m_list;
};

struct Sorting {
    DeviationSort operator()(const InstrumentCorrected&) const { return DeviationSort::instrument; }
    DeviationSort operator()(const BandChanged&) const { return DeviationSort::limits; }
    DeviationSort operator()(const RulesChanged&) const { return DeviationSort::limits; }
    DeviationSort operator()(const OwnCheckChanged&) const { return DeviationSort::limits; }
    DeviationSort operator()(const GroupChanged&) const { return DeviationSort::specification; }
    DeviationSort operator()(const AcceptedAgain&) const { return DeviationSort::accepted; }
    DeviationSort operator()(const InsistedOn&) const { return DeviationSort::insisted; }
    DeviationSort operator()(const PartReplaced&) const { return DeviationSort::part; }
    DeviationSort operator()(const WasherChanged&) const { return DeviationSort::part; }
    DeviationSort operator()(const ShellsExchanged&) const { return DeviationSort::part; }
    DeviationSort operator()(const FastenerLetOff&) const { return DeviationSort::fastener; }
    DeviationSort operator()(const FoundMoved&) const { return DeviationSort::fastener; }
    DeviationSort operator()(const CameFromOutside&) const { return DeviationSort::outside; }
    DeviationSort operator()(const OutcomeStruck& d) const {
        return d.wasMoved ? DeviationSort::moved : d.isReading ? DeviationSort::reading : DeviationSort::outcome;
    }
};

} // namespace

DeviationSort sortOf(const DeviationKind& kind) {
    return std::visit(Sorting{}, kind);
}

std::vector<Deviation> deviationsOf(const Ledger& ledger, const Facts& facts, const Units& units) {
    std::vector<Deviation> list = facts.deviations;
    std::ranges::move(Strikes(ledger, facts, units).list(), std::back_inserter(list));
    std::ranges::stable_sort(list, {}, &Deviation::entry);
    return list;
}

std::string sentenceOf(Deviation deviation, const Assessment& assessment, const Units& units) {
    if (auto* again = std::get_if<AcceptedAgain>(&deviation.what)) {
        const Check* check = assessment.find(again->check);
        again->check = check == nullptr ? again->check : check->title;
    }
    return describe(deviation.what, units);
}

std::string deviationsLine(const std::vector<Deviation>& deviations) {
    if (deviations.empty()) {
        return Core::say("Nothing was changed after something had been judged by it.");
    }
    std::map<DeviationSort, std::size_t> counts;
    for (const Deviation& deviation : deviations) {
        ++counts[sortOf(deviation.what)];
    }
    std::string words;
    for (const auto& [sort, count] : counts) {
        words += (words.empty() ? "" : ", ") + Core::say("%1: %2", shown(sort), count);
    }
    return Core::say("Changed after something had been judged by it: %1.", words);
}

} // namespace caprail
