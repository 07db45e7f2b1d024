// SPDX-License-Identifier: GPL-3.0-or-later
/// The one rule for keys, tried over every station and everything that takes the keyboard there.
#include "../every_view.h"
#include "../mnemonics.h"
#include "../pictures.h"

#include <QApplication>
#include <QDialog>
#include <QFile>
#include <QLineEdit>
#include <QMenuBar>
#include <QMessageBox>
#include <QPushButton>
#include <QScreen>
#include <QSettings>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <session/language.h>
#include <stations/common/entry_field.h>
#include <stations/common/station.h>
#include <window/main_window.h>

using namespace caprail;

namespace {

constexpr Station stations[] = {Station::engine,   Station::bearings, Station::fasteners, Station::girdle,
                                Station::trialFit, Station::pickup,   Station::closing,   Station::history};

class Keys : public testing::Test {
protected:
    void SetUp() override { useSettingsIn(m_folder.path()); }
    std::unique_ptr<MainWindow> opened(const QString& sample, const QString& as = QStringLiteral("record")) {
        const QString copy = m_folder.filePath(sample + as + QStringLiteral(".caprail"));
        EXPECT_TRUE(QFile::copy(QStringLiteral(SAMPLE_BUILDS "/") + sample + QStringLiteral(".caprail"), copy));
        QFile::setPermissions(copy, QFile::ReadOwner | QFile::WriteOwner);
        auto window = std::make_unique<MainWindow>();
        window->setAttribute(Qt::WA_DeleteOnClose, false);
        window->show();
        EXPECT_TRUE(window->openFile(copy));
        return window;
    }
    QTemporaryDir m_folder;
};

/// A key that lies under a glove: what a window system sends after the first press.
void hold(QWidget* widget, Qt::Key key, const QString& text, Qt::KeyboardModifiers modifiers = {}) {
    for (int i = 0; i < 20; ++i) {
        QKeyEvent override(QEvent::ShortcutOverride, key, modifiers, text, true);
        QApplication::sendEvent(widget, &override);
        QKeyEvent press(QEvent::KeyPress, key, modifiers, text, true);
        QApplication::sendEvent(widget, &press);
    }
}

/// Holds every key that answers something, on whatever can have the keyboard now; gives how many widgets that were.
int holdEverywhere(const QWidget& window) {
    int tried = 0;
    for (QWidget* widget : window.findChildren<QWidget*>()) {
        if (!widget->isVisible() || !widget->isEnabled() || widget->focusPolicy() == Qt::NoFocus) {
            continue;
        }
        widget->setFocus();
        ++tried;
        for (const auto& [key, text] : {std::pair{Qt::Key_Return, "\r"},
                                        {Qt::Key_Enter, "\r"},
                                        {Qt::Key_Space, " "},
                                        {Qt::Key_H, "h"},
                                        {Qt::Key_D, "d"},
                                        {Qt::Key_R, "r"},
                                        {Qt::Key_L, "l"},
                                        {Qt::Key_P, "p"},
                                        {Qt::Key_J, "j"}}) {
            hold(widget, key, QString::fromUtf8(text));
        }
        hold(widget, Qt::Key_Z, {}, Qt::ControlModifier);
        hold(widget, Qt::Key_Return, "\r", Qt::ControlModifier);
    }
    return tried;
}

/// Closes whatever dialog opens meanwhile, and counts.
class DialogCloser {
public:
    DialogCloser() {
        m_timer.setInterval(5);
        QObject::connect(&m_timer, &QTimer::timeout, [this] {
            if (auto* dialog = qobject_cast<QDialog*>(QApplication::activeModalWidget())) {
                ++seen;
                text += dialog->windowTitle();
                if (const auto* box = qobject_cast<QMessageBox*>(dialog)) {
                    text += QLatin1Char(' ') + box->text();
                }
                dialog->reject();
            }
        });
        m_timer.start();
    }
    int seen = 0;
    QString text;

private:
    QTimer m_timer;
};

/// The field that a gap is typed into, on its page.
EntryField* gapField(MainWindow& window) {
    window.showDestination({Station::girdle, {}});
    QApplication::processEvents();
    return window.panel(Station::girdle)->entryField();
}

} // namespace

TEST_F(Keys, behind_alt_lead_to_one_thing_on_every_page_in_every_language) {
    for (const QString& language : languages()) {
        speak(language);
        const auto window = opened(QStringLiteral("closed"), language);
        inEveryView(*window, [](const std::string&) {}); // pages are made when they are first shown
        int letters = 0;
        EXPECT_EQ(sharedPageLetters(*window, letters), "") << qPrintable(language);
        EXPECT_GT(letters, 40) << qPrintable(language);
    }
}

TEST_F(Keys, that_are_held_down_store_nothing_at_any_station) {
    for (const char* sample : {"mid-survey", "moved-in-verify-round"}) {
        const auto window = opened(sample);
        const DialogCloser dialogs;
        const auto before = window->session()->ledger().size();
        int tried = 0;
        for (const Station station : stations) {
            for (const Qt::Key view : {Qt::Key_1, Qt::Key_2, Qt::Key_3, Qt::Key_4, Qt::Key_5, Qt::Key_6, Qt::Key_7}) {
                window->showDestination({station, {}});
                QTest::keyClick(window.get(), view, Qt::AltModifier);
                QApplication::processEvents();
                tried += holdEverywhere(*window);
            }
        }
        QApplication::processEvents();
        EXPECT_GT(tried, 100);
        EXPECT_EQ(window->session()->ledger().size(), before) << sample;
        EXPECT_EQ(dialogs.seen, 0) << sample << " " << dialogs.text.toStdString();
    }
}

