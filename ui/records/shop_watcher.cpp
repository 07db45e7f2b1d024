// SPDX-License-Identifier: GPL-3.0-or-later
#include <records/shop_watcher.h>

#include <QElapsedTimer>
#include <QSet>
#include <QStringList>
#include <QTemporaryDir>
#include <condition_variable>
#include <mutex>
#include <thread>

namespace caprail {

namespace {

constexpr int afterChange = 400;        ///< milliseconds; a record's write makes several changes at once
constexpr int longestTurn = 600'000;    ///< milliseconds
constexpr int shortestTurn = 20'000;    ///< milliseconds
constexpr qsizetype mostWatched = 2000; ///< folders; the system has a limit of its own
constexpr auto patience = std::chrono::milliseconds(1500);

} // namespace

struct ShopWatcher::Shared {
    std::mutex mutex;
    std::condition_variable changed;
    ShopWatcher* target = nullptr; ///< null when the window is gone
    bool isWanted = true;          ///< a scan is asked for
    bool isEnding = false;
    bool isEnded = false;
    std::stop_source stop;
    std::string cacheFolder, root;

    /// Runs `call` on the window's thread, unless the window is gone.
    template <class Call> void tell(Call call) {
        const std::lock_guard lock(mutex);
        if (target != nullptr) {
            QMetaObject::invokeMethod(
                target, [to = target, call = std::move(call)] { call(*to); }, Qt::QueuedConnection);
        }
    }
    /// Waits until a scan is asked for; false: the end.
    bool nextScan(std::stop_token& token) {
        std::unique_lock lock(mutex);
        changed.wait(lock, [this] { return isWanted || isEnding; });
        isWanted = false;
        stop = std::stop_source();
        token = stop.get_token();
        return !isEnding;
    }
    void run();
    bool serve(const std::string& cache, const QString& problem);
    ScanEvents events();
};

ScanEvents ShopWatcher::Shared::events() {
    return {
        [this](std::vector<ShopRow> rows) {
            auto shared = std::make_shared<std::vector<ShopRow>>(std::move(rows));
            tell([shared](ShopWatcher& to) { emit to.rowsRead(shared); });
        },
        [this](const std::vector<std::int64_t>& ids) { tell([ids](ShopWatcher& to) { emit to.rowsGone(ids); }); },
        [this](const ScanProgress& progress) { tell([progress](ShopWatcher& to) { emit to.progressed(progress); }); }};
}

/// Scans whenever asked, through one index; false when the index failed and must be made anew.
bool ShopWatcher::Shared::serve(const std::string& cache, const QString& problem) {
    auto index = ShopIndex::open(cache, root);
    if (!index) {
        return false;
    }
    ShopScan scan(*index, root);
    if (!scan.load(events())) {
        return false;
    }
    // What is listed can be searched already; damage that shows only here is found before anything is added.
    tell([cache, problem](ShopWatcher& to) { emit to.indexReady(cache, problem); });
    if (!index->verify()) {
        return false;
    }
    std::stop_token token;
    while (nextScan(token)) {
        QElapsedTimer timer;
        timer.start();
        const auto report = scan.run(token, events());
        if (!report) {
            const std::lock_guard lock(mutex);
            isWanted = true;
            return isEnding;
        }
        tell([report = *report, took = timer.elapsed()](ShopWatcher& to) { to.take(report, took); });
    }
    return true;
}

void ShopWatcher::Shared::run() {
    // An index that fails twice in its place is kept for this window alone.
    const QTemporaryDir own;
    const QString notKept = tr("What is read cannot be kept in %1: at the next start every record is read again.")
                                .arg(QString::fromStdString(cacheFolder));
    for (const auto& [cache, problem] : {std::pair(cacheFolder, QString()), std::pair(cacheFolder, QString()),
                                         std::pair(own.path().toStdString(), notKept)}) {
        if (serve(cache, problem)) {
            break;
        }
        {
            const std::lock_guard lock(mutex);
            if (isEnding) {
                break;
            }
        }
        ShopIndex::discard(cache, root);
        tell([](ShopWatcher& to) { emit to.beganAnew(); });
    }
    const std::lock_guard lock(mutex);
    isEnded = true;
    changed.notify_all();
}

ShopWatcher::ShopWatcher(std::string cacheFolder, std::string root, QObject* parent)
    : QObject(parent), m_shared(std::make_shared<Shared>()), m_root(std::move(root)) {
    m_shared->target = this;
    m_shared->cacheFolder = std::move(cacheFolder);
    m_shared->root = m_root;
    m_soon.setSingleShot(true);
    m_soon.setInterval(afterChange);
    m_turn.setSingleShot(true);
    connect(&m_soon, &QTimer::timeout, this, &ShopWatcher::refresh);
    connect(&m_turn, &QTimer::timeout, this, &ShopWatcher::refresh);
    connect(&m_files, &QFileSystemWatcher::directoryChanged, &m_soon, qOverload<>(&QTimer::start));
    // Not joined: a thread that waits for a share that hangs would hold the window with it.
    std::thread([shared = m_shared] { shared->run(); }).detach();
}

ShopWatcher::~ShopWatcher() {
    std::unique_lock lock(m_shared->mutex);
    m_shared->target = nullptr;
    m_shared->isEnding = true;
    m_shared->stop.request_stop();
    m_shared->changed.notify_all();
    m_shared->changed.wait_for(lock, patience, [this] { return m_shared->isEnded; });
}

void ShopWatcher::refresh() {
    const std::lock_guard lock(m_shared->mutex);
    m_shared->isWanted = true;
    m_shared->changed.notify_all();
}

void ShopWatcher::stop() {
    const std::lock_guard lock(m_shared->mutex);
    m_shared->stop.request_stop();
}

void ShopWatcher::take(const ScanReport& report, qint64 milliseconds) {
    QStringList folders;
    for (const std::string& folder : report.folders) {
        if (folders.size() == mostWatched) {
            break;
        }
        folders << QString::fromStdString(folder.empty() ? m_root : m_root + "/" + folder);
    }
    const QStringList known = m_files.directories();
    const QSet<QString> watched(known.begin(), known.end());
    QStringList fresh;
    for (const QString& folder : folders) {
        if (!watched.contains(folder)) {
            fresh << folder;
        }
    }
    if (!fresh.isEmpty()) {
        m_files.addPaths(fresh);
    }
    // A slow share is looked at less often: one part in twenty of the time at most.
    m_turn.start(static_cast<int>(std::clamp<qint64>(milliseconds * 20, shortestTurn, longestTurn)));
    emit finished(report);
}

} // namespace caprail
