// SPDX-License-Identifier: GPL-3.0-or-later
#include <load/plate_grid.h>

#include <algorithm>
#include <cmath>

namespace caprail::load {

namespace {

/// Less metal than that in a cell is none: it would hold nothing and only make its nodes loose.
constexpr double leastMetal = 0.02;
/// A cell that a circle crosses is looked at in so many points a side.
constexpr int looks = 8;

void addLine(std::vector<double>& lines, double at) {
    constexpr double same = 1e-6;
    const bool isThere = std::any_of(lines.begin(), lines.end(), [at](double l) { return std::abs(l - at) < same; });
    if (!isThere) {
        lines.push_back(at);
    }
}

/// The line nearest to a fastener within `snap`, or a new one.
double lineFor(std::vector<double>& lines, double at, double snap) {
    const auto nearest = std::min_element(lines.begin(), lines.end(),
                                          [at](double a, double b) { return std::abs(a - at) < std::abs(b - at); });
    if (nearest != lines.end() && std::abs(*nearest - at) <= snap) {
        return *nearest;
    }
    lines.push_back(at);
    return at;
}

/// Lines through a round opening, closer than elsewhere: cells that its edge crosses hold a share of metal, and the
/// smaller they are the nearer that comes to a circle. Where a line is near already, it does.
void refineAt(const PlanDisc& disc, const PlanBox& plate, std::vector<double>& x, std::vector<double>& y) {
    constexpr int steps = 5; // a side
    const double step = disc.radius / steps;
    for (int k = -steps; k <= steps; ++k) {
        const auto add = [&](std::vector<double>& lines, double at, double from, double to) {
            const bool isNear =
                std::any_of(lines.begin(), lines.end(), [&](double l) { return std::abs(l - at) < 0.35 * step; });
            if (at > from && at < to && !isNear) {
                lines.push_back(at);
            }
        };
        add(x, disc.x + k * step, plate.x1, plate.x2);
        add(y, disc.y + k * step, plate.y1, plate.y2);
    }
}

std::vector<double> divided(std::vector<double> lines, double longest) {
    std::sort(lines.begin(), lines.end());
    std::vector<double> out{lines.front()};
    for (std::size_t i = 1; i < lines.size(); ++i) {
        const double from = lines[i - 1];
        const int parts = std::max(1, static_cast<int>(std::ceil((lines[i] - from) / longest - 1e-9)));
        for (int k = 1; k < parts; ++k) {
            out.push_back(from + (lines[i] - from) * k / parts);
        }
        out.push_back(lines[i]);
    }
    return out;
}

double metalIn(const GirdleOutline& outline, double x1, double x2, double y1, double y2) {
    const double x = (x1 + x2) / 2;
    const double y = (y1 + y2) / 2;
    for (const PlanBox& window : outline.windows) {
        if (window.contains(x, y)) {
            return 0;
        }
    }
    const PlanDisc& disc = outline.cutout;
    if (std::hypot(x - disc.x, y - disc.y) > disc.radius + std::hypot(x2 - x1, y2 - y1)) {
        return 1;
    }
    int outside = 0;
    for (int i = 0; i < looks; ++i) {
        for (int j = 0; j < looks; ++j) {
            const double px = x1 + (x2 - x1) * (i + 0.5) / looks;
            const double py = y1 + (y2 - y1) * (j + 0.5) / looks;
            outside += disc.contains(px, py) ? 0 : 1;
        }
    }
    return static_cast<double>(outside) / (looks * looks);
}

} // namespace

PlateGrid::PlateGrid(std::vector<double> x, std::vector<double> y, std::vector<double> metal)
    : m_x(std::move(x)), m_y(std::move(y)), m_metal(std::move(metal)), m_node(m_x.size() * m_y.size(), -1) {
    for (double& share : m_metal) {
        share = share < leastMetal ? 0 : share;
    }
    for (std::size_t j = 0; j < m_y.size(); ++j) {
        for (std::size_t i = 0; i < m_x.size(); ++i) {
            bool touches = false;
            for (const std::size_t ci : {i - 1, i}) {
                for (const std::size_t cj : {j - 1, j}) {
                    touches = touches || (ci < cellsX() && cj < cellsY() && this->metal(ci, cj) > 0);
                }
            }
            if (touches) {
                m_node[j * m_x.size() + i] = m_nodes++;
            }
        }
    }
    const auto cells = static_cast<double>(cellsX() * cellsY());
    m_unit = std::sqrt((m_x.back() - m_x.front()) * (m_y.back() - m_y.front()) / cells);
}

PlateGrid PlateGrid::rectangle(double length, double width, std::size_t cellsX, std::size_t cellsY) {
    const auto lines = [](double whole, std::size_t cells) {
        std::vector<double> list;
        for (std::size_t i = 0; i <= cells; ++i) {
            list.push_back(whole * static_cast<double>(i) / static_cast<double>(cells));
        }
        return list;
    };
    return {lines(length, cellsX), lines(width, cellsY), std::vector<double>(cellsX * cellsY, 1.0)};
}

int PlateGrid::nodeAt(double x, double y, double reach) const {
    const auto nearest = [](const std::vector<double>& lines, double at) {
        return static_cast<std::size_t>(
            std::min_element(lines.begin(), lines.end(),
                             [at](double a, double b) { return std::abs(a - at) < std::abs(b - at); }) -
            lines.begin());
    };
    const std::size_t i = nearest(m_x, x);
    const std::size_t j = nearest(m_y, y);
    return std::abs(m_x[i] - x) <= reach && std::abs(m_y[j] - y) <= reach ? node(i, j) : -1;
}

FittedGrid fitGrid(const GirdleOutline& outline, const std::vector<GridPoint>& nuts,
                   const std::vector<GridPoint>& fasteners, double longest, double snap) {
    std::vector<double> x{outline.plate.x1, outline.plate.x2};
    std::vector<double> y{outline.plate.y1, outline.plate.y2};
    for (const PlanBox& window : outline.windows) {
        addLine(x, window.x1);
        addLine(x, window.x2);
        addLine(y, window.y1);
        addLine(y, window.y2);
    }
    for (const GridPoint& nut : nuts) {
        addLine(x, nut.x);
        addLine(y, nut.y);
    }
    refineAt(outline.cutout, outline.plate, x, y);
    std::vector<GridPoint> placed;
    for (const GridPoint& fastener : fasteners) {
        placed.push_back({lineFor(x, fastener.x, snap), lineFor(y, fastener.y, snap)});
    }
    x = divided(x, longest);
    y = divided(y, longest);
    std::vector<double> metal;
    for (std::size_t j = 0; j + 1 < y.size(); ++j) {
        for (std::size_t i = 0; i + 1 < x.size(); ++i) {
            metal.push_back(metalIn(outline, x[i], x[i + 1], y[j], y[j + 1]));
        }
    }
    return {PlateGrid(std::move(x), std::move(y), std::move(metal)), std::move(placed)};
}

} // namespace caprail::load
