// SPDX-License-Identifier: GPL-3.0-or-later
#include <window/samples.h>

#include <QCoreApplication>
#include <QDir>
#include <QFileInfo>
#include <QStandardPaths>
#include <store/file/new_file.h>
#include <store/file/path_text.h>
#include <store/file/read_file.h>

namespace caprail {

QStringList sampleFiles() {
    QStringList folders = QStandardPaths::locateAll(QStandardPaths::AppDataLocation, QStringLiteral("sample-builds"),
                                                    QStandardPaths::LocateDirectory);
    // From the build tree the samples lie three folders up: build/release/app/caprail.
    folders << QCoreApplication::applicationDirPath() + QStringLiteral("/../../../sample-builds")
            << QCoreApplication::applicationDirPath() + QStringLiteral("/../share/caprail/sample-builds");
    for (const QString& folder : folders) {
        QStringList files;
        for (const QFileInfo& file :
             QDir(folder).entryInfoList({QStringLiteral("*.caprail")}, QDir::Files, QDir::Name)) {
            files << file.canonicalFilePath();
        }
        if (!files.isEmpty()) {
            return files;
        }
    }
    return {};
}

Result<void> copySample(const QString& sample, const QString& copy) {
    constexpr std::int64_t largest = std::int64_t{64} * 1024 * 1024; // bytes
    const auto bytes = readWholeFile(pathBytes(sample), largest);
    return bytes ? makeNewFile(pathBytes(copy), *bytes) : Result<void>(tl::unexpected(bytes.error()));
}

} // namespace caprail
