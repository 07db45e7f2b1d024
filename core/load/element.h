// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// The conforming rectangle of a thin plate with 16 unknowns.
/// F. K. Bogner, R. L. Fox, L. A. Schmit, "The generation of interelement-compatible stiffness and mass matrices by the
/// use of interpolation formulas", Proc. 1st Conf. Matrix Methods in Structural Mechanics, AFFDL-TR-66-80 (1966): the
/// deflection is the product of cubic Hermite polynomials along x and y. It holds constant curvature and pure twist
/// exactly, and is smooth across elements, so its energy approaches the true one from above.
#include <Eigen/Core>

namespace caprail::load {

/// Unknowns of a node: the deflection and its derivatives, each times the grid's unit of length so that all are
/// lengths and the matrix stays well scaled.
enum Dof : int { deflection, slopeX, slopeY, twist };
inline constexpr int dofsPerNode = 4;
/// Corners of an element in the order (x1, y1), (x2, y1), (x1, y2), (x2, y2).
inline constexpr int dofsPerElement = 16;
using ElementMatrix = Eigen::Matrix<double, dofsPerElement, dofsPerElement>;
using ElementVector = Eigen::Matrix<double, dofsPerElement, 1>;

/// A plate's elastic constants: rigidity D = E·t³/(12(1 − ν²)) in N·mm, and Poisson's ratio.
struct Rigidity {
    double d = 0;
    double poisson = 0;
};
Rigidity rigidityOf(double youngsModulus, double poisson, double thickness);

/// The stiffness of an element dx by dy (mm) in N/mm, by Gauss quadrature with four points a side, which is exact for
/// its polynomials (degree 6). `unit` is the grid's unit of length, mm.
ElementMatrix elementStiffness(double dx, double dy, double unit, const Rigidity& rigidity);

/// The element's polynomials at (x, y), 0 … 1 across it, differentiated `byX` and `byY` times (0 to 2).
ElementVector shapes(double x, double y, double dx, double dy, double unit, int byX, int byY);

} // namespace caprail::load
