// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// What the stacks under a girdle put into the block: the girdle as a thin elastic plate (Kirchhoff), held at height
/// zero by the pan rail's fasteners and pulled by its nuts onto stacks that stand r below the rail plane; stud and cap
/// give way like a spring at each place. The plate is solved once per layout; with its springs it comes to F = K·r.
/// Advice with its assumptions, never a gate, and no claim about what a block will stand.
#include <load/girdle_plate.h>
#include <memory>
#include <units/format.h>

namespace caprail {

enum class Rail {
    held, ///< the pan rail's fasteners hold the plate down on the rail
    free  ///< not yet bolted to the rail: offset, pitch and roll cost nothing
};

/// What a force does to its cap. One that is positive pulls it up; one so small that it is written as nothing does
/// nothing.
enum class Pull { none, up, down };
Pull pullOf(Force force, const Units& units);

/// Forces on the caps for one set of stacks. Forces pull the cap up where they are positive.
struct GirdleLoad {
    std::vector<Force> force; ///< per place
    double energy = 0;        ///< stored in plate, studs and caps, joules
    Stress largestStress;     ///< the largest principal bending stress at the plate's surface, outside all washers
    PlanPoint where;          ///< of it
};

/// The plate's height above the rail plane at the crossings of its grid; NaN where there is no metal.
struct DeflectionMap {
    std::vector<double> x, y;   ///< lines, millimetres of the plan
    std::vector<double> height; ///< millimetres, positive towards the pan; x runs fastest
};

/// Stud and cap per place of `layout.positions()`; none or empty: `stiffnessNotKnown`.
using Springs = std::vector<std::optional<Stiffness>>;

namespace load {
struct SolvedPlate;
struct SprungPlate;
} // namespace load
class GirdleModel;

/// The plate alone, solved for its nuts: what takes time (100 to 200 ms for a whole block). Copies share it.
class SolvedGirdle {
public:
    /// `panFasteners`: how many the pan rail has; 0: not counted, the usual set is taken. `longestCell`: of the grid;
    /// none: fitted to the layout. Refuses what checkPlate and checkShape refuse, and a nut that the cutout leaves
    /// without metal.
    static Result<SolvedGirdle> from(const EngineLayout& layout, const GirdlePlate& plate, int panFasteners = 0,
                                     std::optional<Length> longestCell = {});
    /// Takes no time. Refuses springs that are not above zero.
    [[nodiscard]] Result<GirdleModel> withSprings(const Springs& springs = {}) const;

private:
    explicit SolvedGirdle(std::shared_ptr<const load::SolvedPlate> plate) : m_plate(std::move(plate)) {}
    std::shared_ptr<const load::SolvedPlate> m_plate;
};

/// A solved plate on its springs. Nothing of it changes once it is made, so any number of threads may ask it at once;
/// copies share what they are made from.
class GirdleModel {
public:
    [[nodiscard]] const std::vector<Position>& places() const;
    /// K, symmetric, N/mm; row by row in the order of `places()`.
    [[nodiscard]] std::span<const double> stiffness(Rail rail) const;
    /// One of its members.
    [[nodiscard]] Stiffness stiffness(Rail rail, std::size_t row, std::size_t column) const;
    /// The places whose stud and cap nobody described.
    [[nodiscard]] const std::vector<Position>& springsNotKnown() const;
    /// The rail fasteners that lie under the plate, where the model holds it.
    [[nodiscard]] const std::vector<PlanPoint>& railFasteners() const;
    /// Fewer than four of them were drawn under the plate: it is taken to be held at its four ends as well.
    [[nodiscard]] bool isRailAssumed() const;
    /// Somebody left a measure of the windows or the overhang open: it is in fair proportion to the layout.
    [[nodiscard]] bool isShapeAssumed() const;

    /// F = K·r. One residual per place, positive where the stack is low.
    [[nodiscard]] std::vector<Force> forces(std::span<const Length> residuals, Rail rail) const;
    /// The same with energy and stress.
    [[nodiscard]] GirdleLoad load(std::span<const Length> residuals, Rail rail) const;
    /// The uncertainty of each force, with those of the residuals, through K: the root of the sum of squares. One
    /// expanded uncertainty per place, taken as independent of each other.
    [[nodiscard]] std::vector<Force> uncertainty(std::span<const Length> expanded, Rail rail) const;
    [[nodiscard]] DeflectionMap deflections(std::span<const Length> residuals, Rail rail) const;
    /// The half-width of a residual band ±b that keeps every |F| at or below `largest`, whatever lies in it: b =
    /// largest over the largest row sum of |K|. Nothing where no residual makes a force.
    [[nodiscard]] std::optional<Length> bandFor(Force largest, Rail rail) const;
    /// And back: the largest |F| that residuals within ± `band` can make.
    [[nodiscard]] Force largestWithin(Length band, Rail rail) const;

private:
    friend class SolvedGirdle;
    explicit GirdleModel(std::shared_ptr<const load::SprungPlate> sprung) : m_sprung(std::move(sprung)) {}
    [[nodiscard]] const load::SolvedPlate& plate() const;
    std::shared_ptr<const load::SprungPlate> m_sprung;
};

/// A model that several look at, each for as long as it likes; null: there is none.
using SharedGirdle = std::shared_ptr<const GirdleModel>;

} // namespace caprail
