// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// The stiffness of a whole plate on its grid, and what is solved with it.
#include <Eigen/SparseCore>
#include <load/element.h>
#include <load/plate_grid.h>

namespace caprail::load {

/// A free plate assembled from its elements. Forces in N, lengths in mm.
class PlateSystem {
public:
    PlateSystem(const PlateGrid& grid, const Rigidity& rigidity);

    [[nodiscard]] const PlateGrid& grid() const { return m_grid; }
    [[nodiscard]] int unknowns() const { return static_cast<int>(m_stiffness.rows()); }
    [[nodiscard]] static int unknown(int node, Dof dof) { return node * dofsPerNode + dof; }
    [[nodiscard]] const Eigen::SparseMatrix<double>& stiffness() const { return m_stiffness; }

    /// Where some unknowns are held at given values, and the rest settle under no load.
    struct Held {
        Eigen::MatrixXd field;     ///< every unknown, one column per column of `values`
        Eigen::MatrixXd reactions; ///< at the held unknowns, in their order: what holds them there
        bool isSolved = false;     ///< false: what is held leaves the plate free to move
    };
    /// One column of `values` per question, one row per unknown in `held`; each unknown held once. `load` (may be
    /// empty) acts in every question. By a sparse LDLᵀ (Eigen's SimplicialLDLT, minimum-degree order).
    [[nodiscard]] Held hold(const std::vector<int>& held, const Eigen::MatrixXd& values,
                            const Eigen::VectorXd& load = {}) const;

    /// The unknowns of the cell (i, j), which must have metal.
    [[nodiscard]] std::array<int, dofsPerElement> unknownsOf(std::size_t i, std::size_t j) const;

private:
    PlateGrid m_grid;
    Eigen::SparseMatrix<double> m_stiffness;
};

} // namespace caprail::load
