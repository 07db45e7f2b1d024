// SPDX-License-Identifier: GPL-3.0-or-later
/// What a file manager makes of a record: the file type with our magic, read by Qt's own MIME database.
#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QMimeDatabase>
#include <QTemporaryDir>
#include <gtest/gtest.h>

namespace {

/// Our rules alone, and nothing that this machine has installed (`.ci/installed` tries them beside all others).
const QTemporaryDir& dataFolder() {
    static const QTemporaryDir folder;
    return folder;
}

QString kindOf(const QByteArray& content, const QString& name) {
    const QString path = dataFolder().filePath(name);
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(content);
    file.close();
    return QMimeDatabase().mimeTypeForFile(path, QMimeDatabase::MatchContent).name();
}

QByteArray sample(const char* name) {
    QFile file(QStringLiteral(SAMPLE_BUILDS "/%1.caprail").arg(QString::fromUtf8(name)));
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    return file.readAll();
}

TEST(FileType, is_known_by_its_content_whatever_the_name) {
    for (const char* name : {"closed", "mid-survey", "moved-in-verify-round"}) {
        EXPECT_EQ(kindOf(sample(name), QStringLiteral("attachment.bin")), "application/x-caprail") << name;
    }
    const QMimeType kind = QMimeDatabase().mimeTypeForFile(QStringLiteral("x.caprail"), QMimeDatabase::MatchExtension);
    EXPECT_EQ(kind.name(), "application/x-caprail");
    EXPECT_EQ(kind.comment(), "Engine build record");
    EXPECT_TRUE(kind.parentMimeTypes().contains(QStringLiteral("application/vnd.sqlite3"))); // a shell opens it too
}

TEST(FileType, does_not_take_the_databases_of_others) {
    QByteArray other = sample("closed");
    other.replace(68, 4,
                  QByteArray(4, '\0')); // the application id: SQLite, "Database File Format", 1.3.14; from memory
    EXPECT_NE(kindOf(other, QStringLiteral("other.bin")), "application/x-caprail");
    QByteArray text = sample("closed");
    text.replace(0, 6, "nonsen");
    EXPECT_NE(kindOf(text, QStringLiteral("text.bin")), "application/x-caprail");
}

} // namespace

int main(int argc, char** argv) {
    QDir(dataFolder().path()).mkpath(QStringLiteral("mime/packages"));
    QFile::copy(QStringLiteral(DESKTOP_FILES "/caprail-mime.xml"),
                dataFolder().filePath(QStringLiteral("mime/packages/caprail.xml")));
    qputenv("XDG_DATA_DIRS", dataFolder().path().toUtf8());
    qputenv("XDG_DATA_HOME", dataFolder().filePath(QStringLiteral("none")).toUtf8());
    const QCoreApplication application(argc, argv);
    testing::InitGoogleTest(&argc, argv);
    return RUN_ALL_TESTS();
}
