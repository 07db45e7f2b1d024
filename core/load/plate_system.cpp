// SPDX-License-Identifier: GPL-3.0-or-later
#include <load/plate_system.h>

#include <Eigen/SparseCholesky>
#include <map>

namespace caprail::load {

PlateSystem::PlateSystem(const PlateGrid& grid, const Rigidity& rigidity)
    : m_grid(grid), m_stiffness(Eigen::Index{grid.nodes()} * dofsPerNode, Eigen::Index{grid.nodes()} * dofsPerNode) {
    std::vector<Eigen::Triplet<double>> triplets;
    triplets.reserve(grid.cellsX() * grid.cellsY() * dofsPerElement * dofsPerElement);
    std::map<std::pair<double, double>, ElementMatrix> known; // most cells are alike
    for (std::size_t j = 0; j < grid.cellsY(); ++j) {
        for (std::size_t i = 0; i < grid.cellsX(); ++i) {
            const double metal = grid.metal(i, j);
            if (metal <= 0) {
                continue;
            }
            const double dx = grid.x()[i + 1] - grid.x()[i];
            const double dy = grid.y()[j + 1] - grid.y()[j];
            auto at = known.find({dx, dy});
            if (at == known.end()) {
                at = known.emplace(std::pair{dx, dy}, elementStiffness(dx, dy, grid.unit(), rigidity)).first;
            }
            const auto unknowns = unknownsOf(i, j);
            for (int a = 0; a < dofsPerElement; ++a) {
                for (int b = 0; b < dofsPerElement; ++b) {
                    triplets.emplace_back(unknowns[static_cast<std::size_t>(a)], unknowns[static_cast<std::size_t>(b)],
                                          metal * at->second(a, b));
                }
            }
        }
    }
    m_stiffness.setFromTriplets(triplets.begin(), triplets.end());
}

std::array<int, dofsPerElement> PlateSystem::unknownsOf(std::size_t i, std::size_t j) const {
    const std::array<int, 4> corners{m_grid.node(i, j), m_grid.node(i + 1, j), m_grid.node(i, j + 1),
                                     m_grid.node(i + 1, j + 1)};
    std::array<int, dofsPerElement> list{};
    for (std::size_t k = 0; k < list.size(); ++k) {
        list[k] = corners[k / dofsPerNode] * dofsPerNode + static_cast<int>(k % dofsPerNode);
    }
    return list;
}

PlateSystem::Held PlateSystem::hold(const std::vector<int>& held, const Eigen::MatrixXd& values,
                                    const Eigen::VectorXd& load) const {
    constexpr int none = -1;
    std::vector<int> freeIndex(static_cast<std::size_t>(unknowns()), 0);
    for (const int u : held) {
        freeIndex[static_cast<std::size_t>(u)] = none;
    }
    int free = 0;
    for (int& index : freeIndex) {
        index = index == none ? none : free++;
    }
    Held out;
    out.field = Eigen::MatrixXd::Zero(unknowns(), values.cols());
    for (std::size_t k = 0; k < held.size(); ++k) {
        out.field.row(held[k]) = values.row(static_cast<Eigen::Index>(k));
    }
    std::vector<Eigen::Triplet<double>> triplets;
    triplets.reserve(static_cast<std::size_t>(m_stiffness.nonZeros()));
    for (int column = 0; column < m_stiffness.outerSize(); ++column) {
        const int to = freeIndex[static_cast<std::size_t>(column)];
        for (Eigen::SparseMatrix<double>::InnerIterator it(m_stiffness, column); it && to != none; ++it) {
            const int row = freeIndex[static_cast<std::size_t>(it.row())];
            if (row >= to) {
                triplets.emplace_back(row, to, it.value());
            }
        }
    }
    Eigen::SparseMatrix<double> inner(free, free);
    inner.setFromTriplets(triplets.begin(), triplets.end());
    Eigen::MatrixXd pull = -(m_stiffness * out.field);
    if (load.size() > 0) {
        pull.colwise() += load;
    }
    Eigen::MatrixXd right(free, values.cols());
    for (int u = 0; u < unknowns(); ++u) {
        if (const int index = freeIndex[static_cast<std::size_t>(u)]; index != none) {
            right.row(index) = pull.row(u);
        }
    }
    const Eigen::SimplicialLDLT<Eigen::SparseMatrix<double>, Eigen::Lower> factors(inner);
    // A plate that is not held has a pivot that is nothing but rounding.
    out.isSolved = factors.info() == Eigen::Success &&
                   (free == 0 || factors.vectorD().minCoeff() > 1e-13 * factors.vectorD().maxCoeff());
    if (!out.isSolved) {
        return out;
    }
    const Eigen::MatrixXd settled = factors.solve(right);
    for (int u = 0; u < unknowns(); ++u) {
        if (const int index = freeIndex[static_cast<std::size_t>(u)]; index != none) {
            out.field.row(u) = settled.row(index);
        }
    }
    const Eigen::MatrixXd forces = m_stiffness * out.field;
    out.reactions.resize(static_cast<Eigen::Index>(held.size()), values.cols());
    for (std::size_t k = 0; k < held.size(); ++k) {
        out.reactions.row(static_cast<Eigen::Index>(k)) = forces.row(held[k]);
        if (load.size() > 0) {
            out.reactions.row(static_cast<Eigen::Index>(k)).array() -= load[held[k]];
        }
    }
    return out;
}

} // namespace caprail::load
