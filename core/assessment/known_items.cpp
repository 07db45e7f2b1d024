// SPDX-License-Identifier: GPL-3.0-or-later
#include <assessment/known_items.h>
#include <base/say.h>

namespace caprail {

Result<void> KnownItems::layoutKnown() const {
    return m_facts.layout ? Result<void>() : refuse(Core::say("The engine layout is not known yet: set it first."));
}

Result<void> KnownItems::position(Position p) const {
    if (auto known = layoutKnown(); !known) {
        return known;
    }
    if (!m_facts.layout->has(p)) {
        const auto& d = m_facts.layout->description();
        return refuse(Core::say("The girdle does not bear on %1 of this engine: it ties caps %2 to %3.", describe(p),
                                d.tiedFirst, d.tiedLast));
    }
    return {};
}

Result<void> KnownItems::journal(JournalId j) const {
    if (auto known = layoutKnown(); !known) {
        return known;
    }
    if (!m_facts.layout->has(j)) {
        return refuse(Core::say("This engine has no journal %1: it has %2 mains and %3 rods.", describe(j),
                                m_facts.layout->caps(), m_facts.layout->rods()));
    }
    return {};
}

Result<void> KnownItems::fastener(FastenerId f) const {
    if (auto known = layoutKnown(); !known) {
        return known;
    }
    const auto* group = m_facts.groupOf(f);
    const bool beyondCount = !hasSides(f.kind) && group != nullptr && f.number > group->what.count;
    if (!m_facts.layout->has(f) || beyondCount) {
        return refuse(Core::say("This engine has no fastener %1: check its number and side.", describe(f)));
    }
    return {};
}

Result<void> KnownItems::instrument(const std::string& instrumentName) const {
    if (!instrumentName.empty() && !m_facts.instruments.contains(instrumentName)) {
        return refuse(
            Core::say("This record knows no instrument %1: add it at the engine station first.", instrumentName));
    }
    return {};
}

Result<void> KnownItems::shim(const std::string& shimName) const {
    return m_facts.shims.contains(shimName) ? Result<void>()
                                            : refuse(Core::say("The kit has no shim %1: add it first.", shimName));
}

Result<void> KnownItems::noPlaceIsLost(const EngineLayout& next) const {
    std::string lost;
    const auto keep = [&](const auto& places) {
        for (const auto& [place, facts] : places) {
            if (lost.empty() && !next.has(place)) {
                lost = describe(place);
            }
        }
    };
    keep(m_facts.gaps);
    keep(m_facts.stacks);
    keep(m_facts.journals);
    keep(m_facts.bores);
    keep(m_facts.fasteners);
    if (lost.empty()) {
        return {};
    }
    return refuse(Core::say(
        "The new layout has no %1, but this record has entries for it: strike those first, or keep the place.", lost));
}

} // namespace caprail
