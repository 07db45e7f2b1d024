// SPDX-License-Identifier: GPL-3.0-or-later
#include <units/date.h>

#include <array>
#include <chrono>
#include <cstdio>
#include <optional>

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
    std::array<char, 40> text{};
    std::snprintf(text.data(), text.size(), "%04d-%02u-%02u", static_cast<int>(day.year()),
                  static_cast<unsigned>(day.month()), static_cast<unsigned>(day.day()));
    return text.data();
}

Result<Date> parseDate(std::string_view text) {
    const auto date = readDate(text);
    if (!date || text.size() != 10) {
        return refuse("“" + std::string(text) + "” is no day: write it as year-month-day, for example 2026-05-04.");
    }
    return *date;
}

Date dateOf(UtcTime time) { return Date{time.milliseconds / dayMilliseconds}; }

std::string format(UtcTime time) {
    const std::int64_t inDay = time.milliseconds % dayMilliseconds;
    std::array<char, 40> text{};
    std::snprintf(text.data(), text.size(), "T%02d:%02d:%02d.%03dZ", static_cast<int>(inDay / 3'600'000),
                  static_cast<int>(inDay / 60'000 % 60), static_cast<int>(inDay / 1'000 % 60),
                  static_cast<int>(inDay % 1'000));
    return format(dateOf(time)) + text.data();
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
    if (!shape || !date || !hour || !minute || !second || !milliseconds || *hour > 23 || *minute > 59 ||
        *second > 59) {
        return refuse("“" + std::string(text) +
                      "” is no moment in UTC: write it like 2026-05-04T09:30:00.000Z.");
    }
    return UtcTime{date->days * dayMilliseconds + *hour * 3'600'000LL + *minute * 60'000LL + *second * 1'000LL +
                   *milliseconds};
}

} // namespace caprail
