// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// The grid of a plate: lines along x and y, and how much of each cell is metal. All lengths in millimetres.
#include <engine/girdle_outline.h>
#include <optional>
#include <vector>

namespace caprail::load {

/// A rectangular grid with openings. Nodes stand at the crossings of lines that a cell with metal touches.
class PlateGrid {
public:
    /// Lines in rising order, at least two each way, and the share of metal per cell, x running fastest: 0 … 1.
    PlateGrid(std::vector<double> x, std::vector<double> y, std::vector<double> metal);
    /// A full rectangle in so many equal cells.
    static PlateGrid rectangle(double length, double width, std::size_t cellsX, std::size_t cellsY);

    [[nodiscard]] const std::vector<double>& x() const { return m_x; }
    [[nodiscard]] const std::vector<double>& y() const { return m_y; }
    [[nodiscard]] std::size_t cellsX() const { return m_x.size() - 1; }
    [[nodiscard]] std::size_t cellsY() const { return m_y.size() - 1; }
    [[nodiscard]] double metal(std::size_t i, std::size_t j) const { return m_metal[j * cellsX() + i]; }
    [[nodiscard]] int nodes() const { return m_nodes; }
    /// −1: no metal there.
    [[nodiscard]] int node(std::size_t i, std::size_t j) const { return m_node[j * m_x.size() + i]; }
    /// The node at a point, or −1: none within `reach`.
    [[nodiscard]] int nodeAt(double x, double y, double reach) const;
    /// A mean length of its cells, the unit of the slopes.
    [[nodiscard]] double unit() const { return m_unit; }

private:
    std::vector<double> m_x, m_y, m_metal;
    std::vector<int> m_node;
    int m_nodes = 0;
    double m_unit = 1;
};

struct GridPoint {
    double x = 0, y = 0;
};

/// A grid fitted to a girdle: lines at its edges, its windows' edges, its nuts, and the rail fasteners (which are moved
/// to a line within `snap`); cells in between no longer than `longest`. Cells that the round cutout crosses have the
/// share of metal that lies outside it.
struct FittedGrid {
    PlateGrid grid;
    std::vector<GridPoint> fasteners; ///< where those given have come to stand
};
FittedGrid fitGrid(const GirdleOutline& outline, const std::vector<GridPoint>& nuts,
                   const std::vector<GridPoint>& fasteners, double longest, double snap);

} // namespace caprail::load
