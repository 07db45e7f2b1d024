// SPDX-License-Identifier: GPL-3.0-or-later
#include <store/sqlite/time_guard.h>

#include <algorithm>
#include <ctime>
#include <sqlite3.h>

namespace caprail {

namespace {

constexpr int stepsBetweenLooks = 20'000; // some 100 µs
constexpr std::int64_t mebibyte = std::int64_t{1024} * 1024;

std::chrono::nanoseconds computed() {
    timespec time{};
    ::clock_gettime(CLOCK_THREAD_CPUTIME_ID, &time);
    return std::chrono::seconds(time.tv_sec) + std::chrono::nanoseconds(time.tv_nsec);
}

} // namespace

TimeGuard::TimeGuard(Database& database, std::chrono::milliseconds allowed)
    : m_database(database), m_end(computed() + allowed) {
    const auto isOver = [](void* end) { return computed() > *static_cast<std::chrono::nanoseconds*>(end) ? 1 : 0; };
    sqlite3_progress_handler(m_database.handle(), stepsBetweenLooks, isOver, &m_end);
}

TimeGuard::~TimeGuard() {
    sqlite3_progress_handler(m_database.handle(), 0, nullptr, nullptr);
}

std::chrono::milliseconds TimeGuard::allowedFor(std::int64_t fileSize) {
    const std::int64_t beyond = std::max<std::int64_t>(0, fileSize - 100 * mebibyte);
    return std::chrono::seconds(5) + std::chrono::seconds(beyond / (20 * mebibyte));
}

} // namespace caprail
