// SPDX-License-Identifier: GPL-3.0-or-later
#include <work/zero_checks.h>

#include <algorithm>

namespace caprail {

namespace {

/// The instrument that a reading of a length names; empty for every other entry.
struct Used {
    template <class Kind> std::string operator()(const Kind& e) const {
        constexpr bool isReading =
            std::is_same_v<Kind, JournalReading> || std::is_same_v<Kind, BoreReading> ||
            std::is_same_v<Kind, ShellMeasured> || std::is_same_v<Kind, FitReading> || std::is_same_v<Kind, ShimMeasured> ||
            std::is_same_v<Kind, PickupReading>;
        if constexpr (isReading) {
            return e.instrument;
        } else {
            return {};
        }
    }
};

/// Leaves, strips and straightedges have no zero to be tried.
bool hasZero(InstrumentType type) {
    switch (type) {
    case InstrumentType::micrometer:
    case InstrumentType::boreGauge:
    case InstrumentType::depthGauge:
    case InstrumentType::dialIndicator:
    case InstrumentType::stretchGauge:
    case InstrumentType::calliper:
        return true;
    case InstrumentType::feelerGauge:
    case InstrumentType::straightedge:
    case InstrumentType::gaugingStrip:
    case InstrumentType::torqueWrench:
    case InstrumentType::angleGauge:
        break;
    }
    return false;
}

/// The instrument with a zero by which a live entry measured; empty: none.
std::string measuringInstrument(const Ledger& ledger, const Facts& facts, const Entry& entry) {
    std::string name = entry.body.visit(Used{});
    if (name.empty() || ledger.isStruck(entry.sequence)) {
        return {};
    }
    const auto known = facts.instruments.find(name);
    return known != facts.instruments.end() && hasZero(known->second.latest().type) ? name : std::string();
}

} // namespace

std::size_t ZeroStanding::untried() const {
    return static_cast<std::size_t>(std::ranges::count_if(used, [&](Date day) { return !tried.contains(day); }));
}

std::vector<ZeroStanding> zeroStandings(const Ledger& ledger, const Facts& facts, const DayOf& dayOf) {
    std::map<std::string, ZeroStanding> found;
    for (const Entry& entry : ledger.entriesFrom(facts.buildEntry)) {
        if (const std::string name = measuringInstrument(ledger, facts, entry); !name.empty()) {
            found[name].used.insert(dayOf(entry.time));
        }
    }
    std::vector<ZeroStanding> list;
    for (auto& [name, standing] : found) {
        standing.instrument = name;
        if (const auto checks = facts.zeroChecks.find(name); checks != facts.zeroChecks.end()) {
            for (const auto& check : checks->second) {
                standing.tried.insert(dayOf(check.time));
            }
        }
        list.push_back(std::move(standing));
    }
    return list;
}

std::vector<std::string> untriedSince(const Ledger& ledger, const Facts& facts, UtcTime dayBegan) {
    std::set<std::string> untried;
    for (auto entry = ledger.entries().rbegin(); entry != ledger.entries().rend() && entry->time >= dayBegan; ++entry) {
        const std::string name = measuringInstrument(ledger, facts, *entry);
        if (!name.empty()) {
            untried.insert(name);
        }
    }
    std::erase_if(untried, [&](const std::string& name) {
        const auto checks = facts.zeroChecks.find(name);
        return checks != facts.zeroChecks.end() && checks->second.back().time >= dayBegan;
    });
    return {untried.begin(), untried.end()};
}

} // namespace caprail
