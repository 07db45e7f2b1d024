// SPDX-License-Identifier: GPL-3.0-or-later
#include <assessment/judged_before.h>

#include <algorithm>
#include <assessment/fastener_groups.h>
#include <assessment/rule_values.h>
#include <ledger/band_names.h>

namespace caprail {

namespace {

/// The newest of the readings that something judges; 0: none yet.
class Newest {
public:
    explicit Newest(const Facts& facts) : m_facts(facts) {}

    [[nodiscard]] std::int64_t ofBand(std::string_view band) const {
        std::int64_t newest = 0;
        if (band == bands::residual || band == bands::twist) {
            take(m_facts.gaps, newest);
        } else if (band == bands::mainClearance || band == bands::rodClearance) {
            const JournalKind kind = band == bands::mainClearance ? JournalKind::main : JournalKind::rod;
            takeOf(m_facts.journals, kind, newest);
            takeOf(m_facts.bores, kind, newest);
        } else if (band == bands::journalTaper || band == bands::journalOutOfRound) {
            take(m_facts.journals, newest);
        } else if (band == bands::pickupClearance) {
            take(m_facts.pickup, newest);
        } else {
            for (const auto& [place, readings] : m_facts.fits) {
                newest = place.first == band ? std::max(newest, readings.back().entry) : newest;
            }
        }
        return newest;
    }
    [[nodiscard]] std::int64_t ofAny() const {
        std::int64_t newest = 0;
        take(m_facts.gaps, newest);
        take(m_facts.journals, newest);
        take(m_facts.bores, newest);
        take(m_facts.fits, newest);
        take(m_facts.pickup, newest);
        for (const auto& [place, result] : m_facts.trialFits) {
            newest = std::max(newest, result.entry);
        }
        for (const auto& [stage, reading] : m_facts.turning) {
            newest = std::max(newest, reading.entry);
        }
        return newest;
    }
    [[nodiscard]] std::int64_t ofGap(Position p) const {
        const auto at = m_facts.gaps.find(p);
        return at == m_facts.gaps.end() || at->second.empty() ? 0 : at->second.back().entry;
    }
    [[nodiscard]] std::int64_t ofGaps() const {
        std::int64_t newest = 0;
        take(m_facts.gaps, newest);
        return newest;
    }
    [[nodiscard]] std::int64_t ofBore(JournalId j) const {
        const auto at = m_facts.bores.find(j);
        return at == m_facts.bores.end() || at->second.empty() ? 0 : at->second.back().entry;
    }
    [[nodiscard]] std::int64_t ofJournals() const {
        std::int64_t newest = 0;
        take(m_facts.journals, newest);
        return newest;
    }
    [[nodiscard]] std::int64_t ofTerm(Part part) const {
        std::int64_t newest = 0;
        for (const auto& [term, readings] : m_facts.pickup) {
            newest = partOf(term) == part && !readings.empty() ? std::max(newest, readings.back().entry) : newest;
        }
        return newest;
    }

private:
    template <class Map> static void take(const Map& map, std::int64_t& newest) {
        for (const auto& [key, readings] : map) {
            newest = readings.empty() ? newest : std::max(newest, readings.back().entry);
        }
    }
    template <class Map> static void takeOf(const Map& map, JournalKind kind, std::int64_t& newest) {
        for (const auto& [journal, readings] : map) {
            newest = journal.kind == kind && !readings.empty() ? std::max(newest, readings.back().entry) : newest;
        }
    }
    const Facts& m_facts;
};

bool isSaid(const std::string* words) {
    return words != nullptr && words->find_first_not_of(" \t\n\r") != std::string::npos;
}

/// One overload for each kind that can change what something was judged by.
class JudgedByIt {
public:
    explicit JudgedByIt(const Facts& facts) : m_facts(facts), m_newest(facts) {}

