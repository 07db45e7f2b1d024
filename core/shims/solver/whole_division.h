// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstdint>

namespace caprail::solver {

/// The largest whole number not above a / b. `b` is not 0.
constexpr std::int64_t floorDivide(std::int64_t a, std::int64_t b) {
    const std::int64_t q = a / b;
    return a % b != 0 && (a < 0) != (b < 0) ? q - 1 : q;
}

/// The smallest whole number not below a / b. `b` is not 0.
constexpr std::int64_t ceilDivide(std::int64_t a, std::int64_t b) {
    return -floorDivide(-a, b);
}

} // namespace caprail::solver
