// SPDX-License-Identifier: GPL-3.0-or-later
#include <assessment/known_places.h>

namespace caprail {

Result<void> KnownPlaces::layoutKnown() const {
    return m_facts.layout ? Result<void>() : refuse("The engine layout is not known yet: set it first.");
}

Result<void> KnownPlaces::position(Position p) const {
    if (auto known = layoutKnown(); !known) {
        return known;
    }
    if (!m_facts.layout->has(p)) {
        const auto& d = m_facts.layout->description();
        return refuse("The girdle does not bear on " + describe(p) + " of this engine: it ties caps " +
                      std::to_string(d.tiedFirst) + " to " + std::to_string(d.tiedLast) + ".");
    }
    return {};
}

Result<void> KnownPlaces::journal(JournalId j) const {
    if (auto known = layoutKnown(); !known) {
        return known;
    }
    if (!m_facts.layout->has(j)) {
        return refuse("This engine has no journal " + describe(j) + ": it has " +
                      std::to_string(m_facts.layout->caps()) + " mains and " + std::to_string(m_facts.layout->rods()) +
                      " rods.");
    }
    return {};
}

Result<void> KnownPlaces::fastener(FastenerId f) const {
    if (auto known = layoutKnown(); !known) {
        return known;
    }
    const auto* group = m_facts.groupOf(f);
    const bool beyondCount = !hasSides(f.kind) && group != nullptr && f.number > group->what.count;
    if (!m_facts.layout->has(f) || beyondCount) {
        return refuse("This engine has no fastener " + describe(f) + ": check its number and side.");
    }
    return {};
}

Result<void> KnownPlaces::instrument(const std::string& instrumentName) const {
    if (!instrumentName.empty() && !m_facts.instruments.contains(instrumentName)) {
        return refuse("This record knows no instrument " + instrumentName + ": add it at the engine station first.");
    }
    return {};
}

Result<void> KnownPlaces::shim(const std::string& shimName) const {
    return m_facts.shims.contains(shimName) ? Result<void>()
                                            : refuse("The kit has no shim " + shimName + ": add it first.");
}

Result<void> KnownPlaces::noPlaceIsLost(const EngineLayout& next) const {
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
    return refuse("The new layout has no " + lost +
                  ", but this record has entries for it: strike those first, or keep the place.");
}

} // namespace caprail
