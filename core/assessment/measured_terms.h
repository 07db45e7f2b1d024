// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// From the readings of a record to the terms of a budget: who read, with which instrument as it was then known, to
/// which step. Private to this folder.
#include <algorithm>
#include <assessment/figures.h>
#include <measure/budgets.h>
#include <set>

namespace caprail {

/// What instruments of a type are read to where nobody said: the usual step (common practice, no source).
Length usualStep(InstrumentType);

/// What is known of the instruments behind some readings, each as it was known when its reading was made.
struct InstrumentsBehind {
    std::string name;            ///< of the one that counts: unnamed, else without a limit, else with the largest
    std::optional<Length> limit; ///< its limit of error; none: not known
    Length step;                 ///< the coarsest step that was read to
    std::set<std::string> all;
    std::optional<std::string> setWith; ///< the micrometer that all of them were set in
    void take(const std::string& instrument, const InstrumentAdded* known, std::optional<Length> digit);
    [[nodiscard]] bool isOne() const { return all.size() == 1; }

private:
    bool m_isUnnamed = false, m_isUnknown = false, m_isFirst = true;
};

/// `get` gives the quantity of a reading as it was entered.
template <class Readings, class Get>
InstrumentsBehind instrumentsBehind(const Facts& facts, const Readings& readings, Get get) {
    InstrumentsBehind behind;
    for (const auto& reading : readings) {
        behind.take(reading.what.instrument, facts.instrumentAt(reading.what.instrument, reading.entry),
                    lastDigitOf(get(reading.what)));
    }
    return behind;
}

template <class Readings> std::size_t peopleIn(const Readings& readings) {
    std::set<std::string_view> people;
    for (const auto& reading : readings) {
        people.insert(reading.person);
    }
    return std::max<std::size_t>(1, people.size());
}

/// A quantity whose mean is used. No readings: one of unknown scatter and instrument.
template <class Readings, class Get>
MeasuredTerm termOf(const Facts& facts, std::string name, const Readings& readings, Get get, Scatter scatter) {
    const InstrumentsBehind behind = instrumentsBehind(facts, readings, get);
    MeasuredTerm term;
    term.name = std::move(name);
    term.instrument = behind.name;
    term.readings = std::max<std::size_t>(1, readings.size());
    term.people = peopleIn(readings);
    term.limitOfError = behind.limit;
    term.step = behind.step;
    term.scatter = std::move(scatter);
    return term;
}

/// Half of the limit is taken as error anew for each reading, half as the instrument's zero, the same for all that it
/// measured (common practice, no source).
void shareZero(MeasuredTerm&);

/// Readings sorted by place and, at each, by person.
template <class Measurand> class ByPlace {
public:
    void add(const Measurand& place, const std::string& person, Length value) {
        m_readings[place][person].push_back(value);
    }
    [[nodiscard]] Scatter scatter() const {
        std::vector<PlaceReadings> places;
        for (const auto& [place, people] : m_readings) {
            auto& readings = places.emplace_back();
            for (const auto& [person, values] : people) {
                readings.push_back(values);
            }
        }
        return scatterOf(places);
    }

private:
    std::map<Measurand, std::map<std::string, std::vector<Length>>> m_readings;
};

/// A budget that could not be made because nothing was measured: not known, and never nothing.
UncertaintyBudget orNotKnown(Result<UncertaintyBudget>);

} // namespace caprail
