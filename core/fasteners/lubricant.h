// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <string>
#include <string_view>
#include <base/problem.h>
#include <vector>

namespace caprail {

/// What is on the threads and under the nut. Both numbers are starting values: the lubricant's maker comes first.
struct Lubricant {
    std::string name;
    double nutFactor; ///< K of T = K·D·F, dimensionless
    double friction;  ///< μ, the same for thread and bearing face, dimensionless
    std::string source;
    friend bool operator==(const Lubricant&, const Lubricant&) = default;
};

/// The lubricants that the program knows, in the order of the list on screen.
const std::vector<Lubricant>& lubricants();

/// The lubricant of that name, upper and lower case alike. Refuses an unknown name with the list of known ones.
Result<Lubricant> findLubricant(std::string_view name);

} // namespace caprail
