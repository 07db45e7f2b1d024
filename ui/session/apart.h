// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QObject>
#include <QString>
#include <algorithm>
#include <chrono>
#include <condition_variable>
#include <deque>
#include <functional>
#include <memory>
#include <mutex>
#include <optional>
#include <stop_token>
#include <thread>
#include <utility>

namespace caprail {

/// The way back from a thread that works for `Owner`: what is told runs in the owner's thread, in the order in which it
/// was told, and never once the owner has let go.
template <class Owner> class WayBack {
public:
    explicit WayBack(Owner& owner) : m_to(std::make_shared<To>()) { m_to->owner = &owner; }

    /// From any thread. `call` takes the owner.
    template <class Call> void tell(Call call) const {
        const std::lock_guard lock(m_to->mutex);
        if (m_to->owner != nullptr) {
            QMetaObject::invokeMethod(
                m_to->owner,
                [to = m_to, call = std::move(call)] {
                    if (to->owner != nullptr) { // read without the lock: only this thread ever changes it
                        call(*to->owner);
                    }
                },
                Qt::QueuedConnection);
        }
    }
    /// From the owner's thread.
    void letGo() const {
        const std::lock_guard lock(m_to->mutex);
        m_to->owner = nullptr;
    }

private:
    struct To {
        std::mutex mutex;
        Owner* owner = nullptr;
    };
    std::shared_ptr<To> m_to;
};

/// A worker on a thread of its own that is never waited for: a disk, a share or a server that hangs holds that thread
/// and nothing else. The worker is made in its thread, at the first call, and goes there. Calls are done one after
/// another; answers come by the worker's way back. Whoever lets go waits for `patience` at most: a thread that has not
/// ended by then is left behind, and tells nobody anything any more.
template <class Worker, class Owner> class Apart {
public:
    /// What the worker is to do; it looks at `stop` wherever it takes long.
    using Call = std::function<void(Worker& worker, const std::stop_token& stop)>;

    /// `owner` outlives this. The worker is made of the way back to it and of copies of `given`.
    template <class... Given>
    Apart(Owner& owner, std::chrono::milliseconds patience, Given... given)
        : m_back(owner), m_patience(patience),
          m_make([back = m_back, given...] { return std::make_unique<Worker>(back, given...); }) {}
    Apart(const Apart&) = delete;
    Apart& operator=(const Apart&) = delete;
    ~Apart() {
        m_back.letGo();
        if (m_shared == nullptr) {
            return;
        }
        m_stop.request_stop();
        std::unique_lock lock(m_shared->mutex);
        m_shared->isEnding = true;
        m_shared->waiting.clear();
        m_shared->changed.notify_all();
        m_shared->changed.wait_for(lock, m_patience, [this] { return m_shared->isEnded; });
    }

    /// Has the worker do it, behind what was asked before. What waits under the same topic and is not begun is not done
    /// any more: this takes its place in the row. Gives whether it is one call more.
    bool post(const QString& topic, Call call) {
        if (m_shared == nullptr) {
            m_shared = std::make_shared<Shared>();
            // Not joined: a thread that waits for what hangs would hold the program with it.
            std::thread([shared = m_shared, make = m_make] { shared->run(make); }).detach();
        }
        const std::lock_guard lock(m_shared->mutex);
        Waiting waiting{topic, std::move(call), m_stop.get_token()};
        const auto same = std::ranges::find(m_shared->waiting, topic, &Waiting::topic);
        if (same != m_shared->waiting.end()) {
            *same = std::move(waiting);
            return false;
        }
        m_shared->waiting.push_back(std::move(waiting));
        m_shared->changed.notify_all();
        return true;
    }
    /// Asks what was posted until now to stop: what is under way and what waits. What is posted later is not concerned.
    void stop() { std::exchange(m_stop, {}).request_stop(); }

private:
    using Make = std::function<std::unique_ptr<Worker>()>;
    struct Waiting {
        QString topic;
        Call call;
        std::stop_token stop;
    };
    /// With the thread; it may outlive this by as long as something hangs.
    struct Shared {
        std::mutex mutex;
        std::condition_variable changed;
        std::deque<Waiting> waiting;
        bool isEnding = false, isEnded = false;

        std::optional<Waiting> next() {
            std::unique_lock lock(mutex);
            changed.wait(lock, [this] { return isEnding || !waiting.empty(); });
            if (isEnding) {
                return std::nullopt;
            }
            Waiting first = std::move(waiting.front());
            waiting.pop_front();
            return first;
        }
        void run(const Make& make) {
            {
                const std::unique_ptr<Worker> worker = make();
                while (const auto first = next()) {
                    first->call(*worker, first->stop);
                }
            }
            const std::lock_guard lock(mutex);
            isEnded = true;
            changed.notify_all();
        }
    };

    WayBack<Owner> m_back;
    std::chrono::milliseconds m_patience;
    Make m_make;
    std::stop_source m_stop;
    std::shared_ptr<Shared> m_shared; ///< null: nothing was asked yet
};

} // namespace caprail
