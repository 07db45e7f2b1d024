// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <assessment/repeatability.h>
#include <assessment/standing.h>
#include <set>

namespace caprail {

namespace {

/// Whose scatter it is.
using Who = std::tuple<MeasuredQuantity, std::string, std::string>;
/// Where was read, in which build, and since what.
using Where = std::tuple<std::string, std::int64_t, std::int64_t>;

class Collector {
public:
    explicit Collector(const Facts& facts) : m_facts(facts) {}

    /// Looks at an entry before it is folded in.
    void take(const Entry& entry) {
        std::visit([&](const auto& body) { this->read(entry.person, body); }, entry.body);
    }

    [[nodiscard]] std::vector<PersonalRepeatability> result() const {
        std::vector<PersonalRepeatability> list;
        for (const auto& [who, places] : m_readings) {
            PersonalRepeatability one{std::get<0>(who), std::get<1>(who), std::get<2>(who), 0, 0, {}};
            std::vector<Summary> summaries;
            for (const auto& [where, values] : places) {
                one.readings += values.size();
                one.places += values.size() > 1 ? 1 : 0;
                summaries.push_back(summarise(values));
            }
            one.scatter = pool(summaries);
            list.push_back(std::move(one));
        }
        return list;
    }

    /// Place → person → values in order, of the last era of each place.
    [[nodiscard]] std::map<std::string, std::map<std::string, std::vector<Length>>>
    of(MeasuredQuantity quantity) const {
        std::map<std::string, std::map<std::string, std::vector<Length>>> byPlace;
        for (const auto& [who, places] : m_readings) {
            for (const auto& [where, values] : places) {
                const auto& [place, build, since] = where;
                if (std::get<0>(who) == quantity && m_last.at({quantity, place}) == std::pair(build, since)) {
                    auto& list = byPlace[place][std::get<1>(who)];
                    list.insert(list.end(), values.begin(), values.end());
                }
            }
        }
        return byPlace;
    }

private:
    void add(MeasuredQuantity quantity, const std::string& person, const std::string& instrument, std::string place,
             std::int64_t since, Length value) {
        m_last[{quantity, place}] = {m_facts.build, since};
        m_readings[{quantity, person, instrument}][{std::move(place), m_facts.build, since}].push_back(value);
    }

    void read(const std::string& person, const GapReading& r) {
        add(MeasuredQuantity::gap, person, r.instrument, code(r.position), m_facts.gapFelledBy(r.position).entry,
            r.gap.value);
    }
    void read(const std::string& person, const JournalReading& r) {
        add(MeasuredQuantity::journal, person, r.instrument,
            code(r.journal) + ", station " + std::to_string(r.station) + ", direction " + std::to_string(r.direction),
            m_facts.changeOf(Topic::crank).entry, r.diameter.value);
    }
    void read(const std::string& person, const BoreReading& r) {
        add(MeasuredQuantity::bore, person, r.instrument,
            code(r.journal) + ", station " + std::to_string(r.station) + ", " + std::string(word(r.method)),
            boreFelledBy(m_facts, r.journal).entry, r.value.value);
    }
    void read(const std::string& person, const ShimMeasured& r) {
        add(MeasuredQuantity::shim, person, r.instrument, r.shim, 0, r.thickness.value);
    }
    void read(const std::string& person, const ShellMeasured& r) {
        if (!r.isMarked) {
            add(MeasuredQuantity::shell, person, r.instrument, r.shell, 0, r.thickness.value);
        }
    }
    void read(const std::string& person, const FitReading& r) {
        add(MeasuredQuantity::fit, person, r.instrument, r.fit + ", place " + std::to_string(r.place),
            m_facts.changeOf(Topic::crank).entry, r.value.value);
    }
    void read(const std::string& person, const PickupReading& r) {
        const auto topic = [&] {
            switch (r.term) {
            case PickupTerm::panDepth:
                return Topic::pan;
            case PickupTerm::gasket:
                return Topic::gasket;
            case PickupTerm::plate:
                return Topic::plate;
            case PickupTerm::pickupDepth:
                break;
            }
            return Topic::pickup;
        }();
        add(MeasuredQuantity::pickup, person, r.instrument, std::string(word(r.term)), m_facts.changeOf(topic).entry,
            r.value.value);
    }
    template <class Other> void read(const std::string&, const Other&) {}

    const Facts& m_facts;
    std::map<Who, std::map<Where, std::vector<Length>>> m_readings;
    /// Since when the readings of a place belong together, as of its last reading.
    std::map<std::pair<MeasuredQuantity, std::string>, std::pair<std::int64_t, std::int64_t>> m_last;
};

void takeAll(const Ledger& ledger, Facts& facts, Collector& collector) {
    for (const Entry& entry : ledger.entries()) {
        if (!ledger.isStruck(entry.sequence) && !std::holds_alternative<Struck>(entry.body)) {
            collector.take(entry);
            apply(facts, entry);
        }
    }
}

constexpr std::size_t mostPeople = 10; // whose subsets are looked through
constexpr int mostPasses = 3;

} // namespace

std::vector<PersonalRepeatability> repeatabilityOver(const Ledger& ledger) {
    Facts facts;
    Collector collector(facts);
    takeAll(ledger, facts, collector);
    return collector.result();
}

CrossedReadings crossedReadings(const Ledger& ledger, MeasuredQuantity quantity) {
    Facts facts;
    Collector collector(facts);
    takeAll(ledger, facts, collector);
    const auto byPlace = collector.of(quantity);

    CrossedReadings result;
    result.quantity = quantity;
    std::set<std::string> all;
    for (const auto& [place, byPerson] : byPlace) {
        for (const auto& [person, values] : byPerson) {
            result.counts[place][person] = static_cast<int>(values.size());
            all.insert(person);
        }
    }
    const std::vector<std::string> people(all.begin(), all.end());
    const std::size_t considered = std::min(people.size(), mostPeople);
    std::size_t best = 0;
    for (std::size_t subset = 1; subset < (std::size_t{1} << considered); ++subset) {
        std::vector<std::string> chosen;
        for (std::size_t i = 0; i < considered; ++i) {
            if ((subset >> i & 1U) != 0) {
                chosen.push_back(people[i]);
            }
        }
        std::vector<std::string> places;
        for (const auto& [place, byPerson] : byPlace) {
            if (std::ranges::all_of(chosen, [&byPerson = byPerson](const std::string& person) {
                    const auto at = byPerson.find(person);
                    return at != byPerson.end() && at->second.size() >= 2;
                })) {
                places.push_back(place);
            }
        }
        const std::size_t size = places.size() < 2 ? 0 : places.size() * chosen.size();
        if (size > best || (size == best && size > 0 && chosen.size() > result.people.size())) {
            best = size;
            result.people = chosen;
            result.places = places;
        }
    }
    if (best == 0) {
        return result;
    }
    result.passes = mostPasses;
    for (const std::string& place : result.places) {
        for (const std::string& person : result.people) {
            result.passes = std::min(result.passes, static_cast<int>(byPlace.at(place).at(person).size()));
        }
    }
    for (const std::string& place : result.places) {
        for (const std::string& person : result.people) {
            for (int pass = 1; pass <= result.passes; ++pass) {
                result.readings.push_back(
                    {person, place, pass, byPlace.at(place).at(person)[static_cast<std::size_t>(pass - 1)]});
            }
        }
    }
    return result;
}

} // namespace caprail
