// SPDX-License-Identifier: GPL-3.0-or-later
/// What holds for all that the window shows, whoever reads it and by whatever means: nothing is said otherwise than it
/// stands there, focus is seen, targets are large enough, and the news of an entry is one sentence.
#include "../every_view.h"
#include "../find.h"
#include "accessible_window.h"

#include <QComboBox>
#include <QFocusFrame>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRawFont>
#include <QSpinBox>
#include <QTabBar>
#include <QTabWidget>
#include <QTextDocument>
#include <QToolButton>
#include <cmath>
#include <planview/plan_view.h>
#include <session/look.h>
#include <session/signs.h>
#include <stations/bearings/station.h>
#include <stations/common/entry_field.h>
#include <stations/girdle/board.h>
#include <stations/girdle/station.h>
#include <tables/list_view.h>
#include <window/bench_view.h>
#include <window/house_style.h>
#include <window/next_bar.h>
#include <window/station_list.h>

namespace caprail {
namespace {

QAccessibleInterface* heard(QObject* object) {
    return QAccessible::queryAccessibleInterface(object);
}

QString nameHeard(QObject* object) {
    return heard(object)->text(QAccessible::Name);
}

/// Letters and digits alone: a table is read row by row, with commas between.
QString bare(const QString& text) {
    QString letters;
    for (const QChar c : text) {
        letters += c.isLetterOrNumber() ? c.toLower() : QChar();
    }
    return letters.remove(QChar(u'\0'));
}

QString shownText(const QLabel& label) {
    if (label.textFormat() != Qt::RichText) {
        return label.buddy() == nullptr ? label.text() : QString(label.text()).remove(QLatin1Char('&'));
    }
    QTextDocument page;
    page.setHtml(label.text());
    return page.toPlainText();
}

class AccessibilityRules : public Accessibility {
protected:
    template <class T> void each(const std::function<void(T&)>& look) {
        inEveryView(*m_window, [&](const std::string& view) {
            for (T* widget : m_window->findChildren<T*>()) {
                if (widget->isVisible() && widget->window() == m_window.get()) {
                    SCOPED_TRACE(view + ": " + describe(widget));
                    look(*widget);
                }
            }
        });
    }
};

TEST_F(AccessibilityRules, a_label_is_heard_as_it_stands_there) {
    int seen = 0;
    each<QLabel>([&](QLabel& label) {
        const QString text = bare(shownText(label));
        seen += text.isEmpty() ? 0 : 1;
        EXPECT_THAT(bare(nameHeard(&label)).toStdString(), testing::HasSubstr(text.toStdString()));
        EXPECT_FALSE(heard(&label)->text(QAccessible::Description).contains(QLatin1Char('<')));
        EXPECT_TRUE(!label.text().isEmpty() || !heard(&label)->state().focusable) << "an empty label is no stop";
    });
    EXPECT_GT(seen, 200);
}

TEST_F(AccessibilityRules, the_readings_of_a_journal_and_what_they_come_to_are_heard_row_by_row) {
    go(Station::bearings, QStringLiteral("main-1"));
    std::string all;
    for (QLabel* label : m_window->panel(Station::bearings)->findChildren<QLabel*>()) {
        all += label->isVisible() ? nameHeard(label).toStdString() + "\n" : "";
    }
    EXPECT_THAT(all, testing::ContainsRegex("Readings of this journal: .*; .*"));
    EXPECT_THAT(all, testing::ContainsRegex("What they come to: .* in"));
}

TEST_F(AccessibilityRules, the_name_of_a_button_holds_what_stands_on_it) {
    each<QAbstractButton>([&](QAbstractButton& button) {
        // The digit of a view is its key; a sign or a letter alone is no word.
        QString text = QString(button.text()).remove(QLatin1Char('&')).split(QLatin1Char('\n')).front();
        if (text.size() > 3 && text[0].isDigit()) {
            text = text.mid(1).trimmed();
        }
        if (bare(text).size() > 1) {
            EXPECT_THAT(bare(nameHeard(&button)).toStdString(), testing::HasSubstr(bare(text).toStdString()));
        }
    });
}

TEST_F(AccessibilityRules, a_box_says_what_it_asks_for_and_so_does_the_field_in_it) {
    int boxes = 0;
    each<QComboBox>([&](QComboBox& box) {
        ++boxes;
        QStringList asked;
        for (const auto& [other, relation] : heard(&box)->relations(QAccessible::Label)) {
            asked << other->text(QAccessible::Name);
        }
        EXPECT_FALSE(asked.join(QString()).trimmed().isEmpty()) << box.currentText().toStdString();
        if (box.lineEdit() != nullptr) {
            EXPECT_FALSE(nameHeard(box.lineEdit()).isEmpty());
        }
    });
    EXPECT_GT(boxes, 15);
}

TEST_F(AccessibilityRules, pressing_a_view_by_its_action_shows_the_view) {
    for (const Station station : {Station::girdle, Station::bearings, Station::fasteners}) {
        go(station);
        const auto* panel = m_window->panel(station);
        int views = 0;
        for (QToolButton* button : panel->findChildren<QToolButton*>()) {
            if (!button->isCheckable() || button->shortcut().isEmpty()) {
                continue;
            }
            ++views;
            EXPECT_EQ(heard(button)->role(), QAccessible::PageTab);
            heard(button)->actionInterface()->doAction(QAccessibleActionInterface::pressAction());
            QApplication::processEvents();
            EXPECT_TRUE(heard(button)->state().selected) << button->text().toStdString();
            EXPECT_TRUE(takesTab(button)) << "the Tab key comes to the view that is shown";
            if (station == Station::girdle && button->text().contains("Stacks")) {
                EXPECT_TRUE(child<GirdleBoard>(panel)->isVisible());
            }
        }
        EXPECT_GE(views, 4);
    }
}

TEST_F(AccessibilityRules, the_tab_key_comes_to_the_bar_of_pages_and_each_page_has_a_digit) {
    for (const Station station : {Station::engine, Station::closing, Station::history}) {
        go(station);
        auto* tabs = m_window->panel(station)->findChild<QTabWidget*>();
        ASSERT_NE(tabs, nullptr);
        EXPECT_TRUE(takesTab(tabs->tabBar()));
        QTest::keyClick(m_window.get(), Qt::Key_2, Qt::AltModifier);
        EXPECT_EQ(tabs->currentIndex(), 1) << word(station);
        EXPECT_TRUE(tabs->tabText(1).startsWith("2  "));
    }
}

TEST_F(AccessibilityRules, the_board_of_stacks_is_a_list_that_says_all_that_it_shows) {
    go(Station::girdle);
    auto* girdle = static_cast<GirdleStation*>(m_window->panel(Station::girdle));
    girdle->setMode(GirdleMode::stacks);
    auto* board = child<GirdleBoard>(girdle);
    QAccessibleInterface* list = heard(board);
    EXPECT_EQ(list->role(), QAccessible::List);
    ASSERT_EQ(list->childCount(), 10);
    const std::string words = list->child(2)->text(QAccessible::Name).toStdString();
    EXPECT_THAT(words, testing::ContainsRegex("cap 2 left, gap 0\\..* in, stands: S.* \\+ S.*, residual .* in"));
    EXPECT_THAT(words, testing::HasSubstr("should be: "));
    EXPECT_FALSE(list->child(2)->rect().isEmpty());
    list->child(2)->actionInterface()->doAction(QAccessibleActionInterface::pressAction());
    EXPECT_EQ(girdle->subject(), "2L");
    EXPECT_TRUE(list->child(2)->state().focused);
    EXPECT_EQ(list->focusChild(), list->child(2));
}

TEST_F(AccessibilityRules, figures_on_the_drawings_are_heard_with_their_unit) {
    for (const Destination& destination : allDestinations()) {
        go(destination.station, QString::fromStdString(destination.subject));
        for (PlanView* plan : m_window->panel(destination.station)->findChildren<PlanView*>()) {
            QAccessibleInterface* list = heard(plan);
            for (int i = 0; plan->isVisible() && i < list->childCount(); ++i) {
                // A figure between two commas has lost its unit.
                EXPECT_THAT(list->child(i)->text(QAccessible::Name).toStdString(),
                            testing::Not(testing::ContainsRegex(", [-+−]?[0-9.]+,")))
                    << nameOf(destination);
            }
        }
    }
}

TEST_F(AccessibilityRules, a_locked_station_is_heard_as_locked) {
    const auto* list = child<StationList>(m_window.get());
    const QModelIndex closing = list->model()->index(static_cast<int>(Station::closing), 0);
    EXPECT_THAT(closing.data(Qt::AccessibleTextRole).toString().toStdString(), testing::HasSubstr("locked, held by"));
}

TEST_F(AccessibilityRules, the_bench_view_is_heard_as_it_stands_there_and_hides_what_it_covers) {
    go(Station::girdle, QStringLiteral("4L"));
    static_cast<GirdleStation*>(m_window->panel(Station::girdle))->setMode(GirdleMode::gaps);
    m_window->toggleBench();
    auto* bench = child<BenchView>(m_window.get());
    EXPECT_EQ(nameHeard(child<QLabel>(bench, "place")), "Cap 4 left");
    for (const QWidget* widget : m_window->panel(Station::girdle)->findChildren<QWidget*>()) {
        EXPECT_FALSE(widget->isVisible()) << describe(widget);
    }
    m_window->toggleBench();
    EXPECT_TRUE(m_window->panel(Station::girdle)->isVisible());
}

TEST_F(AccessibilityRules, the_bench_view_can_be_worked_with_a_gloved_finger) {
    go(Station::girdle, QStringLiteral("4L"));
    static_cast<GirdleStation*>(m_window->panel(Station::girdle))->setMode(GirdleMode::gaps);
    m_window->toggleBench();
    auto* bench = child<BenchView>(m_window.get());
    std::map<QString, QPushButton*> keys;
    for (QPushButton* button : bench->findChildren<QPushButton*>()) {
        keys[nameHeard(button).section(QLatin1Char(':'), 0, 0)] = button;
        EXPECT_GE(button->width(), 44);
        EXPECT_GE(button->height(), 44);
    }
    const auto touch = [&](const QString& name) {
        ASSERT_TRUE(keys.contains(name)) << name.toStdString();
        QTest::mouseClick(keys[name], Qt::LeftButton);
    };
    touch("Next");
    EXPECT_NE(nameHeard(child<QLabel>(bench, "place")), "Cap 4 left");
    touch("Back");
    EXPECT_EQ(nameHeard(child<QLabel>(bench, "place")), "Cap 4 left");
    for (const char* key : {"5", "5", "decimal point", "8"}) {
        touch(key);
    }
    EXPECT_EQ(bench->field()->text(), "55.8");
    touch("Take the last sign away");
    EXPECT_EQ(bench->field()->text(), "55.");
    EXPECT_TRUE(keys.contains("Strike the last"));
    touch("Esc");
    EXPECT_FALSE(bench->isActive());
}

TEST(Signs, are_all_in_the_font_that_the_program_carries) {
    const QRawFont font(QStringLiteral(":/caprail/fonts/signs.ttf"), 12);
    ASSERT_TRUE(font.isValid());
    QString all = allSigns();
    for (const auto& state : allWords<CheckState>()) {
        all += sign(state.value);
    }
    for (const QChar one : all) {
        // What is in every font needs no help.
        EXPECT_TRUE(one.unicode() < 0x80 || font.supportsCharacter(one)) << QString(one).toStdString();
    }
}

TEST_F(AccessibilityRules, what_has_the_keyboard_is_seen_in_both_looks) {
    for (const LookChoice choice : {LookChoice::light, LookChoice::dark}) {
        applyLook(choice);
        inEveryView(*m_window, [&](const std::string& view) {
            for (QWidget* control : controls()) {
                control->setFocus(Qt::TabFocusReason);
                QApplication::processEvents();
                if (QApplication::focusWidget() != control) {
                    continue;
                }
                SCOPED_TRACE(view + ": " + describe(control));
                const auto* ring = child<QFocusFrame>(m_window.get(), "focusRing");
                EXPECT_TRUE(ring->isVisible());
                EXPECT_GE(ring->width(), 10);
                EXPECT_GE(ring->height(), 10);
                const QRect target(control->mapTo(m_window.get(), QPoint()), control->size());
                EXPECT_TRUE(target.intersects(ring->geometry()));
            }
        });
        // By pixels once: the drawn ring against what lies beside it.
        go(Station::girdle, QStringLiteral("4L"));
        auto* list = child<StationList>(m_window.get());
        list->setFocus(Qt::TabFocusReason);
        QApplication::processEvents();
        const QImage picture = m_window->grab().toImage();
        const QPoint corner = list->mapTo(m_window.get(), QPoint());
        const QColor ring = picture.pixelColor(corner + QPoint(list->width() / 2, 0));
        const QColor beside = picture.pixelColor(corner + QPoint(list->width() - 4, list->height() - 5));
        EXPECT_EQ(ring, screenLook().accent);
        EXPECT_GE(contrast(ring, beside), 3.0);
    }
    applyLook(LookChoice::light);
}

TEST_F(AccessibilityRules, what_is_clicked_is_large_enough_at_every_station) {
    each<QWidget>([&](QWidget& widget) {
        const bool isTarget = qobject_cast<QAbstractButton*>(&widget) != nullptr ||
                              qobject_cast<QComboBox*>(&widget) != nullptr ||
                              qobject_cast<QAbstractSpinBox*>(&widget) != nullptr ||
                              (qobject_cast<QLineEdit*>(&widget) != nullptr &&
                               qobject_cast<QAbstractSpinBox*>(widget.parentWidget()) == nullptr &&
                               qobject_cast<QComboBox*>(widget.parentWidget()) == nullptr);
        // A sign inside a field belongs to the field, the arrows of a bar to the bar.
        const bool isPart = qobject_cast<QLineEdit*>(widget.parentWidget()) != nullptr ||
                            qobject_cast<QTabBar*>(widget.parentWidget()) != nullptr ||
                            qobject_cast<QAbstractItemView*>(widget.parentWidget()) != nullptr;
        if (isTarget && !isPart) {
            EXPECT_GE(widget.width(), HouseStyle::leastTarget);
            EXPECT_GE(widget.height(), HouseStyle::leastTarget);
        }
    });
}

/// That it is told once, and that hidden pages are silent, `accessibility_live` hears: offscreen nothing is told.
TEST_F(AccessibilityRules, an_entry_and_what_comes_next_are_one_sentence) {
    go(Station::girdle, QStringLiteral("4L"));
    static_cast<GirdleStation*>(m_window->panel(Station::girdle))->setMode(GirdleMode::gaps);
    EntryField* field = m_window->panel(Station::girdle)->entryField();
    QTest::keyClicks(field->lineEdit(), "55.5 thou");
    QTest::keyClick(field->lineEdit(), Qt::Key_Return);
    QApplication::processEvents();
    EXPECT_THAT(nameHeard(child<QLabel>(m_window.get(), "lastStored")).toStdString(),
                testing::ContainsRegex("On disk: entry [0-9]+\\. .*cap 4 left.*Next: Gap at cap"));
}

TEST_F(AccessibilityRules, a_refusal_is_said_on_the_live_node_too) {
    go(Station::girdle, QStringLiteral("4L"));
    static_cast<GirdleStation*>(m_window->panel(Station::girdle))->setMode(GirdleMode::gaps);
    EntryField* field = m_window->panel(Station::girdle)->entryField();
    QTest::keyClicks(field->lineEdit(), "9");
    QTest::keyClick(field->lineEdit(), Qt::Key_Return);
    EXPECT_THAT(nameHeard(child<QLabel>(m_window.get(), "lastStored")).toStdString(),
                testing::HasSubstr("9 thousandths"));
}

} // namespace
} // namespace caprail
