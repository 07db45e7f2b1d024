// SPDX-License-Identifier: GPL-3.0-or-later
/// The plate against closed forms.
/// - W. C. Young, R. G. Budynas, Roark's Formulas for Stress and Strain, 7th edition, table 11.4, case 1a (uniform
/// load)
///   and 1b (load over a small circle at the centre), simply supported rectangle, Poisson's ratio 0.3. The
///   coefficients were seen in the source.
/// - S. Timoshenko, S. Woinowsky-Krieger, Theory of Plates and Shells, 2nd edition: Navier's series (articles 28 and
/// 34)
///   and pure twist by corner forces (article 11: w = P·x·y/(2D(1 − ν)) for forces of P at the corners), from memory.
#include <cmath>
#include <gtest/gtest.h>
#include <load/plate_system.h>
#include <numbers>

namespace {

using namespace caprail::load;

constexpr double modulus = 207e3; // N/mm²
constexpr double thickness = 6.35;
constexpr double poisson = 0.3;
constexpr double side = 100; // mm, the shorter one

Rigidity rigidity() {
    return rigidityOf(modulus, poisson, thickness);
}

PlateSystem plate(double length, double width, std::size_t cellsX, std::size_t cellsY) {
    return {PlateGrid::rectangle(length, width, cellsX, cellsY), rigidity()};
}

/// No deflection along the edges, hence no slope along them.
std::vector<int> simplySupported(const PlateGrid& grid) {
    std::vector<int> held;
    const std::size_t lastX = grid.cellsX();
    const std::size_t lastY = grid.cellsY();
    for (std::size_t j = 0; j <= lastY; ++j) {
        for (std::size_t i = 0; i <= lastX; ++i) {
            const bool isAtEnd = i == 0 || i == lastX;
            const bool isAtSide = j == 0 || j == lastY;
            if (isAtEnd || isAtSide) {
                held.push_back(PlateSystem::unknown(grid.node(i, j), deflection));
            }
            if (isAtEnd) {
                held.push_back(PlateSystem::unknown(grid.node(i, j), slopeY));
            }
            if (isAtSide) {
                held.push_back(PlateSystem::unknown(grid.node(i, j), slopeX));
            }
        }
    }
    return held;
}

/// The work-equivalent forces of 1 N/mm² on each element: its polynomials, integrated.
Eigen::VectorXd uniform(const PlateSystem& system) {
    const PlateGrid& grid = system.grid();
    Eigen::VectorXd load = Eigen::VectorXd::Zero(system.unknowns());
    constexpr int points = 40;
    for (std::size_t j = 0; j < grid.cellsY(); ++j) {
        for (std::size_t i = 0; i < grid.cellsX(); ++i) {
            const double dx = grid.x()[i + 1] - grid.x()[i];
            const double dy = grid.y()[j + 1] - grid.y()[j];
            ElementVector sum = ElementVector::Zero();
            for (int a = 0; a < points; ++a) {
                for (int b = 0; b < points; ++b) {
                    sum += shapes((a + 0.5) / points, (b + 0.5) / points, dx, dy, grid.unit(), 0, 0);
                }
            }
            const auto unknowns = system.unknownsOf(i, j);
            for (int k = 0; k < dofsPerElement; ++k) {
                load[unknowns[static_cast<std::size_t>(k)]] += sum[k] * dx * dy / (points * points);
            }
        }
    }
    return load;
}

/// Deflection at the centre under `load`, everything simply supported.
double centre(const PlateSystem& system, const Eigen::VectorXd& load) {
    const std::vector<int> held = simplySupported(system.grid());
    const auto solved = system.hold(held, Eigen::MatrixXd::Zero(static_cast<Eigen::Index>(held.size()), 1), load);
    EXPECT_TRUE(solved.isSolved);
    const PlateGrid& grid = system.grid();
    return solved.field(PlateSystem::unknown(grid.node(grid.cellsX() / 2, grid.cellsY() / 2), deflection), 0);
}

Eigen::VectorXd pointAtCentre(const PlateSystem& system) {
    const PlateGrid& grid = system.grid();
    Eigen::VectorXd load = Eigen::VectorXd::Zero(system.unknowns());
    load[PlateSystem::unknown(grid.node(grid.cellsX() / 2, grid.cellsY() / 2), deflection)] = 1;
    return load;
}

/// Roark's coefficients from a deflection: y·E·t³/(W·b²) and y·E·t³/(q·b⁴).
double asCoefficient(double deflectionThere, double load) {
    return deflectionThere * modulus * thickness * thickness * thickness / load;
}

/// Navier's series for the centre of a square, in units of q·b⁴/D or W·b²/D.
double navierUniform() {
    double sum = 0;
    for (int m = 1; m < 400; m += 2) {
        for (int n = 1; n < 400; n += 2) {
            const double sign = (m + n) / 2 % 2 == 1 ? 1 : -1;
            sum += sign / (m * n * std::pow(m * m + n * n, 2));
        }
    }
    return 16 / std::pow(std::numbers::pi, 6) * sum;
}
double navierPoint() {
    double sum = 0;
    for (int m = 1; m < 4000; m += 2) {
        for (int n = 1; n < 4000; n += 2) {
            sum += 1 / std::pow(static_cast<double>(m * m + n * n), 2);
        }
    }
    return 4 / std::pow(std::numbers::pi, 4) * sum;
}

TEST(LoadPlate, twists_by_the_exact_amount_under_a_load_at_a_free_corner) {
    constexpr double length = 500, width = 210, force = 90;
    const PlateSystem system = plate(length, width, 17, 9);
    const PlateGrid& grid = system.grid();
    std::vector<int> held;
    for (const int node : {grid.node(0, 0), grid.node(17, 0), grid.node(0, 9)}) {
        held.push_back(PlateSystem::unknown(node, deflection));
    }
    Eigen::VectorXd load = Eigen::VectorXd::Zero(system.unknowns());
    const int corner = PlateSystem::unknown(grid.node(17, 9), deflection);
    load[corner] = force;
    const auto solved = system.hold(held, Eigen::MatrixXd::Zero(3, 1), load);
    ASSERT_TRUE(solved.isSolved);
    const double exact = force * length * width / (2 * rigidity().d * (1 - poisson));
    EXPECT_NEAR(solved.field(corner, 0) / exact, 1.0, 1e-9);
}

TEST(LoadPlate, gives_roarks_coefficients_for_a_load_at_the_centre) {
    for (const auto& [ratio, coefficient] : {std::pair{1.0, 0.1267}, std::pair{1.4, 0.1621}, std::pair{2.0, 0.1805}}) {
        const PlateSystem system = plate(ratio * side, side, 32, 24);
        const double found = asCoefficient(centre(system, pointAtCentre(system)), side * side);
        EXPECT_NEAR(found / coefficient, 1.0, 0.002) << "side ratio " << ratio;
    }
}

TEST(LoadPlate, gives_roarks_coefficient_for_a_uniform_load) {
    const PlateSystem system = plate(side, side, 16, 16);
    EXPECT_NEAR(asCoefficient(centre(system, uniform(system)), std::pow(side, 4)), 0.0444, 0.00005);
}

/// The error falls by 2^order each time the cells are halved.
std::vector<double> orders(const std::vector<double>& errors) {
    std::vector<double> list;
    for (std::size_t i = 1; i < errors.size(); ++i) {
        list.push_back(std::log2(errors[i - 1] / errors[i]));
    }
    return list;
}

TEST(LoadPlate, converges_with_the_second_order_under_a_point_load) {
    const double exact = navierPoint() * side * side / rigidity().d;
    std::vector<double> errors;
    for (const std::size_t cells : {4U, 8U, 16U, 32U}) {
        const PlateSystem system = plate(side, side, cells, cells);
        errors.push_back(exact - centre(system, pointAtCentre(system)));
        EXPECT_GT(errors.back(), 0) << "a conforming plate is too stiff, never too soft";
    }
    for (const double order : orders(errors)) {
        EXPECT_NEAR(order, 2.0, 0.2) << "the deflection has a term r²·ln r at the load";
    }
}

TEST(LoadPlate, converges_with_the_fourth_order_under_a_uniform_load) {
    const double exact = navierUniform() * std::pow(side, 4) / rigidity().d;
    std::vector<double> errors;
    for (const std::size_t cells : {2U, 4U, 8U}) {
        const PlateSystem system = plate(side, side, cells, cells);
        errors.push_back(std::abs(exact - centre(system, uniform(system))));
    }
    for (const double order : orders(errors)) {
        EXPECT_GT(order, 3.5);
    }
}

/// Uneven cells, an opening: every state of constant curvature given at the rim appears inside.
TEST(LoadPlate, holds_constant_curvature_on_an_uneven_grid_with_an_opening) {
    const std::vector<double> x{0, 3, 11, 15, 29, 40};
    const std::vector<double> y{0, 9, 12, 20, 31};
    std::vector<double> metal(20, 1.0);
    const PlateSystem system(PlateGrid(x, y, metal), rigidity());
    const PlateGrid& grid = system.grid();
    const double u = grid.unit();
    for (const int which : {0, 1, 2}) {
        const auto exact = [&](double px, double py) -> std::array<double, 4> {
            switch (which) {
            case 0:
                return {px * px, 2 * px * u, 0, 0};
            case 1:
                return {py * py, 0, 2 * py * u, 0};
            default:
                return {px * py, py * u, px * u, u * u};
            }
        };
        std::vector<int> held;
        std::vector<double> values;
        for (std::size_t j = 0; j < y.size(); ++j) {
            for (std::size_t i = 0; i < x.size(); ++i) {
                if (i == 0 || j == 0 || i + 1 == x.size() || j + 1 == y.size()) {
                    for (int dof = 0; dof < dofsPerNode; ++dof) {
                        held.push_back(PlateSystem::unknown(grid.node(i, j), static_cast<Dof>(dof)));
                        values.push_back(exact(x[i], y[j])[static_cast<std::size_t>(dof)]);
                    }
                }
            }
        }
        const auto solved = system.hold(
            held, Eigen::Map<const Eigen::VectorXd>(values.data(), static_cast<Eigen::Index>(values.size())));
        ASSERT_TRUE(solved.isSolved);
        for (std::size_t j = 1; j + 1 < y.size(); ++j) {
            for (std::size_t i = 1; i + 1 < x.size(); ++i) {
                for (int dof = 0; dof < dofsPerNode; ++dof) {
                    EXPECT_NEAR(solved.field(PlateSystem::unknown(grid.node(i, j), static_cast<Dof>(dof)), 0),
                                exact(x[i], y[j])[static_cast<std::size_t>(dof)], 1e-7);
                }
            }
        }
    }
}

TEST(LoadPlate, resists_no_rigid_motion) {
    const PlateSystem system(PlateGrid({0, 5, 12, 20}, {0, 4, 9}, {1, 1, 1, 1, 0, 1}), rigidity());
    const PlateGrid& grid = system.grid();
    Eigen::MatrixXd motion = Eigen::MatrixXd::Zero(system.unknowns(), 3);
    for (std::size_t j = 0; j < grid.y().size(); ++j) {
        for (std::size_t i = 0; i < grid.x().size(); ++i) {
            const int node = grid.node(i, j);
            motion.row(PlateSystem::unknown(node, deflection)) << 1, grid.x()[i], grid.y()[j];
            motion(PlateSystem::unknown(node, slopeX), 1) = grid.unit();
            motion(PlateSystem::unknown(node, slopeY), 2) = grid.unit();
        }
    }
    EXPECT_LT((system.stiffness() * motion).cwiseAbs().maxCoeff(), 1e-9 * system.stiffness().coeffs().maxCoeff() * 20);
}

TEST(LoadPlate, says_when_what_is_held_leaves_it_free_to_move) {
    const PlateSystem system = plate(100, 100, 4, 4);
    const std::vector<int> two{PlateSystem::unknown(0, deflection), PlateSystem::unknown(4, deflection)};
    EXPECT_FALSE(system.hold(two, Eigen::MatrixXd::Zero(2, 1)).isSolved);
}

} // namespace
