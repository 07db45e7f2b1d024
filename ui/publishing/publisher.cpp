// SPDX-License-Identifier: GPL-3.0-or-later
#include <publishing/publisher.h>

#include <QCoreApplication>
#include <QDateTime>
#include <QLocale>
#include <QLockFile>
#include <QPointer>
#include <algorithm>
#include <filesystem>
#include <ledger/qt_text.h>
#include <session/filled.h>
#include <session/now.h>
#include <shop/folder_walk.h>
#include <shopserver/publish.h>
#include <shopserver/tables.h>
#include <store/file/path_text.h>
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

/// Sends records to one database, run by run, in its thread.
struct Publisher::Sender {
    WayBack<Publisher> back;
    PublishQueue queue;
    std::string service;
    std::vector<WaitingRecord> due;
    std::stop_token stop;
    int done = 0, of = 0; ///< records

    Sender(WayBack<Publisher> way, PublishQueue q) : back(std::move(way)), queue(std::move(q)) {}

    void run(std::string to, std::vector<WaitingRecord> records, const std::stop_token& token) {
        service = std::move(to);
        due = std::move(records);
        stop = token;
        done = 0;
        of = static_cast<int>(due.size());
        const QString away = publishAll();
        // Who has stopped it is not told that it is tried again.
        back.tell([away = stop.stop_requested() ? QString() : away](Publisher& publisher) { publisher.finish(away); });
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
        auto records = recordsAt(one.path, stop);
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
        back.tell([sentence = qtText(problem.sentence)](Publisher& to) {
            to.m_state.refused << sentence;
            emit to.told(sentence);
        });
    }

    QString publishOne(Connection& database, RecordPublisher& publisher, const std::string& path) {
        const QString name = nameOf(path);
        const auto follow = [this, name](int perCent) {
            back.tell([=, done_ = done, of_ = of](Publisher& to) { to.follow(name, done_, of_, perCent); });
        };
        follow(0);
        auto last = std::chrono::steady_clock::now();
        const auto published = publisher.publish(path, stop, [&](std::int64_t sent, std::int64_t all) {
            if (const auto present = std::chrono::steady_clock::now(); present - last > toldEvery) {
                last = present;
                follow(all == 0 ? 100 : static_cast<int>(100 * sent / all));
            }
        });
        if (!published && (database.isOffline() || !database.isOpen())) {
            return qtText(published.error().sentence);
        }
        if (published) {
            back.tell([sentence = filled(Publisher::tr("%1: %2"), name, qtText(sentenceOf(*published)))](
                          Publisher& to) { emit to.told(sentence); });
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

Publisher::Publisher(PublishQueue queue, QObject* parent)
    : QObject(parent), m_queue(std::move(queue)), m_sender(*this, endPatience, m_queue) {
    m_look.setInterval(lookEvery);
    connect(&m_look, &QTimer::timeout, this, &Publisher::lookAround);
    m_look.start();
    m_soon.setSingleShot(true);
    connect(&m_soon, &QTimer::timeout, this, &Publisher::keepChanged);
    QTimer::singleShot(0, this, &Publisher::lookAround); // what the last start left
}

Publisher::~Publisher() {
    keepChanged();
}

void Publisher::noteChanged(const QString& path) {
    const PublishSettings settings = PublishSettings::load();
    if (settings.schedule == PublishSchedule::never || settings.service.isEmpty()) {
        return;
    }
    m_changed.insert(pathBytes(path));
    if (!m_soon.isActive()) { // a row of readings is noted once: a note waits for the disk
        m_soon.start(noteAfter);
    }
}

/// What cannot be noted is kept and tried again: a change that nobody knows of would never be sent.
void Publisher::keepChanged() {
    QString problem;
    std::erase_if(m_changed, [&](const std::string& path) {
        const auto added = m_queue.addChanged(path, now());
        if (!added) {
            problem = qtText(added.error().sentence);
        }
        return added.has_value();
    });
    if (!m_changed.empty()) {
        m_soon.start(lookEvery);
    }
    if (std::exchange(m_state.notNoted, problem) != problem) {
        emit changed();
    }
}

QString Publisher::publish(const QStringList& filesAndFolders) {
    if (PublishSettings::load().service.isEmpty()) {
        return tr("Name the shop's database first.");
    }
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
    m_sender.stop();
    const UtcTime present = now();
    const std::vector<WaitingRecord> due = dueNow();
    for (WaitingRecord record : m_queue.waiting()) {
        const bool isDue = record.isAsked || std::ranges::find(due, record) != due.end();
        if (std::exchange(record.isAsked, false)) {
            m_queue.takeBack(record);
        }
        if (!isDue || record.since == UtcTime()) {
            continue; // its time has not come, or no change waits
        }
        m_queue.settle(record); // it begins to wait anew
        m_putOff[record.path] = present;
        if (const auto added = m_queue.addChanged(record.path, present); !added) {
            m_changed.insert(record.path);
            m_soon.start(noteAfter);
        }
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
        const auto putOff = m_putOff.find(record.path);
        const bool waitsForAnother = settings.schedule == PublishSchedule::eachChange && putOff != m_putOff.end() &&
                                     putOff->second == record.last;
        return !at || *at > present || waitsForAnother;
    });
    return due;
}

void Publisher::lookAround() {
    if (m_state.isRunning) {
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
    m_state.isRunning = true;
    m_state.done = 0;
    m_state.of = static_cast<int>(due.size());
    m_state.refused.clear();
    emit changed();
    m_sender.post(QStringLiteral("run"),
                  [to = PublishSettings::load().service.toStdString(),
                   due = std::move(due)](Sender& sender, const std::stop_token& stop) { sender.run(to, due, stop); });
}

void Publisher::follow(const QString& file, int done, int of, int perCent) {
    m_state.file = file;
    m_state.done = done;
    m_state.of = of;
    m_state.perCent = perCent;
    emit changed();
}

void Publisher::finish(const QString& away) {
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
    if (!m_state.notNoted.isEmpty()) {
        return tr("A change could not be noted to be published; it is tried again");
    }
    if (!m_state.refused.isEmpty()) {
        return filled(m_state.refused.size() == 1 ? tr("%1 record could not be published")
                                                  : tr("%1 records could not be published"),
                      m_state.refused.size());
    }
    return {};
}

} // namespace caprail
