// SPDX-License-Identifier: GPL-3.0-or-later
#include <load/condensation.h>

#include <algorithm>
#include <base/say.h>
#include <cmath>

namespace caprail::load {

namespace {

/// A cell's Gauss points, two a side: where the curvature of its cubics is best.
constexpr std::array<double, 2> lookAt{0.211324865405187117745, 0.788675134594812882255};

bool isNear(const std::vector<GridPoint>& points, GridPoint at, double radius) {
    return std::any_of(points.begin(), points.end(),
                       [&](const GridPoint& p) { return std::hypot(p.x - at.x, p.y - at.y) < radius; });
}

/// The corners of the windows, where a plate with sharp corners has no finite stress.
std::vector<GridPoint> cornersOf(const GirdleOutline& outline) {
    std::vector<GridPoint> list;
    for (const PlanBox& w : outline.windows) {
        list.insert(list.end(), {{w.x1, w.y1}, {w.x2, w.y1}, {w.x1, w.y2}, {w.x2, w.y2}});
    }
    return list;
}

class Condensing {
public:
    explicit Condensing(const Setting& setting)
        : m_setting(setting),
          m_fitted(fitGrid(setting.outline, setting.nuts, setting.fasteners, setting.longestCell, setting.snap)),
          m_grid(m_fitted.grid),
          m_rigidity(rigidityOf(inMegapascals(setting.plate.youngsModulus), setting.plate.poissonRatio,
                                inMillimetres(setting.plate.thickness))),
          m_system(m_grid, m_rigidity) {}

    Result<Condensation> run() {
        if (const auto ok = findPoints(); !ok) {
            return tl::unexpected(ok.error());
        }
        const auto all = static_cast<Eigen::Index>(m_points.size());
        const PlateSystem::Held held = m_system.hold(m_points, Eigen::MatrixXd::Identity(all, all));
        if (!held.isSolved) {
            return refuse(Core::say("The girdle's plate cannot be worked out: a part of it hangs on nothing. Correct "
                                    "its windows or the layout."));
        }
        Condensation out{{}, {}, m_grid, {}, m_held};
        const auto nuts = static_cast<Eigen::Index>(m_setting.nuts.size());
        const Eigen::MatrixXd all2 = (held.reactions + held.reactions.transpose()) / 2;
        out.held.plate = all2.topLeftCorner(nuts, nuts);
        out.free.plate = Eigen::MatrixXd::Zero(nuts, nuts);
        Eigen::MatrixXd freeField;
        if (nuts > 2) {
            // With the rail free its fasteners follow: they settle where nothing pulls at them.
            const Eigen::Index rail = all - nuts;
            const Eigen::MatrixXd follow =
                -all2.bottomRightCorner(rail, rail).ldlt().solve(all2.bottomLeftCorner(rail, nuts));
            const Eigen::MatrixXd k = all2.topLeftCorner(nuts, nuts) + all2.topRightCorner(nuts, rail) * follow;
            out.free.plate = (k + k.transpose()) / 2;
            freeField = held.field.leftCols(nuts) + held.field.rightCols(rail) * follow;
        } else {
            freeField = tipping();
        }
        const auto cells = cellsToLookAt(out.looks);
        finish(out.held, held.field.leftCols(nuts), cells);
        finish(out.free, freeField, cells);
        return out;
    }

private:
    using Cells = std::vector<std::pair<std::size_t, std::size_t>>;

    Result<void> findPoints() {
        constexpr double reach = 1e-3;
        for (const auto& nut : m_setting.nuts) {
            const int node = m_grid.nodeAt(nut.x, nut.y, reach);
            if (node < 0) {
                return refuse(Core::say("The girdle has no metal at one of its nuts: correct its windows, its cutout "
                                        "or the layout."));
            }
            m_points.push_back(PlateSystem::unknown(node, deflection));
        }
        for (const GridPoint& fastener : m_fitted.fasteners) {
            const int node = m_grid.nodeAt(fastener.x, fastener.y, reach);
            const int unknown = PlateSystem::unknown(node, deflection);
            if (node >= 0 && std::find(m_points.begin(), m_points.end(), unknown) == m_points.end()) {
                m_points.push_back(unknown);
                m_held.push_back(fastener);
            }
        }
        if (m_held.size() < 3) {
            return refuse(Core::say("Fewer than three pan rail fasteners lie under the girdle: nothing holds it on the "
                                    "rail. Count the pan rail's fasteners again."));
        }
        return {};
    }

    /// With one cap tied, a free plate tips about the line through its two nuts and bends nowhere: it lies level along
    /// the crank.
    [[nodiscard]] Eigen::MatrixXd tipping() const {
        Eigen::MatrixXd field = Eigen::MatrixXd::Zero(m_system.unknowns(), 2);
        const double left = m_setting.nuts[0].y;
        const double span = m_setting.nuts[1].y - left;
        for (std::size_t j = 0; j < m_grid.y().size(); ++j) {
            for (std::size_t i = 0; i < m_grid.x().size(); ++i) {
                if (const int node = m_grid.node(i, j); node >= 0) {
                    const double share = (m_grid.y()[j] - left) / span;
                    const double slope = m_grid.unit() / span;
                    field.row(PlateSystem::unknown(node, deflection)) << 1 - share, share;
                    field.row(PlateSystem::unknown(node, slopeY)) << -slope, slope;
                }
            }
        }
        return field;
    }

