// SPDX-License-Identifier: GPL-3.0-or-later
/// The window as a process of the desktop: asked to end, and started a second time for the same record.
#include "program.h"

#include <QDir>
#include <QElapsedTimer>
#include <QThread>
#include <csignal>
#include <memory>

using namespace called;

namespace {

class WindowProcess : public Folder {
protected:
    /// The program on a desktop of its own: no screen, its own settings and runtime folder.
    std::unique_ptr<QProcess> started(const QStringList& arguments) {
        auto process = std::make_unique<QProcess>();
        QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
        QDir(at(QString())).mkpath(QStringLiteral("runtime"));
        QFile::setPermissions(at("runtime"), QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner);
        environment.insert("QT_QPA_PLATFORM", "offscreen");
        environment.insert("XDG_RUNTIME_DIR", at("runtime"));
        environment.insert("XDG_CONFIG_HOME", at("config"));
        environment.insert("XDG_DATA_HOME", at("data"));
        process->setProcessEnvironment(environment);
        process->start(QStringLiteral(CAPRAIL_PROGRAM), arguments);
        EXPECT_TRUE(process->waitForStarted());
        return process;
    }
    /// The window has the record: its doorbell hangs.
    [[nodiscard]] bool waitForWindow() const {
        QElapsedTimer time;
        for (time.start(); time.elapsed() < 20'000; QThread::msleep(20)) {
            if (!QDir(at("runtime")).entryList({"caprail-*"}, QDir::AllEntries | QDir::System).isEmpty()) {
                return true;
            }
        }
        return false;
    }
};

} // namespace

TEST_F(WindowProcess, closes_properly_when_the_session_or_the_terminal_ends_it) {
    for (const int signal : {SIGTERM, SIGHUP, SIGINT}) {
        const QString record = copyOf("mid-survey");
        const auto window = started({record});
        ASSERT_TRUE(waitForWindow());
        EXPECT_TRUE(QFile::exists(at(".mid-survey.caprail.lock")));
        ::kill(static_cast<pid_t>(window->processId()), signal);
        ASSERT_TRUE(window->waitForFinished(20'000)) << signal;
        EXPECT_EQ(window->exitStatus(), QProcess::NormalExit) << signal;
        EXPECT_EQ(window->exitCode(), 0);
        EXPECT_FALSE(QFile::exists(at(".mid-survey.caprail.lock"))) << "another computer could not tell who left it";
        EXPECT_TRUE(bytesOf(at("config/caprail/caprail.conf")).contains("geometry")) << signal;
        QFile::remove(at("config/caprail/caprail.conf"));
        QFile::remove(record);
    }
}

TEST_F(WindowProcess, a_record_that_is_opened_a_second_time_brings_its_window_to_the_front) {
    const QString record = copyOf("mid-survey");
    QFile::link(record, at("by-another-name.caprail"));
    const auto first = started({record});
    ASSERT_TRUE(waitForWindow());
    for (const char* name : {"mid-survey.caprail", "by-another-name.caprail"}) {
        const auto second = started({at(name)});
        ASSERT_TRUE(second->waitForFinished(20'000)) << "it would be a second window, which only reads";
        EXPECT_EQ(second->exitCode(), 0);
        EXPECT_EQ(first->state(), QProcess::Running);
    }
    // What a program left that was killed does not keep the record closed.
    first->kill();
    first->waitForFinished();
    const auto third = started({record});
    EXPECT_FALSE(third->waitForFinished(1'500));
    third->terminate();
    EXPECT_TRUE(third->waitForFinished(20'000));
}
