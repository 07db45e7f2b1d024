// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <compare>
#include <cstdint>

namespace caprail {

/// A physical quantity held as a whole number of one small base unit, so that it is stored and compared exactly and
/// one kind can never be given where another is meant. Every quantity of the program is one of these; there is no
/// second length, torque or angle type anywhere.
///
/// `value()` is in the base unit named by the alias below. Sums and differences are exact. Conversions from and to
/// other units are named functions in the header of each quantity, which says what is exact.
template <class Tag>
class Quantity {
public:
    constexpr Quantity() = default;
    constexpr explicit Quantity(std::int64_t baseUnits) : m_value(baseUnits) {}

    [[nodiscard]] constexpr std::int64_t value() const { return m_value; }

    friend constexpr auto operator<=>(Quantity, Quantity) = default;
    friend constexpr Quantity operator+(Quantity a, Quantity b) { return Quantity(a.m_value + b.m_value); }
    friend constexpr Quantity operator-(Quantity a, Quantity b) { return Quantity(a.m_value - b.m_value); }
    friend constexpr Quantity operator-(Quantity a) { return Quantity(-a.m_value); }
    friend constexpr Quantity operator*(Quantity a, std::int64_t n) { return Quantity(a.m_value * n); }
    constexpr Quantity& operator+=(Quantity b) { m_value += b.m_value; return *this; }
    constexpr Quantity& operator-=(Quantity b) { m_value -= b.m_value; return *this; }
    [[nodiscard]] constexpr Quantity magnitude() const { return Quantity(m_value < 0 ? -m_value : m_value); }

private:
    std::int64_t m_value = 0;
};

/// Rounds half away from zero: the rule of the whole program wherever a real number becomes a whole one.
constexpr std::int64_t toNearest(double x) {
    return x < 0 ? -static_cast<std::int64_t>(0.5 - x) : static_cast<std::int64_t>(x + 0.5);
}

} // namespace caprail
