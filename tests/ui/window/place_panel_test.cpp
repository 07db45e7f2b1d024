// SPDX-License-Identifier: GPL-3.0-or-later
/// What is known of the selected place, beside every station: findings, notes, photos by file, drop and paste.
#include "../stations/station_record.h"

#include <QApplication>
#include <QClipboard>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QMimeData>
#include <QSignalSpy>
#include <QTest>
#include <stations/common/place_name.h>
#include <stations/fasteners/station.h>
#include <stations/girdle/station.h>
#include <window/place_panel.h>

namespace caprail {
namespace {

QImage picture() {
    QImage image(320, 200, QImage::Format_RGB32);
    image.fill(Qt::darkCyan);
    return image;
}

TEST(PlaceName, reads_a_place_however_it_was_typed) {
    EXPECT_EQ(placeName("3R"), "cap 3 right");
    EXPECT_EQ(placeName("main-3L"), "main 3 left");
    EXPECT_EQ(placeName("rod-5"), "rod 5");
    EXPECT_EQ(placeName("throw-2"), "throw 2");
    EXPECT_TRUE(isSamePlace("3r", "3R"));
    EXPECT_TRUE(isSamePlace("cap 3 right", "3R"));
    EXPECT_TRUE(isSamePlace(" Throw 2", "throw-2"));
    EXPECT_FALSE(isSamePlace("3L", "3R"));
    EXPECT_FALSE(isSamePlace("", ""));
}

TEST(PlacePanel, opens_a_finding_at_the_selected_place_without_leaving_the_work) {
    StationRecord bench(3);
    PlacePanel panel(*bench.session);
    panel.setPlace("2R");
    child<QLineEdit>(panel, "findingHere")->setText("burr on the washer face");
    QTest::keyClick(child<QLineEdit>(panel, "findingHere"), Qt::Key_Return);
    ASSERT_EQ(bench.facts().findings.size(), 1U);
    EXPECT_EQ(bench.facts().findings.begin()->second.opened.what.place, "2R");
    EXPECT_EQ(lines(child<QListView>(panel, "here")), 1);
    EXPECT_TRUE(child<QLineEdit>(panel, "findingHere")->text().isEmpty());
    panel.setPlace("2L");
    EXPECT_EQ(lines(child<QListView>(panel, "here")), 0) << "another place";
    panel.setPlace("2R");
    EXPECT_EQ(lines(child<QListView>(panel, "here")), 1);
}

TEST(PlacePanel, settles_a_finding_where_it_is) {
    StationRecord bench(3);
    bench.make(FindingOpened{"F1", "2R", "burr on the washer face"});
    PlacePanel panel(*bench.session);
    QObject::connect(bench.session.get(), &RecordSession::changed, &panel, [&] { panel.refresh(); });
    bool isLedAway = false;
    QObject::connect(bench.session.get(), &RecordSession::destinationRequested, [&] { isLedAway = true; });
    panel.setPlace("2R");
    panel.setVisible(true);
    auto* list = child<QListView>(panel, "here");
    list->setCurrentIndex(list->model()->index(0, 0));
    QTest::keyClick(list, Qt::Key_Return);
    auto* edit = child<QLineEdit>(panel, "findingHere");
    EXPECT_TRUE(edit->placeholderText().contains("F1"));
    edit->setText("stoned off, washer turned over");
    QTest::keyClick(edit, Qt::Key_Return);
    ASSERT_TRUE(bench.facts().findings.at("F1").settled);
    EXPECT_EQ(bench.facts().findings.at("F1").settled->what.done, "stoned off, washer turned over");
    EXPECT_FALSE(isLedAway) << "the place stays in sight";
    edit->setText("another burr");
    QTest::keyClick(edit, Qt::Key_Return);
    EXPECT_EQ(bench.facts().findings.size(), 2U) << "and the line opens findings again";
}

TEST(PlacePanel, what_was_done_about_one_finding_is_no_finding_of_the_next_place) {
    StationRecord bench(3);
    bench.make(FindingOpened{"F1", "2R", "burr on the washer face"});
    bench.make(FindingOpened{"F2", "2R", "thread dirty"});
    PlacePanel panel(*bench.session);
    panel.setPlace("2R");
    auto* list = child<QListView>(panel, "here");
    auto* edit = child<QLineEdit>(panel, "findingHere");
    list->setCurrentIndex(list->model()->index(0, 0));
    QTest::keyClick(list, Qt::Key_Return);
    edit->setText("stoned off");
    panel.setPlace("3R");
    QTest::keyClick(edit, Qt::Key_Return);
    EXPECT_EQ(bench.facts().findings.size(), 2U) << "a remedy became a finding of another place";
    panel.setPlace("2R");
    list->setCurrentIndex(list->model()->index(0, 0));
    QTest::keyClick(list, Qt::Key_Return);
    edit->setText("stoned off");
    panel.focusFinding();
    QTest::keyClick(edit, Qt::Key_Return);
    EXPECT_EQ(bench.facts().findings.size(), 2U) << "nor by the key that opens a finding";
    edit->setText("lint in the hole");
    list->setCurrentIndex(list->model()->index(1, 0));
    QTest::keyClick(list, Qt::Key_Return);
    QTest::keyClick(edit, Qt::Key_Return);
    EXPECT_FALSE(bench.facts().findings.at("F2").settled) << "what was to be a finding settles none";
}

TEST(PlacePanel, keeps_a_pasted_and_a_dropped_photo_at_the_place) {
    StationRecord bench(3);
    PlacePanel panel(*bench.session);
    panel.setPlace("main-2");
    QApplication::clipboard()->setImage(picture());
    panel.pastePhoto();
    EXPECT_TRUE(child<QLabel>(panel, "placeMessage")->isHidden());
    ASSERT_EQ(bench.facts().attachments.size(), 1U);
    EXPECT_EQ(bench.facts().attachments[0].what.place, "main-2");

    QTemporaryDir folder;
    QImage other = picture();
    other.fill(Qt::darkRed);
    const QString file = folder.filePath("seen.png");
    ASSERT_TRUE(other.save(file));
    QMimeData data;
    data.setUrls({QUrl::fromLocalFile(file)});
    panel.takePhotos(data, panel.place());
    ASSERT_EQ(bench.facts().attachments.size(), 2U);
    EXPECT_EQ(lines(child<QListView>(panel, "here")), 2);
    EXPECT_FALSE(child<QListView>(panel, "here")->model()->index(0, 0).data(Qt::DecorationRole).value<QIcon>().isNull());
}

TEST(PlacePanel, says_what_is_no_picture_and_keeps_nothing) {
    StationRecord bench(3);
    PlacePanel panel(*bench.session);
    QTemporaryDir folder;
    QFile file(folder.filePath("notes.txt"));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write("not a picture");
    file.close();
    QMimeData data;
    data.setUrls({QUrl::fromLocalFile(file.fileName())});
    const QSignalSpy refused(&panel, &PlacePanel::refused);
    panel.takePhotos(data, panel.place());
    EXPECT_EQ(refused.count(), 1) << "the window brings the sentence in sight";
    EXPECT_TRUE(child<QLabel>(panel, "placeMessage")->text().contains("notes.txt")) << child<QLabel>(panel, "placeMessage")->text().toStdString();
    EXPECT_TRUE(bench.facts().attachments.empty());
}

TEST(Stations, tell_which_place_is_selected) {
    StationRecord bench(3);
    GirdleStation girdle(*bench.session);
    int told = 0;
    QObject::connect(&girdle, &StationPanel::subjectChanged, &girdle, [&] { ++told; });
    girdle.select("2R");
    EXPECT_EQ(girdle.subject(), "2R");
    EXPECT_GT(told, 0);
    FastenersStation fasteners(*bench.session);
    fasteners.select("main-2L");
    EXPECT_EQ(fasteners.subject(), "main-2L");
}

} // namespace
} // namespace caprail
