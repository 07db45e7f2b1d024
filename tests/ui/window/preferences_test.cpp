// SPDX-License-Identifier: GPL-3.0-or-later
/// A first start on somebody's desktop: units, paper, contrast, letters.
#include "../pictures.h"

#include <QCheckBox>
#include <QClipboard>
#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>
#include <QVBoxLayout>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <session/look.h>
#include <window/about.h>
#include <window/main_window.h>
#include <window/preferences.h>
#include <window/preferences_dialog.h>

using namespace caprail;

namespace {

TEST(FirstStart, measures_and_prints_as_the_desktop_does) {
    const Units german = unitsOf(QLocale("de_DE"));
    EXPECT_EQ(german.length, LengthUnit::millimetre);
    EXPECT_EQ(german.torque, TorqueUnit::newtonMetre);
    EXPECT_EQ(german.decimalMark, ',');
    EXPECT_EQ(paperOf(QLocale("de_DE")), QPageSize::A4);
    const Units american = unitsOf(QLocale("en_US"));
    EXPECT_EQ(american.length, LengthUnit::inch);
    EXPECT_EQ(american.torque, TorqueUnit::poundFoot);
    EXPECT_EQ(paperOf(QLocale("en_US")), QPageSize::Letter);
    EXPECT_EQ(unitsOf(QLocale("fr_CA")).length, LengthUnit::millimetre);
    EXPECT_EQ(paperOf(QLocale("fr_CA")), QPageSize::Letter);
    EXPECT_EQ(unitsOf(QLocale::c()).length, LengthUnit::inch) << "a desktop without a country";
    EXPECT_EQ(paperOf(QLocale::c()), QPageSize::A4);
}

TEST(FirstStart, what_was_chosen_counts_more_than_the_desktop) {
    const QTemporaryDir folder;
    useSettingsIn(folder.path());
    Preferences chosen;
    chosen.units = {LengthUnit::millimetre, TorqueUnit::poundInch, ','};
    chosen.paper = QPageSize::Letter;
    chosen.look = LookChoice::contrast;
    chosen.textSize = 150;
    chosen.save();
    const Preferences kept = Preferences::load();
    EXPECT_EQ(kept.units.length, LengthUnit::millimetre);
    EXPECT_EQ(kept.units.torque, TorqueUnit::poundInch);
    EXPECT_EQ(kept.paper, QPageSize::Letter);
    EXPECT_EQ(kept.look, LookChoice::contrast);
    EXPECT_EQ(kept.textSize, 150);
}

TEST(Preferences, leave_alone_what_another_window_or_dialog_has_changed_meanwhile) {
    const QTemporaryDir folder;
    useSettingsIn(folder.path());
    MainWindow window;
    window.setAttribute(Qt::WA_DeleteOnClose, false);
    PreferencesDialog dialog(Preferences::load());
    const PublishSettings publishing{QStringLiteral("shop"), PublishSchedule::daily};
    ASSERT_TRUE(publishing.save()); // in the publish dialog
    Preferences other = Preferences::load();
    other.shopName = QStringLiteral("Bench & Bore");
    other.save(); // from another window
    const LengthUnit before = other.units.length;
    window.switchUnits();
    EXPECT_TRUE(PublishSettings::load() == publishing);
    EXPECT_EQ(Preferences::load().shopName, QStringLiteral("Bench & Bore"));
    EXPECT_NE(Preferences::load().units.length, before);
    dialog.accept();
    dialog.preferences().save();
    EXPECT_TRUE(PublishSettings::load() == publishing) << "nothing of publishing was changed in the dialog";
}

/// The least contrast of `look`'s inks against its paper.
double leastContrast(const Look& look) {
    double least = 21;
    for (const QColor& ink : {look.ink, look.quiet, look.accent, look.good, look.out, look.close, look.stale, look.open}) {
        least = std::min(least, contrast(ink, look.paper));
    }
    return least;
}

TEST(Contrast, is_4_5_to_1_for_every_ink_and_7_to_1_where_high_contrast_is_asked_for) {
    EXPECT_GE(leastContrast(lightLook()), 4.5);
    EXPECT_GE(leastContrast(darkLook()), 4.5);
    EXPECT_GE(leastContrast(contrastLook(false)), 7);
    EXPECT_GE(leastContrast(contrastLook(true)), 7);
    EXPECT_NEAR(contrast(Qt::black, Qt::white), 21, 1e-9);
    EXPECT_NEAR(contrast(QColor("#777777"), Qt::white), 4.48, 0.005); // WCAG's own example, from memory
}

TEST(Contrast, of_a_desktop_is_told_from_an_ordinary_light_or_dark_one) {
    const auto palette = [](const char* ground, const char* text) {
        QPalette p;
        p.setColor(QPalette::Window, QColor(ground));
        p.setColor(QPalette::WindowText, QColor(text));
        return p;
    };
    EXPECT_TRUE(isHighContrast(palette("#ffffff", "#000000")));
    EXPECT_TRUE(isHighContrast(palette("#000000", "#ffff00")));
    EXPECT_FALSE(isHighContrast(palette("#efefef", "#000000")));
    EXPECT_FALSE(isHighContrast(palette("#eff0f1", "#232629")));
    EXPECT_FALSE(isHighContrast(palette("#2a2e32", "#fcfcfc")));
    applyLook(LookChoice::contrast);
    EXPECT_EQ(screenLook().ink, QApplication::palette().color(QPalette::Base) == Qt::white ? Qt::black : Qt::white);
    applyLook(LookChoice::light);
    EXPECT_EQ(screenLook().ink, lightLook().ink);
}

/// The most that a line across the middle of a widget's left edge stands out from what is around the widget.
double frameContrast(QWidget& page, QWidget& widget, const QColor& ground) {
    const QImage drawn = page.grab().toImage();
    double most = 1;
    for (int x = -2; x < 4; ++x) {
        const QPoint at = widget.mapTo(&page, QPoint(x, widget.height() / 2));
        most = std::max(most, contrast(drawn.pixelColor(at * drawn.devicePixelRatio()), ground));
    }
    return most;
}

TEST(Contrast, of_frames_and_of_the_ring_of_what_has_the_focus_is_3_to_1_in_every_look) {
    for (const LookChoice look : {LookChoice::light, LookChoice::dark, LookChoice::contrast}) {
        applyLook(look);
        QWidget page;
        auto* column = new QVBoxLayout(&page);
        auto* number = new QSpinBox;
        auto* choice = new QComboBox;
        choice->addItem("MIC-25");
        const std::vector<QWidget*> inputs{new QLineEdit("0.0575"), number, choice, new QPushButton("Store"), new QCheckBox("read")};
        for (QWidget* input : inputs) {
            column->addWidget(input);
        }
        page.show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(&page));
        const QColor ground = QApplication::palette().color(QPalette::Window);
        const QColor paper = QApplication::palette().color(QPalette::Base);
        for (QWidget* input : inputs) {
            if (QWidget* before = QApplication::focusWidget()) {
                before->clearFocus();
            }
            QApplication::processEvents();
            const std::string which = std::string(input->metaObject()->className()) + " in look " + std::to_string(int(look));
            EXPECT_GE(frameContrast(page, *input, ground), 3) << which;
            if (qobject_cast<QLineEdit*>(input) != nullptr) {
                EXPECT_GE(frameContrast(page, *input, paper), 3) << which;
                input->setFocus(Qt::TabFocusReason);
                QApplication::processEvents();
                EXPECT_GE(frameContrast(page, *input, paper), 3) << which << ", with the focus";
            }
        }
        picture(page, QStringLiteral("frames-%1").arg(int(look)));
    }
    applyLook(LookChoice::light);
}

