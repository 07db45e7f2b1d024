// SPDX-License-Identifier: GPL-3.0-or-later
#include <assessment/facts.h>
#include <assessment/ledger_fold.h>

#include <algorithm>
#include <numeric>

namespace caprail {

Topic topicOf(Part part) {
    switch (part) {
    case Part::nutAndWasher:
        return Topic::nutAndWasher;
    case Part::panRail:
        return Topic::panRail;
    case Part::shells:
        return Topic::shells;
    case Part::crank:
        return Topic::crank;
    case Part::pan:
        return Topic::pan;
    case Part::gasket:
        return Topic::gasket;
    case Part::plate:
        return Topic::plate;
    case Part::pickup:
        break;
    }
    return Topic::pickup;
}

Part partOf(PickupTerm term) {
    switch (term) {
    case PickupTerm::panDepth:
        return Part::pan;
    case PickupTerm::gasket:
        return Part::gasket;
    case PickupTerm::plate:
        return Part::plate;
    case PickupTerm::pickupDepth:
        break;
    }
    return Part::pickup;
}

std::optional<Length> ShimFact::measured() const {
    if (readings.empty()) {
        return {};
    }
    std::int64_t sum = 0;
    for (const auto& reading : readings) {
        sum += reading.what.thickness.value.value();
    }
    return Length(toNearest(static_cast<double>(sum) / static_cast<double>(readings.size())));
}

std::optional<Length> ShimFact::offMarking() const {
    const auto value = measured();
    return value ? std::optional(*value - added.what.marked.value) : std::nullopt;
}

bool ShimFact::isOffMarking(const RulesSet& rules) const {
    const auto off = offMarking();
    return off && off->magnitude() > rules.kitTolerance;
}

bool RoundFact::anyMoved() const {
    return std::ranges::any_of(outcomes, [](const auto& o) { return o.second.what.outcome == Outcome::moved; });
}

std::int64_t RoundFact::lastEntry() const {
    return std::accumulate(outcomes.begin(), outcomes.end(), begun.entry,
                           [](std::int64_t n, const auto& o) { return std::max(n, o.second.entry); });
}

Change Facts::changeOf(Topic topic, const std::string& about) const {
    const auto at = changes.find({topic, about});
    return at == changes.end() ? Change{} : at->second;
}

const BandFact* Facts::bandNamed(std::string_view name) const {
    const auto at = bands.find(name);
    return at == bands.end() ? nullptr : &at->second;
}

const Seen<FastenerGroupSet>* Facts::groupOf(FastenerId f) const {
    auto at = groups.find({f.kind, f.ring});
    if (at == groups.end()) {
        at = groups.find({f.kind, std::nullopt});
    }
    return at == groups.end() ? nullptr : &at->second;
}

std::vector<Position> Facts::stacksOn() const {
    std::vector<Position> list;
    for (const auto& [position, stack] : stacks) {
        if (stack.isOn) {
            list.push_back(position);
        }
    }
    return list;
}

Change Facts::gapFelledBy(Position p) const {
    Change last = changeOf(Topic::capMovement, std::to_string(p.cap));
    for (const Change& other : {changeOf(Topic::nutAndWasher, code(p)), changeOf(Topic::panRail)}) {
        last = other.entry > last.entry ? other : last;
    }
    return last;
}

std::span<const Seen<GapReading>> Facts::standingGaps(Position p) const {
    const auto at = gaps.find(p);
    if (at == gaps.end()) {
        return {};
    }
    // They lie in the order in which they were made.
    return {std::ranges::upper_bound(at->second, gapFelledBy(p).entry, {}, &Seen<GapReading>::entry), at->second.end()};
}

Facts fold(const Ledger& ledger) {
    LedgerFold folding(ledger);
    for (; !folding.atEnd(); folding.next()) {
    }
    return folding.take();
}

} // namespace caprail
