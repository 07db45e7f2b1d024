// SPDX-License-Identifier: GPL-3.0-or-later
#include "engines.h"
#include <QAccessible>
#include <QClipboard>
#include <QMimeData>
#include <QSignalSpy>
#include <QTest>
#include <QWheelEvent>
#include <algorithm>
#include <ctime>
#include <iostream>
#include <planview/plan_view.h>

namespace caprail {

namespace {

class PlanViewTest : public testing::Test {
protected:
    PlanViewTest() {
        m_view.resize(700, 420);
        m_view.setContent(gapContent(engineOf(5, 2, 1, 5)));
        m_view.show();
        m_view.setFocus();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&m_view));
    }

    QPoint middleOf(const QString& place) { return m_view.drawing()->pointOf(place).toPoint(); }

    PlanView m_view;
};

} // namespace

TEST_F(PlanViewTest, selects_the_place_that_is_clicked_and_says_so) {
    const QSignalSpy selected(&m_view, &PlanView::placeSelected);
    QTest::mouseClick(&m_view, Qt::LeftButton, {}, middleOf("3R"));
    EXPECT_EQ(m_view.selected(), "3R");
    ASSERT_EQ(selected.size(), 1);
    EXPECT_EQ(selected[0][0].toString(), "3R");
    QTest::mouseClick(&m_view, Qt::LeftButton, {}, m_view.drawing()->calloutOf("2L").center().toPoint());
    EXPECT_EQ(m_view.selected(), "2L");
    QTest::mouseClick(&m_view, Qt::LeftButton, {}, {350, 3});
    EXPECT_EQ(m_view.selected(), "2L") << "beside every place nothing changes";
}

TEST_F(PlanViewTest, is_copied_as_a_picture_by_key_and_written_as_drawing_or_picture) {
    QTest::keyClick(&m_view, Qt::Key_C, Qt::ControlModifier);
    const QMimeData* copied = QApplication::clipboard()->mimeData();
    ASSERT_TRUE(copied->hasImage());
    EXPECT_EQ(qvariant_cast<QImage>(copied->imageData()).size(), QSize(1400, 840));
    EXPECT_TRUE(copied->data("image/svg+xml").contains("<svg"));
    const QTemporaryDir folder;
    for (const char* name : {"plan.svg", "plan.png", "plan.png"}) { // one that stands is replaced, as the dialog asked
        const auto written = writePicture(m_view.given(), folder.filePath(name));
        EXPECT_TRUE(written) << written.error().sentence;
    }
    EXPECT_TRUE(svgOf(m_view.given()).contains("FRONT"));
    EXPECT_FALSE(writePicture(m_view.given(), folder.filePath("plan.txt"))) << "an ending that says no format";
    QFile record(folder.filePath("record.png"));
    ASSERT_TRUE(record.open(QIODevice::WriteOnly));
    record.write("SQLite format 3");
    record.close();
    EXPECT_FALSE(writePicture(m_view.given(), record.fileName())) << "no record is ever replaced";
    m_view.setEmpty("Describe the engine first.");
    EXPECT_TRUE(imageOf(m_view.given()).isNull()) << "nothing is drawn";
    EXPECT_EQ(m_view.contextMenuPolicy(), Qt::ActionsContextMenu);
    EXPECT_EQ(m_view.actions().size(), 3);
}

TEST_F(PlanViewTest, walks_with_the_arrow_keys_as_the_drawing_lies) {
    m_view.select("2L");
    QTest::keyClick(&m_view, Qt::Key_Right);
    EXPECT_EQ(m_view.selected(), "3L");
    QTest::keyClick(&m_view, Qt::Key_Down);
    EXPECT_EQ(m_view.selected(), "3R");
    QTest::keyClick(&m_view, Qt::Key_Home);
    EXPECT_EQ(m_view.selected(), "1L");
    QTest::keyClick(&m_view, Qt::Key_End);
    EXPECT_EQ(m_view.selected(), "5R");
    m_view.turn();
    QTest::keyClick(&m_view, Qt::Key_Up);
    EXPECT_EQ(m_view.selected(), "4R");
    m_view.flip();
    QTest::keyClick(&m_view, Qt::Key_Left);
    EXPECT_EQ(m_view.selected(), "4L");
}

TEST_F(PlanViewTest, hands_on_what_is_typed_and_announces_enter) {
    QString typed;
    QObject::connect(&m_view, &PlanView::typed, &m_view, [&](const QString& text) { typed += text; });
    const QSignalSpy activated(&m_view, &PlanView::placeActivated);
    m_view.select("3R");
    QTest::keyClicks(&m_view, "57.5 thou+-0");
    EXPECT_EQ(typed, "57.5 thou+-0") << "plain plus, minus and nought are text, not zoom";
    EXPECT_EQ(m_view.zoom(), 1);
    QTest::keyClick(&m_view, Qt::Key_Return);
    ASSERT_EQ(activated.size(), 1);
    EXPECT_EQ(activated[0][0].toString(), "3R");
}

