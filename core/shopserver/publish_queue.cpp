// SPDX-License-Identifier: GPL-3.0-or-later
#include <shopserver/publish_queue.h>

#include <algorithm>
#include <cerrno>
#include <chrono>
#include <fcntl.h>
#include <filesystem>
#include <ledger/entry.h>
#include <sstream>
#include <store/file/new_file.h>
#include <store/file/read_file.h>
#include <sys/file.h>
#include <thread>
#include <tuple>
#include <unistd.h>

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
    if (in.peek() == '\n') { // of an earlier program
        record.isAsked = record.since == UtcTime();
    } else {
        in >> record.isAsked;
    }
    constexpr std::int64_t latest = 253'402'300'799'999; // of the year 9999
    const auto isMoment = [](UtcTime time) { return time.milliseconds >= 0 && time.milliseconds <= latest; };
    if (in.get() != '\n' || !isMoment(record.since) || !isMoment(record.last)) {
        return std::nullopt;
    }
    record.path.assign(std::istreambuf_iterator<char>(in), {});
    return record.path.empty() ? std::nullopt : std::optional(std::move(record));
}

/// Held while a note is looked at and changed or removed, so that nobody puts a newer one in its place between the two.
/// It goes with the process that has it. One that does not let it go is not waited for: a window may ask.
class NotesLock {
public:
    explicit NotesLock(const std::string& folder)
        : m_file(::open((folder + "/notes.lock").c_str(), O_RDWR | O_CREAT | O_CLOEXEC, 0600)) {
        constexpr auto pause = std::chrono::milliseconds(1);
        for (int left = 1000; m_file >= 0 && left > 0 && !m_isHeld; --left) {
            m_isHeld = ::flock(m_file, LOCK_EX | LOCK_NB) == 0;
            if (!m_isHeld && errno != EINTR && errno != EWOULDBLOCK) {
                return;
            }
            if (!m_isHeld) {
                std::this_thread::sleep_for(pause);
            }
        }
    }
    NotesLock(const NotesLock&) = delete;
    NotesLock& operator=(const NotesLock&) = delete;
    ~NotesLock() {
        if (m_file >= 0) {
            ::close(m_file);
        }
    }
    [[nodiscard]] bool isHeld() const { return m_isHeld; }

private:
    int m_file;
    bool m_isHeld = false;
};

} // namespace

std::optional<UtcTime> dueAt(const WaitingRecord& record, PublishSchedule schedule) {
    const std::int64_t since = record.since.milliseconds;
    if (record.isAsked) {
        return UtcTime();
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

Result<void> PublishQueue::add(WaitingRecord record) const {
    std::error_code error;
    fs::create_directories(m_folder, error); // what it could not make is said below
    const std::string file = fileOf(record.path);
    const NotesLock lock(m_folder); // without it, the note is put all the same: rather once too often
    if (const auto known = noteAt(file)) {
        const bool isFirst = known->since == UtcTime();
        record.since = isFirst ? record.since : record.isAsked ? known->since : std::min(record.since, known->since);
        record.isAsked = record.isAsked || known->isAsked;
        // Another note than the one that is perhaps being published, even by a clock that was set back.
        record.last.milliseconds = std::max(record.last.milliseconds, known->last.milliseconds + 1);
    }
    return put(record);
}

Result<void> PublishQueue::put(const WaitingRecord& record) const {
    std::error_code error;
    const std::string file = fileOf(record.path);
    const std::string note = std::to_string(record.since.milliseconds) + " " +
                             std::to_string(record.last.milliseconds) + (record.isAsked ? " 1\n" : " 0\n") +
                             record.path;
    const auto fill = [&](const std::string& unfinished) { return fillWith(unfinished, note); };
    auto done = fs::exists(file, error) ? replaceFile(file, fill) : makeNewFile(file, fill);
    if (!done && fs::exists(file, error)) { // another window was faster
        done = replaceFile(file, fill);
    }
    return done;
}

Result<void> PublishQueue::addChanged(const std::string& path, UtcTime now) const {
    return add({path, now, now});
}

Result<void> PublishQueue::addAsked(const std::string& path, UtcTime now) const {
    return add({path, {}, now, true});
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
    std::ranges::sort(
        all, {}, [](const WaitingRecord& record) { return std::tuple(!record.isAsked, record.since, record.path); });
    return all;
}

void PublishQueue::takeBack(const WaitingRecord& asked) const {
    const NotesLock lock(m_folder);
    auto known = noteAt(fileOf(asked.path));
    if (!lock.isHeld() || !known || !known->isAsked) {
        return;
    }
    std::error_code ignored;
    if (known->since == UtcTime()) {
        fs::remove(fileOf(asked.path), ignored);
    } else {
        known->isAsked = false;
        (void)put(*known); // else it is published once more
    }
}

void PublishQueue::settle(const WaitingRecord& record) const {
    const std::string file = fileOf(record.path);
    const NotesLock lock(m_folder);
    if (lock.isHeld() && noteAt(file) == record) {
        std::error_code ignored; // it is gone, or is looked at again
        fs::remove(file, ignored);
    }
}

} // namespace caprail