TEST(About, names_every_library_with_its_licence_and_gives_a_text_for_a_report) {
    for (const char* part : {"Qt " QT_VERSION_STR ": LGPL", "SQLite 3.", "QCustomPlot 2.", "Nettle 3.", "qpdf 1", "libqrencode 4.",
                             "Boost 1.", "Eigen 3.", "Speech Dispatcher 0."}) {
        EXPECT_THAT(aboutText().toStdString(), testing::HasSubstr(part));
        EXPECT_THAT(reportText().toStdString(), testing::HasSubstr(part));
    }
    EXPECT_THAT(reportText().toStdString(), testing::HasSubstr("window system offscreen"));
    QTimer::singleShot(50, qApp, [] {
        auto* box = QApplication::activeModalWidget();
        ASSERT_NE(box, nullptr);
        box->findChild<QPushButton*>("copyForReport")->click();
        EXPECT_TRUE(box->isVisible()) << "it is still read";
        box->close();
    });
    showAbout(nullptr);
    EXPECT_EQ(QApplication::clipboard()->text(), reportText());
}

TEST(TextSize, is_a_share_of_the_desktops_own_and_does_not_add_up) {
    const double own = QApplication::font().pointSizeF();
    applyTextSize(150);
    applyTextSize(150);
    EXPECT_NEAR(QApplication::font().pointSizeF(), 1.5 * own, 0.01);
    applyTextSize(100);
    EXPECT_NEAR(QApplication::font().pointSizeF(), own, 0.01);
}

} // namespace
