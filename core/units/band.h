// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <units/length.h>
#include <base/problem.h>

namespace caprail {

/// A closed interval of lengths [lo, hi], lo ≤ hi. A band the wrong way round cannot be built.
class Band {
public:
    /// Refuses lo > hi with a sentence that names both.
    static Result<Band> between(Length lo, Length hi);
    /// The single value 0: an exact fit.
    constexpr Band() = default;

    [[nodiscard]] constexpr Length lo() const { return m_lo; }
    [[nodiscard]] constexpr Length hi() const { return m_hi; }
    [[nodiscard]] constexpr Length middle() const { return Length((m_lo.value() + m_hi.value()) / 2); }
    [[nodiscard]] constexpr bool contains(Length x) const { return m_lo <= x && x <= m_hi; }
    friend constexpr bool operator==(Band, Band) = default;

private:
    constexpr Band(Length lo, Length hi) : m_lo(lo), m_hi(hi) {}
    Length m_lo;
    Length m_hi;
};

} // namespace caprail
