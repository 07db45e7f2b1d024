// SPDX-License-Identifier: GPL-3.0-or-later
#include <assessment/repeatability.h>

#include <algorithm>
#include <assessment/current_readings.h>
#include <ledger/band_names.h>
#include <base/say.h>
#include <set>

namespace caprail {

namespace {

constexpr std::size_t mostPeople = 10; // whose subsets are looked through
constexpr int mostPasses = 3;

} // namespace

/// Goes through the entries in order, and knows at each what had changed before it.
class ReadingsCollector {
public:
    explicit ReadingsCollector(ReadingsByPerson& readings) : m_to(readings) {}

    void take(const Entry& entry) {
        entry.body.visit([&](const auto& body) { this->read(entry.person, body); });
        apply(m_facts, entry);
    }

private:
    void add(MeasuredQuantity quantity, const std::string& person, const std::string& instrument,
             const std::string& place, std::int64_t since, Length value) {
        m_to.m_last[{quantity, place}] = {m_facts.build, since};
        m_to.m_readings[{quantity, person, instrument}][{place, m_facts.build, since}].push_back(value);
    }

    void read(const std::string& person, const GapReading& r) {
        add(MeasuredQuantity::gap, person, r.instrument, code(r.position), m_facts.gapInvalidatedBy(r.position).entry,
            r.value());
    }
    void read(const std::string& person, const JournalReading& r) {
        add(MeasuredQuantity::journal, person, r.instrument,
            Core::say("%1, station %2, direction %3", code(r.journal), r.station, r.direction),
            m_facts.changeOf(Topic::crank).entry, r.diameter.value);
    }
    void read(const std::string& person, const BoreReading& r) {
        add(MeasuredQuantity::bore, person, r.instrument,
            Core::say("%1, station %2, %3", code(r.journal), r.station, shown(r.method)),
            boreInvalidatedBy(m_facts, r.journal).entry, r.value.value);
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
        add(MeasuredQuantity::fit, person, r.instrument, Core::say("%1, place %2", r.fit, r.place),
            m_facts.changeOf(Topic::crank).entry, r.value.value);
    }
    void read(const std::string& person, const PickupReading& r) {
        const Change fitted = m_facts.changeOf(topicOf(partOf(r.term)));
        add(MeasuredQuantity::pickup, person, r.instrument, shown(r.term), fitted.entry, r.value.value);
    }
    template <class Other> void read(const std::string&, const Other&) {}

    Facts m_facts;
    ReadingsByPerson& m_to;
};

ReadingsGathering::ReadingsGathering() {
    beginAnew();
}
ReadingsGathering::~ReadingsGathering() = default;

void ReadingsGathering::beginAnew() {
    m_readings = ReadingsByPerson();
    m_collector = std::make_unique<ReadingsCollector>(m_readings);
    m_taken = 0;
}

bool ReadingsGathering::takeMore(const Ledger& ledger, std::int64_t most) {
    if (m_taken > ledger.size() || (m_taken > 0 && ledger.at(m_taken).seal != m_lastSeal)) {
        beginAnew();
    }
    if (m_taken == 0) {
        m_strikesKnown = ledger.size();
    }
    const std::int64_t end = std::min(ledger.size(), m_taken + most);
    while (m_taken < end) {
        const Entry& entry = ledger.at(m_taken + 1);
        if (entry.body.is<Struck>() && entry.sequence > m_strikesKnown) {
            beginAnew(); // what it strikes may have been taken
            return false;
        }
        if (!ledger.isStruck(entry.sequence)) {
            m_collector->take(entry);
        }
        ++m_taken;
        m_lastSeal = entry.seal;
    }
    return m_taken == ledger.size();
}

std::vector<PersonalRepeatability> ReadingsByPerson::pooled() const {
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

std::map<std::string, std::map<std::string, std::vector<Length>>>
ReadingsByPerson::current(MeasuredQuantity quantity) const {
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

CrossedReadings ReadingsByPerson::crossed(MeasuredQuantity quantity) const {
    const auto byPlace = current(quantity);
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

namespace {

std::optional<StudyBand> bandNamed(const Facts& facts, std::string_view name) {
    const BandFact* band = facts.bandNamed(name);
    return band == nullptr ? std::nullopt : std::optional(StudyBand{std::string(name), band->band});
}

/// Of mains and rods the narrower one, where the places are of both; of shells, which fit either, too.
std::optional<StudyBand> clearanceBand(const Facts& facts, const std::vector<std::string>& places, bool areShells) {
    const auto areOf = [&](std::string_view kind) {
        return areShells || std::ranges::any_of(places, [&](const std::string& p) { return p.starts_with(kind); });
    };
    const auto mains = areOf("main") ? bandNamed(facts, bands::mainClearance) : std::nullopt;
    const auto rods = areOf("rod") ? bandNamed(facts, bands::rodClearance) : std::nullopt;
    const auto width = [](const StudyBand& b) { return b.band.hi() - b.band.lo(); };
    return !mains || (rods && width(*rods) < width(*mains)) ? rods : mains;
}

} // namespace

std::optional<StudyBand> bandOfStudy(const Facts& facts, const CrossedReadings& crossed) {
    switch (crossed.quantity) {
    case MeasuredQuantity::gap:
    case MeasuredQuantity::shim:
        return bandNamed(facts, bands::residual);
    case MeasuredQuantity::journal:
    case MeasuredQuantity::bore:
    case MeasuredQuantity::shell:
        return clearanceBand(facts, crossed.places, crossed.quantity == MeasuredQuantity::shell);
    case MeasuredQuantity::pickup:
        return bandNamed(facts, bands::pickupClearance);
    case MeasuredQuantity::fit:
        break;
    }
    std::optional<StudyBand> own;
    for (const std::string& place : crossed.places) {
        const auto at = std::ranges::find_if(facts.bands, [&](const auto& band) {
            return place.starts_with(band.first + ",");
        });
        if (at == facts.bands.end() || (own && own->name != at->first)) {
            return {};
        }
        own = StudyBand{at->first, at->second.band};
    }
    return own;
}

} // namespace caprail
