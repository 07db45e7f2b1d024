// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>
#include <measure/statistics.h>

namespace caprail {

Moments momentsOf(std::span<const double> values) {
    Moments m;
    double squares = 0;
    for (const double x : values) {
        ++m.count;
        const double delta = x - m.mean;
        m.mean += delta / static_cast<double>(m.count);
        squares += delta * (x - m.mean);
    }
    if (m.count > 1) {
        m.standardDeviation = std::sqrt(squares / static_cast<double>(m.count - 1));
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
    s.median = sorted[half];
    if (sorted.size() % 2 == 0) {
        const std::int64_t both = sorted[half - 1].value() + sorted[half].value();
        s.median = Length(both < 0 ? -((-both + 1) / 2) : (both + 1) / 2);
    }
    std::vector<double> values;
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
            const double n = static_cast<double>(place.count - 1);
            squares += n * place.standardDeviation * place.standardDeviation;
            freedom += n;
        }
    }
    if (freedom == 0) {
        return {};
    }
    return Pooled{std::sqrt(squares / freedom), freedom};
}

} // namespace caprail
