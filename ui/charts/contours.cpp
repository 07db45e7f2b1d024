// SPDX-License-Identifier: GPL-3.0-or-later
#include <charts/contours.h>

#include <array>
#include <cmath>

namespace caprail {

namespace {

struct Corner {
    QPointF at;
    double value;
};

/// Where a level crosses a triangle: none, or one piece.
void cut(const std::array<Corner, 3>& triangle, double level, std::vector<QLineF>& lines) {
    std::vector<QPointF> ends;
    for (std::size_t i = 0; i < 3; ++i) {
        const Corner& a = triangle[i];
        const Corner& b = triangle[(i + 1) % 3];
        if ((a.value < level) != (b.value < level)) {
            ends.push_back(a.at + (b.at - a.at) * ((level - a.value) / (b.value - a.value)));
        }
    }
    if (ends.size() == 2) {
        lines.emplace_back(ends[0], ends[1]);
    }
}

} // namespace

std::vector<QLineF> contour(const EvenField& field, double level) {
    std::vector<QLineF> lines;
    for (int row = 0; row + 1 < field.rows; ++row) {
        for (int column = 0; column + 1 < field.columns; ++column) {
            const auto corner = [&](int dx, int dy) {
                return Corner{{field.x(column + dx), field.y(row + dy)}, field.at(column + dx, row + dy)};
            };
            const std::array<Corner, 4> corners{corner(0, 0), corner(1, 0), corner(1, 1), corner(0, 1)};
            if (std::isnan(corners[0].value + corners[1].value + corners[2].value + corners[3].value)) {
                continue;
            }
            cut({corners[0], corners[1], corners[2]}, level, lines);
            cut({corners[0], corners[2], corners[3]}, level, lines);
        }
    }
    return lines;
}

std::vector<double> roundLevels(double least, double largest, int about) {
    std::vector<double> levels;
    if (!(largest > least) || about < 1) {
        return levels;
    }
    const double raw = (largest - least) / about;
    const double power = std::pow(10.0, std::floor(std::log10(raw)));
    const double step = power * (raw / power < 1.5 ? 1 : raw / power < 3.5 ? 2 : raw / power < 7.5 ? 5 : 10);
    for (auto k = static_cast<long>(std::ceil(least / step)); static_cast<double>(k) * step <= largest; ++k) {
        levels.push_back(static_cast<double>(k) * step);
    }
    return levels;
}

} // namespace caprail
