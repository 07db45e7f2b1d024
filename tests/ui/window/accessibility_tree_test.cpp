// SPDX-License-Identifier: GPL-3.0-or-later
/// The window as a screen reader sees it: names, roles and values of all controls, the way of the Tab key, and what is
/// announced. `accessibility_live` asks the running program over AT-SPI, the bus that screen readers use.
#include "accessible_window.h"

#include <QComboBox>
#include <QLineEdit>
#include <planview/plan_view.h>
#include <set>
#include <stations/common/entry_field.h>

namespace caprail {
namespace {

TEST_F(Accessibility, every_control_of_every_station_has_a_name_a_role_and_a_place) {
    int seen = 0;
    for (const Destination& destination : allDestinations()) {
        go(destination.station, QString::fromStdString(destination.subject));
        for (QWidget* control : controls()) {
            SCOPED_TRACE(nameOf(destination) + ": " + describe(control));
            QAccessibleInterface* item = QAccessible::queryAccessibleInterface(control);
            ASSERT_NE(item, nullptr);
            ++seen;
            EXPECT_FALSE(item->text(QAccessible::Name).trimmed().isEmpty());
            EXPECT_FALSE(item->rect().isEmpty());
            EXPECT_TRUE(item->state().focusable);
            // A bare «client» or «none» tells a screen reader nothing about what can be done with it.
            EXPECT_NE(item->role(), QAccessible::NoRole);
            EXPECT_NE(item->role(), QAccessible::Client);
        }
    }
    EXPECT_GT(seen, 80);
}

TEST_F(Accessibility, what_stands_in_a_control_can_be_read_out) {
    int fields = 0;
    for (const Destination& destination : allDestinations()) {
        go(destination.station, QString::fromStdString(destination.subject));
        for (QWidget* control : controls()) {
            SCOPED_TRACE(nameOf(destination) + ": " + describe(control));
            QAccessibleInterface* item = QAccessible::queryAccessibleInterface(control);
            if (const auto* edit = qobject_cast<QLineEdit*>(control)) {
                ++fields;
                ASSERT_NE(item->textInterface(), nullptr);
                EXPECT_EQ(item->text(QAccessible::Value), edit->text());
            } else if (const auto* box = qobject_cast<QComboBox*>(control)) {
                ++fields;
                EXPECT_EQ(item->text(QAccessible::Value), box->currentText());
            } else if (const auto* button = qobject_cast<QAbstractButton*>(control)) {
                EXPECT_EQ(item->state().checkable != 0, button->isCheckable());
                EXPECT_EQ(item->state().checked != 0, button->isChecked());
                EXPECT_NE(item->actionInterface(), nullptr);
            }
        }
    }
    EXPECT_GT(fields, 20);
}

TEST_F(Accessibility, the_tab_key_comes_by_every_control_and_gets_out_of_each) {
    for (const Destination& destination : allDestinations()) {
        go(destination.station, QString::fromStdString(destination.subject));
        const auto wanted = controls();
        std::set<QWidget*> reached;
        std::string way;
        // As many steps as there are controls, and some for those that come and go on the way.
        for (std::size_t step = 0; step < 2 * wanted.size() + 10; ++step) {
            QWidget* at = QApplication::focusWidget();
            if (at == nullptr) {
                m_window->setFocus();
                at = m_window.get();
            }
            way += reached.insert(at).second ? std::string(" > ") + at->metaObject()->className() : "";
            QTest::keyClick(at, Qt::Key_Tab);
        }
        for (QWidget* control : wanted) {
            // Of buttons that exclude each other the Tab key reaches the chosen one; arrows do the rest.
            const auto* button = qobject_cast<QAbstractButton*>(control);
            const bool isOneOfSeveral = button != nullptr && button->autoExclusive() && !button->isChecked();
            EXPECT_TRUE(!takesTab(control) || isOneOfSeveral || reached.contains(control))
                << nameOf(destination) << ": " << describe(control) << " “"
                << QAccessible::queryAccessibleInterface(control)->text(QAccessible::Name).toStdString()
                << "” is not on the way" << way;
        }
    }
}

TEST_F(Accessibility, the_place_that_the_arrows_move_to_on_the_diagram_is_the_one_in_focus_with_its_state) {
    go(Station::girdle, QStringLiteral("4L"));
    auto* plan = m_window->panel(Station::girdle)->findChild<PlanView*>();
    ASSERT_NE(plan, nullptr);
    plan->setFocus();
    plan->select(QStringLiteral("4L"));
    QAccessibleInterface* list = QAccessible::queryAccessibleInterface(plan);
    ASSERT_NE(list, nullptr);
    ASSERT_NE(list->focusChild(), nullptr);
    EXPECT_THAT(list->focusChild()->text(QAccessible::Name).toStdString(), testing::HasSubstr("cap 4 left"));
    EXPECT_THAT(list->focusChild()->text(QAccessible::Name).toStdString(), testing::HasSubstr("stale"));
    QTest::keyClick(plan, Qt::Key_Right);
    QAccessibleInterface* now = list->focusChild();
    ASSERT_NE(now, nullptr);
    EXPECT_THAT(now->text(QAccessible::Name).toStdString(), testing::HasSubstr("cap 5 left"));
    EXPECT_THAT(now->text(QAccessible::Name).toStdString(), testing::HasSubstr("good"));
    EXPECT_TRUE(now->state().selected);
    EXPECT_TRUE(now->state().focused);
    EXPECT_EQ(list->childCount(), plan->drawing()->places().size());
}

TEST_F(Accessibility, the_field_says_which_value_of_which_place_it_takes) {
    go(Station::girdle, QStringLiteral("4L"));
    const EntryField* field = m_window->panel(Station::girdle)->entryField();
    ASSERT_NE(field, nullptr);
    const QAccessibleInterface* item = QAccessible::queryAccessibleInterface(field->lineEdit());
    ASSERT_NE(item, nullptr);
    EXPECT_EQ(item->role(), QAccessible::EditableText);
    EXPECT_THAT(item->text(QAccessible::Name).toStdString(), testing::HasSubstr("cap 4 left"));
    go(Station::girdle, QStringLiteral("4R"));
    EXPECT_THAT(item->text(QAccessible::Name).toStdString(), testing::HasSubstr("cap 4 right"));
}

TEST_F(Accessibility, a_refused_value_is_described_at_the_field_and_stays_in_it) {
    go(Station::girdle, QStringLiteral("4L"));
    const EntryField* field = m_window->panel(Station::girdle)->entryField();
    ASSERT_NE(field, nullptr);
    // As dictation sets it: without a key.
    QAccessibleInterface* item = QAccessible::queryAccessibleInterface(field->lineEdit());
    item->setText(QAccessible::Value, QStringLiteral("9"));
    EXPECT_EQ(field->lineEdit()->text(), QStringLiteral("9"));
    QTest::keyClick(field->lineEdit(), Qt::Key_Return);
    EXPECT_THAT(item->text(QAccessible::Description).toStdString(), testing::HasSubstr("9 thousandths"));
}

} // namespace
} // namespace caprail
