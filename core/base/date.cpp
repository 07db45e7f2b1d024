// SPDX-License-Identifier: GPL-3.0-or-later
#include <base/date.h>

#include <chrono>
#include <optional>
#include <base/say.h>

namespace caprail {

namespace {

constexpr std::int64_t dayMilliseconds = 86'400'000;

/// Exactly `count` digits at `at`, which lie in `text`; -1: it holds something else there.
constexpr int digits(std::string_view text, std::size_t at, std::size_t count) {
    int n = 0;
    for (std::size_t i = at; i < at + count; ++i) {
        const int digit = text[i] - '0';
        if (digit < 0 || digit > 9) {
            return -1;
        }
        n = n * 10 + digit;
    }
    return n;
}

/// Writes `value` with leading zeros over `count` characters of `text`.
void putDigits(std::string& text, std::size_t at, std::size_t count, std::int64_t value) {
    for (std::size_t i = count; i > 0; --i, value /= 10) {
        text[at + i - 1] = static_cast<char>('0' + value % 10);
    }
}

/// The day that a text begins with. A ledger of 100 000 entries reads as many moments on opening.
std::optional<Date> readDate(std::string_view text) {
    if (text.size() < 10 || text[4] != '-' || text[7] != '-') {
        return {};
    }
    const int y = digits(text, 0, 4);
    const int m = digits(text, 5, 2);
    const int d = digits(text, 8, 2);
    if (y < 1970 || m < 0 || d < 0) {
        return {};
    }
    const std::chrono::year_month_day day{std::chrono::year{y}, std::chrono::month{static_cast<unsigned>(m)},
                                          std::chrono::day{static_cast<unsigned>(d)}};
    if (!day.ok()) {
        return {};
    }
    return Date{std::chrono::sys_days{day}.time_since_epoch().count()};
}

/// The milliseconds that follow the day in a text of 20 or 24 characters; -1: it holds no time of day in UTC.
std::int64_t readTimeOfDay(std::string_view text) {
    const bool withMilliseconds = text.size() == 24;
    if (text[10] != 'T' || text[13] != ':' || text[16] != ':' || text.back() != 'Z' ||
        (withMilliseconds && text[19] != '.')) {
        return -1;
    }
    const int hour = digits(text, 11, 2);
    const int minute = digits(text, 14, 2);
    const int second = digits(text, 17, 2);
    const int milliseconds = withMilliseconds ? digits(text, 20, 3) : 0;
    if (hour < 0 || hour > 23 || minute < 0 || minute > 59 || second < 0 || second > 59 || milliseconds < 0) {
        return -1;
    }
    return hour * 3'600'000LL + minute * 60'000LL + second * 1'000LL + milliseconds;
}

} // namespace

std::string format(Date date) {
    const std::chrono::year_month_day day{std::chrono::sys_days{std::chrono::days{date.days}}};
    std::string text = "0000-00-00";
    const int year = static_cast<int>(day.year());
    if (year < 0 || year > 9999) { // no record holds such a day, but a sentence may have to name it
        text = std::to_string(year) + "-00-00";
    } else {
        putDigits(text, 0, 4, year);
    }
    putDigits(text, text.size() - 5, 2, static_cast<unsigned>(day.month()));
    putDigits(text, text.size() - 2, 2, static_cast<unsigned>(day.day()));
    return text;
}

Result<Date> parseDate(std::string_view text) {
    const auto date = readDate(text);
    if (!date || text.size() != 10) {
        return refuse(Core::say("“%1” is not a day: write it as year-month-day, for example 2026-05-04.", text));
    }
    return *date;
}

Date dateOf(UtcTime time) {
    // Rounded down, also before 1970: a clock may stand there.
    const std::int64_t days = time.milliseconds / dayMilliseconds;
    return Date{time.milliseconds % dayMilliseconds < 0 ? days - 1 : days};
}

std::string format(UtcTime time) {
    const Date day = dateOf(time);
    std::int64_t inDay = time.milliseconds % dayMilliseconds;
    inDay += inDay < 0 ? dayMilliseconds : 0;
    // Every entry that is read is formatted again for its seal, so this is done without printf.
    std::string text = "T00:00:00.000Z";
    putDigits(text, 1, 2, inDay / 3'600'000);
    putDigits(text, 4, 2, inDay / 60'000 % 60);
    putDigits(text, 7, 2, inDay / 1'000 % 60);
    putDigits(text, 10, 3, inDay % 1'000);
    return format(day) + text;
}

std::string format(ClockTime time) {
    std::string text = format(UtcTime{time.seconds * 1'000});
    text.resize(text.size() - std::string_view(".000Z").size());
    return text;
}

std::string shown(ClockTime time) {
    std::string text = format(time);
    text[text.find('T')] = ' ';
    text.resize(text.size() - std::string_view(":00").size());
    return text;
}

Result<ClockTime> parseClockTime(std::string_view text) {
    const auto time = text.size() == 19 ? parseUtcTime(std::string(text) + "Z") : tl::unexpected(Problem{});
    if (!time) {
        return refuse(Core::say("“%1” is not a moment on a clock: write it like 2026-05-04T09:30:00.", text));
    }
    return ClockTime{time->milliseconds / 1'000};
}

Result<UtcTime> parseUtcTime(std::string_view text) {
    const bool isLongEnough = text.size() == 20 || text.size() == 24;
    const auto date = isLongEnough ? readDate(text) : std::nullopt;
    const std::int64_t inDay = date ? readTimeOfDay(text) : -1;
    if (inDay < 0) {
        return refuse(Core::say("“%1” is not a moment in UTC: write it like 2026-05-04T09:30:00.000Z.", text));
    }
    return UtcTime{date->days * dayMilliseconds + inDay};
}

} // namespace caprail
