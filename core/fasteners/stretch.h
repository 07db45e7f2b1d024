// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <fasteners/area.h>
#include <fasteners/preload.h>
#include <string>
#include <vector>

namespace caprail {

/// A length of the fastener with one cross-section. A section without length or area cannot be built.
class BoltSection {
public:
    /// A plain round part: shank, or a waist turned down. Refuses a length or diameter that is not positive.
    static Result<BoltSection> shank(Length length, Length diameter);
    /// A threaded part under load, taken with the stress area of its thread. Refuses a length that is not positive.
    static Result<BoltSection> threaded(Length length, const Thread& thread);

    [[nodiscard]] Length length() const { return m_length; }
    [[nodiscard]] Area area() const { return m_area; }
    /// "shank 0.3750 in", "thread 3/8-24"
    [[nodiscard]] const std::string& what() const { return m_what; }

private:
    BoltSection(Length length, Area area, std::string what) : m_length(length), m_area(area), m_what(std::move(what)) {}
    Length m_length;
    Area m_area;
    std::string m_what;
};

/// δ = Σ F·Lᵢ/(Aᵢ·E) over the sections in series (Hooke). Refuses F ≤ 0, no section, and a modulus ≤ 0.
Result<Worked<Length>> stretchUnder(Force force, const std::vector<BoltSection>& sections, Stress modulus,
                                    const Units& units);
/// The force at a measured stretch, F = δ·E / Σ(Lᵢ/Aᵢ): elastic only, so it means nothing past yield. Refuses δ ≤ 0,
/// no section, a modulus ≤ 0, and a stretch of more than a fiftieth of the length (asked back).
Result<Worked<Force>> forceFromStretch(Length stretch, const std::vector<BoltSection>& sections, Stress modulus,
                                       const Units& units);

} // namespace caprail
