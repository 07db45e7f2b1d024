// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <ledger/entry_words.h>
#include <string_view>
#include <units/parse.h>

namespace caprail {

/// What a person is likely to mean in a field of an entry kind ("gap_reading", "gap"): values outside are asked back
/// (units/parse.h), because they are far more often a slip of the decimal mark than a measurement. `what` names the
/// field in the sentence. Ranges are common practice, no source, and wide on purpose.
Expected<Length> expectedLength(std::string_view kind, std::string_view fieldName, std::string what = {});
/// Reads a length typed for a field of an entry kind, as `parseLength` does with what is expected there. A gap of ten
/// inches or more cannot be: a bare number from 10 in a gap's field that is in inches is thousandths, as feeler leaves
/// are marked ("39", "57.5"), where that is plausible; a smaller one ("1.5") is asked back like anywhere else.
Result<Entered<Length>> readLength(std::string_view typed, const Units& units, std::string_view kind,
                                   std::string_view fieldName, std::string what = {});
/// What one term of the stack-up under the pickup can be: a gasket is no pan.
Expected<Length> expectedPickupTerm(PickupTerm term, std::string what);
/// From where to where a count of an entry kind may lie: what its field will be refused for anyway, said as it is typed.
struct CountRange {
    std::int64_t smallest = 0, largest = 1'000'000;
};
CountRange expectedCount(std::string_view kind, std::string_view fieldName);
Expected<Torque> expectedTorque(std::string_view kind, std::string_view fieldName, std::string what = {});
Expected<Temperature> expectedTemperature(std::string_view kind, std::string_view fieldName, std::string what = {});
Expected<Angle> expectedAngle(std::string_view kind, std::string_view fieldName, std::string what = {});

} // namespace caprail
