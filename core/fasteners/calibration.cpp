// SPDX-License-Identifier: GPL-3.0-or-later
#include <chrono>
#include <fasteners/wrench.h>
#include <base/say.h>

namespace caprail {

Date dueByDefault(Date done) {
    using namespace std::chrono;
    const year_month_day day{sys_days{days{done.days}}};
    const year_month_day later = day + years{1};
    const sys_days due = later.ok() ? sys_days{later} : sys_days{later.year() / later.month() / last};
    return Date{due.time_since_epoch().count()};
}

CalibrationState calibrationState(const Calibration& calibration, Date day, std::int64_t cyclesSince) {
    if (day < calibration.done) {
        return CalibrationState::notYetDone;
    }
    if (day > calibration.due.value_or(dueByDefault(calibration.done))) {
        return CalibrationState::pastDate;
    }
    return cyclesSince > calibration.largestCycles.value_or(usualCalibrationCycles) ? CalibrationState::pastCycles
                                                                                    : CalibrationState::current;
}

std::string calibrationMark(const Calibration& calibration, Date day, std::int64_t cyclesSince) {
    switch (calibrationState(calibration, day, cyclesSince)) {
    case CalibrationState::current:
        return {};
    case CalibrationState::notYetDone:
        return Core::say("used on %1, before its calibration of %2", format(day), format(calibration.done));
    case CalibrationState::pastDate:
        return Core::say("calibration was due on %1", format(calibration.due.value_or(dueByDefault(calibration.done))));
    case CalibrationState::pastCycles:
        break;
    }
    return Core::say("calibration was due after %1 cycles, and %2 were made",
                     calibration.largestCycles.value_or(usualCalibrationCycles), cyclesSince);
}

} // namespace caprail
