// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// The turning torque at its three stages, as the record stands.
#include <assessment/check.h>

namespace caprail {

/// The first stage is good once it was read with a named instrument. The others are judged by their rise over it; while
/// it is missing, or made stale, they prove nothing.
Standing turningOf(const Facts&, TurningStage, const Units&);

/// The largest rise by which the record judges, the usual one where its rules name none.
Torque largestRiseOf(const Facts&);

} // namespace caprail
