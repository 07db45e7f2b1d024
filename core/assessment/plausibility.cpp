// SPDX-License-Identifier: GPL-3.0-or-later
#include <assessment/figures.h>
#include <assessment/gap_window.h>
#include <assessment/plausibility.h>
#include <assessment/current_readings.h>
#include <ledger/expectations.h>
#include <assessment/specified.h>
#include <ledger/typed_values.h>
#include <measure/budgets.h>
#include <base/say.h>

namespace caprail {

namespace {

/// A reading so many repeat limits from the passes before it is a slip (common practice, no source).
constexpr std::int64_t farInRepeatLimits = 5;

/// A torque so many times the specified one is a slip, or harm (common practice, no source).
constexpr double farOver = 1.1;
/// A second reading of a pickup term that is so far from the first is a slip (common practice, no source).
constexpr Length farPickupReading = thou(20);

/// The median of the readings that stand, from those kept sorted: it is asked with every reading.
std::optional<Length> medianAt(const Facts& facts, Position p) {
    const auto at = facts.sortedGaps.find(p);
    if (at == facts.sortedGaps.end() || at->second.sorted.empty() ||
        at->second.invalidatedBy != facts.gapInvalidatedBy(p).entry) {
        return {};
    }
    const auto& sorted = at->second.sorted;
    const std::size_t half = sorted.size() / 2;
    return Length(sorted.size() % 2 == 1 ? sorted[half] : sorted[half - 1] + (sorted[half] - sorted[half - 1]) / 2);
}

class AskedBack {
public:
    AskedBack(const Facts& facts, const Units& units) : m_facts(facts), m_units(units) {}

    std::optional<std::string> operator()(const GapReading& e) const {
        if (isInsisted(e.gap.typed) || (e.doesNotGo && isInsisted(e.doesNotGo->typed))) {
            return {};
        }
        if (const auto window = windowAfterMovement(m_facts, e.position); window && !window->contains(e.value())) {
            return Core::say("After the movement the gap at %1 should lie within %2, and %3 does not: read it again, or "
                             "type ! behind it if it is really so.",
                             describe(e.position), format(*window, m_units), formatFine(e.value(), m_units));
        }
        const auto before = medianAt(m_facts, e.position);
        if (!before || (e.value() - *before).magnitude() <= m_facts.rules.repeatLimit * farInRepeatLimits) {
            return {};
        }
        const Position other{e.position.cap, e.position.side == Side::left ? Side::right : Side::left};
        const auto there = medianAt(m_facts, other);
        if (there && (e.value() - *there).magnitude() <= m_facts.rules.repeatLimit) {
            return Core::say("%1 at %2 is far from the pass before it, %3, but fits %4: look whether left and right were "
                             "mixed up, or type ! behind it if it is really so.",
                             formatFine(e.value(), m_units), describe(e.position), formatFine(*before, m_units),
                             describe(other));
        }
        return Core::say("%1 at %2 is far from the pass before it, %3: read it again, or type ! behind it if it is really "
                         "so.",
                         formatFine(e.value(), m_units), describe(e.position), formatFine(*before, m_units));
    }

    std::optional<std::string> operator()(const JournalReading& e) const {
        const auto bores = m_facts.bores.find(e.journal);
        return bores == m_facts.bores.end() ? std::nullopt : temperature(e.partTemperature, bores->second);
    }
    std::optional<std::string> operator()(const BoreReading& e) const {
        const auto journal = m_facts.journals.find(e.journal);
        return journal == m_facts.journals.end() ? std::nullopt : temperature(e.partTemperature, journal->second);
    }

    std::optional<std::string> operator()(const FastenerTightened& e) const {
        return torque(e.fastener, e.instrument, e.torque);
    }
    std::optional<std::string> operator()(const RoundOutcome& e) const {
        return torque(e.fastener, e.instrument, e.torque);
    }

    std::optional<std::string> operator()(const TurningTorqueRead& e) const {
        auto asked = range(e.instrument, e.breakaway);
        return asked ? asked : range(e.instrument, e.running);
    }

    std::optional<std::string> operator()(const PickupReading& e) const {
        if (isInsisted(e.value.typed)) {
            return {};
        }
        const auto expected = expectedPickupTerm(e.term, shown(e.term));
        if (e.value.value < *expected.smallest || e.value.value > *expected.largest) {
            return Core::say("%1 cannot well be the %2, which is expected within %3 to %4: look whether it belongs to "
                             "another term, or type ! behind it if it is really so.",
                             formatFine(e.value.value, m_units), shown(e.term), format(*expected.smallest, m_units),
                             format(*expected.largest, m_units));
        }
        const auto before = currentPickup(m_facts, e.term);
        if (!before.empty() && (e.value.value - before.back().what.value.value).magnitude() > farPickupReading) {
            return Core::say("%1 is far from the reading before it, %2, of the %3: measure it again, or type ! behind it "
                             "if it is really so.",
                             formatFine(e.value.value, m_units), formatFine(before.back().what.value.value, m_units),
                             shown(e.term));
        }
        return {};
    }

    template <class Other> std::optional<std::string> operator()(const Other&) const { return {}; }

private:
    /// Parts of different warmth are not of the sizes that they will have together.
    template <class T>
    std::optional<std::string> temperature(const std::optional<Entered<Temperature>>& now,
                                           const std::vector<Seen<T>>& others) const {
        if (!now || isInsisted(now->typed)) {
            return {};
        }
        const Temperature most = m_facts.rules.temperatureSpread.value_or(usualTemperatureSpread) - thermometerError;
        for (const auto& other : others) {
            if (other.what.partTemperature && (now->value - other.what.partTemperature->value).magnitude() > most) {
                return Core::say("This part is at %1, the other was at %2: let both come to one temperature and measure "
                                 "again, or type ! behind it if it is really so.",
                                 format(now->value, m_units), format(other.what.partTemperature->value, m_units));
            }
        }
        return {};
    }

    std::optional<std::string> torque(FastenerId f, const std::string& wrench,
                                      const std::optional<Entered<Torque>>& pulled) const {
        if (!pulled || isInsisted(pulled->typed)) {
            return {};
        }
        const auto* group = m_facts.groupOf(f);
        if (group != nullptr && group->what.torque &&
            inNewtonMetres(pulled->value) > farOver * inNewtonMetres(group->what.torque->value)) {
            return Core::say("%1 is far over the %2 that is specified for %3: look at the wrench, or type ! behind it if it "
                             "is really so.",
                             format(pulled->value, m_units), format(group->what.torque->value, m_units), describe(f));
        }
        return range(wrench, *pulled);
    }

    std::optional<std::string> range(const std::string& wrench, const Entered<Torque>& pulled) const {
        const InstrumentAdded* known = m_facts.instrumentAt(wrench, m_facts.lastEntry + 1);
        if (known == nullptr || isInsisted(pulled.typed) || !isOutsideRange(*known, pulled.value)) {
            return {};
        }
        return Core::say("%1 lies outside the range of %2: use a wrench that reaches it, or type ! behind it if it is "
                         "really so.",
                         format(pulled.value, m_units), wrench);
    }

    const Facts& m_facts;
    const Units& m_units;
};

} // namespace

std::optional<std::string> askedBack(const Facts& facts, const Body& body, const Units& units) {
    if (auto implausible = implausibleIn(body, units)) {
        return implausible;
    }
    return body.visit(AskedBack(facts, units));
}

} // namespace caprail
