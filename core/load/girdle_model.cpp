// SPDX-License-Identifier: GPL-3.0-or-later
#include <load/girdle_model.h>

#include <algorithm>
#include <base/say.h>
#include <cmath>
#include <limits>
#include <load/condensation.h>

namespace caprail {

using load::GridPoint;
using load::RowMajor;

struct load::SolvedPlate : load::Condensation {
    std::vector<Position> places;
    std::vector<PlanPoint> railFasteners;
    double thickness = 0; ///< mm
    bool isRailAssumed = false;
    bool isShapeAssumed = false;
    [[nodiscard]] const Mode& mode(Rail rail) const { return rail == Rail::held ? held : free; }
};

struct load::SprungPlate {
    std::shared_ptr<const SolvedPlate> plate;
    Series held, free;
    std::vector<Position> springsNotKnown;
    [[nodiscard]] const Series& series(Rail rail) const { return rail == Rail::held ? held : free; }
};

Pull pullOf(Force force, const Units& units) {
    return isWrittenAsNothing(force, units) ? Pull::none : force > Force() ? Pull::up : Pull::down;
}

namespace {

Eigen::VectorXd asVector(std::span<const Length> lengths) {
    Eigen::VectorXd v(static_cast<Eigen::Index>(lengths.size()));
    for (std::size_t i = 0; i < lengths.size(); ++i) {
        v[static_cast<Eigen::Index>(i)] = inMillimetres(lengths[i]);
    }
    return v;
}

std::vector<Force> asForces(const Eigen::VectorXd& newton) {
    std::vector<Force> list;
    for (const double f : newton) {
        list.push_back(newtons(f));
    }
    return list;
}

std::vector<GridPoint> nutsOf(const EngineLayout& layout) {
    std::vector<GridPoint> list;
    for (const Position p : layout.positions()) {
        const PlanPoint at = layout.at(p);
        list.push_back({inMillimetres(at.x), inMillimetres(at.y)});
    }
    return list;
}

/// The rail fasteners with the plate's metal over them.
std::vector<GridPoint> fastenersUnder(const EngineLayout& layout, const GirdleOutline& outline, int count) {
    std::vector<GridPoint> list;
    const auto points = count > 0 ? rowPoints(layout, FastenerKind::panRail, count) : usualRailBolts(layout);
    for (const PlanPoint point : points) {
        const double x = inMillimetres(point.x);
        const double y = inMillimetres(point.y);
        if (outline.plate.contains(x, y) && !outline.cutout.contains(x, y)) {
            list.push_back({x, y});
        }
    }
    return list;
}

/// Where the layout draws next to no fastener under a short plate, the rail holds it at its four ends: it must be held
/// somewhere to be of use.
bool assumeFasteners(const GirdleOutline& outline, const BlockOutline& block, std::vector<GridPoint>& fasteners) {
    constexpr std::size_t enough = 4;
    if (fasteners.size() >= enough) {
        return false;
    }
    const double inset = block.railWidth / 2;
    for (const double x : {outline.plate.x1 + inset, outline.plate.x2 - inset}) {
        for (const double y : {-block.railHalf, block.railHalf}) {
            fasteners.push_back({x, y});
        }
    }
    return true;
}

/// A tenth of the cap spacing, and never more cells than a bench can wait for.
double cellFor(const EngineLayout& layout, const GirdleOutline& outline) {
    const double area = (outline.plate.x2 - outline.plate.x1) * (outline.plate.y2 - outline.plate.y1);
    constexpr double mostCells = 2000;
    return std::max(0.1 * inMillimetres(layout.description().capSpacing), std::sqrt(area / mostCells));
}

struct Prepared {
    load::Setting setting;
    bool isRailAssumed = false;
};

Result<Prepared> prepare(const EngineLayout& layout, const GirdlePlate& plate, int panFasteners,
                         std::optional<Length> longestCell) {
    if (auto ok = checkPlate(plate); !ok) {
        return tl::unexpected(ok.error());
    }
    if (auto ok = checkShape(layout, plate.shape); !ok) {
        return tl::unexpected(ok.error());
    }
    const BlockOutline block(layout);
    Prepared prepared;
    load::Setting& s = prepared.setting;
    s.outline = girdleOutline(layout, plate.shape);
    s.nuts = nutsOf(layout);
    s.fasteners = fastenersUnder(layout, s.outline, panFasteners);
    prepared.isRailAssumed = assumeFasteners(s.outline, block, s.fasteners);
    s.fastenerWasher = 0.72 * block.railWidth;
    s.longestCell = longestCell ? inMillimetres(*longestCell) : cellFor(layout, s.outline);
    s.snap = 0.02 * block.spacing;
    s.plate = plate;
    return prepared;
}

} // namespace

Result<SolvedGirdle> SolvedGirdle::from(const EngineLayout& layout, const GirdlePlate& plate, int panFasteners,
                                        std::optional<Length> longestCell) {
    const auto prepared = prepare(layout, plate, panFasteners, longestCell);
    if (!prepared) {
        return tl::unexpected(prepared.error());
    }
    auto condensation = load::condense(prepared->setting);
    if (!condensation) {
        return tl::unexpected(condensation.error());
    }
    std::vector<PlanPoint> fasteners;
    for (const GridPoint& f : condensation->fasteners) {
        fasteners.push_back({millimetres(f.x), millimetres(f.y)});
    }
    const GirdleShape& shape = plate.shape;
    return SolvedGirdle(std::make_shared<const load::SolvedPlate>(load::SolvedPlate{
        *std::move(condensation), layout.positions(), std::move(fasteners), inMillimetres(plate.thickness),
        prepared->isRailAssumed, !shape.windowAlong || !shape.windowAcross || !shape.overhang}));
}

Result<GirdleModel> SolvedGirdle::withSprings(const Springs& springs) const {
    const std::vector<Position>& places = m_plate->places;
    std::vector<Position> notKnown;
    Eigen::VectorXd rates(static_cast<Eigen::Index>(places.size()));
    for (std::size_t i = 0; i < places.size(); ++i) {
        const std::optional<Stiffness> given = i < springs.size() ? springs[i] : std::nullopt;
        if (given && *given <= Stiffness()) {
            return refuse(Core::say("The stud and cap at %1 need a stiffness above nothing.", describe(places[i])));
        }
        if (!given) {
            notKnown.push_back(places[i]);
        }
        rates[static_cast<Eigen::Index>(i)] = inNewtonsPerMillimetre(given.value_or(stiffnessNotKnown));
    }
    return GirdleModel(std::make_shared<const load::SprungPlate>(
        load::SprungPlate{m_plate, load::inSeries(m_plate->held.plate, rates),
                          load::inSeries(m_plate->free.plate, rates), std::move(notKnown)}));
}

const load::SolvedPlate& GirdleModel::plate() const {
    return *m_sprung->plate;
}
const std::vector<Position>& GirdleModel::places() const {
    return plate().places;
}
const std::vector<Position>& GirdleModel::springsNotKnown() const {
    return m_sprung->springsNotKnown;
}
const std::vector<PlanPoint>& GirdleModel::railFasteners() const {
    return plate().railFasteners;
}
bool GirdleModel::isRailAssumed() const {
    return plate().isRailAssumed;
}
bool GirdleModel::isShapeAssumed() const {
    return plate().isShapeAssumed;
}

std::span<const double> GirdleModel::stiffness(Rail rail) const {
    const RowMajor& k = m_sprung->series(rail).stiffness;
    return {k.data(), static_cast<std::size_t>(k.size())};
}

Stiffness GirdleModel::stiffness(Rail rail, std::size_t row, std::size_t column) const {
    return newtonsPerMillimetre(stiffness(rail)[row * places().size() + column]);
}

std::vector<Force> GirdleModel::forces(std::span<const Length> residuals, Rail rail) const {
    return asForces(m_sprung->series(rail).stiffness * asVector(residuals));
}

GirdleLoad GirdleModel::load(std::span<const Length> residuals, Rail rail) const {
    const load::Series& series = m_sprung->series(rail);
    const Eigen::VectorXd r = asVector(residuals);
    const Eigen::VectorXd force = series.stiffness * r;
    GirdleLoad out;
    out.force = asForces(force);
    out.energy = 0.5 * force.dot(r) * 1e-3;
    const Eigen::VectorXd moments = plate().mode(rail).moments * (series.heights * r);
    double largest = -1;
    std::size_t at = 0;
    for (std::size_t k = 0; k < plate().looks.size(); ++k) {
        const auto row = static_cast<Eigen::Index>(3 * k);
        const double middle = (moments[row] + moments[row + 1]) / 2;
        const double reach = std::hypot((moments[row] - moments[row + 1]) / 2, moments[row + 2]);
        if (std::abs(middle) + reach > largest) {
            largest = std::abs(middle) + reach;
            at = k;
        }
    }
    const double t = plate().thickness;
    if (largest >= 0) {
        out.largestStress = megapascals(6 * largest / (t * t));
        out.where = {millimetres(plate().looks[at].x), millimetres(plate().looks[at].y)};
    }
    return out;
}

std::vector<Force> GirdleModel::uncertainty(std::span<const Length> expanded, Rail rail) const {
    const RowMajor& k = m_sprung->series(rail).stiffness;
    const Eigen::VectorXd u = asVector(expanded);
    return asForces((k.array().square().matrix() * u.array().square().matrix()).array().sqrt().matrix());
}

DeflectionMap GirdleModel::deflections(std::span<const Length> residuals, Rail rail) const {
    const Eigen::VectorXd nodes =
        plate().mode(rail).deflection * (m_sprung->series(rail).heights * asVector(residuals));
    const load::PlateGrid& grid = plate().grid;
    DeflectionMap map{grid.x(), grid.y(), {}};
    for (std::size_t j = 0; j < map.y.size(); ++j) {
        for (std::size_t i = 0; i < map.x.size(); ++i) {
            const int node = grid.node(i, j);
            // A low stack pulls the plate into the block, away from the pan.
            map.height.push_back(node < 0 ? std::numeric_limits<double>::quiet_NaN() : -nodes[node]);
        }
    }
    return map;
}

namespace {

double largestRowSum(std::span<const double> k, std::size_t n) {
    double largest = 0;
    for (std::size_t i = 0; i < n; ++i) {
        double sum = 0;
        for (std::size_t j = 0; j < n; ++j) {
            sum += std::abs(k[i * n + j]);
        }
        largest = std::max(largest, sum);
    }
    return largest;
}

} // namespace

std::optional<Length> GirdleModel::bandFor(Force largest, Rail rail) const {
    const double sum = largestRowSum(stiffness(rail), places().size());
    // Rounded down: a band that is a nanometre too wide would break the promise.
    return sum > 1e-6 ? std::optional(Length(static_cast<std::int64_t>(inNewtons(largest) / sum * 1e6))) : std::nullopt;
}

Force GirdleModel::largestWithin(Length band, Rail rail) const {
    return newtons(largestRowSum(stiffness(rail), places().size()) * inMillimetres(band));
}

} // namespace caprail
