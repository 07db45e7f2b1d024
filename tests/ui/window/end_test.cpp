// SPDX-License-Identifier: GPL-3.0-or-later
/// What becomes of a typed value when the program is to end, and of a record that has a window already.
#include "../pictures.h"

#include <QDir>
#include <QMessageBox>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>
#include <algorithm>
#include <gtest/gtest.h>
#include <memory>
#include <stations/common/entry_field.h>
#include <stations/common/station.h>
#include <sys/socket.h>
#include <sys/un.h>
#include <thread>
#include <unistd.h>
#include <vector>
#include <window/doorbell.h>
#include <window/main_window.h>
#include <window/run.h>
#include <window/shared_recent.h>

using namespace caprail;

namespace {

class End : public testing::Test {
protected:
    void SetUp() override {
        useSettingsIn(m_folder.path());
        m_record = m_folder.filePath("mid-survey.caprail");
        ASSERT_TRUE(QFile::copy(QStringLiteral(SAMPLE_BUILDS "/mid-survey.caprail"), m_record));
        QFile::setPermissions(m_record, QFile::ReadOwner | QFile::WriteOwner);
        m_window = std::make_unique<MainWindow>();
        m_window->setAttribute(Qt::WA_DeleteOnClose, false);
        ASSERT_TRUE(m_window->openFile(m_record));
        m_window->showDestination({Station::girdle, "4R"});
        m_field = m_window->panel(Station::girdle)->entryField();
        ASSERT_NE(m_field, nullptr);
    }
    /// Presses this button of the next question; counts the questions.
    void answer(QMessageBox::StandardButton button) {
        QTimer::singleShot(50, m_window.get(), [this, button] {
            if (auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget())) {
                ++m_asked;
                box->button(button)->click();
            }
        });
    }
    QTemporaryDir m_folder;
    QString m_record;
    std::unique_ptr<MainWindow> m_window;
    EntryField* m_field = nullptr;
    int m_asked = 0;
};

} // namespace

TEST_F(End, of_the_session_asks_for_a_typed_value_once_and_may_be_called_off) {
    EXPECT_TRUE(mayEnd(true)) << "nothing is typed";
    m_field->type("0.0575");
    EXPECT_FALSE(mayEnd(false)) << "nobody can be asked, and the value would be lost";
    answer(QMessageBox::Cancel);
    EXPECT_FALSE(mayEnd(true));
    EXPECT_EQ(m_asked, 1);
    EXPECT_EQ(m_field->text(), "0.0575");
    answer(QMessageBox::Discard);
    EXPECT_TRUE(mayEnd(true));
    EXPECT_EQ(m_asked, 2);
    EXPECT_TRUE(mayEnd(true)) << "what was given up is not asked for again";
    EXPECT_EQ(m_asked, 2);
}

TEST_F(End, by_a_signal_closes_without_a_question) {
    m_field->type("0.0575");
    answer(QMessageBox::Cancel);
    m_window->closeUnasked();
    EXPECT_FALSE(m_window->isVisible());
    EXPECT_EQ(m_asked, 0);
}

TEST_F(End, a_record_stands_in_the_list_that_the_desktop_s_programs_share) {
    const QString list = m_folder.filePath("data/recently-used.xbel");
    noteInSharedRecent(m_record);
    noteInSharedRecent(m_record);
    QFile file(list);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const QByteArray text = file.readAll();
    EXPECT_EQ(text.count("mid-survey.caprail\""), 1) << text.toStdString();
    EXPECT_TRUE(text.contains("application/x-caprail"));
    file.close();
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write("another program's");
    file.close();
    noteInSharedRecent(m_record);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_EQ(file.readAll(), "another program's") << "what cannot be read is not written over";
}

TEST_F(End, records_that_are_noted_at_a_time_all_stand_in_the_shared_list) {
    constexpr int count = 8, each = 6;
    std::vector<std::thread> windows;
    for (int i = 0; i < count; ++i) {
        windows.emplace_back([i] {
            for (int n = 0; n < each; ++n) {
                noteInSharedRecent(QStringLiteral("/engines/%1-%2.caprail").arg(i).arg(n));
            }
        });
    }
    for (std::thread& window : windows) {
        window.join();
    }
    QFile file(m_folder.filePath("data/recently-used.xbel"));
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const QByteArray text = file.readAll();
    for (int i = 0; i < count; ++i) {
        for (int n = 0; n < each; ++n) {
            EXPECT_TRUE(text.contains("/engines/" + QByteArray::number(i) + '-' + QByteArray::number(n) + ".caprail"))
                << i << " " << n;
        }
    }
}

TEST_F(End, a_second_window_of_a_record_leaves_the_bell_of_the_first_where_it_hangs) {
    const QTemporaryDir runtime;
    const QByteArray before = qgetenv("XDG_RUNTIME_DIR");
    qputenv("XDG_RUNTIME_DIR", runtime.path().toUtf8());
    QWidget window;
    Doorbell first(&window);
    first.hangAt(m_record);
    {
        QWidget other;
        Doorbell second(&other);
        second.hangAt(m_record); // it only reads
    }
    const QStringList bells = QDir(runtime.path()).entryList({"caprail-*"}, QDir::System);
    ASSERT_EQ(bells.size(), 1);
    sockaddr_un address{};
    address.sun_family = AF_UNIX;
    const QByteArray path = runtime.filePath(bells.front()).toUtf8();
    std::copy_n(path.constData(), std::min<std::size_t>(static_cast<std::size_t>(path.size()), sizeof address.sun_path - 1),
                address.sun_path);
    const int visitor = ::socket(AF_UNIX, SOCK_STREAM, 0);
    EXPECT_EQ(::connect(visitor, reinterpret_cast<const sockaddr*>(&address), sizeof address), 0) << "somebody is at home";
    ::close(visitor);
    qputenv("XDG_RUNTIME_DIR", before);
}

TEST_F(End, a_record_has_one_window) {
    MainWindow other;
    other.setAttribute(Qt::WA_DeleteOnClose, false);
    EXPECT_TRUE(other.openFile(m_record));
    EXPECT_EQ(other.session(), nullptr) << "it would only read";
    EXPECT_TRUE(m_window->isVisible());
}