TEST_F(PlanViewTest, zooms_and_still_finds_what_is_clicked) {
    QTest::keyClick(&m_view, Qt::Key_Plus, Qt::ControlModifier);
    QTest::keyClick(&m_view, Qt::Key_Plus, Qt::ControlModifier);
    EXPECT_NEAR(m_view.zoom(), 1.5625, 1e-9);
    m_view.select("1L");
    EXPECT_TRUE(QRectF(m_view.rect()).contains(m_view.widgetRectOf("1L"))) << "the selected place comes into sight";
    m_view.select("1R");
    EXPECT_TRUE(QRectF(m_view.rect()).contains(m_view.widgetRectOf("1R")));
    QTest::keyClick(&m_view, Qt::Key_Minus, Qt::ControlModifier);
    EXPECT_NEAR(m_view.zoom(), 1.25, 1e-9);
    QTest::keyClick(&m_view, Qt::Key_0, Qt::ControlModifier);
    EXPECT_EQ(m_view.zoom(), 1);
    m_view.setZoom(3, QPointF(350, 210));
    const QRectF middle = m_view.widgetRectOf("3R");
    const QPointF point =
        m_view.drawing()->pointOf("3R") * 3 + (middle.topLeft() - m_view.drawing()->rectOf("3R").topLeft() * 3);
    QTest::mouseClick(&m_view, Qt::LeftButton, {}, point.toPoint());
    EXPECT_EQ(m_view.selected(), "3R");
    m_view.setZoom(100, {});
    EXPECT_EQ(m_view.zoom(), 8) << "its largest";
}

TEST_F(PlanViewTest, is_a_list_of_its_places_to_screen_readers) {
    QAccessibleInterface* list = QAccessible::queryAccessibleInterface(&m_view);
    ASSERT_NE(list, nullptr);
    EXPECT_EQ(list->role(), QAccessible::List);
    EXPECT_FALSE(list->text(QAccessible::Name).isEmpty());
    ASSERT_EQ(list->childCount(), 10);
    PlanContent content = gapContent(engineOf(5, 2, 1, 5));
    content.marks = {{"3R", "57.5", {}, CheckState::stale, "gap 57.5"}};
    m_view.setContent(content);
    QAccessibleInterface* item = list->child(5);
    ASSERT_NE(item, nullptr);
    EXPECT_EQ(item->text(QAccessible::Name), "cap 3 right, gap 57.5, stale");
    EXPECT_EQ(item->text(QAccessible::Value), "57.5");
    EXPECT_EQ(item->role(), QAccessible::ListItem);
    EXPECT_EQ(item->parent(), list);
    EXPECT_EQ(list->indexOfChild(item), 5);
    EXPECT_FALSE(item->state().selected);
    m_view.select("3R");
    EXPECT_TRUE(item->state().selected);
    EXPECT_TRUE(item->state().focused);
    EXPECT_EQ(list->focusChild(), item);
    const QRect rect = item->rect();
    EXPECT_EQ(list->childAt(rect.center().x(), rect.center().y()), item);
    item->actionInterface()->doAction(QAccessibleActionInterface::pressAction());
    list->child(0)->actionInterface()->doAction(QAccessibleActionInterface::setFocusAction());
    EXPECT_EQ(m_view.selected(), "1L");
    m_view.setContent(gapContent(engineOf(3, 2, 1, 1)));
    EXPECT_EQ(list->childCount(), 2);
    EXPECT_FALSE(item->isValid()) << "cap 3 is not tied any more";
}

TEST_F(PlanViewTest, tells_screen_readers_when_another_place_is_selected) {
    EXPECT_TRUE(selectionNews(m_view).empty()) << "nothing is selected";
    m_view.select("2R");
    using News = std::vector<std::pair<QAccessible::Event, int>>;
    EXPECT_EQ(selectionNews(m_view), (News{{QAccessible::Selection, 3}, {QAccessible::Focus, 3}}));
    m_view.clearFocus();
    EXPECT_EQ(selectionNews(m_view), (News{{QAccessible::Selection, 3}}));
}

TEST_F(PlanViewTest, forgets_a_selected_place_that_is_drawn_no_more) {
    m_view.select("5R");
    PlanContent content = gapContent(engineOf(5, 2, 1, 3));
    content.selected = "5R";
    m_view.setContent(content);
    EXPECT_TRUE(m_view.selected().isEmpty());
    m_view.select("4L");
    EXPECT_TRUE(m_view.selected().isEmpty());
}

TEST_F(PlanViewTest, says_what_to_do_while_there_is_no_layout) {
    m_view.setEmpty("Describe the engine first.");
    EXPECT_EQ(m_view.drawing(), nullptr);
    EXPECT_TRUE(m_view.selected().isEmpty());
    QTest::keyClick(&m_view, Qt::Key_Right);
    QTest::mouseClick(&m_view, Qt::LeftButton, {}, {100, 100});
    EXPECT_EQ(QAccessible::queryAccessibleInterface(&m_view)->childCount(), 0);
    EXPECT_FALSE(m_view.grab().isNull());
}

TEST_F(PlanViewTest, answers_a_key_within_a_frame_with_eighteen_positions) {
    m_view.setContent(gapContent(engineOf(9, 2, 1, 9)));
    m_view.select("1L");
    QImage image(m_view.size(), QImage::Format_ARGB32_Premultiplied);
    std::vector<double> spent;
    for (int i = 0; i < 15; ++i) {
        const std::clock_t from = std::clock(); // processor time: what else the machine does is not counted
        QTest::keyClick(&m_view, i % 2 == 0 ? Qt::Key_Right : Qt::Key_Down);
        m_view.render(&image);
        spent.push_back(1000.0 * static_cast<double>(std::clock() - from) / CLOCKS_PER_SEC);
    }
    std::nth_element(spent.begin(), spent.begin() + 7, spent.end());
    RecordProperty("median_milliseconds", std::to_string(spent[7]));
    std::cout << "key to picture, median of 15: " << spent[7] << " ms of processor time\n";
#ifdef NDEBUG
    EXPECT_LT(spent[7], 16);
#else
    EXPECT_LT(spent[7], 64) << "a build for debugging is given four times as long";
#endif
}

} // namespace caprail
