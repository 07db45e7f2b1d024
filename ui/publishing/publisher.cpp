// SPDX-License-Identifier: GPL-3.0-or-later
#include <publishing/publisher.h>

#include <QCoreApplication>
#include <QDateTime>
#include <QLocale>
#include <QLockFile>
#include <QPointer>
#include <algorithm>
#include <condition_variable>
#include <filesystem>
#include <ledger/qt_text.h>
#include <mutex>
#include <session/filled.h>
#include <session/now.h>
#include <shop/folder_walk.h>
#include <shopserver/publish.h>
#include <shopserver/tables.h>
#include <store/file/path_text.h>
#include <thread>
#include <utility>

namespace caprail {

namespace {

constexpr int lookEvery = 5'000;         ///< milliseconds; other windows add to the queue too
constexpr int noteAfter = 1'000;         ///< milliseconds
constexpr int longestPatience = 900'000; ///< milliseconds
constexpr auto toldEvery = std::chrono::milliseconds(100);
constexpr auto endPatience = std::chrono::milliseconds(1500);

QString nameOf(const std::string& path) {
    return qtText(plainLine(std::filesystem::path(path).filename().string()));
}

} // namespace

/// One run of the thread: some records to one database.
struct Publisher::Run {
    std::mutex mutex;
    std::condition_variable ended;
    Publisher* target = nullptr; ///< null when nobody listens any more
    bool isEnded = false;
    std::stop_source stop;
    PublishQueue queue;
    std::string service;
    std::vector<WaitingRecord> due;
    int done = 0, of = 0; ///< records

    explicit Run(PublishQueue q) : queue(std::move(q)) {}

    /// Runs `call` on the window's thread, unless it is gone.
    template <class Call> void tell(Call call) {
        const std::lock_guard lock(mutex);
        if (target != nullptr) {
            QMetaObject::invokeMethod(
                target, [to = target, call = std::move(call)] { call(*to); }, Qt::QueuedConnection);
        }
    }

    void run() {
        const QString away = publishAll();
        tell([away](Publisher& to) { to.finish(away); });
        const std::lock_guard lock(mutex);
        isEnded = true;
        ended.notify_all();
    }

    /// Why the database cannot be reached; empty when it could.
    QString publishAll() {
        QLockFile lock(qtPath(queue.folder()) + QStringLiteral("/publishing.lock"));
        if (!lock.tryLock(0)) {
            return {}; // another program of this user publishes them
        }
        auto place = parseService(service);
        if (!place) {
            return qtText(place.error().sentence);
        }
        Connection database(*place);
        auto good = database.open();
        good = good ? checkTables(database) : good;
        if (!good) {
            return qtText(good.error().sentence);
        }
        RecordPublisher publisher(database);
        for (const WaitingRecord& one : due) {
            const QString away = publishWaiting(database, publisher, one);
            if (!away.isEmpty() || stop.stop_requested()) {
                return away;
            }
        }
        return {};
    }

    /// A record, or all records of a folder that a person asked for.
    QString publishWaiting(Connection& database, RecordPublisher& publisher, const WaitingRecord& one) {
        auto records = recordsAt(one.path, stop.get_token());
        if (!records) {
            refuse(records.error());
            records.emplace();
        }
        for (const UnreadFolder& folder : records->unread) {
            refuse(Problem{folder.sentence});
        }
        of += static_cast<int>(records->paths.size()) - 1;
        for (const std::string& file : records->paths) {
            const QString away = stop.stop_requested() ? QString() : publishOne(database, publisher, file);
            if (!away.isEmpty() || stop.stop_requested()) {
                return away;
            }
            ++done;
        }
        queue.settle(one);
        return {};
    }

    void refuse(const Problem& problem) {
        tell([sentence = qtText(problem.sentence)](Publisher& to) {
            to.m_state.refused << sentence;
            emit to.told(sentence);
        });
    }

