// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <fasteners/area.h>
#include <fasteners/preload.h>
#include <string>
#include <utility>
#include <vector>

namespace caprail {

/// A length of the fastener with one cross-section. A section without length or area cannot be built.
class BoltSection {
public:
    /// A plain round part: shank, or a waist turned down. Refuses a diameter outside 1 to 100 mm and a length that is
    /// not positive or above 1 m.
    static Result<BoltSection> shank(Length length, Length diameter);
    /// A threaded part under load, taken with the stress area of its thread. Refuses a length as above.
    static Result<BoltSection> threaded(Length length, const Thread& thread);

    [[nodiscard]] Length length() const { return m_length; }
    [[nodiscard]] Area area() const { return m_area; }
    /// "shank 0.3750 in", "thread 3/8-24"
    [[nodiscard]] std::string what(const Units& units) const;

private:
    BoltSection(Length length, Area area, Length diameter, std::string what)
        : m_length(length), m_area(area), m_diameter(diameter), m_what(std::move(what)) {}
    Length m_length;
    Area m_area;
    Length m_diameter; ///< of a shank; 0 for a thread
    std::string m_what;
};

/// δ = Σ F·Lᵢ/(Aᵢ·E) over the sections in series (Hooke). Refuses an implausible force, no section, and a modulus
/// outside 40 to 400 GPa.
Result<Worked<Length>> stretchUnder(Force force, const std::vector<BoltSection>& sections, Stress modulus,
                                    const Units& units);
/// The force at a measured stretch, F = δ·E / Σ(Lᵢ/Aᵢ): elastic only, so it means nothing past yield. Refuses δ ≤ 0,
/// no section, a modulus as above, and a stretch of more than a fiftieth of the length (asked back).
Result<Worked<Force>> forceFromStretch(Length stretch, const std::vector<BoltSection>& sections, Stress modulus,
                                       const Units& units);

} // namespace caprail
