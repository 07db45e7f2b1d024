// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <compare>
#include <cstdint>
#include <string>
#include <string_view>
#include <base/problem.h>

namespace caprail {

/// A calendar day (proleptic Gregorian), as days since 1970-01-01. Written YYYY-MM-DD (ISO 8601).
struct Date {
    std::int64_t days = 0;
    friend constexpr auto operator<=>(Date, Date) = default;
};

std::string format(Date);
/// Refuses anything but an existing day written YYYY-MM-DD.
Result<Date> parseDate(std::string_view text);

/// A moment in UTC, whole milliseconds since 1970-01-01T00:00:00Z. Written "2026-05-04T09:30:00.000Z" (RFC 3339).
struct UtcTime {
    std::int64_t milliseconds = 0;
    friend constexpr auto operator<=>(UtcTime, UtcTime) = default;
};

std::string format(UtcTime);
/// Refuses anything but RFC 3339 in UTC, with or without milliseconds, years 1970 to 9999.
Result<UtcTime> parseUtcTime(std::string_view text);
/// The day on which the moment falls, in UTC.
Date dateOf(UtcTime);

/// A moment on a clock of which nobody knows where it stood, such as a camera's: whole seconds since
/// 1970-01-01T00:00:00 of that clock. Written "2026-05-04T09:30:00" (ISO 8601, without a zone).
struct ClockTime {
    std::int64_t seconds = 0;
    friend constexpr auto operator<=>(ClockTime, ClockTime) = default;
};

std::string format(ClockTime);
/// Refuses anything but an existing moment written as above, years 1970 to 9999.
Result<ClockTime> parseClockTime(std::string_view text);
/// For people, to the minute: "2026-05-04 09:30".
std::string shown(ClockTime);

} // namespace caprail
