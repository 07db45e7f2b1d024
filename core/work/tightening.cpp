// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/fasteners/order.h>

#include <QCoreApplication>
#include <algorithm>
#include <fasteners/sequence.h>
#include <planview/plan_rows.h>
#include <stations/common/station_text.h>
#include <base/say.h>

namespace caprail {

namespace {

Side sideOf(FastenerSide side) {
    return side == FastenerSide::left ? Side::left : Side::right;
}

/// From the centre outwards, for the fasteners that the layout has.
std::vector<FastenerId> usualOrder(const EngineLayout& layout, FastenerKind kind) {
    std::vector<FastenerId> order;
    if (kind == FastenerKind::mainCap) {
        const auto sequence = mainCapSequence(layout.caps(), static_cast<int>(layout.description().fastenersPerCap));
        for (const auto& f : sequence.value_or(std::vector<CapFastener>())) {
            order.push_back({kind, f.cap, sideOf(f.side), f.ring == FastenerRing::inner ? Ring::inner : Ring::outer});
        }
    } else if (kind == FastenerKind::rod) {
        const auto sequence = rodSequence(layout.rods());
        for (const auto& f : sequence.value_or(std::vector<RodFastener>())) {
            order.push_back({kind, f.rod, sideOf(f.side), Ring::inner});
        }
    } else if (kind == FastenerKind::girdleNut) {
        const auto nuts = layout.girdleNuts();
        std::vector<FastenerPoint> points;
        for (const FastenerId& nut : nuts) {
            points.push_back({layout.at(nut).x, layout.at(nut).y});
        }
        const auto sequence = outwardSequence(points);
        for (const std::size_t i : sequence.value_or(std::vector<std::size_t>())) {
            order.push_back(nuts[i]);
        }
    }
    return order;
}

/// Pan rail, front and rear fasteners: from the centre of their pattern outwards, as many as their group has.
std::vector<FastenerId> rowOrder(const EngineLayout& layout, FastenerKind kind, std::int64_t count) {
    std::vector<FastenerId> order;
    for (const int number : rowSequence(layout, kind, static_cast<int>(count))) {
        order.push_back({kind, number, Side::left, Ring::inner});
    }
    return order;
}

} // namespace

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
    const auto usual =
        hasSides(kind) ? usualOrder(*facts.layout, kind) : rowOrder(*facts.layout, kind, groups.front().count);
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

std::map<QString, int> sequenceNumbers(const std::vector<FastenerId>& order) {
    std::map<QString, int> numbers;
    std::map<FastenerKind, int> last;
    for (const FastenerId& f : order) {
        numbers[qtText(code(f))] = ++last[f.kind];
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

} // namespace caprail