    QString publishOne(Connection& database, RecordPublisher& publisher, const std::string& path) {
        const QString name = nameOf(path);
        const auto follow = [this, name](int perCent) {
            tell([=, done_ = done, of_ = of](Publisher& to) { to.follow(name, done_, of_, perCent); });
        };
        follow(0);
        auto last = std::chrono::steady_clock::now();
        const auto published = publisher.publish(path, stop.get_token(), [&](std::int64_t sent, std::int64_t all) {
            if (const auto present = std::chrono::steady_clock::now(); present - last > toldEvery) {
                last = present;
                follow(all == 0 ? 100 : static_cast<int>(100 * sent / all));
            }
        });
        if (!published && (database.isOffline() || !database.isOpen())) {
            return qtText(published.error().sentence);
        }
        if (published) {
            tell([sentence = filled(Publisher::tr("%1: %2"), name, qtText(sentenceOf(*published)))](Publisher& to) {
                emit to.told(sentence);
            });
        } else if (!stop.stop_requested()) {
            refuse(published.error());
        }
        return {};
    }
};

Publisher& Publisher::instance() {
    static QPointer<Publisher> publisher; // it goes with the application, not after it
    if (publisher == nullptr) {
        publisher = new Publisher(publishQueue(), QCoreApplication::instance());
    }
    return *publisher;
}

Publisher::Publisher(PublishQueue queue, QObject* parent) : QObject(parent), m_queue(std::move(queue)) {
    m_look.setInterval(lookEvery);
    connect(&m_look, &QTimer::timeout, this, &Publisher::lookAround);
    m_look.start();
    m_soon.setInterval(noteAfter);
    m_soon.setSingleShot(true);
    connect(&m_soon, &QTimer::timeout, this, &Publisher::keepChanged);
    QTimer::singleShot(0, this, &Publisher::lookAround); // what the last start left
}

Publisher::~Publisher() {
    keepChanged();
    if (!m_run) {
        return;
    }
    std::unique_lock lock(m_run->mutex);
    m_run->target = nullptr;
    m_run->stop.request_stop();
    m_run->ended.wait_for(lock, endPatience, [this] { return m_run->isEnded; });
}

void Publisher::noteChanged(const QString& path) {
    const PublishSettings settings = PublishSettings::load();
    if (settings.schedule == PublishSchedule::never || settings.service.isEmpty()) {
        return;
    }
    m_changed.insert(pathBytes(path));
    if (!m_soon.isActive()) { // a row of readings is noted once: a note waits for the disk
        m_soon.start();
    }
}

void Publisher::keepChanged() {
    for (const std::string& path : std::exchange(m_changed, {})) {
        if (const auto added = m_queue.addChanged(path, now()); !added) {
            m_state.refused = QStringList{qtText(added.error().sentence)};
            emit changed();
        }
    }
}

QString Publisher::publish(const QStringList& filesAndFolders) {
    if (PublishSettings::load().service.isEmpty()) {
        return tr("Name the shop's database first.");
    }
    m_state.refused.clear();
    for (const QString& one : filesAndFolders) {
        if (const auto added = m_queue.addAsked(pathBytes(one), now()); !added) {
            return qtText(added.error().sentence);
        }
    }
    m_notBefore.reset();
    lookAround();
    return {};
}

void Publisher::stop() {
    for (const WaitingRecord& record : m_queue.waiting()) {
        if (record.isAsked) {
            m_queue.takeBack(record);
        }
    }
    if (m_run) {
        m_run->stop.request_stop();
    }
    m_state.away.clear();
    m_notBefore.reset();
    lookAround();
    emit changed();
}

std::vector<WaitingRecord> Publisher::dueNow() const {
    const PublishSettings settings = PublishSettings::load();
    if (settings.service.isEmpty()) {
        return {};
    }
    std::vector<WaitingRecord> due = m_queue.waiting();
    std::erase_if(due, [&, present = now()](const WaitingRecord& record) {
        const auto at = dueAt(record, settings.schedule);
        return !at || *at > present;
    });
    return due;
}

void Publisher::lookAround() {
    if (m_run) {
        return;
    }
    std::vector<WaitingRecord> due = dueNow();
    const int waiting = static_cast<int>(due.size());
    if (waiting != m_state.waiting) {
        m_state.waiting = waiting;
        emit changed();
    }
    if (due.empty() || (m_notBefore && now().milliseconds < *m_notBefore)) {
        if (due.empty() && !m_state.away.isEmpty()) { // another program has published them
            m_state.away.clear();
            emit changed();
        }
        return;
    }
    begin(std::move(due));
}

void Publisher::begin(std::vector<WaitingRecord> due) {
    m_run = std::make_shared<Run>(m_queue);
    m_run->target = this;
    m_run->service = PublishSettings::load().service.toStdString();
    m_state.isRunning = true;
    m_state.done = 0;
    m_state.of = m_run->of = static_cast<int>(due.size());
    m_run->due = std::move(due);
    emit changed();
    // Not joined: a thread that waits for a server that is silent would hold the program with it.
    std::thread([run = m_run] { run->run(); }).detach();
}

void Publisher::follow(const QString& file, int done, int of, int perCent) {
    m_state.file = file;
    m_state.done = done;
    m_state.of = of;
    m_state.perCent = perCent;
    emit changed();
}

void Publisher::finish(const QString& away) {
    m_run.reset();
    m_state.isRunning = false;
    m_state.file.clear();
    m_state.away = away;
    m_failures = away.isEmpty() ? 0 : m_failures + 1;
    m_notBefore.reset();
    if (!away.isEmpty()) {
        const int wait = std::min(m_patience * std::min(m_failures, 15), longestPatience);
        m_notBefore = now().milliseconds + wait;
        m_state.next = QLocale().toString(QDateTime::fromMSecsSinceEpoch(*m_notBefore).time(), QLocale::ShortFormat);
        QTimer::singleShot(wait + 1, this, &Publisher::lookAround);
    }
    m_state.waiting = static_cast<int>(dueNow().size());
    emit changed();
}

QString Publisher::sentence() const {
    if (m_state.isRunning && !m_state.file.isEmpty()) {
        return filled(tr("Publishing %1 (%2 of %3)"), m_state.file, m_state.done + 1, m_state.of);
    }
    if (!m_state.away.isEmpty() && m_state.waiting > 0) {
        return filled(tr("Publishing waits for the database; tried again at %1"), m_state.next);
    }
    if (!m_state.refused.isEmpty()) {
        return filled(m_state.refused.size() == 1 ? tr("%1 record could not be published")
                                                  : tr("%1 records could not be published"),
                      m_state.refused.size());
    }
    return {};
}

} // namespace caprail
