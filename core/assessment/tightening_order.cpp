// SPDX-License-Identifier: GPL-3.0-or-later
#include <assessment/tightening_order.h>

#include <algorithm>
#include <assessment/fastener_groups.h>
#include <assessment/specified.h>
#include <fasteners/sequence.h>

namespace caprail {

std::vector<FastenerId> tighteningOrder(const Facts& facts, FastenerKind kind) {
    return tighteningOrder(facts, kind, groupsOf(facts, kind));
}

std::vector<FastenerId> tighteningOrder(const Facts& facts, FastenerKind kind,
                                        const std::vector<FastenerGroupSet>& groups) {
    if (!facts.layout || (!hasSides(kind) && groups.empty())) {
        return {};
    }
    // A row has as many fasteners as its groups count.
    const auto usual = usualSequence(*facts.layout, kind, rowCount(groups, kind));
    std::vector<FastenerId> order;
    const auto put = [&](FastenerId f) {
        if (std::ranges::find(usual, f) != usual.end() && std::ranges::find(order, f) == order.end()) {
            order.push_back(f);
        }
    };
    for (const FastenerGroupSet& group : groups) {
        for (const auto& name : group.sequence.names) {
            if (const auto f = parseFastener(name)) {
                put(*f);
            }
        }
    }
    std::ranges::for_each(usual, put);
    return order;
}

std::vector<FastenerId> verifyOrder(const Facts& facts) {
    auto order = tighteningOrder(facts, FastenerKind::mainCap);
    const auto rods = tighteningOrder(facts, FastenerKind::rod);
    order.insert(order.end(), rods.begin(), rods.end());
    return order;
}

std::optional<FastenerId> looseAt(const Facts& facts, JournalId journal) {
    const auto order =
        tighteningOrder(facts, journal.kind == JournalKind::main ? FastenerKind::mainCap : FastenerKind::rod);
    const auto at = std::ranges::find_if(order, [&](FastenerId f) {
        return f.number == journal.number && !isTightAsSpecified(facts, f);
    });
    return at == order.end() ? std::nullopt : std::optional(*at);
}

std::map<FastenerId, int> sequenceNumbers(const std::vector<FastenerId>& order) {
    std::map<FastenerId, int> numbers;
    std::map<FastenerKind, int> last;
    for (const FastenerId& f : order) {
        numbers[f] = ++last[f.kind];
    }
    return numbers;
}

const RoundFact* roundUnderWay(const Facts& facts) {
    if (facts.rounds.empty() || facts.rounds.back().voidedBy.entry != 0 || isComplete(facts, facts.rounds.back())) {
        return nullptr;
    }
    return &facts.rounds.back();
}

std::vector<FastenerId> stillToPull(const Facts& facts, const RoundFact& round) {
    std::vector<FastenerId> left;
    std::ranges::copy_if(verifyOrder(facts), std::back_inserter(left), [&](const FastenerId& f) {
        const auto outcome = round.outcomes.find(f);
        return outcome == round.outcomes.end() || whyNotCounted(facts, outcome->second);
    });
    return left;
}

} // namespace caprail
