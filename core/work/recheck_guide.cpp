// SPDX-License-Identifier: GPL-3.0-or-later
#include <work/recheck_guide.h>

#include <algorithm>
#include <assessment/budget_of.h>
#include <base/say.h>
#include <cmath>
#include <work/stack_planning.h>

namespace caprail {

namespace {

/// The recheck that the next answer belongs to; null: a new one begins.
const RecheckMade* underWay(const Facts& facts, const Assessment& assessment, Position p, const WhoFeels& who) {
    const auto at = facts.rechecks.find(p);
    const Check* check = assessment.find(CheckKind::recheck, p);
    const bool stands = at != facts.rechecks.end() && check != nullptr && check->isGood();
    return stands && at->second.person == who.person && at->second.what.instrument == who.straightedge
               ? &at->second.what
               : nullptr;
}

Length changeOf(const Facts& facts, const Rare<NameList>& in, const Rare<NameList>& out) {
    Length change;
    for (const auto& [list, sign] : {std::pair(&in, 1), std::pair(&out, -1)}) {
        for (const std::string& name : *list ? (*list)->names : std::vector<std::string>()) {
            if (const auto shim = facts.shims.find(name); shim != facts.shims.end()) {
                change += shim->second.thickness() * sign;
            }
        }
    }
    return change;
}

/// Finds the exchange for one end of the bracket.
struct EndSearch {
    const Facts& facts;
    Position position;
    std::string straightedge;
    int sign;        ///< +1 thicker, −1 thinner
    Length limit;    ///< of that end of the band, above zero
    Length moreThan; ///< an exchange of so much only dragged; zero: none was tried
    Scatter shims;

    /// Whether an exchange, felt as it should be, proves that end.
    [[nodiscard]] bool proves(const Exchange& exchange) const {
        const Uncertainty left = bracketEnd(facts, exchange, straightedge, shims);
        const auto change = static_cast<double>(exchange.change.magnitude().value());
        return left.isKnown() && change + left.known()->expanded <= static_cast<double>(limit.value());
    }

    void fill(RecheckGuide& guide) const {
        std::optional<Exchange> smallest; // where none proves it
        for (int tenth = 10; tenth >= 2; --tenth) {
            auto exchange = exchangeFor(facts, position, Length(limit.value() / 10 * tenth) * sign);
            if (!exchange || exchange->change.magnitude() <= moreThan) {
                continue;
            }
            if (proves(*exchange)) {
                guide.exchange = std::move(exchange);
                guide.wouldProve = true;
                return;
            }
            if (!smallest || exchange->change.magnitude() < smallest->change.magnitude()) {
                smallest = std::move(exchange);
            }
        }
        guide.exchange = std::move(smallest);
        guide.doubt = doubtOf(guide.exchange);
    }

    [[nodiscard]] std::string doubtOf(const std::optional<Exchange>& exchange) const {
        if (!exchange) {
            return moreThan > Length()
                       ? Core::say("The free shims hold no exchange that is larger and still within the band: build the "
                                   "stack nearer to the middle, or measure more shims of the kit.")
                       : Core::say("The free shims hold no exchange for it: measure more shims of the kit, or add some.");
        }
        const Uncertainty left = bracketEnd(facts, *exchange, straightedge, shims);
        if (!left.isKnown()) {
            return remedyFor(left.missing().front());
        }
        return Core::say("With this exchange the bracket proves less than the band: straightedge and micrometer take "
                         "too much of it, or the kit's shims lie too far apart.");
    }
};

bool isStackGood(const Assessment& assessment, Position p) {
    const Check* stack = assessment.find(CheckKind::stack, p);
    return stack != nullptr && stack->isGood();
}

/// Felt the wrong way round, which no step between clean faces does.
std::string contradiction(const RecheckMade& recheck) {
    if (recheck.thickerFelt == Feel::loose) {
        return Core::say(
            "It was loose with the thicker stack, which cannot be: clean, look for a burr, and begin again.");
    }
    if (recheck.thinnerFelt == Feel::rocks) {
        return Core::say("It rocked with the thinner stack, which cannot be: clean, look for a burr, and begin again.");
    }
    return {};
}

} // namespace

RecheckGuide guideRecheck(const Facts& facts, const Assessment& assessment, Position p, const WhoFeels& who,
                          bool isWanted) {
    RecheckGuide guide;
    const Check* check = assessment.find(CheckKind::recheck, p);
    if (check != nullptr && check->isGood() && isStackGood(assessment, p) && !isWanted) {
        guide.ask = RecheckAsk::nothing;
        return guide;
    }
    const RecheckMade* recheck = underWay(facts, assessment, p, who);
    if (recheck == nullptr) {
        return guide;
    }
    guide.doubt = contradiction(*recheck);
    if (!guide.doubt.empty()) {
        return guide;
    }
    const bool isThickerDone = recheck->thickerFelt == Feel::rocks;
    if (isThickerDone && recheck->thinnerFelt == Feel::loose) {
        guide.ask = RecheckAsk::nothing;
        return guide;
    }
    guide.ask = isThickerDone ? RecheckAsk::thinner : RecheckAsk::thicker;
    const Band band = residualBand(facts).band;
    const Length tried = isThickerDone ? changeOf(facts, recheck->thinnerIn, recheck->thinnerOut)
                                       : changeOf(facts, recheck->thickerIn, recheck->thickerOut);
    EndSearch{facts,
              p,
              who.straightedge,
              isThickerDone ? -1 : 1,
              std::max(Length(), isThickerDone ? -band.lo() : band.hi()),
              tried.magnitude(),
              shimScatter(facts)}
        .fill(guide);
    return guide;
}

RecheckMade recheckOf(const Facts& facts, Position p, const RecheckGuide& guide, Feel feel, const WhoFeels& who) {
    RecheckMade made{p, feel, who.straightedge};
    if (guide.ask == RecheckAsk::asBuilt || guide.ask == RecheckAsk::nothing || !guide.exchange) {
        return made;
    }
    if (const auto before = facts.rechecks.find(p); before != facts.rechecks.end()) {
        made = before->second.what;
    }
    if (guide.ask == RecheckAsk::thicker) {
        made.thickerOut = NameList{guide.exchange->out};
        made.thickerIn = NameList{guide.exchange->in};
        made.thickerFelt = feel;
    } else {
        made.thinnerOut = NameList{guide.exchange->out};
        made.thinnerIn = NameList{guide.exchange->in};
        made.thinnerFelt = feel;
    }
    return made;
}

} // namespace caprail
