// SPDX-License-Identifier: GPL-3.0-or-later
#include <window/shared_recent.h>

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QLockFile>
#include <QStandardPaths>
#include <QUrl>
#include <memory>
#include <mutex>

// GLib names a member “signals”, which Qt takes for a word of its own.
#undef signals
#include <glib.h>

namespace caprail {

void noteInSharedRecent(const QString& path) {
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation);
    const QByteArray list = QFile::encodeName(folder + QStringLiteral("/recently-used.xbel"));
    // Two that read it at a time would each write it without the other's record: windows of this program, which wait in
    // a row, and other programs, which are asked again and again.
    static std::mutex windows;
    const std::lock_guard inARow(windows);
    constexpr int patience = 2000; // milliseconds
    QLockFile lock(folder + QStringLiteral("/.recently-used.caprail-lock"));
    if (!QDir().mkpath(folder) || !lock.tryLock(patience)) {
        return;
    }
    const QByteArray url = QUrl::fromLocalFile(QFileInfo(path).absoluteFilePath()).toEncoded();
    const std::unique_ptr<GBookmarkFile, decltype(&g_bookmark_file_free)> bookmarks(g_bookmark_file_new(),
                                                                                    &g_bookmark_file_free);
    if (QFile::exists(QFile::decodeName(list)) &&
        g_bookmark_file_load_from_file(bookmarks.get(), list.constData(), nullptr) == 0) {
        return; // of another form than this: not ours to write over
    }
    g_bookmark_file_set_mime_type(bookmarks.get(), url.constData(), "application/x-caprail");
    g_bookmark_file_add_application(bookmarks.get(), url.constData(), "Caprail", "caprail %u");
    g_bookmark_file_to_file(bookmarks.get(), list.constData(), nullptr);
}

} // namespace caprail
