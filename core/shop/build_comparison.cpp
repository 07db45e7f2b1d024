// SPDX-License-Identifier: GPL-3.0-or-later
#include <shop/build_comparison.h>

#include <algorithm>
#include <assessment/assessment.h>
#include <cmath>
#include <set>
#include <shop/builds.h>
#include <base/say.h>

namespace caprail {

namespace {

/// One build with what is worked out from it.
struct Side {
    const Build& build;
    Assessment assessment;
    explicit Side(const Build& b) : build(b), assessment(assess(b.facts)) {}
};

template <class Map, class Key> const typename Map::mapped_type* lookUp(const Map& map, const Key& key) {
    const auto at = map.find(key);
    return at == map.end() ? nullptr : &at->second;
}

/// The keys of both maps, each once and in order.
template <class Map> std::set<typename Map::key_type> keysOf(const Map& a, const Map& b) {
    std::set<typename Map::key_type> keys;
    for (const Map* map : {&a, &b}) {
        for (const auto& [key, value] : *map) {
            keys.insert(key);
        }
    }
    return keys;
}

std::string shellsOf(const Facts& facts, JournalId journal) {
    const auto* fitted = lookUp(facts.shellsFitted, journal);
    return fitted == nullptr ? std::string() : fitted->what.upper + " / " + fitted->what.lower;
}

BearingThenNow bearing(JournalId journal, const Side& then, const Side& now) {
    BearingThenNow b;
    b.journal = journal;
    if (const auto* r = lookUp(then.assessment.clearances, journal)) {
        b.clearance.then = r->clearance;
        b.clearance.uncertaintyThen = r->uncertainty().expanded();
        b.journalThen = r->journalMean;
        b.boreThen = r->boreMean;
    }
    if (const auto* r = lookUp(now.assessment.clearances, journal)) {
        b.clearance.now = r->clearance;
        b.clearance.uncertaintyNow = r->uncertainty().expanded();
        b.journalNow = r->journalMean;
        b.boreNow = r->boreMean;
    }
    b.shellsThen = shellsOf(then.build.facts, journal);
    b.shellsNow = shellsOf(now.build.facts, journal);
    return b;
}

std::optional<Length> stackOf(const Side& side, Position p) {
    const auto* stack = lookUp(side.assessment.stacks, p);
    return stack == nullptr || (stack->shims.empty() && !stack->residual) ? std::nullopt
                                                                          : std::optional<Length>(stack->thickness);
}

GapThenNow gap(Position p, const Side& then, const Side& now) {
    GapThenNow g;
    g.position = p;
    if (const auto* r = lookUp(then.assessment.gaps, p)) {
        g.gap.then = r->last;
        g.gap.uncertaintyThen = r->uncertainty.expanded();
    }
    if (const auto* r = lookUp(now.assessment.gaps, p)) {
        g.gap.now = r->last;
        g.gap.uncertaintyNow = r->uncertainty.expanded();
    }
    g.stackThen = stackOf(then, p);
    g.stackNow = stackOf(now, p);
    return g;
}

void fits(const Side& then, const Side& now, std::vector<NamedThenNow>& out) {
    const auto& thenFits = then.assessment.fits;
    const auto& nowFits = now.assessment.fits;
    for (const FitId& place : keysOf(thenFits, nowFits)) {
        NamedThenNow fit;
        const bool isOne =
            place.second == 1 && !thenFits.contains({place.first, 2}) && !nowFits.contains({place.first, 2});
        fit.name = isOne ? place.first : place.first + " " + std::to_string(place.second);
        if (const auto* r = lookUp(thenFits, place)) {
            fit.value.then = r->value;
            fit.value.uncertaintyThen = r->uncertainty.expanded();
        }
        if (const auto* r = lookUp(nowFits, place)) {
            fit.value.now = r->value;
            fit.value.uncertaintyNow = r->uncertainty.expanded();
        }
        out.push_back(std::move(fit));
    }
    const PickupResult& a = then.assessment.pickup;
    const PickupResult& b = now.assessment.pickup;
    if (a.clearance || b.clearance) {
        out.push_back(
            {Core::say("pickup clearance"), {a.clearance, b.clearance, a.uncertainty.expanded(), b.uncertainty.expanded()}});
    }
}

std::int64_t roundsMoved(const Facts& facts, FastenerId f) {
    return std::ranges::count_if(facts.rounds, [&](const RoundFact& round) {
        const auto* outcome = lookUp(round.outcomes, f);
        return outcome != nullptr && outcome->what.outcome == Outcome::moved;
    });
}

std::optional<Torque> torqueOf(const Facts& facts, FastenerId f) {
    const auto* fact = lookUp(facts.fasteners, f);
    return fact == nullptr || !fact->tightened || !fact->tightened->what.torque
               ? std::nullopt
               : std::optional<Torque>(fact->tightened->what.torque->value);
}

void fasteners(const Facts& then, const Facts& now, std::vector<FastenerThenNow>& out) {
    std::set<FastenerId> all = keysOf(then.fasteners, now.fasteners);
    for (const Facts* facts : {&then, &now}) {
        for (const RoundFact& round : facts->rounds) {
            for (const auto& [fastener, outcome] : round.outcomes) {
                all.insert(fastener);
            }
        }
    }
    for (const FastenerId f : all) {
        out.push_back({f, torqueOf(then, f), torqueOf(now, f), roundsMoved(then, f), roundsMoved(now, f)});
    }
}

RoundsThenNow roundsOf(const Facts& facts) {
    RoundsThenNow r;
    r.rounds = static_cast<std::int64_t>(facts.rounds.size());
    for (const RoundFact& round : facts.rounds) {
        for (const auto& [fastener, outcome] : round.outcomes) {
            ++r.pulls;
            if (outcome.what.outcome == Outcome::moved) {
                ++r.moved;
                r.largest = std::max(r.largest, outcome.what.angle ? outcome.what.angle->value : Angle());
            }
        }
    }
    return r;
}

BuildSide sideOf(const Build& build) {
    return {build.number, build.begun, build.last, build.why, build.facts.isClosed()};
}

std::optional<Length> less(const std::optional<Length>& a, const std::optional<Length>& b) {
    return a && b ? std::optional<Length>(*a - *b) : std::nullopt;
}

BuildComparison compare(const Build& earlier, const Build& later) {
    const Side then(earlier);
    const Side now(later);
    BuildComparison c;
    c.then = sideOf(earlier);
    c.now = sideOf(later);
    for (const JournalId journal : keysOf(then.assessment.clearances, now.assessment.clearances)) {
        BearingThenNow b = bearing(journal, then, now);
        if (b.journalThen || b.journalNow || b.boreThen || b.boreNow || b.clearance.then || b.clearance.now) {
            c.bearings.push_back(std::move(b));
        }
    }
    for (const Position p : keysOf(then.assessment.gaps, now.assessment.gaps)) {
        GapThenNow g = gap(p, then, now);
        if (g.gap.then || g.gap.now || g.stackThen || g.stackNow) {
            c.gaps.push_back(g);
        }
    }
    fits(then, now, c.fits);
    fasteners(earlier.facts, later.facts, c.fasteners);
    c.roundsThen = roundsOf(earlier.facts);
    c.roundsNow = roundsOf(later.facts);
    return c;
}

} // namespace

std::optional<Length> ThenNow::difference() const {
    return less(now, then);
}

std::optional<double> ThenNow::uncertainty() const {
    return uncertaintyThen && uncertaintyNow ? std::optional(std::hypot(*uncertaintyThen, *uncertaintyNow))
                                             : std::nullopt;
}

bool ThenNow::isChange() const {
    return isJudged() && static_cast<double>(difference()->magnitude().value()) > *uncertainty();
}

std::optional<Length> BearingThenNow::journalWear() const {
    return less(journalThen, journalNow);
}

std::optional<Length> BearingThenNow::boreWear() const {
    return less(boreNow, boreThen);
}

Result<BuildComparison> compareBuilds(const Ledger& ledger, std::int64_t then, std::int64_t now) {
    const std::vector<Build> builds = buildsOf(ledger);
    const auto earlier = std::ranges::find(builds, then, &Build::number);
    const auto later = std::ranges::find(builds, now, &Build::number);
    if (earlier == builds.end() || later == builds.end()) {
        return refuse(
            Core::say("This record has no build %1: it has %2.", earlier == builds.end() ? then : now, builds.size()));
    }
    if (then == now) {
        return refuse(Core::say("A build is compared with another one: choose two."));
    }
    return compare(*earlier, *later);
}

Result<BuildComparison> compareLastBuilds(const Ledger& ledger) {
    const std::vector<Build> builds = buildsOf(ledger);
    if (builds.size() < 2) {
        return refuse(Core::say(
            "This record has one build only: there is a difference once a new build of the engine was begun."));
    }
    return compare(builds[builds.size() - 2], builds.back());
}

} // namespace caprail
