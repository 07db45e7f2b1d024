// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstdint>
#include <fasteners/preload.h>
#include <optional>
#include <string>
#include <units/angle.h>
#include <base/date.h>

namespace caprail {

/// An extension that changes the lever: a crow-foot or offset head.
struct WrenchExtension {
    Length wrenchLength; ///< L, from the middle of the grip to the wrench's drive
    Length offset;       ///< E, from the drive to the fastener
    Angle angle;         ///< α between the extension and the wrench: 0° straight on, 90° square, 180° folded back
};
/// What to set for `wanted` at the fastener: T·L/(L + E·cos α) (lever arms, statics). Refuses an implausible torque,
/// L ≤ 0 or above 5 m, E < 0 or above 5 m, an angle outside 0 to 180°, and an extension folded back so far that no
/// lever is left.
Result<Worked<Torque>> wrenchSetting(Torque wanted, const WrenchExtension& extension, const Units& units);

/// What a torque wrench may be used for. Without a lower limit marked on it, ISO 6789 has it start at 20 % of its
/// largest value.
class WrenchRange {
public:
    /// Refuses a largest value ≤ 0, and a marked smallest value that is not positive or not below the largest.
    static Result<WrenchRange> upTo(Torque largest, std::optional<Torque> markedSmallest = std::nullopt);
    [[nodiscard]] Torque smallest() const { return m_smallest; }
    [[nodiscard]] Torque largest() const { return m_largest; }
    [[nodiscard]] bool isSmallestMarked() const { return m_isMarked; }

private:
    WrenchRange(Torque smallest, Torque largest, bool isMarked)
        : m_smallest(smallest), m_largest(largest), m_isMarked(isMarked) {}
    Torque m_smallest;
    Torque m_largest;
    bool m_isMarked;
};
enum class RangeVerdict { within, below, above };
/// The ends of the range are within it.
RangeVerdict rangeVerdict(Torque reading, const WrenchRange& range);
/// The mark for screen and sheet; empty when the reading is within the range.
std::string rangeMark(Torque reading, const WrenchRange& range, const Units& units);

/// When a wrench was calibrated and how long that holds. Days are passed in: nothing here reads a clock.
struct Calibration {
    Date done;
    std::optional<Date> due;                   ///< none: the yearly default of dueByDefault
    std::optional<std::int64_t> largestCycles; ///< none: the default of 5000
};
/// ISO 6789: without an interval of the shop's own, 12 months or 5000 cycles, whichever comes first.
inline constexpr std::int64_t usualCalibrationCycles = 5'000;
/// One year after the calibration; from 29 February it is 28 February.
Date dueByDefault(Date done);

enum class CalibrationState { current, pastDate, pastCycles, notYetDone };
/// The state on a day, with the pulls made since the calibration. The due day itself is still current; `notYetDone`
/// when the day lies before the calibration. Past both date and cycles reads as pastDate.
CalibrationState calibrationState(const Calibration& calibration, Date day, std::int64_t cyclesSince);
/// The mark for screen and sheet; empty when current.
std::string calibrationMark(const Calibration& calibration, Date day, std::int64_t cyclesSince);

} // namespace caprail
