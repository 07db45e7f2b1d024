// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QLineF>
#include <functional>
#include <vector>

namespace caprail {

/// A field of values at the crossings of evenly spaced lines; NaN where there is none. x runs fastest.
struct EvenField {
    double x1 = 0, x2 = 1, y1 = 0, y2 = 1;
    int columns = 0, rows = 0;
    std::vector<double> values;

    [[nodiscard]] double at(int column, int row) const {
        return values[static_cast<std::size_t>(row) * static_cast<std::size_t>(columns) +
                      static_cast<std::size_t>(column)];
    }
    [[nodiscard]] double x(int column) const { return x1 + (x2 - x1) * column / (columns - 1); }
    [[nodiscard]] double y(int row) const { return y1 + (y2 - y1) * row / (rows - 1); }
};

/// The pieces of the line along which a field has this value, by marching triangles: each cell of the grid is cut along
/// a diagonal, so that no saddle is read two ways. Cells with a corner without a value have none.
std::vector<QLineF> contour(const EvenField& field, double level);

/// Levels at a round step (1, 2 or 5 times a power of ten), some `about` of them between the least and the largest
/// value; none for a field without two values.
std::vector<double> roundLevels(double least, double largest, int about);

} // namespace caprail
