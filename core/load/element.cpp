// SPDX-License-Identifier: GPL-3.0-or-later
#include <load/element.h>

#include <array>

namespace caprail::load {

namespace {

/// The four cubics of an interval of length h, at s from 0 to 1: value and slope at its start, value and slope at its
/// end; differentiated `by` times. Slopes are unknowns times `unit`.
std::array<double, 4> hermite(double s, double h, double unit, int by) {
    const double u = h / unit;
    switch (by) {
    case 0:
        return {1 - 3 * s * s + 2 * s * s * s, u * s * (1 - s) * (1 - s), s * s * (3 - 2 * s), u * s * s * (s - 1)};
    case 1:
        return {6 * s * (s - 1) / h, u * (1 - 4 * s + 3 * s * s) / h, 6 * s * (1 - s) / h, u * (3 * s * s - 2 * s) / h};
    default:
        return {(12 * s - 6) / (h * h), u * (6 * s - 4) / (h * h), (6 - 12 * s) / (h * h), u * (6 * s - 2) / (h * h)};
    }
}

/// Gauss–Legendre, four points on 0 … 1 (Abramowitz & Stegun, table 25.4).
constexpr std::array<double, 4> gaussPoint{0.069431844202973712388, 0.330009478207571867599, 0.669990521792428132401,
                                           0.930568155797026287612};
constexpr std::array<double, 4> gaussWeight{0.173927422568726928687, 0.326072577431273071313, 0.326072577431273071313,
                                            0.173927422568726928687};

} // namespace

Rigidity rigidityOf(double youngsModulus, double poisson, double thickness) {
    return {youngsModulus * thickness * thickness * thickness / (12 * (1 - poisson * poisson)), poisson};
}

ElementVector shapes(double x, double y, double dx, double dy, double unit, int byX, int byY) {
    const auto alongX = hermite(x, dx, unit, byX);
    const auto alongY = hermite(y, dy, unit, byY);
    ElementVector v;
    for (int corner = 0; corner < 4; ++corner) {
        const std::size_t ix = corner % 2 == 0 ? 0 : 2;
        const std::size_t iy = corner / 2 == 0 ? 0 : 2;
        v[corner * dofsPerNode + deflection] = alongX[ix] * alongY[iy];
        v[corner * dofsPerNode + slopeX] = alongX[ix + 1] * alongY[iy];
        v[corner * dofsPerNode + slopeY] = alongX[ix] * alongY[iy + 1];
        v[corner * dofsPerNode + twist] = alongX[ix + 1] * alongY[iy + 1];
    }
    return v;
}

ElementMatrix elementStiffness(double dx, double dy, double unit, const Rigidity& rigidity) {
    ElementMatrix k = ElementMatrix::Zero();
    for (std::size_t i = 0; i < 4; ++i) {
        for (std::size_t j = 0; j < 4; ++j) {
            const ElementVector xx = shapes(gaussPoint[i], gaussPoint[j], dx, dy, unit, 2, 0);
            const ElementVector yy = shapes(gaussPoint[i], gaussPoint[j], dx, dy, unit, 0, 2);
            const ElementVector xy = shapes(gaussPoint[i], gaussPoint[j], dx, dy, unit, 1, 1);
            const double w = gaussWeight[i] * gaussWeight[j] * dx * dy * rigidity.d;
            k += w * (xx * xx.transpose() + yy * yy.transpose() +
                      rigidity.poisson * (xx * yy.transpose() + yy * xx.transpose()) +
                      2 * (1 - rigidity.poisson) * (xy * xy.transpose()));
        }
    }
    return k;
}

} // namespace caprail::load
