// SPDX-License-Identifier: GPL-3.0-or-later
#include <assessment/judged_before.h>

#include <algorithm>
#include <assessment/fastener_groups.h>
#include <assessment/rule_values.h>
#include <base/text.h>
#include <ledger/band_names.h>

namespace caprail {

namespace {

/// The newest entry of the lists of readings whose key is one that is asked for; 0: none yet.
template <class Map, class Is> std::int64_t newestIn(const Map& map, Is is) {
    std::int64_t newest = 0;
    for (const auto& [key, readings] : map) {
        newest = !readings.empty() && is(key) ? std::max(newest, readings.back().entry) : newest;
    }
    return newest;
}
template <class Map> std::int64_t newestIn(const Map& map) {
    return newestIn(map, [](const auto&) { return true; });
}
/// Of one key.
template <class Map> std::int64_t newestAt(const Map& map, const typename Map::key_type& key) {
    const auto at = map.find(key);
    return at == map.end() || at->second.empty() ? 0 : at->second.back().entry;
}
/// Of maps with one entry for each key.
template <class Map> std::int64_t newestOf(const Map& map) {
    std::int64_t newest = 0;
    for (const auto& [key, one] : map) {
        newest = std::max(newest, one.entry);
    }
    return newest;
}

std::int64_t newestOfBand(const Facts& facts, std::string_view band) {
    if (band == bands::residual || band == bands::twist) {
        return newestIn(facts.gaps);
    }
    if (band == bands::mainClearance || band == bands::rodClearance) {
        const JournalKind kind = band == bands::mainClearance ? JournalKind::main : JournalKind::rod;
        const auto isOfKind = [&](JournalId journal) { return journal.kind == kind; };
        return std::max(newestIn(facts.journals, isOfKind), newestIn(facts.bores, isOfKind));
    }
    if (band == bands::journalTaper || band == bands::journalOutOfRound) {
        return newestIn(facts.journals);
    }
    if (band == bands::pickupClearance) {
        return newestIn(facts.pickup);
    }
    return newestIn(facts.fits, [&](const FitId& fit) { return fit.first == band; });
}

std::int64_t newestOfAny(const Facts& facts) {
    return std::max({newestIn(facts.gaps), newestIn(facts.journals), newestIn(facts.bores), newestIn(facts.fits),
                     newestIn(facts.pickup), newestOf(facts.trialFits), newestOf(facts.turning)});
}

/// One overload for each kind that can change what something was judged by.
class JudgedByIt {
public:
    explicit JudgedByIt(const Facts& facts) : m_facts(facts) {}

    std::int64_t operator()(const BandSet& e) const {
        const BandFact* before = m_facts.bandNamed(e.band);
        const bool isOther = before != nullptr && (before->band.lo() != e.lo.value || before->band.hi() != e.hi.value);
        return isOther ? newestOfBand(m_facts, e.band) : 0;
    }
    std::int64_t operator()(const RulesSet& e) const {
        const RulesSet& was = m_facts.rules;
        const bool isOther = std::ranges::any_of(changedRules(was, e), [](std::string_view field) {
            return field != "kit_tolerance" && field != "largest_stack" && field != "torque_scatter_percent";
        });
        const auto dropped = [](const std::optional<bool>& from, const std::optional<bool>& to) {
            return from.value_or(false) && !to.value_or(false);
        };
        if (dropped(was.secondPersonVerifies, e.secondPersonVerifies) || dropped(was.secondPersonSigns, e.secondPersonSigns)) {
            return std::max(newestOfAny(m_facts), m_facts.rounds.empty() ? 0 : m_facts.rounds.back().lastEntry());
        }
        return isOther ? newestOfAny(m_facts) : 0;
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
        return newestIn(m_facts.ownAnswers, [&](const OwnPlace& place) { return place.check == e.ownCheck; });
    }
    std::int64_t operator()(const ShellsFitted& e) const {
        const auto before = m_facts.shellsFitted.find(e.journal);
        const bool isOther = before != m_facts.shellsFitted.end() &&
                             (before->second.what.upper != e.upper || before->second.what.lower != e.lower);
        const std::int64_t bore = newestAt(m_facts.bores, e.journal);
        return isOther && bore > before->second.entry ? bore : 0;
    }
    std::int64_t operator()(const PartChanged& e) const {
        switch (e.part) {
        case Part::nutAndWasher: {
            const auto at = parsePosition(e.place);
            return at ? newestAt(m_facts.gaps, *at) : 0;
        }
        case Part::panRail:
            return newestIn(m_facts.gaps);
        case Part::shells: {
            const auto at = parseJournal(e.place);
            return at ? newestAt(m_facts.bores, *at) : 0;
        }
        case Part::crank:
            return newestIn(m_facts.journals);
        case Part::pan:
        case Part::gasket:
        case Part::plate:
        case Part::pickup:
            break;
        }
        return newestIn(m_facts.pickup, [&](PickupTerm term) { return partOf(term) == e.part; });
    }
    std::int64_t operator()(const WasherWorked& e) const { return newestAt(m_facts.gaps, e.position); }
    std::int64_t operator()(const FastenerLoosened& e) const {
        if (!isVerified(e.fastener.kind)) {
            return 0;
        }
        const auto isOfCap = [&](Position p) {
            return e.fastener.kind == FastenerKind::mainCap && p.cap == e.fastener.number;
        };
        const std::int64_t gap = newestIn(m_facts.gaps, isOfCap);
        if (m_facts.rounds.empty()) {
            return gap;
        }
        const auto& outcomes = m_facts.rounds.back().outcomes;
        const auto outcome = outcomes.find(e.fastener);
        return outcome == outcomes.end() ? gap : std::max(gap, outcome->second.entry);
    }
    template <class Other> std::int64_t operator()(const Other&) const { return 0; }

private:
    const Facts& m_facts;
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
    return body.visit(JudgedByIt(facts));
}

const std::string* reasonOf(const Body& body) {
    return body.visit([]<class Kind>(const Kind& e) -> const std::string* {
        constexpr auto member = reasonMember<Kind>();
        if constexpr (std::is_null_pointer_v<decltype(member)>) {
            return nullptr;
        } else {
            return textOf(e.*member);
        }
    });
}

bool lacksReason(const Facts& facts, const Body& body) {
    const std::string* why = reasonOf(body);
    return (why == nullptr || isBlank(*why)) && judgedBefore(facts, body) != 0;
}

Body withReason(Body body, std::string why) {
    body.visit([&]<class Kind>(Kind& e) {
        constexpr auto member = reasonMember<Kind>();
        if constexpr (!std::is_null_pointer_v<decltype(member)>) {
            e.*member = std::move(why);
        }
    });
    return body;
}

} // namespace caprail
