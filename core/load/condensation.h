// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// The plate condensed to the places where nuts pull at it, once with its rail fasteners held and once without.
#include <Eigen/Dense>
#include <load/girdle_plate.h>
#include <load/plate_system.h>

namespace caprail::load {

using RowMajor = Eigen::Matrix<double, Eigen::Dynamic, Eigen::Dynamic, Eigen::RowMajor>;

/// What is condensed. Millimetres and newtons.
struct Setting {
    GirdleOutline outline;
    std::vector<GridPoint> nuts;
    std::vector<GridPoint> fasteners; ///< of the rail, under the plate
    double fastenerWasher = 0;        ///< radius around a rail fastener
    double longestCell = 0;
    double snap = 0; ///< so far a rail fastener may be moved to a line of the grid
    GirdlePlate plate;
};

struct Condensation {
    struct Mode {
        Eigen::MatrixXd plate;      ///< the forces at the nuts, for unit heights of the plate there
        Eigen::MatrixXd deflection; ///< at all nodes, for unit heights at the nuts
        Eigen::MatrixXd moments;    ///< three rows per look, Mx, My, Mxy in N, for unit heights at the nuts
    };
    Mode held, free;
    PlateGrid grid;
    std::vector<GridPoint> looks;     ///< where bending is looked at
    std::vector<GridPoint> fasteners; ///< where the rail fasteners stand in the grid
};

/// Refuses a nut without metal under it, fewer than three rail fasteners with metal under them, and a plate of which a
/// part hangs on nothing.
Result<Condensation> condense(const Setting& setting);

/// A condensed plate on its springs.
struct Series {
    RowMajor stiffness; ///< K with the springs in series
    RowMajor heights;   ///< of the plate at the nuts, for unit residuals
};
/// `springs`: stud and cap, one per nut, N/mm, each above zero.
Series inSeries(const Eigen::MatrixXd& plate, const Eigen::VectorXd& springs);

} // namespace caprail::load
