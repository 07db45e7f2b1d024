// SPDX-License-Identifier: GPL-3.0-or-later
#include <engine/layout.h>

#include <algorithm>
#include <base/say.h>

namespace caprail {

namespace {

Result<void> within(std::int64_t n, std::int64_t lo, std::int64_t hi, const std::string& what) {
    if (n < lo || n > hi) {
        return refuse(Core::say("The layout gives %1 for %2: it must be from %3 to %4.", n, what, lo, hi));
    }
    return {};
}

Result<void> check(const LayoutDescription& d) {
    const Result<void> counts[] = {
        within(d.caps, 3, 9, Core::say("the number of main caps")),
        within(d.rods, 1, 16, Core::say("the number of connecting rods")),
        within(d.throws, 1, 16, Core::say("the number of crank throws")),
        within(d.tiedFirst, 1, d.caps, Core::say("the first tied cap")),
        within(d.tiedLast, d.tiedFirst, d.caps, Core::say("the last tied cap")),
        within(d.pickupCap, 1, d.caps, Core::say("the cap nearest to the pickup")),
        within(d.dipstickCap, 1, d.caps, Core::say("the cap nearest to the dipstick")),
    };
    for (const auto& count : counts) {
        if (!count) {
            return count;
        }
    }
    if (d.fastenersPerCap != 2 && d.fastenersPerCap != 4) {
        return refuse(Core::say("The layout gives %1 fasteners per main cap: it must be 2 or 4.", d.fastenersPerCap));
    }
    if (d.fastenersPerCap == 2 && d.girdleRing == Ring::outer) {
        return refuse(Core::say("The layout puts the girdle on the outer fasteners, but its caps have only an inner "
                                "pair: choose the inner ones or four fasteners per cap."));
    }
    const bool outer = d.fastenersPerCap == 4;
    if (d.capSpacing <= Length() || d.studSpan <= Length() || (outer && d.outerStudSpan <= d.studSpan) ||
        d.railSpan <= (outer ? d.outerStudSpan : d.studSpan)) {
        return refuse(Core::say(
            "The layout's spans must be positive and grow outwards: inner fasteners, outer fasteners, pan rails."));
    }
    if (d.capSpacing > inches(20) || d.railSpan > inches(60)) {
        return refuse(Core::say(
            "The layout's spans are larger than any engine on a stand: cap spacing up to 20 in, rails up to 60 in."));
    }
    return {};
}

template <class Id, class Make>
std::vector<Id> bothSides(int first, int last, Make make) {
    std::vector<Id> list;
    for (int n = first; n <= last; ++n) {
        list.push_back(make(n, Side::left));
        list.push_back(make(n, Side::right));
    }
    return list;
}

} // namespace

Result<EngineLayout> EngineLayout::from(const LayoutDescription& d) {
    if (const auto ok = check(d); !ok) {
        return tl::unexpected(ok.error());
    }
    return EngineLayout(d);
}

bool EngineLayout::isTied(int cap) const { return cap >= m_description.tiedFirst && cap <= m_description.tiedLast; }

std::vector<Position> EngineLayout::positions() const {
    return bothSides<Position>(static_cast<int>(m_description.tiedFirst), static_cast<int>(m_description.tiedLast),
                               [](int n, Side s) { return Position{n, s}; });
}

std::vector<FastenerId> EngineLayout::mainFasteners() const {
    std::vector<FastenerId> list;
    for (int cap = 1; cap <= caps(); ++cap) {
        for (const Ring ring : {Ring::inner, Ring::outer}) {
            if (ring == Ring::outer && m_description.fastenersPerCap == 2) {
                continue;
            }
            for (const Side side : {Side::left, Side::right}) {
                list.push_back({FastenerKind::mainCap, cap, side, ring});
            }
        }
    }
    return list;
}

std::vector<FastenerId> EngineLayout::rodFasteners() const {
    return bothSides<FastenerId>(1, rods(), [](int n, Side s) {
        return FastenerId{FastenerKind::rod, n, s, Ring::inner};
    });
}

std::vector<FastenerId> EngineLayout::girdleNuts() const {
    return bothSides<FastenerId>(static_cast<int>(m_description.tiedFirst), static_cast<int>(m_description.tiedLast),
                                 [](int n, Side s) {
                                     return FastenerId{FastenerKind::girdleNut, n, s, Ring::inner};
                                 });
}

std::vector<FastenerId> EngineLayout::verifiedFasteners() const {
    std::vector<FastenerId> list = mainFasteners();
    const auto rodList = rodFasteners();
    list.insert(list.end(), rodList.begin(), rodList.end());
    return list;
}

std::vector<JournalId> EngineLayout::mainJournals() const {
    std::vector<JournalId> list;
    for (int n = 1; n <= caps(); ++n) {
        list.push_back({JournalKind::main, n});
    }
    return list;
}

std::vector<JournalId> EngineLayout::rodJournals() const {
    std::vector<JournalId> list;
    for (int n = 1; n <= rods(); ++n) {
        list.push_back({JournalKind::rod, n});
    }
    return list;
}

bool EngineLayout::has(Position p) const { return isTied(p.cap); }

bool EngineLayout::has(JournalId j) const {
    return j.number >= 1 && j.number <= (j.kind == JournalKind::main ? caps() : rods());
}

bool EngineLayout::has(FastenerId f) const {
    switch (f.kind) {
    case FastenerKind::mainCap:
        return f.number >= 1 && f.number <= caps() && (f.ring == Ring::inner || m_description.fastenersPerCap == 4);
    case FastenerKind::rod:
        return f.number >= 1 && f.number <= rods();
    case FastenerKind::girdleNut:
        return isTied(f.number);
    case FastenerKind::panRail:
    case FastenerKind::front:
    case FastenerKind::rear:
        break;
    }
    return f.number >= 1;
}

Length EngineLayout::halfSpan(Ring ring) const {
    return Length((ring == Ring::inner ? m_description.studSpan : m_description.outerStudSpan).value() / 2);
}

PlanPoint EngineLayout::at(Position p) const {
    return at(FastenerId{FastenerKind::girdleNut, p.cap, p.side, m_description.girdleRing});
}

PlanPoint EngineLayout::at(FastenerId f) const {
    const Ring ring = f.kind == FastenerKind::girdleNut ? m_description.girdleRing : f.ring;
    const Length half = halfSpan(ring);
    return {capAt(f.number), f.side == Side::left ? -half : half};
}

Length EngineLayout::throwAt(int number) const {
    const std::int64_t whole = m_description.capSpacing.value() * (m_description.caps - 1);
    return Length(whole * (2 * number - 1) / (2 * m_description.throws));
}

PlanPoint EngineLayout::pickupAt() const {
    // The pickup hangs in the bay behind its cap (before it for the last one), a quarter of the rail span off the axis.
    const std::int64_t half = m_description.capSpacing.value() / 2;
    const bool last = m_description.pickupCap == m_description.caps;
    const Length x = capAt(static_cast<int>(m_description.pickupCap)) + Length(last ? -half : half);
    const Length quarter(m_description.railSpan.value() / 4);
    return {x, m_description.pickupSide == Side::left ? -quarter : quarter};
}

PlanPoint EngineLayout::dipstickAt() const {
    const std::int64_t half = m_description.capSpacing.value() / 2;
    const bool last = m_description.dipstickCap == m_description.caps;
    const Length x = capAt(static_cast<int>(m_description.dipstickCap)) + Length(last ? -half : half);
    const Length out(m_description.railSpan.value() * 2 / 5);
    return {x, m_description.dipstickSide == Side::left ? -out : out};
}

} // namespace caprail
