// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// The built program, called as a person or a script would.
#include <QFile>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QTemporaryDir>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace called {

struct Answer {
    int exitCode = -1;
    std::string out, err;
    [[nodiscard]] QJsonObject json() const { return QJsonDocument::fromJson(QByteArray::fromStdString(out)).object(); }
};

/// `without` are environment variables that the process does not see.
inline Answer run(const QString& program, const QStringList& arguments, const QByteArray& input = {},
                  const QStringList& without = {}) {
    QProcess process;
    QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
    for (const QString& name : without) {
        environment.remove(name);
    }
    process.setProcessEnvironment(environment);
    process.start(program, arguments);
    process.write(input);
    process.closeWriteChannel();
    EXPECT_TRUE(process.waitForFinished(60'000))
        << program.toStdString() << ": " << process.errorString().toStdString();
    EXPECT_EQ(process.exitStatus(), QProcess::NormalExit);
    return {process.exitCode(), process.readAllStandardOutput().toStdString(),
            process.readAllStandardError().toStdString()};
}

inline Answer caprail(const QStringList& arguments, const QByteArray& input = {}) {
    return run(QStringLiteral(CAPRAIL_PROGRAM), arguments, input);
}

inline QByteArray bytesOf(const QString& path) {
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
    return file.readAll();
}

/// A folder of its own to work in.
class Folder : public testing::Test {
protected:
    [[nodiscard]] QString at(const QString& name) const { return m_folder.filePath(name); }
    QString write(const QString& name, const QByteArray& text) const {
        QFile file(at(name));
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(text);
        return at(name);
    }
    /// A writable copy of a sample record.
    [[nodiscard]] QString copyOf(const QString& sample) const {
        const QString copy = at(sample + QStringLiteral(".caprail"));
        EXPECT_TRUE(QFile::copy(QStringLiteral(SAMPLE_BUILDS "/") + sample + QStringLiteral(".caprail"), copy));
        QFile::setPermissions(copy, QFile::ReadOwner | QFile::WriteOwner);
        return copy;
    }

private:
    QTemporaryDir m_folder;
};

} // namespace called