    std::int64_t operator()(const BandSet& e) const {
        const BandFact* before = m_facts.bandNamed(e.band);
        const bool isOther = before != nullptr && (before->band.lo() != e.lo.value || before->band.hi() != e.hi.value);
        return isOther ? m_newest.ofBand(e.band) : 0;
    }
    std::int64_t operator()(const RulesSet& e) const {
        const RulesSet& was = m_facts.rules;
        const auto before = ruleValues(was);
        const auto after = ruleValues(e);
        const auto judges = [](std::string_view field) {
            return field != "kit_tolerance" && field != "largest_stack" && field != "torque_scatter_percent";
        };
        bool isOther = false;
        for (std::size_t i = 0; i < before.size(); ++i) {
            isOther = isOther || (judges(before[i].field) && before[i].figure != after[i].figure);
        }
        const auto dropped = [](const std::optional<bool>& from, const std::optional<bool>& to) {
            return from.value_or(false) && !to.value_or(false);
        };
        std::int64_t newest = isOther ? m_newest.ofAny() : 0;
        if (dropped(was.secondPersonVerifies, e.secondPersonVerifies) || dropped(was.secondPersonSigns, e.secondPersonSigns)) {
            newest = std::max({newest, m_newest.ofAny(), m_facts.rounds.empty() ? 0 : m_facts.rounds.back().lastEntry()});
        }
        return newest;
    }
    /// What was tightened, where something else is asked of it with this group than without: a narrower group that takes
    /// a place over changes what is asked there as well.
    std::int64_t operator()(const FastenerGroupSet& e) const {
        Facts then;
        then.layout = m_facts.layout;
        then.groups = m_facts.groups;
        then.groups.insert_or_assign(keyOf(e), Seen<FastenerGroupSet>{m_facts.lastEntry + 1, {}, {}, e});
        std::int64_t newest = 0;
        for (const auto& [f, fact] : m_facts.fasteners) {
            const auto* was = f.kind == e.group && fact.tightened ? m_facts.groupOf(f) : nullptr;
            const auto* is = was == nullptr ? nullptr : then.groupOf(f);
            if (was != nullptr && (is == nullptr || !asksForTheSame(was->what, is->what))) {
                newest = std::max(newest, fact.tightened->entry);
            }
        }
        return newest;
    }
    std::int64_t operator()(const OwnCheckSet& e) const {
        const auto* before = m_facts.ownCheckNamed(e.ownCheck);
        if (before == nullptr || (before->what.words == e.words && before->what.sort == e.sort && before->what.lo == e.lo &&
                                  before->what.hi == e.hi && before->what.places <= e.places)) {
            return 0;
        }
        std::int64_t newest = 0;
        for (const auto& [place, answers] : m_facts.ownAnswers) {
            newest = place.check == e.ownCheck && !answers.empty() ? std::max(newest, answers.back().entry) : newest;
        }
        return newest;
    }
    std::int64_t operator()(const ShellsFitted& e) const {
        const auto before = m_facts.shellsFitted.find(e.journal);
        const bool isOther = before != m_facts.shellsFitted.end() &&
                             (before->second.what.upper != e.upper || before->second.what.lower != e.lower);
        const std::int64_t bore = m_newest.ofBore(e.journal);
        return isOther && bore > before->second.entry ? bore : 0;
    }
    std::int64_t operator()(const PartChanged& e) const {
        switch (e.part) {
        case Part::nutAndWasher: {
            const auto at = parsePosition(e.place);
            return at ? m_newest.ofGap(*at) : 0;
        }
        case Part::panRail:
            return m_newest.ofGaps();
        case Part::shells: {
            const auto at = parseJournal(e.place);
            return at ? m_newest.ofBore(*at) : 0;
        }
        case Part::crank:
            return m_newest.ofJournals();
        case Part::pan:
        case Part::gasket:
        case Part::plate:
        case Part::pickup:
            break;
        }
        return m_newest.ofTerm(e.part);
    }
    std::int64_t operator()(const WasherWorked& e) const { return m_newest.ofGap(e.position); }
    std::int64_t operator()(const FastenerLoosened& e) const {
        if (!isVerified(e.fastener.kind)) {
            return 0;
        }
        std::int64_t newest = 0;
        if (e.fastener.kind == FastenerKind::mainCap) {
            for (const auto& [position, readings] : m_facts.gaps) {
                newest = position.cap == e.fastener.number && !readings.empty() ? std::max(newest, readings.back().entry)
                                                                                : newest;
            }
        }
        if (!m_facts.rounds.empty()) {
            const auto& outcomes = m_facts.rounds.back().outcomes;
            const auto outcome = outcomes.find(e.fastener);
            newest = outcome == outcomes.end() ? newest : std::max(newest, outcome->second.entry);
        }
        return newest;
    }
    template <class Other> std::int64_t operator()(const Other&) const { return 0; }

private:
    const Facts& m_facts;
    Newest m_newest;
};

/// Where a kind says why: one of its texts, or one that is seldom there. Null: nowhere.
template <class Kind> constexpr auto reasonMember() {
    if constexpr (requires(const Kind& e) { e.why.has_value(); } || std::is_same_v<Kind, FastenerLoosened>) {
        return &Kind::why;
    } else if constexpr (std::is_same_v<Kind, PartChanged>) {
        return &Kind::what;
    } else if constexpr (std::is_same_v<Kind, WasherWorked>) {
        return &Kind::note;
    } else {
        return nullptr;
    }
}

const std::string* textOf(const std::string& text) {
    return &text;
}
const std::string* textOf(const Rare<std::string>& text) {
    return text ? &*text : nullptr;
}

} // namespace

std::int64_t judgedBefore(const Facts& facts, const Body& body) {
    return std::visit(JudgedByIt(facts), body);
}

const std::string* reasonOf(const Body& body) {
    return std::visit(
        []<class Kind>(const Kind& e) -> const std::string* {
            constexpr auto member = reasonMember<Kind>();
            if constexpr (std::is_null_pointer_v<decltype(member)>) {
                return nullptr;
            } else {
                return textOf(e.*member);
            }
        },
        body);
}

bool lacksReason(const Facts& facts, const Body& body) {
    return !isSaid(reasonOf(body)) && judgedBefore(facts, body) != 0;
}

Body withReason(Body body, std::string why) {
    std::visit(
        [&]<class Kind>(Kind& e) {
            constexpr auto member = reasonMember<Kind>();
            if constexpr (!std::is_null_pointer_v<decltype(member)>) {
                e.*member = std::move(why);
            }
        },
        body);
    return body;
}

} // namespace caprail
