// SPDX-License-Identifier: GPL-3.0-or-later
#include <base/date.h>

#include <chrono>
#include <optional>
#include <base/say.h>

namespace caprail {

namespace {

constexpr std::int64_t dayMilliseconds = 86'400'000;

/// Exactly `count` digits at `at`, or nothing.
std::optional<int> digits(std::string_view text, std::size_t at, std::size_t count) {
    if (at + count > text.size()) {
        return {};
    }
    int n = 0;
    for (const char c : text.substr(at, count)) {
        if (c < '0' || c > '9') {
            return {};
        }
        n = n * 10 + (c - '0');
    }
    return n;
}

/// Writes `value` with leading zeros over `count` characters of `text`.
void putDigits(std::string& text, std::size_t at, std::size_t count, std::int64_t value) {
    for (std::size_t i = count; i > 0; --i, value /= 10) {
        text[at + i - 1] = static_cast<char>('0' + value % 10);
    }
}

std::optional<Date> readDate(std::string_view text) {
    const auto y = digits(text, 0, 4);
    const auto m = digits(text, 5, 2);
    const auto d = digits(text, 8, 2);
    if (text.size() < 10 || text[4] != '-' || text[7] != '-' || !y || !m || !d || *y < 1970) {
        return {};
    }
    const std::chrono::year_month_day day{std::chrono::year{*y}, std::chrono::month{static_cast<unsigned>(*m)},
                                          std::chrono::day{static_cast<unsigned>(*d)}};
    if (!day.ok()) {
        return {};
    }
    return Date{std::chrono::sys_days{day}.time_since_epoch().count()};
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
        return refuse(Core::say("“%1” is no day: write it as year-month-day, for example 2026-05-04.", text));
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

Result<UtcTime> parseUtcTime(std::string_view text) {
    const auto date = readDate(text);
    const auto hour = digits(text, 11, 2);
    const auto minute = digits(text, 14, 2);
    const auto second = digits(text, 17, 2);
    const bool withMilliseconds = text.size() == 24;
    const auto milliseconds = withMilliseconds ? digits(text, 20, 3) : std::optional<int>(0);
    const bool shape = (text.size() == 20 || (withMilliseconds && text[19] == '.')) && text[10] == 'T' &&
                       text[13] == ':' && text[16] == ':' && text.back() == 'Z';
    if (!shape || !date || !hour || !minute || !second || !milliseconds || *hour > 23 || *minute > 59 || *second > 59) {
        return refuse(Core::say("“%1” is no moment in UTC: write it like 2026-05-04T09:30:00.000Z.", text));
    }
    return UtcTime{date->days * dayMilliseconds + *hour * 3'600'000LL + *minute * 60'000LL + *second * 1'000LL +
                   *milliseconds};
}

} // namespace caprail