TEST_F(Keys, that_are_held_down_still_move_about_and_take_text_away) {
    const auto window = opened("mid-survey");
    EntryField* field = gapField(*window);
    ASSERT_NE(field, nullptr);
    field->type(QStringLiteral("57.5 thou"));
    hold(field->lineEdit(), Qt::Key_Backspace, QStringLiteral("\b"));
    EXPECT_EQ(field->text(), "");
}

TEST_F(Keys, undo_what_is_typed_and_then_strike_the_last_entry) {
    const auto window = opened("mid-survey");
    window->showDestination(Destination(window->session()->assessment().next.destination));
    QApplication::processEvents();
    auto* field = qobject_cast<QLineEdit*>(window->focusWidget());
    ASSERT_NE(field, nullptr);
    const auto next = parsePosition(window->session()->assessment().next.destination.subject);
    ASSERT_TRUE(next);
    const Length read = window->session()->facts().gaps.at(*next).front().what.value();
    QTest::keyClicks(field, QString::fromStdString(formatBare(read, {})));
    QTest::keyClick(field, Qt::Key_Return);
    QApplication::processEvents();
    const auto stored = window->session()->ledger().size();
    const DialogCloser dialogs;
    QTest::keyClick(field, Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(field->text(), "") << "the stored text must not come back at the next place";
    EXPECT_EQ(dialogs.seen, 1) << "the reason for striking is asked";
    EXPECT_EQ(window->session()->ledger().size(), stored) << "and nothing is struck without it";
    QTest::keyClicks(field, QStringLiteral("12"));
    QTest::keyClick(field, Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(dialogs.seen, 1) << "while something is typed, it is a text that is undone";
}

TEST_F(Keys, of_the_program_work_while_the_field_has_the_keyboard) {
    const auto window = opened("mid-survey");
    EntryField* field = gapField(*window);
    ASSERT_NE(field, nullptr);
    field->lineEdit()->setFocus();
    const LengthUnit before = window->session()->units().length;
    QTest::keyClick(field->lineEdit(), Qt::Key_U, Qt::ControlModifier);
    QApplication::processEvents();
    EXPECT_NE(window->session()->units().length, before) << "Ctrl+U";
    field->type(QStringLiteral(".0601"));
    for (const auto& [key, text] : {std::pair{Qt::Key_1, '1'}, {Qt::Key_L, 'l'}, {Qt::Key_Q, 'q'}}) {
        QKeyEvent press(QEvent::KeyPress, key, Qt::AltModifier, QString(QLatin1Char(text)));
        QApplication::sendEvent(field->lineEdit(), &press);
    }
    EXPECT_EQ(field->text(), ".0601") << "Alt is never text";
    QTest::keyClick(field->lineEdit(), Qt::Key_Escape);
    EXPECT_EQ(field->text(), "") << "Esc empties the field";
}

TEST_F(Keys, enter_presses_the_button_that_has_the_focus) {
    const auto window = opened("mid-survey");
    QPushButton button(window.get());
    button.show();
    int pressed = 0;
    QObject::connect(&button, &QPushButton::clicked, [&] { ++pressed; });
    QTest::keyClick(&button, Qt::Key_Return);
    QTest::keyClick(&button, Qt::Key_Enter);
    EXPECT_EQ(pressed, 2);
    hold(&button, Qt::Key_Return, "\r");
    EXPECT_EQ(pressed, 2);
}

TEST_F(Keys, enter_presses_the_button_of_a_dialog_that_has_the_focus_and_not_the_default_one) {
    const auto window = opened("mid-survey"); // the rule goes with a window
    QDialog dialog;
    QPushButton folder(&dialog), publish(&dialog);
    folder.setAutoDefault(false);
    publish.setDefault(true);
    int chosen = 0, published = 0;
    QObject::connect(&folder, &QPushButton::clicked, [&] { ++chosen; });
    QObject::connect(&publish, &QPushButton::clicked, [&] { ++published; });
    dialog.show();
    QTest::keyClick(&folder, Qt::Key_Return);
    EXPECT_EQ(chosen, 1);
    EXPECT_EQ(published, 0);
    QTest::keyClick(&publish, Qt::Key_Return);
    EXPECT_EQ(chosen, 1);
    EXPECT_EQ(published, 1);
}

TEST_F(Keys, of_a_menu_belong_to_one_action_each) {
    const auto window = opened("mid-survey");
    EXPECT_EQ(sharedLetters(*window->menuBar()), "");
}

TEST_F(Keys, closing_asks_for_a_value_that_is_typed_and_not_stored) {
    const auto window = opened("mid-survey");
    EntryField* field = gapField(*window);
    ASSERT_NE(field, nullptr);
    field->type(QStringLiteral(".05"));
    const DialogCloser dialogs;
    EXPECT_FALSE(window->close()) << "staying is what Esc means";
    EXPECT_EQ(dialogs.seen, 1);
    EXPECT_THAT(dialogs.text.toStdString(), testing::HasSubstr(".05"));
    field->clear();
    EXPECT_TRUE(window->close());
    EXPECT_EQ(dialogs.seen, 1);
}

TEST_F(Keys, a_window_of_a_larger_screen_fits_this_one) {
    {
        MainWindow large;
        large.setAttribute(Qt::WA_DeleteOnClose, false);
        large.resize(5000, 4000);
        QSettings().setValue("window/geometry", large.saveGeometry());
    }
    MainWindow window;
    window.setAttribute(Qt::WA_DeleteOnClose, false);
    const QRect room = window.screen()->availableGeometry();
    EXPECT_TRUE(room.contains(window.geometry())) << "the offscreen screen is 800 wide";
}
