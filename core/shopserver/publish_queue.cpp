// SPDX-License-Identifier: GPL-3.0-or-later
#include <shopserver/publish_queue.h>

#include <algorithm>
#include <filesystem>
#include <ledger/entry.h>
#include <sstream>
#include <store/file/new_file.h>
#include <store/file/read_file.h>
#include <tuple>

namespace caprail {

namespace {

namespace fs = std::filesystem;

constexpr const char* ending = ".waits";
constexpr std::int64_t largestNote = std::int64_t{64} * 1024;
constexpr std::int64_t second = 1000, minute = 60 * second, hour = 60 * minute, day = 24 * hour; // milliseconds

std::optional<WaitingRecord> noteAt(const std::string& file) {
    const auto text = readWholeFile(file, largestNote);
    if (!text) {
        return std::nullopt;
    }
    std::istringstream in(*text);
    WaitingRecord record;
    in >> record.since.milliseconds >> record.last.milliseconds;
    if (in.get() != '\n') {
        return std::nullopt;
    }
    record.path.assign(std::istreambuf_iterator<char>(in), {});
    return record.path.empty() ? std::nullopt : std::optional(std::move(record));
}

} // namespace

std::optional<UtcTime> dueAt(const WaitingRecord& record, PublishSchedule schedule) {
    const std::int64_t since = record.since.milliseconds;
    if (since == 0) {
        return record.since;
    }
    switch (schedule) {
    case PublishSchedule::never:
        return std::nullopt;
    case PublishSchedule::eachChange:
        return UtcTime{std::min(record.last.milliseconds + 10 * second, since + 2 * minute)};
    case PublishSchedule::hourly:
        return UtcTime{since + hour};
    case PublishSchedule::daily:
        return UtcTime{since + day};
    }
    return std::nullopt;
}

std::string PublishQueue::fileOf(const std::string& path) const {
    return m_folder + "/" + sha256Hex(path).substr(0, 32) + ending;
}

Result<void> PublishQueue::put(const WaitingRecord& record) const {
    std::error_code error;
    fs::create_directories(m_folder, error); // what it could not make is said below
    const std::string file = fileOf(record.path);
    const std::string note =
        std::to_string(record.since.milliseconds) + " " + std::to_string(record.last.milliseconds) + "\n" + record.path;
    const auto fill = [&](const std::string& unfinished) { return fillWith(unfinished, note); };
    auto done = fs::exists(file, error) ? replaceFile(file, fill) : makeNewFile(file, fill);
    if (!done && fs::exists(file, error)) { // another window was faster
        done = replaceFile(file, fill);
    }
    return done;
}

Result<void> PublishQueue::addChanged(const std::string& path, UtcTime now) const {
    const auto known = noteAt(fileOf(path));
    return put({path, known ? known->since : now, now});
}

Result<void> PublishQueue::addAsked(const std::string& path, UtcTime now) const {
    return put({path, {}, now});
}

std::vector<WaitingRecord> PublishQueue::waiting() const {
    std::vector<WaitingRecord> all;
    std::error_code error;
    for (fs::directory_iterator entry(m_folder, error); !error && entry != fs::directory_iterator();
         entry.increment(error)) {
        if (entry->path().extension() == ending) {
            if (auto record = noteAt(entry->path().string())) {
                all.push_back(std::move(*record));
            }
        }
    }
    std::ranges::sort(all, {}, [](const WaitingRecord& record) { return std::tie(record.since, record.path); });
    return all;
}

void PublishQueue::settle(const WaitingRecord& record) const {
    const std::string file = fileOf(record.path);
    if (noteAt(file) == record) {
        std::error_code ignored; // it is gone, or is looked at again
        fs::remove(file, ignored);
    }
}

} // namespace caprail
