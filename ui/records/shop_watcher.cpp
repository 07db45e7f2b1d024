// SPDX-License-Identifier: GPL-3.0-or-later
#include <records/shop_watcher.h>

#include <QElapsedTimer>
#include <QSet>
#include <QStringList>
#include <QTemporaryDir>
#include <algorithm>
#include <optional>
#include <session/filled.h>

namespace caprail {

namespace {

constexpr int afterChange = 400;        ///< milliseconds; a record's write makes several changes at once
constexpr int longestTurn = 600'000;    ///< milliseconds
constexpr int shortestTurn = 20'000;    ///< milliseconds
constexpr qsizetype mostWatched = 2000; ///< folders; the system has a limit of its own
constexpr auto patience = std::chrono::milliseconds(1500);

} // namespace

struct ShopWatcher::Reader {
    WayBack<ShopWatcher> back;
    std::string cacheFolder, root;
    int failures = 0;                 ///< of indexes; after the last attempt nothing is read any more
    std::optional<QTemporaryDir> own; ///< where the index lies that is kept for this window alone
    std::optional<ShopIndex> index;
    std::optional<ShopScan> scan; ///< through the index

    Reader(WayBack<ShopWatcher> way, std::string cache, std::string folder)
        : back(std::move(way)), cacheFolder(std::move(cache)), root(std::move(folder)) {}

    /// Where the index lies. One that failed twice in its place is kept for this window alone.
    std::string cache() {
        if (failures < 2) {
            return cacheFolder;
        }
        if (!own) {
            own.emplace();
        }
        return own->path().toStdString();
    }
    ScanEvents events();
    bool begin();
    bool look(const std::stop_token& stop);
    void read(const std::stop_token& stop);
};

ScanEvents ShopWatcher::Reader::events() {
    return {
        [this](std::vector<ShopRow> rows) {
            auto shared = std::make_shared<std::vector<ShopRow>>(std::move(rows));
            back.tell([shared](ShopWatcher& to) { emit to.rowsRead(shared); });
        },
        [this](const std::vector<std::int64_t>& ids) { back.tell([ids](ShopWatcher& to) { emit to.rowsGone(ids); }); },
        [this](const ScanProgress& progress) {
            back.tell([progress](ShopWatcher& to) { emit to.progressed(progress); });
        }};
}

/// Opens the index and lists what it knows; false when it failed.
bool ShopWatcher::Reader::begin() {
    const std::string place = cache();
    auto opened = ShopIndex::open(place, root);
    if (!opened) {
        return false;
    }
    index.emplace(std::move(*opened));
    scan.emplace(*index, root);
    if (!scan->load(events())) {
        return false;
    }
    // What is listed can be searched already; damage that shows only here is found before anything is added.
    const QString problem =
        own ? filled(tr("What is read cannot be kept in %1: at the next start every record is read again."),
                     QString::fromStdString(cacheFolder))
            : QString();
    back.tell([place, problem](ShopWatcher& to) { emit to.indexReady(place, problem); });
    return index->verify().has_value();
}

/// Scans once; false when the index failed.
bool ShopWatcher::Reader::look(const std::stop_token& stop) {
    if (!scan && !begin()) {
        return false;
    }
    QElapsedTimer timer;
    timer.start();
    const auto report = scan->run(stop, events());
    if (report) {
        back.tell([report = *report, took = timer.elapsed()](ShopWatcher& to) { to.take(report, took); });
    }
    return report.has_value() || stop.stop_requested();
}

/// Scans, with an index that is made anew where the one before failed.
void ShopWatcher::Reader::read(const std::stop_token& stop) {
    constexpr int attempts = 3;
    while (failures < attempts && !look(stop)) {
        scan.reset();
        index.reset();
        ShopIndex::discard(cache(), root);
        ++failures;
        back.tell([](ShopWatcher& to) { emit to.beganAnew(); });
    }
}

ShopWatcher::ShopWatcher(std::string cacheFolder, std::string root, QObject* parent)
    : QObject(parent), m_root(std::move(root)), m_reader(*this, patience, std::move(cacheFolder), m_root) {
    m_soon.setSingleShot(true);
    m_soon.setInterval(afterChange);
    m_turn.setSingleShot(true);
    connect(&m_soon, &QTimer::timeout, this, &ShopWatcher::refresh);
    connect(&m_turn, &QTimer::timeout, this, &ShopWatcher::refresh);
    connect(&m_files, &QFileSystemWatcher::directoryChanged, &m_soon, qOverload<>(&QTimer::start));
    refresh();
}

ShopWatcher::~ShopWatcher() = default;

void ShopWatcher::refresh() {
    m_reader.post(QStringLiteral("look"), [](Reader& reader, const std::stop_token& stop) { reader.read(stop); });
}

void ShopWatcher::stop() {
    m_reader.stop();
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
