// SPDX-License-Identifier: GPL-3.0-or-later
/// Whether a window has room for what it shows: with longer words, and with larger text.
#include "../cut_texts.h"
#include "../every_view.h"
#include "../find.h"
#include "../pictures.h"

#include <QApplication>
#include <QFile>
#include <QScrollBar>
#include <QSettings>
#include <QTemporaryDir>
#include <QTest>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <session/language.h>
#include <stations/common/caution_label.h>
#include <stations/common/station.h>
#include <window/bench_pad.h>
#include <window/main_window.h>
#include <window/panel_scroller.h>
#include <window/place_panel.h>
#include <window/preferences.h>
#include <window/station_list.h>

using namespace caprail;

namespace {

/// A window as a first start makes it, with the settings in a folder of the test's own.
class Room : public testing::Test {
protected:
    void SetUp() override { useSettingsIn(m_folder.path()); }
    void TearDown() override { applyTextSize(100); }
    std::unique_ptr<MainWindow> opened() {
        const QString copy = m_folder.filePath(QStringLiteral("record.caprail"));
        EXPECT_TRUE(QFile::copy(QStringLiteral(SAMPLE_BUILDS "/closed.caprail"), copy));
        QFile::setPermissions(copy, QFile::ReadOwner | QFile::WriteOwner);
        auto window = std::make_unique<MainWindow>();
        window->setAttribute(Qt::WA_DeleteOnClose, false);
        window->show();
        EXPECT_TRUE(window->openFile(copy));
        return window;
    }
    QTemporaryDir m_folder;
};

TEST_F(Room, in_german_of_1280_by_800_no_view_scrolls_sideways_or_gives_its_head_to_cautions) {
    speak(QStringLiteral("de"));
    const auto window = opened();
    window->resize(1280, 800);
    inEveryView(*window, [&](const std::string& view) {
        EXPECT_EQ(child<PanelScroller>(*window)->horizontalScrollBar()->maximum(), 0) << view;
        for (const Label* label : window->findChildren<Label*>()) {
            const auto* caution = dynamic_cast<const CautionLabel*>(label);
            if (caution != nullptr && caution->isVisible() && view.rfind("Closing", 0) != 0) {
                EXPECT_LE(caution->height(), 5 * caution->fontMetrics().lineSpacing()) << view;
            }
        }
        picture(*window, QStringLiteral("room-german-") + QString::fromStdString(view));
    });
}

TEST_F(Room, of_1280_by_800_shows_every_caution_whole_from_the_start) {
    const auto window = opened();
    window->resize(1280, 800);
    for (const auto& station : allWords<Station>()) {
        window->showDestination({station.value, {}});
        QApplication::processEvents();
        for (const Label* label : window->panel(station.value)->findChildren<Label*>()) {
            if (const auto* caution = dynamic_cast<const CautionLabel*>(label)) {
                EXPECT_EQ(caution->text(), caution->accessibleDescription()) << station.word;
            }
        }
    }
}

TEST_F(Room, of_a_window_that_was_narrow_for_a_while_shows_the_cautions_again) {
    const auto window = opened();
    window->resize(1280, 800);
    for (const Station station : {Station::girdle, Station::fasteners}) {
        window->showDestination({station, {}});
        QApplication::processEvents();
        const CautionLabel* caution = nullptr;
        for (const Label* label : window->panel(station)->findChildren<Label*>()) {
            caution = caution == nullptr ? dynamic_cast<const CautionLabel*>(label) : caution;
        }
        ASSERT_NE(caution, nullptr);
        window->resize(960, 540);
        QApplication::processEvents();
        EXPECT_NE(caution->text(), caution->accessibleDescription()) << "the work comes first";
        window->resize(1180, 720);
        QApplication::processEvents();
        EXPECT_EQ(caution->text(), caution->accessibleDescription()) << "narrow, and yet there is room";
        EXPECT_LE(caution->height(), 5 * caution->fontMetrics().lineSpacing());
        window->resize(1280, 800);
        QApplication::processEvents();
        EXPECT_EQ(caution->text(), caution->accessibleDescription());
    }
}

TEST_F(Room, for_text_twice_as_large_no_two_parts_of_the_window_lie_over_each_other) {
    QSettings().setValue(QStringLiteral("text-size"), 200);
    applyTextSize(200);
    const auto window = opened();
    for (const QSize size : {QSize(1280, 800), QSize(1920, 1040), QSize(2560, 1600)}) {
        window->resize(size);
        QApplication::processEvents();
        const auto* list = child<StationList>(*window);
        const auto* place = child<PlacePanel>(*window);
        EXPECT_EQ(list->isCompact(), size.width() < 2200) << size.width();
        EXPECT_TRUE(!place->isVisible() || !list->geometry().intersects(place->geometry())) << size.width();
        picture(*window, QStringLiteral("room-large-%1").arg(size.width()));
    }
}

TEST_F(Room, of_the_bench_pad_holds_its_words_at_every_text_size) {
    for (const int percent : textSizes) {
        applyTextSize(percent);
        BenchPad pad(nullptr);
        pad.showWords({{QStringLiteral("Markierung gleich"), QStringLiteral("h")},
                       {QStringLiteral("Länge"), QStringLiteral("l")}});
        pad.show();
        QApplication::processEvents();
        EXPECT_THAT(cutTexts(pad), testing::IsEmpty()) << percent;
    }
}

} // namespace
