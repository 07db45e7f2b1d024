// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <string_view>
#include <units/parse.h>

namespace caprail {

/// What a person is likely to mean in a field of an entry kind ("gap_reading", "gap"): values outside are asked back
/// (units/parse.h), because they are far more often a slip of the decimal mark than a measurement. `what` names the
/// field in the sentence. Ranges are common practice, no source, and wide on purpose.
Expected<Length> expectedLength(std::string_view kind, std::string_view fieldName, std::string what = {});
Expected<Torque> expectedTorque(std::string_view kind, std::string_view fieldName, std::string what = {});
Expected<Temperature> expectedTemperature(std::string_view kind, std::string_view fieldName, std::string what = {});
Expected<Angle> expectedAngle(std::string_view kind, std::string_view fieldName, std::string what = {});

} // namespace caprail
