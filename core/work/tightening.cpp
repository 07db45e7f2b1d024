// SPDX-License-Identifier: GPL-3.0-or-later
#include <work/tightening.h>

#include <algorithm>
#include <assessment/admission.h>
#include <base/text.h>
#include <ledger/expectations.h>
#include <base/say.h>
#include <fasteners/sequence.h>

namespace caprail {

std::vector<FastenerId> tighteningOrder(const Facts& facts, FastenerKind kind) {
    std::vector<FastenerGroupSet> groups;
    for (const auto& [key, group] : facts.groups) {
        if (key.first == kind) {
            groups.push_back(group.what);
        }
    }
    return tighteningOrder(facts, kind, groups);
}

std::vector<FastenerId> tighteningOrder(const Facts& facts, FastenerKind kind,
                                        const std::vector<FastenerGroupSet>& groups) {
    if (!facts.layout || (!hasSides(kind) && groups.empty())) {
        return {};
    }
    // A row has as many fasteners as its group counts.
    const auto usual = usualSequence(*facts.layout, kind, groups.empty() ? 0 : static_cast<int>(groups.front().count));
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

std::map<FastenerId, int> sequenceNumbers(const std::vector<FastenerId>& order) {
    std::map<FastenerId, int> numbers;
    std::map<FastenerKind, int> last;
    for (const FastenerId& f : order) {
        numbers[f] = ++last[f.kind];
    }
    return numbers;
}

const RoundFact* roundUnderWay(const Facts& facts) {
    if (facts.rounds.empty() || facts.rounds.back().voidedBy.entry != 0 ||
        stillToPull(facts, facts.rounds.back()).empty()) {
        return nullptr;
    }
    return &facts.rounds.back();
}

std::vector<FastenerId> stillToPull(const Facts& facts, const RoundFact& round) {
    std::vector<FastenerId> left;
    std::ranges::copy_if(verifyOrder(facts), std::back_inserter(left),
                         [&](const FastenerId& f) { return !round.outcomes.contains(f); });
    return left;
}

bool isAtSpecified(const Facts& facts, FastenerId fastener) {
    const auto at = facts.fasteners.find(fastener);
    const auto specified = asSpecified(facts, fastener, {});
    if (at == facts.fasteners.end() || !at->second.tightened || at->second.isLoose || !specified) {
        return false;
    }
    const FastenerTightened& is = at->second.tightened->what;
    const auto same = [](const auto& a, const auto& b) { return !b || (a && a->value == b->value); };
    return same(is.torque, specified->torque) && same(is.angle, specified->angle) &&
           same(is.stretch, specified->stretch);
}

Result<FastenerTightened> asSpecified(const Facts& facts, FastenerId fastener, const std::string& instrument) {
    const auto* group = facts.groupOf(fastener);
    if (group == nullptr) {
        return refuse(Core::say("Nothing is specified for %1: set its group first, under Groups.", describe(fastener)));
    }
    FastenerTightened entry{fastener, {}, {}, {}, instrument};
    switch (group->what.method) {
    case TighteningMethod::torque:
        entry.torque = group->what.torque;
        break;
    case TighteningMethod::torqueAndAngle:
        entry.torque = group->what.torque;
        entry.angle = group->what.angle;
        break;
    case TighteningMethod::stretch:
        entry.stretch = group->what.stretch;
        break;
    }
    return entry;
}

Result<FastenerTightened> parseTightened(const Facts& facts, FastenerId fastener, std::string_view typed,
                                         const std::string& instrument, const Units& units) {
    const std::string_view text = trimmed(typed);
    auto specified = asSpecified(facts, fastener, instrument);
    if (text.empty()) {
        return specified;
    }
    FastenerTightened entry{fastener, {}, {}, {}, instrument};
    const std::string name = describe(fastener);
    if (specified && specified->stretch) {
        auto stretch = parseLength(
            text, units, expectedLength(FastenerTightened::kind, "stretch", Core::say("the stretch of %1", name)));
        if (!stretch) {
            return tl::unexpected(stretch.error());
        }
        entry.stretch = std::move(*stretch);
        return entry;
    }
    const std::size_t slash = text.find('/');
    auto torque = parseTorque(text.substr(0, slash), units,
                              expectedTorque(FastenerTightened::kind, "torque", Core::say("the torque of %1", name)));
    if (!torque) {
        return tl::unexpected(torque.error());
    }
    entry.torque = std::move(*torque);
    if (slash != std::string_view::npos) {
        auto angle = parseAngle(text.substr(slash + 1), units,
                                expectedAngle(FastenerTightened::kind, "angle", Core::say("the angle of %1", name)));
        if (!angle) {
            return tl::unexpected(angle.error());
        }
        entry.angle = std::move(*angle);
    }
    const auto good = makesSense(facts, entry); // said as it is typed
    return good ? Result<FastenerTightened>(std::move(entry)) : tl::unexpected(good.error());
}

} // namespace caprail
