// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <units/quantity.h>

namespace caprail {

struct LengthTag;
/// A length in whole nanometres. 1 in = 25 400 000 nm exactly (international inch, NIST SP 811 B.8), so 0.0001 in
/// (2 540 nm) and 0.001 mm (1 000 nm) are both exact: an inch reading and a millimetre reading can be compared
/// without a rounding error, which no binary fraction of an inch allows.
using Length = Quantity<LengthTag>;

inline constexpr std::int64_t nanometresPerInch = 25'400'000;

constexpr Length nanometres(std::int64_t n) { return Length(n); }
/// Exact.
constexpr Length microns(std::int64_t n) { return Length(n * 1'000); }
/// Exact: ten-thousandths of an inch (0.0001 in), the last digit of an inch micrometer.
constexpr Length tenths(std::int64_t n) { return Length(n * 2'540); }
/// Thousandths of an inch; exact for multiples of 0.01 thou, else to the nearest nanometre.
constexpr Length thou(double n) { return Length(toNearest(n * 25'400.0)); }
/// Exact for multiples of 0.00001 in, else to the nearest nanometre.
constexpr Length inches(double n) { return Length(toNearest(n * 25'400'000.0)); }
/// Exact for multiples of 0.000001 mm.
constexpr Length millimetres(double n) { return Length(toNearest(n * 1'000'000.0)); }

constexpr double inInches(Length l) { return static_cast<double>(l.value()) / 25'400'000.0; }
constexpr double inThou(Length l) { return static_cast<double>(l.value()) / 25'400.0; }
constexpr double inMillimetres(Length l) { return static_cast<double>(l.value()) / 1'000'000.0; }

} // namespace caprail
