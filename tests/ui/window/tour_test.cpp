// SPDX-License-Identifier: GPL-3.0-or-later
/// Five minutes through a sample, beside the real screen; nothing of the shop is touched.
#include "../find.h"
#include "../pictures.h"

#include <QDialog>
#include <QFile>
#include <QFileInfo>
#include <QLabel>
#include <QPushButton>
#include <QSettings>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>
#include <assessment/check.h>
#include <set>
#include <stations/common/entry_field.h>
#include <stations/common/station.h>
#include <window/main_window.h>
#include <window/preferences.h>
#include <window/tour.h>

namespace caprail {
namespace {

QByteArray bytesOf(const QString& path) {
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

class TourTest : public testing::Test {
protected:
    void SetUp() override {
        useSettingsIn(folder.path());
        // The samples lie where an installed program has them.
        qputenv("XDG_DATA_HOME", folder.path().toUtf8());
        const QString samples =
            QStandardPaths::writableLocation(QStandardPaths::AppDataLocation) + QStringLiteral("/sample-builds");
        QDir().mkpath(samples);
        sample = samples + "/" + tourSample() + ".caprail";
        ASSERT_TRUE(QFile::copy(QStringLiteral(SAMPLE_BUILDS "/") + tourSample() + ".caprail", sample));
        before = bytesOf(sample);
        window = new MainWindow;
        window->resize(1280, 800);
        window->show();
        window->activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(window));
        window->startTour();
    }
    void TearDown() override {
        delete window;
        EXPECT_EQ(bytesOf(sample), before) << "the sample itself was changed";
    }
    [[nodiscard]] std::string title() const { return child<QLabel>(window, "tourTitle")->text().toStdString(); }
    void press(Qt::Key key) const {
        QTest::keyClick(window, key, Qt::AltModifier);
    }

    QTemporaryDir folder;
    QString sample;
    QByteArray before;
    MainWindow* window = nullptr;
};

TEST(TourPages, there_is_one_for_each_station_with_something_to_see_and_to_try) {
    std::set<Station> seen;
    for (const TourPage& page : tourPages()) {
        EXPECT_TRUE(seen.insert(page.station).second) << word(page.station) << " twice";
        EXPECT_GT(page.seen.size(), 80);
        EXPECT_GT(page.toTry.size(), 30);
    }
    EXPECT_EQ(seen.size(), allWords<Station>().size());
}

TEST_F(TourTest, walks_over_all_stations_and_back_by_keyboard) {
    ASSERT_NE(window->session(), nullptr);
    EXPECT_GE(window->width(), 1280) << "the tour never makes the window narrower";
    for (std::size_t i = 0; i < tourPages().size(); ++i) {
        const TourPage page = tourPages()[i];
        EXPECT_THAT(title(), testing::HasSubstr(std::to_string(i + 1) + " of 8: "));
        if (!page.subject.isEmpty()) {
            EXPECT_EQ(window->panel(page.station)->subject(), page.subject);
        }
        QTest::qWait(30); // laid out and drawn
        EXPECT_TRUE(window->panel(page.station)->isVisible()) << title();
        picture(*window, QStringLiteral("tour-%1").arg(i + 1));
        if (i + 1 < tourPages().size()) {
            press(Qt::Key_Right);
        }
    }
    press(Qt::Key_Left);
    EXPECT_THAT(title(), testing::HasSubstr("7 of 8"));
    window->startTour(); // as Shift+F1 does
    EXPECT_FALSE(child<Tour>(window, "tour")->isVisible());
    window->startTour();
    EXPECT_TRUE(child<Tour>(window, "tour")->isVisible());
}

TEST_F(TourTest, lets_a_person_try_things_in_a_copy_that_goes_with_the_window) {
    const QString copy = window->session()->path();
    EXPECT_NE(QFileInfo(copy).canonicalPath(), QFileInfo(sample).canonicalPath());
    EXPECT_TRUE(recentFiles().isEmpty()) << "the tour's copy is no record of the shop's";
    const auto entries = window->session()->ledger().size();
    window->session()->appendAndSay(NoteAdded{"engine", "tried"});
    EXPECT_EQ(window->session()->ledger().size(), entries + 1);
    delete window;
    window = nullptr;
    EXPECT_FALSE(QFileInfo::exists(QFileInfo(copy).path()));
}

TEST_F(TourTest, that_could_not_begin_leaves_no_mark_on_the_window) {
    QFile spoilt(sample);
    ASSERT_TRUE(spoilt.open(QIODevice::WriteOnly));
    spoilt.write("no record");
    spoilt.close();
    before = bytesOf(sample);
    MainWindow other;
    other.setAttribute(Qt::WA_DeleteOnClose, false);
    other.show();
    QTimer::singleShot(50, [] { qobject_cast<QDialog*>(QApplication::activeModalWidget())->reject(); });
    other.startTour();
    ASSERT_EQ(other.session(), nullptr);
    const QString own = folder.filePath("own.caprail");
    ASSERT_TRUE(QFile::copy(QStringLiteral(SAMPLE_BUILDS "/mid-survey.caprail"), own));
    ASSERT_TRUE(other.openFile(own));
    EXPECT_EQ(recentFiles(), QStringList{own}) << "a record of the shop's was taken for the tour's copy";
}

TEST_F(TourTest, says_what_the_sample_shows) {
    const Facts& facts = window->session()->facts();
    const Assessment& now = window->session()->assessment();
    EXPECT_EQ(facts.rounds.size(), 1U);
    const auto stateOf = [&](CheckKind kind, const Subject& subject) {
        const Check* check = now.find(kind, subject);
        return check == nullptr ? CheckState::notDone : check->state;
    };
    EXPECT_EQ(stateOf(CheckKind::mainClearance, JournalId{JournalKind::main, 4}), CheckState::stale);
    EXPECT_EQ(stateOf(CheckKind::gap, Position{4, Side::left}), CheckState::stale);
    EXPECT_EQ(stateOf(CheckKind::gap, Position{3, Side::left}), CheckState::good);
}

TEST_F(TourTest, asks_the_gap_back_that_it_has_a_person_try) {
    press(Qt::Key_Right);
    press(Qt::Key_Right);
    press(Qt::Key_Right);
    EntryField* field = window->panel(Station::girdle)->entryField();
    ASSERT_NE(field, nullptr);
    field->type("0.7");
    field->submit();
    EXPECT_EQ(field->text(), "0.7");
    EXPECT_FALSE(field->problem().isEmpty());
}

} // namespace
} // namespace caprail
