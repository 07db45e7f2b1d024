// SPDX-License-Identifier: GPL-3.0-or-later
#include <records/database_link.h>

#include <condition_variable>
#include <deque>
#include <mutex>
#include <thread>

namespace caprail {

namespace {

constexpr auto partingPatience = std::chrono::milliseconds(500);
constexpr auto answerPatience = std::chrono::seconds(60); ///< after which the server calls a statement off

} // namespace

struct DatabaseLink::Shared {
    std::mutex mutex;
    std::condition_variable changed;
    DatabaseLink* target = nullptr; ///< null when the window is gone
    bool isEnding = false, isEnded = false;
    struct Waiting {
        QString topic;
        Work work;
    };
    std::deque<Waiting> waiting;

    std::optional<Work> next() {
        std::unique_lock lock(mutex);
        changed.wait(lock, [this] { return isEnding || !waiting.empty(); });
        if (isEnding) {
            return std::nullopt;
        }
        Work work = std::move(waiting.front().work);
        waiting.pop_front();
        return work;
    }
    void tell(Told told) {
        const std::lock_guard lock(mutex);
        if (target != nullptr) {
            QMetaObject::invokeMethod(
                target, [to = target, told = std::move(told)] { to->finish(told); }, Qt::QueuedConnection);
        }
    }
    void run(const DatabasePlace& place) {
        {
            Connection connection(place);
            while (const auto work = next()) {
                Result<void> opened;
                if (!connection.isOpen()) {
                    opened = connection.open();
                    opened = opened ? connection.limitTo(answerPatience) : opened;
                }
                tell((*work)(connection, opened));
            }
        }
        const std::lock_guard lock(mutex);
        isEnded = true;
        changed.notify_all();
    }
};

DatabaseLink::DatabaseLink(DatabasePlace place, QObject* parent)
    : QObject(parent), m_shared(std::make_shared<Shared>()), m_place(std::move(place)) {
    m_shared->target = this;
    // Not joined: a thread that waits for a server that hangs would hold the window with it.
    std::thread([shared = m_shared, to = m_place] { shared->run(to); }).detach();
}

DatabaseLink::~DatabaseLink() {
    std::unique_lock lock(m_shared->mutex);
    m_shared->target = nullptr;
    m_shared->isEnding = true;
    m_shared->waiting.clear();
    m_shared->changed.notify_all();
    m_shared->changed.wait_for(lock, partingPatience, [this] { return m_shared->isEnded; });
}

void DatabaseLink::put(const QString& topic, Work work) {
    {
        const std::lock_guard lock(m_shared->mutex);
        for (Shared::Waiting& one : m_shared->waiting) {
            if (one.topic == topic) {
                one.work = std::move(work);
                return;
            }
        }
        m_shared->waiting.push_back({topic, std::move(work)});
        m_shared->changed.notify_all();
    }
    if (++m_asking == 1) {
        emit asking();
    }
}

void DatabaseLink::finish(const Told& told) {
    told();
    if (--m_asking == 0) {
        emit rested();
    }
}

} // namespace caprail
