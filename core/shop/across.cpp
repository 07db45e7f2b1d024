// SPDX-License-Identifier: GPL-3.0-or-later
#include <shop/across.h>

#include <algorithm>
#include <base/csv.h>
#include <charconv>
#include <map>
#include <set>
#include <tuple>
#include <base/say.h>

namespace caprail {

namespace {

/// Places in the engine's order: "main-2" before "main-10", "2L" before "10L".
std::tuple<std::string, int, std::string> placeKey(const std::string& place) {
    const auto digit = place.find_first_of("0123456789");
    if (digit == std::string::npos) {
        return {place, 0, ""};
    }
    int number = 0;
    const auto [rest, error] = std::from_chars(place.data() + digit, place.data() + place.size(), number);
    return {place.substr(0, digit), error == std::errc() ? number : 0, std::string(rest, place.data() + place.size())};
}

} // namespace

std::vector<std::string> bandsIn(const std::vector<AcrossRecord>& records) {
    std::set<std::string> names;
    for (const auto& record : records) {
        for (const auto& figure : record.figures.banded) {
            names.insert(figure.band);
        }
    }
    return {names.begin(), names.end()};
}

std::vector<AcrossValue> valuesOf(const std::vector<AcrossRecord>& records, std::string_view band) {
    std::vector<AcrossValue> values;
    for (const auto& record : records) {
        for (const auto& figure : record.figures.banded) {
            if (figure.band == band) {
                values.push_back({record.label, figure.place, record.id, figure.build, figure.value, figure.state,
                                  figure.limits});
            }
        }
    }
    std::ranges::sort(values, {}, [](const AcrossValue& v) { return std::tuple(placeKey(v.place), v.value, v.label); });
    return values;
}

std::optional<Band> commonBand(const std::vector<AcrossValue>& values) {
    const auto differs = [&](const AcrossValue& value) { return value.limits != values.front().limits; };
    return values.empty() || std::ranges::any_of(values, differs) ? std::nullopt : values.front().limits;
}

std::vector<AcrossSpread> spreadsOf(const std::vector<AcrossValue>& values) {
    std::vector<AcrossSpread> spreads;
    for (std::size_t begin = 0; begin < values.size();) {
        std::size_t end = begin;
        AcrossSpread spread;
        spread.place = values[begin].place;
        for (; end < values.size() && values[end].place == spread.place; ++end) {
            spread.out += values[end].state == CheckState::out ? 1 : 0;
        }
        spread.count = end - begin;
        spread.smallest = values[begin].value;
        spread.median = values[begin + (spread.count - 1) / 2].value;
        spread.largest = values[end - 1].value;
        spreads.push_back(std::move(spread));
        begin = end;
    }
    return spreads;
}

std::vector<MovementCount> movementsBy(const std::vector<AcrossRecord>& records, MovementBy by) {
    std::map<std::string, MovementCount> counts;
    for (const auto& record : records) {
        for (const PullFigure& pull : record.figures.pulls) {
            const std::string& what = by == MovementBy::fastener ? pull.fastener
                                      : by == MovementBy::wrench ? pull.wrench
                                                                 : pull.person;
            MovementCount& count = counts[what.empty() ? Core::say("not named") : what];
            count.pulled += pull.pulled;
            count.moved += pull.moved;
            count.largest = std::max(count.largest, pull.largest);
        }
    }
    std::vector<MovementCount> list;
    for (auto& [what, count] : counts) {
        count.what = what;
        list.push_back(std::move(count));
    }
    std::ranges::stable_sort(list, [](const MovementCount& a, const MovementCount& b) {
        return std::tuple(-a.moved, -a.share(), placeKey(a.what)) < std::tuple(-b.moved, -b.share(), placeKey(b.what));
    });
    return list;
}

std::vector<AcrossInstrument> instrumentsDue(const std::vector<AcrossRecord>& records) {
    std::map<std::tuple<std::string, std::string, InstrumentType>, AcrossInstrument> all;
    for (const auto& record : records) {
        for (const InstrumentFigure& figure : record.figures.instruments) {
            AcrossInstrument& one = all[{figure.name, figure.serial, figure.type}];
            one.name = figure.name;
            one.serial = figure.serial;
            one.type = figure.type;
            one.calibrated = std::max(one.calibrated, figure.calibrated);
            one.due = std::max(one.due, figure.due);
            one.dueCycles = std::max(one.dueCycles, figure.dueCycles);
            one.cycles = std::max(one.cycles, figure.cycles);
            ++one.records;
        }
    }
    std::vector<AcrossInstrument> list;
    for (auto& [key, one] : all) {
        list.push_back(std::move(one));
    }
    std::ranges::stable_sort(list, [](const AcrossInstrument& a, const AcrossInstrument& b) {
        return std::tuple(!a.due, a.due, a.name) < std::tuple(!b.due, b.due, b.name);
    });
    return list;
}

std::string valuesCsv(const std::vector<AcrossValue>& values, std::string_view band, const Units& units) {
    CsvWriter csv({"quantity", "place", "record", "build", std::string("value_") + symbol(units.length), "state"});
    for (const AcrossValue& v : values) {
        csv.text(band).text(v.place).text(v.label).number(v.build).plain(formatBare(v.value, units));
        csv.plain(word(v.state)).endLine();
    }
    return csv.written();
}

std::string movementsCsv(const std::vector<MovementCount>& counts, MovementBy by) {
    const std::string_view what = by == MovementBy::fastener ? "fastener"
                                  : by == MovementBy::wrench ? "wrench"
                                                             : "person";
    CsvWriter csv({what, "pulled", "moved", "largest_deg"});
    for (const MovementCount& count : counts) {
        csv.text(count.what).number(count.pulled).number(count.moved);
        csv.plain(formatNumber(static_cast<double>(count.largest.value()) / 1000.0, 1)).endLine();
    }
    return csv.written();
}

std::string instrumentsCsv(const std::vector<AcrossInstrument>& instruments) {
    CsvWriter csv({"instrument", "serial", "kind", "calibrated", "due", "records", "cycles", "due_cycles"});
    for (const AcrossInstrument& one : instruments) {
        csv.text(one.name).text(one.serial).plain(word(one.type));
        csv.plain(one.calibrated ? format(*one.calibrated) : "").plain(one.due ? format(*one.due) : "");
        csv.number(static_cast<std::int64_t>(one.records)).number(one.cycles).number(one.dueCycles).endLine();
    }
    return csv.written();
}

} // namespace caprail