    /// All but those under washers, and those next to the corner of a window: a corner rounded with ρ is stressed about
    /// as a sharp one is ρ/2 from its tip (M. Creager, P. C. Paris, Int. J. Fracture Mechanics 3 (1967), from memory).
    Cells cellsToLookAt(std::vector<GridPoint>& looks) const {
        Cells cells;
        const auto corners = cornersOf(m_setting.outline);
        for (std::size_t j = 0; j < m_grid.cellsY(); ++j) {
            for (std::size_t i = 0; i < m_grid.cellsX(); ++i) {
                const double dx = m_grid.x()[i + 1] - m_grid.x()[i];
                const double dy = m_grid.y()[j + 1] - m_grid.y()[j];
                const GridPoint middle{m_grid.x()[i] + dx / 2, m_grid.y()[j] + dy / 2};
                if (m_grid.metal(i, j) < 0.5 || isNear(m_setting.nuts, middle, m_setting.outline.washer) ||
                    isNear(m_held, middle, m_setting.fastenerWasher) ||
                    isNear(corners, middle, m_setting.outline.windowCorner / 2)) {
                    continue;
                }
                cells.emplace_back(i, j);
                for (const double sy : lookAt) {
                    for (const double sx : lookAt) {
                        looks.push_back({m_grid.x()[i] + sx * dx, m_grid.y()[j] + sy * dy});
                    }
                }
            }
        }
        return cells;
    }

    void finish(Condensation::Mode& mode, const Eigen::MatrixXd& field, const Cells& cells) const {
        mode.deflection.resize(m_grid.nodes(), field.cols());
        for (int node = 0; node < m_grid.nodes(); ++node) {
            mode.deflection.row(node) = field.row(PlateSystem::unknown(node, deflection));
        }
        mode.moments.resize(static_cast<Eigen::Index>(12 * cells.size()), field.cols());
        Eigen::MatrixXd local(dofsPerElement, field.cols());
        Eigen::Index row = 0;
        for (const auto& [i, j] : cells) {
            const auto unknowns = m_system.unknownsOf(i, j);
            for (int k = 0; k < dofsPerElement; ++k) {
                local.row(k) = field.row(unknowns[static_cast<std::size_t>(k)]);
            }
            for (const double sy : lookAt) {
                for (const double sx : lookAt) {
                    mode.moments.middleRows<3>(row) = momentShapes(i, j, sx, sy) * local;
                    row += 3;
                }
            }
        }
    }

    /// Mx, My and Mxy from the unknowns of a cell.
    [[nodiscard]] Eigen::Matrix<double, 3, dofsPerElement> momentShapes(std::size_t i, std::size_t j, double sx,
                                                                        double sy) const {
        const double dx = m_grid.x()[i + 1] - m_grid.x()[i];
        const double dy = m_grid.y()[j + 1] - m_grid.y()[j];
        const ElementVector xx = shapes(sx, sy, dx, dy, m_grid.unit(), 2, 0);
        const ElementVector yy = shapes(sx, sy, dx, dy, m_grid.unit(), 0, 2);
        const ElementVector xy = shapes(sx, sy, dx, dy, m_grid.unit(), 1, 1);
        Eigen::Matrix<double, 3, dofsPerElement> out;
        out.row(0) = m_rigidity.d * (xx + m_rigidity.poisson * yy).transpose();
        out.row(1) = m_rigidity.d * (yy + m_rigidity.poisson * xx).transpose();
        out.row(2) = m_rigidity.d * (1 - m_rigidity.poisson) * xy.transpose();
        return out;
    }

    const Setting& m_setting;
    FittedGrid m_fitted;
    const PlateGrid& m_grid;
    Rigidity m_rigidity;
    PlateSystem m_system;
    std::vector<int> m_points; ///< deflections at the nuts, then at the rail fasteners
    std::vector<GridPoint> m_held;
};

} // namespace

Result<Condensation> condense(const Setting& setting) {
    return Condensing(setting).run();
}

/// With the springs S and the condensed plate P: F = S·(S + P)⁻¹·P·r, and the plate's own heights (S + P)⁻¹·S·r. The
/// sum is definite even where the plate is free to move.
Series inSeries(const Eigen::MatrixXd& plate, const Eigen::VectorXd& springs) {
    Eigen::MatrixXd sum = plate;
    sum.diagonal() += springs;
    const Eigen::LLT<Eigen::MatrixXd> factors(sum);
    const Eigen::MatrixXd k = springs.asDiagonal() * factors.solve(plate);
    return {(k + k.transpose()) / 2, factors.solve(Eigen::MatrixXd(springs.asDiagonal()))};
}

} // namespace caprail::load
