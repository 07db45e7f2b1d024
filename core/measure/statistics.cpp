// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>
#include <measure/statistics.h>

namespace caprail {

namespace {

/// (a + b) / 2, rounded half away from zero.
Length middleOf(Length a, Length b) {
    const std::int64_t both = a.value() + b.value();
    return Length(both < 0 ? -((-both + 1) / 2) : (both + 1) / 2);
}

} // namespace

Moments momentsOf(std::span<const double> values) {
    Moments m;
    m.count = values.size();
    if (values.empty()) {
        return m;
    }
    const auto n = static_cast<double>(m.count);
    // Sums are taken of differences from the first value: near a large mean these are exact where the values are not.
    const double origin = values.front();
    double sum = 0;
    for (const double x : values) {
        sum += x - origin;
    }
    const double shift = sum / n;
    m.mean = origin + shift;
    if (m.count > 1) {
        double squares = 0;
        double rest = 0; // what the rounding of the shift leaves over; zero in exact arithmetic
        for (const double x : values) {
            const double d = (x - origin) - shift;
            squares += d * d;
            rest += d;
        }
        m.standardDeviation = std::sqrt(std::max(0.0, squares - rest * rest / n) / (n - 1));
    }
    return m;
}

Summary summarise(std::span<const Length> readings) {
    Summary s;
    s.count = readings.size();
    if (readings.empty()) {
        return s;
    }
    std::vector<Length> sorted(readings.begin(), readings.end());
    std::ranges::sort(sorted);
    s.smallest = sorted.front();
    s.largest = sorted.back();
    s.range = s.largest - s.smallest;
    const std::size_t half = sorted.size() / 2;
    s.median = sorted.size() % 2 == 0 ? middleOf(sorted[half - 1], sorted[half]) : sorted[half];
    std::vector<double> values;
    values.reserve(readings.size());
    for (const Length l : readings) {
        values.push_back(static_cast<double>(l.value()));
    }
    const Moments m = momentsOf(values);
    s.mean = m.mean;
    s.standardDeviation = m.standardDeviation;
    return s;
}

std::optional<Pooled> pool(std::span<const Summary> places) {
    double squares = 0;
    double freedom = 0;
    for (const Summary& place : places) {
        if (place.count > 1) {
            const auto n = static_cast<double>(place.count - 1);
            squares += n * place.standardDeviation * place.standardDeviation;
            freedom += n;
        }
    }
    if (freedom == 0) {
        return {};
    }
    return Pooled{std::sqrt(squares / freedom), freedom};
}

Scatter scatterOf(std::span<const PlaceReadings> places) {
    std::vector<Summary> cells;
    for (const PlaceReadings& place : places) {
        for (const auto& person : place) {
            cells.push_back(summarise(person));
        }
    }
    Scatter scatter{pool(cells), {}};
    const double within =
        scatter.repeatability ? scatter.repeatability->standardDeviation * scatter.repeatability->standardDeviation : 0;
    double squares = 0;
    double freedom = 0;
    for (const PlaceReadings& place : places) {
        std::vector<double> means;
        double oneOverReadings = 0;
        for (const auto& person : place) {
            if (!person.empty()) {
                means.push_back(summarise(person).mean);
                oneOverReadings += 1 / static_cast<double>(person.size());
            }
        }
        if (means.size() > 1) {
            const auto n = static_cast<double>(means.size() - 1);
            const double deviation = momentsOf(means).standardDeviation;
            squares += n * (deviation * deviation - within * oneOverReadings / static_cast<double>(means.size()));
            freedom += n;
        }
    }
    if (freedom > 0) {
        scatter.people = Pooled{std::sqrt(std::max(0.0, squares / freedom)), freedom};
    }
    return scatter;
}

double medianFactor(std::size_t n) {
    // √(n · variance of the median of n) for the standard normal distribution.
    constexpr double factors[] = {1, 1, 1, 1.1602, 1.0922, 1.1976, 1.1351, 1.2137, 1.1602, 1.2232};
    return n < std::size(factors) ? factors[n] : 1.2533;
}

std::optional<double> pooledStandardDeviation(std::span<const Summary> places) {
    const auto pooled = pool(places);
    return pooled ? std::optional(pooled->standardDeviation) : std::nullopt;
}

std::optional<Length> spread(std::span<const Length> values) {
    if (values.empty()) {
        return {};
    }
    const auto [smallest, largest] = std::ranges::minmax(values);
    return largest - smallest;
}

} // namespace caprail
