// SPDX-License-Identifier: GPL-3.0-or-later
#include <assessment/facts.h>
#include <assessment/ledger_fold.h>

#include <algorithm>
#include <numeric>

namespace caprail {

const InstrumentAdded* InstrumentFact::inForce(std::int64_t entry) const {
    const auto counts = [&](const Seen<InstrumentAdded>& s) {
        return s.entry <= entry || (s.what.corrects && !s.what.corrects->empty());
    };
    const auto at = std::ranges::find_if(statements.rbegin(), statements.rend(), counts);
    return at == statements.rend() ? nullptr : &at->what;
}

const InstrumentAdded* Facts::instrumentAt(const std::string& name, std::int64_t entry) const {
    const auto at = instruments.find(name);
    return at == instruments.end() ? nullptr : at->second.inForce(entry);
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

Change Facts::changeOf(Topic topic, const About& about) const {
    const auto at = changes.find({topic, about});
    return at == changes.end() ? Change{} : at->second;
}

const BandFact* Facts::bandNamed(std::string_view name) const {
    const auto at = bands.find(name);
    return at == bands.end() ? nullptr : &at->second;
}

GroupKey keyOf(const FastenerGroupSet& group) {
    return {group.group, group.ring, group.name.value_or("")};
}

std::string codeOf(const GroupKey& key) {
    return "group:" + std::string(word(key.kind)) + (key.ring ? "/" + std::string(word(*key.ring)) : std::string()) +
           (key.name.empty() ? std::string() : "=" + key.name);
}

const Seen<FastenerGroupSet>* Facts::groupOf(FastenerId f) const {
    const Seen<FastenerGroupSet>* listed = nullptr;
    const Seen<FastenerGroupSet>* ofRing = nullptr;
    const Seen<FastenerGroupSet>* ofKind = nullptr;
    const std::string place = code(f);
    for (auto at = groups.lower_bound({f.kind, std::nullopt, {}}); at != groups.end() && at->first.kind == f.kind; ++at) {
        const auto& [key, group] = *at;
        if (group.what.places) {
            const auto& names = group.what.places->names;
            const bool isListed = std::ranges::find(names, place) != names.end();
            listed = isListed && (listed == nullptr || group.entry > listed->entry) ? &group : listed;
        } else if (key.ring) {
            ofRing = *key.ring == f.ring ? &group : ofRing;
        } else {
            ofKind = &group;
        }
    }
    return listed != nullptr ? listed : ofRing != nullptr ? ofRing : ofKind;
}

const Seen<OwnCheckSet>* Facts::ownCheckNamed(std::string_view name) const {
    const auto at = std::ranges::find_if(ownChecks, [&](const auto& check) { return check.what.ownCheck == name; });
    return at == ownChecks.end() ? nullptr : &*at;
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

Change Facts::gapInvalidatedBy(Position p) const {
    // Asked at every reading that is folded: a cause is copied once, not for each topic.
    const Change* last = nullptr;
    const auto take = [&](Topic topic, const About& about) {
        const auto at = changes.find({topic, about});
        if (at != changes.end() && (last == nullptr || at->second.entry > last->entry)) {
            last = &at->second;
        }
    };
    take(Topic::capMovement, JournalId{JournalKind::main, p.cap});
    take(Topic::nutAndWasher, p);
    take(Topic::panRail, {});
    take(Topic::crankLaid, {});
    return last == nullptr ? Change{} : *last;
}

std::span<const Seen<GapReading>> Facts::currentGaps(Position p) const {
    const auto at = gaps.find(p);
    if (at == gaps.end()) {
        return {};
    }
    // They lie in the order in which they were made.
    return {std::ranges::upper_bound(at->second, gapInvalidatedBy(p).entry, {}, &Seen<GapReading>::entry),
            at->second.end()};
}

Facts fold(const Ledger& ledger) {
    LedgerFold folding(ledger);
    for (; !folding.atEnd(); folding.next()) {
    }
    return folding.take();
}

} // namespace caprail
