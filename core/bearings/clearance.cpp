// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <bearings/clearance.h>
#include <map>
#include <measure/statistics.h>
#include <set>
#include <base/say.h>

namespace caprail {

namespace {

Length meanOf(std::span<const Length> values) {
    return Length(toNearest(summarise(values).mean));
}

/// Which of two stations × two directions is still to be read, as a sentence; empty: none.
std::string whatIsMissing(const std::map<std::pair<std::int64_t, std::int64_t>, Length>& places,
                          const std::set<std::int64_t>& stations, const std::set<std::int64_t>& directions) {
    if (stations.size() < 2) {
        return Core::say("Read the journal at a second station, for its taper.");
    }
    if (directions.size() < 2) {
        return Core::say("Read the journal in a second direction, for its out-of-round.");
    }
    for (const auto station : stations) {
        for (const auto direction : directions) {
            if (!places.contains({station, direction})) {
                return Core::say("Read station %1 in direction %2 too.", station, direction);
            }
        }
    }
    return {};
}

/// The largest range among groups of values.
template <class Key> Length widest(const std::map<Key, std::vector<Length>>& groups) {
    Length most;
    for (const auto& [key, values] : groups) {
        most = std::max(most, summarise(values).range);
    }
    return most;
}

BearingClearance summed(std::vector<StationReading> stations) {
    std::vector<Length> values;
    values.reserve(stations.size());
    for (const StationReading& s : stations) {
        values.push_back(s.value);
    }
    const Summary summary = summarise(values);
    return {Length(toNearest(summary.mean)), summary.smallest, summary.largest, summary.range, std::move(stations)};
}

/// What is said of a diameter that is not there, or cannot be; %1 is its station.
struct DiameterWords {
    const char* missing;
    const char* notAboveZero;
};
constexpr DiameterWords ofBore{Core::mark("The bore is not measured: measure it with the cap at full torque."),
                               Core::mark("The bore at station %1 must be above zero: enter the diameter.")};
constexpr DiameterWords ofHousing{Core::mark("The housing is not measured: measure it with the cap at full torque."),
                                  Core::mark("The housing at station %1 must be above zero: enter the diameter.")};

/// Bores less what fills them besides the journal, less the journal.
Result<BearingClearance> lessJournal(std::span<const StationReading> bores, Length shells, const JournalShape& journal,
                                     const DiameterWords& words) {
    if (bores.empty()) {
        return refuse(Core::say(words.missing));
    }
    if (!journal.verticalMean) {
        return refuse(Core::say("The journal has no vertical reading: measure it square to the parting line."));
    }
    std::vector<StationReading> stations;
    stations.reserve(bores.size());
    for (const StationReading& bore : bores) {
        if (bore.value <= Length()) {
            return refuse(Core::say(words.notAboveZero, bore.station));
        }
        const auto same = std::ranges::find(journal.vertical, bore.station, &std::pair<std::int64_t, Length>::first);
        const Length diameter = same == journal.vertical.end() ? *journal.verticalMean : same->second;
        stations.push_back({bore.station, bore.value - shells - diameter});
    }
    return summed(std::move(stations));
}

} // namespace

Result<JournalShape> journalShape(std::span<const DiameterReading> readings) {
    if (readings.empty()) {
        return refuse(Core::say("The journal is not measured: read two stations or more, in two directions."));
    }
    std::map<std::pair<std::int64_t, std::int64_t>, std::vector<Length>> readingsAt;
    for (const DiameterReading& r : readings) {
        if (r.station < 1 || r.direction < 1) {
            return refuse(
                Core::say("Stations and directions of a journal count from 1: look at station %1, direction %2.",
                          r.station, r.direction));
        }
        if (r.diameter <= Length()) {
            return refuse(
                Core::say("The journal's diameter at station %1 must be above zero: enter the diameter.", r.station));
        }
        readingsAt[{r.station, r.direction}].push_back(r.diameter);
    }
    std::map<std::pair<std::int64_t, std::int64_t>, Length> places;
    std::map<std::int64_t, std::vector<Length>> along;  // by direction
    std::map<std::int64_t, std::vector<Length>> around; // by station
    std::vector<Length> all;
    std::vector<Length> vertical;
    JournalShape shape;
    std::set<std::int64_t> stations;
    std::set<std::int64_t> directions;
    for (const auto& [place, values] : readingsAt) {
        const Length diameter = meanOf(values);
        places[place] = diameter;
        around[place.first].push_back(diameter);
        along[place.second].push_back(diameter);
        all.push_back(diameter);
        stations.insert(place.first);
        directions.insert(place.second);
        if (place.second == verticalDirection) {
            shape.vertical.emplace_back(place.first, diameter);
            vertical.push_back(diameter);
        }
    }
    const Summary summary = summarise(all);
    shape.mean = Length(toNearest(summary.mean));
    shape.smallest = summary.smallest;
    shape.largest = summary.largest;
    shape.taper = widest(along);
    shape.outOfRound = widest(around);
    if (!vertical.empty()) {
        shape.verticalMean = meanOf(vertical);
    }
    shape.stations = stations.size();
    shape.directions = directions.size();
    shape.missing = whatIsMissing(places, stations, directions);
    return shape;
}

Result<BearingClearance> clearanceFromBore(std::span<const StationReading> bores, const JournalShape& journal) {
    return lessJournal(bores, Length(), journal, ofBore);
}

Result<BearingClearance> clearanceFromHousing(std::span<const StationReading> housings, Length upperShell,
                                              Length lowerShell, const JournalShape& journal) {
    if (upperShell <= Length() || lowerShell <= Length()) {
        return refuse(Core::say("Both shells need a thickness above zero: measure them at the crown."));
    }
    return lessJournal(housings, upperShell + lowerShell, journal, ofHousing);
}

Result<BearingClearance> clearanceFromStrip(std::span<const StationReading> clearances) {
    if (clearances.empty()) {
        return refuse(Core::say("The gauging strip is not read yet: read its width against its scale."));
    }
    for (const StationReading& reading : clearances) {
        if (reading.value <= Length()) {
            return refuse(
                Core::say("The strip's reading at station %1 must be above zero: read it again.", reading.station));
        }
    }
    return summed({clearances.begin(), clearances.end()});
}

Result<Band> defaultClearanceBand(Length journalDiameter) {
    if (journalDiameter <= Length()) {
        return refuse(Core::say("The journal's diameter must be above zero: measure it first."));
    }
    const auto diameter = static_cast<double>(journalDiameter.value());
    return Band::between(Length(toNearest(diameter * 0.00075)), Length(toNearest(diameter * 0.0010)));
}

std::string describe(const BearingClearance& clearance, const Units& units) {
    if (clearance.stations.size() < 2) {
        return Core::say("Mean %1.", format(clearance.mean, units));
    }
    return Core::say("Mean %1, %2 to %3 over %4 stations.", format(clearance.mean, units),
                     formatBare(clearance.smallest, units), format(clearance.largest, units),
                     clearance.stations.size());
}

std::string describe(const JournalShape& shape, const Units& units) {
    std::string text = Core::say("Diameter %1, taper %2, out-of-round %3.", format(shape.mean, units),
                                 format(shape.taper, units), format(shape.outOfRound, units));
    return shape.missing.empty() ? text : text + " " + shape.missing;
}

} // namespace caprail
