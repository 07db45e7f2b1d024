// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <engine/place.h>
#include <units/length.h>
#include <base/problem.h>
#include <vector>

namespace caprail {

/// What a person (or a template) says about the bottom end; an EngineLayout is made from it.
/// Plan coordinates: x along the crank from cap 1 (front) to the rear, y across it, left negative, right positive.
struct LayoutDescription {
    std::int64_t caps = 5;            ///< main caps, 3 to 9
    std::int64_t fastenersPerCap = 2; ///< 2 or 4
    Ring girdleRing = Ring::inner;    ///< which pair carries the girdle on a four-fastener cap
    std::int64_t tiedFirst = 1;       ///< first cap that the girdle ties
    std::int64_t tiedLast = 5;        ///< last cap that the girdle ties
    std::int64_t rods = 8;            ///< connecting rods, 1 to 16
    std::int64_t throws = 4;          ///< crank throws, 1 to 16
    Length capSpacing = inches(4.4);  ///< between neighbouring caps
    Length studSpan = inches(3.6);    ///< left to right between the inner main fasteners
    Length outerStudSpan = inches(5.6);
    Length railSpan = inches(8.2);    ///< left to right between the middles of the pan rails
    std::int64_t pickupCap = 4;       ///< the cap nearest to the oil pump pickup; the girdle's cutout is there
    Side pickupSide = Side::right;
    std::int64_t dipstickCap = 3;     ///< the cap nearest to the dipstick
    Side dipstickSide = Side::left;
    friend bool operator==(const LayoutDescription&, const LayoutDescription&) = default;
};

struct PlanPoint {
    Length x;
    Length y;
    friend bool operator==(const PlanPoint&, const PlanPoint&) = default;
};

/// The places of one engine's bottom end, and where each lies in plan. An impossible one cannot be built.
class EngineLayout {
public:
    /// Refuses, naming the field: caps outside 3 to 9, other than 2 or 4 fasteners per cap, a tied run that does not
    /// lie within the caps, no rods or throws, spans that do not grow outwards, an outer girdle ring on two-fastener caps.
    static Result<EngineLayout> from(const LayoutDescription&);

    [[nodiscard]] const LayoutDescription& description() const { return m_description; }
    [[nodiscard]] int caps() const { return static_cast<int>(m_description.caps); }
    [[nodiscard]] int rods() const { return static_cast<int>(m_description.rods); }
    [[nodiscard]] int throws() const { return static_cast<int>(m_description.throws); }
    [[nodiscard]] bool isTied(int cap) const;

    /// Every position under the girdle in the order of a pass: front to rear, left before right at each cap.
    [[nodiscard]] std::vector<Position> positions() const;
    [[nodiscard]] std::vector<FastenerId> mainFasteners() const;
    [[nodiscard]] std::vector<FastenerId> rodFasteners() const;
    [[nodiscard]] std::vector<FastenerId> girdleNuts() const;
    /// Main and rod fasteners: what a verify round must pull.
    [[nodiscard]] std::vector<FastenerId> verifiedFasteners() const;
    [[nodiscard]] std::vector<JournalId> mainJournals() const;
    [[nodiscard]] std::vector<JournalId> rodJournals() const;

    [[nodiscard]] bool has(Position) const;
    [[nodiscard]] bool has(JournalId) const;
    /// Main, rod and girdle fasteners by layout; pan, front and rear ones by any number ≥ 1 (their count is the group's).
    [[nodiscard]] bool has(FastenerId) const;
    [[nodiscard]] bool hasThrow(int number) const { return number >= 1 && number <= throws(); }

    [[nodiscard]] PlanPoint at(Position) const;
    [[nodiscard]] PlanPoint at(FastenerId) const; ///< main and girdle fasteners only
    /// Middle of a throw, on the crank's axis. Throws are spread evenly over the bays between the caps.
    [[nodiscard]] Length throwAt(int number) const;
    [[nodiscard]] Length capAt(int cap) const { return m_description.capSpacing * (cap - 1); }
    [[nodiscard]] PlanPoint pickupAt() const;
    [[nodiscard]] PlanPoint dipstickAt() const;

private:
    explicit EngineLayout(const LayoutDescription& d) : m_description(d) {}
    [[nodiscard]] Length halfSpan(Ring) const;
    LayoutDescription m_description;
};

} // namespace caprail
