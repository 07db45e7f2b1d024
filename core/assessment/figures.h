// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// From readings to the lengths that core/measure works on. Private to this folder.
#include <assessment/checks.h>
#include <measure/statistics.h>
#include <measure/survey.h>

namespace caprail {

/// The lengths of readings, in their order.
template <class Readings, class Get> std::vector<Length> lengthsOf(const Readings& readings, Get get) {
    std::vector<Length> list;
    list.reserve(readings.size());
    for (const auto& reading : readings) {
        list.push_back(get(reading.what));
    }
    return list;
}

} // namespace caprail
