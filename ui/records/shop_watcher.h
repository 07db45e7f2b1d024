// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QFileSystemWatcher>
#include <QObject>
#include <QTimer>
#include <memory>
#include <session/apart.h>
#include <shop/shop_scan.h>

namespace caprail {

/// Keeps the list of a folder up to date from a thread of its own: what the index knows at once, then what a scan
/// finds, then every change. Where the system tells no changes (a network share) the folder is looked at in turns. A
/// share that hangs stops this thread alone; closing the window does not wait for it.
class ShopWatcher : public QObject {
    Q_OBJECT
public:
    /// `root` is the folder's real path as bytes.
    ShopWatcher(std::string cacheFolder, std::string root, QObject* parent = nullptr);
    ~ShopWatcher() override;

    /// Looks at the folder now.
    void refresh();
    /// Stops the scan that runs; what it found stays.
    void stop();
    [[nodiscard]] const std::string& root() const { return m_root; }

signals:
    void rowsRead(std::shared_ptr<std::vector<caprail::ShopRow>> rows);
    void rowsGone(const std::vector<std::int64_t>& ids);
    void progressed(const caprail::ScanProgress& progress);
    void finished(const caprail::ScanReport& report);
    /// The index is there and may be searched; in another folder than wished when that cannot be written.
    void indexReady(const std::string& cacheFolder, const QString& problem);
    /// The index was damaged: everything listed is read anew.
    void beganAnew();

private:
    void take(const ScanReport& report, qint64 milliseconds);

    struct Reader; ///< of the folder, in its thread
    std::string m_root;
    Apart<Reader, ShopWatcher> m_reader;
    QFileSystemWatcher m_files;
    QTimer m_soon; ///< several changes at a time make one scan
    QTimer m_turn; ///< for what the system tells nothing about
};

} // namespace caprail
