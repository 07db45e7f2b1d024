// SPDX-License-Identifier: GPL-3.0-or-later
/// What the desktop asks over a bus: on one of the test's own, which goes with it.
#include "../pictures.h"

#include <QApplication>
#include <QDBusMessage>
#include <QDBusPendingCall>
#include <QFile>
#include <QProcess>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>
#include <QUrl>
#include <gtest/gtest.h>
#include <window/desktop_calls.h>
#include <window/new_record_dialog.h>
#include <window/open_windows.h>

using namespace caprail;

namespace {

const QString busName = QStringLiteral("io.github.caprail.Caprail");

class DesktopBus : public testing::Test {
protected:
    void SetUp() override {
        useSettingsIn(m_folder.path());
        qputenv("XDG_RUNTIME_DIR", m_folder.path().toUtf8());
        m_daemon.start(QStringLiteral("dbus-daemon"),
                       {QStringLiteral("--session"), QStringLiteral("--nofork"), QStringLiteral("--print-address=1")});
        if (!m_daemon.waitForStarted(5000) || !m_daemon.waitForReadyRead(20000)) {
            GTEST_SKIP() << "there is no dbus-daemon: apt-get install dbus";
        }
        m_address = QString::fromUtf8(m_daemon.readLine()).trimmed();
    }
    void TearDown() override {
        for (const auto& window : openWindows<MainWindow>()) {
            window->closeUnasked();
        }
        QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete); // before the folder goes
        QDBusConnection::disconnectFromBus(QStringLiteral("program"));
        QDBusConnection::disconnectFromBus(QStringLiteral("desktop"));
        m_daemon.kill();
        m_daemon.waitForFinished();
    }
    [[nodiscard]] QDBusConnection connection(const QString& name) const {
        return QDBusConnection::connectToBus(m_address, name);
    }
    /// The desktop calls, and the program answers.
    QDBusMessage call(const QString& method, const QVariantList& arguments) {
        QDBusMessage message = QDBusMessage::createMethodCall(busName, QStringLiteral("/io/github/caprail/Caprail"),
                                                              QStringLiteral("org.freedesktop.Application"), method);
        message.setArguments(arguments);
        const QDBusPendingCall pending = connection(QStringLiteral("desktop")).asyncCall(message, 20000);
        EXPECT_TRUE(QTest::qWaitFor([&] { return pending.isFinished(); }, 20000));
        return pending.reply();
    }
    QString record(const QString& name) {
        const QString copy =
            m_folder.filePath(name + QStringLiteral(" of ours.caprail")); // blanks are %20 in an address
        EXPECT_TRUE(QFile::copy(QStringLiteral(SAMPLE_BUILDS "/") + name + QStringLiteral(".caprail"), copy));
        QFile::setPermissions(copy, QFile::ReadOwner | QFile::WriteOwner);
        return copy;
    }
    QTemporaryDir m_folder;
    QProcess m_daemon;
    QString m_address;
};

QStringList addressesOf(const QString& path) {
    return {QString::fromUtf8(QUrl::fromLocalFile(path).toEncoded())};
}

TEST_F(DesktopBus, opens_a_record_in_one_window_however_often_it_is_asked_for) {
    QObject program;
    ASSERT_NE(DesktopCalls::answerOn(connection(QStringLiteral("program")), &program), nullptr);
    const QString path = record(QStringLiteral("mid-survey"));
    for (int n = 0; n < 2; ++n) {
        const QVariantMap platform{{QStringLiteral("activation-token"), QStringLiteral("token-%1").arg(n)}};
        EXPECT_EQ(call(QStringLiteral("Open"), {addressesOf(path), platform}).type(), QDBusMessage::ReplyMessage);
        ASSERT_TRUE(QTest::qWaitFor([] { return openWindows<MainWindow>().size() == 1; }, 20000)) << n;
        EXPECT_EQ(qgetenv("XDG_ACTIVATION_TOKEN"), QByteArray("token-") + QByteArray::number(n));
    }
    QTest::qWait(50);
    ASSERT_EQ(openWindows<MainWindow>().size(), 1U);
    EXPECT_EQ(openWindows<MainWindow>().front()->session()->path(), path);
}

TEST_F(DesktopBus, shows_one_start_page_and_the_questions_for_a_new_record) {
    QObject program;
    ASSERT_NE(DesktopCalls::answerOn(connection(QStringLiteral("program")), &program), nullptr);
    for (int n = 0; n < 2; ++n) {
        call(QStringLiteral("Activate"), {QVariantMap()});
        ASSERT_TRUE(QTest::qWaitFor([] { return openWindows<MainWindow>().size() == 1; }, 20000)) << n;
    }
    EXPECT_EQ(openWindows<MainWindow>().front()->session(), nullptr);
    int asked = 0;
    QTimer closer; // the questions have an event loop of their own
    QObject::connect(&closer, &QTimer::timeout, [&asked] {
        if (auto* dialog = qobject_cast<NewRecordDialog*>(QApplication::activeModalWidget())) {
            ++asked;
            dialog->reject();
        }
    });
    closer.start(20);
    call(QStringLiteral("ActivateAction"), {QStringLiteral("new-record"), QVariantList(), QVariantMap()});
    EXPECT_TRUE(QTest::qWaitFor([&asked] { return asked == 1; }, 20000));
    const QDBusMessage refused =
        call(QStringLiteral("ActivateAction"), {QStringLiteral("fly"), QVariantList(), QVariantMap()});
    EXPECT_EQ(refused.errorName(), "org.freedesktop.DBus.Error.InvalidArgs");
    EXPECT_EQ(refused.errorMessage(), QStringLiteral("Caprail has no action “fly”: ask for new-record or shop."));
}

TEST_F(DesktopBus, is_answered_by_the_first_program_alone) {
    QObject first;
    QObject second;
    ASSERT_NE(DesktopCalls::answerOn(connection(QStringLiteral("program")), &first), nullptr);
    EXPECT_EQ(DesktopCalls::answerOn(connection(QStringLiteral("desktop")), &second), nullptr);
}

TEST(DesktopCalls, are_done_without_where_a_session_has_no_bus) {
    const QTemporaryDir folder;
    qputenv("XDG_RUNTIME_DIR", folder.path().toUtf8());
    qunsetenv("DBUS_SESSION_BUS_ADDRESS");
    QObject program;
    EXPECT_EQ(DesktopCalls::answerOn(DesktopCalls::sessionBus(), &program), nullptr);
    EXPECT_FALSE(DesktopCalls::sessionBus().isConnected());
}

} // namespace
