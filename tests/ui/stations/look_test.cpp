// SPDX-License-Identifier: GPL-3.0-or-later
#include "station_record.h"

#include <QAbstractScrollArea>
#include <QDir>
#include <QFont>
#include <QPalette>
#include <QScrollBar>
#include <cstdlib>
#include <stations/closing/station.h>
#include <stations/girdle/station.h>
#include <stations/pickup/station.h>
#include <stations/trial_fit/station.h>

namespace caprail {
namespace {

QPalette darkPalette() {
    QPalette palette;
    palette.setColor(QPalette::Window, QColor("#24292d"));
    palette.setColor(QPalette::WindowText, QColor("#ece9e1"));
    palette.setColor(QPalette::Base, QColor("#191d20"));
    palette.setColor(QPalette::AlternateBase, QColor("#20262a"));
    palette.setColor(QPalette::Text, QColor("#ece9e1"));
    palette.setColor(QPalette::Button, QColor("#30373c"));
    palette.setColor(QPalette::ButtonText, QColor("#ece9e1"));
    palette.setColor(QPalette::PlaceholderText, QColor("#a9b0ad"));
    palette.setColor(QPalette::Highlight, QColor("#7db8f5"));
    palette.setColor(QPalette::HighlightedText, QColor("#191d20"));
    for (const QPalette::ColorRole role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText}) {
        palette.setColor(QPalette::Disabled, role, QColor("#737b78"));
    }
    return palette;
}

/// An engine in the middle of its survey and stacks, so that a picture shows every state.
void fill(StationRecord& bench) {
    bench.survey(52, 1.7);
    for (int number = 1; number <= 24; ++number) {
        const double marked = number <= 8 ? 22 : number <= 16 ? 24 : number <= 20 ? 12.5 : 2;
        const std::string digits = std::to_string(100 + number).substr(1);
        bench.shim("S0" + digits, marked + number % 3,
                   number == 23 ? std::nullopt : std::optional(marked + number % 3 + 0.1 * (number % 2)));
    }
    bench.make(FastenerLoosened{{FastenerKind::mainCap, 4, Side::right, Ring::inner}, "look"});
    bench.make(GapReading{{4, Side::left}, 1, {thou(61.2), ""}, "FEEL-1"});
    bench.make(StackBuilt{{1, Side::left}, {{"S001", "S009"}}});
    bench.make(StackBuilt{{1, Side::right}, {{"S002", "S010"}}});
    bench.make(FindingOpened{"F1", "2R", "burr on the washer's face"});
    bench.make(FindingOpened{"F2", "", "no stamping on rod bolt 3"});
    bench.make(FindingSettled{"F2", "measured and matched to its lot"});
    bench.make(NoteAdded{"", "customer supplied the gasket"});
}

void grab(QWidget& panel, const QString& name) {
    QApplication::processEvents();
    const QPixmap picture = panel.grab();
    ASSERT_EQ(picture.size() / picture.devicePixelRatio(), panel.size()) << name.toStdString();
    // Where the environment names a folder, the pictures are kept there to be looked at.
    if (const char* folder = std::getenv("CAPRAIL_PICTURES")) {
        QDir().mkpath(QString::fromUtf8(folder));
        picture.save(QString::fromUtf8(folder) + QLatin1Char('/') + name + QStringLiteral(".png"));
    }
}

class Look1060 : public testing::TestWithParam<bool> {
protected:
    void SetUp() override { QApplication::setPalette(GetParam() ? darkPalette() : QPalette()); }
    void TearDown() override { QApplication::setPalette(QPalette()); }
    template <class Panel> void show(Panel& panel) {
        panel.setAttribute(Qt::WA_DontShowOnScreen);
        panel.resize(1060, 680);
        panel.show();
        panel.resize(1060, 680);
        const QSize least = panel.minimumSizeHint();
        EXPECT_LE(least.width(), 1060);
        EXPECT_LE(least.height(), 680);
    }
    [[nodiscard]] QString named(const char* name) const {
        return QString::fromLatin1(name) + (GetParam() ? QStringLiteral("-dark") : QStringLiteral("-light"));
    }
};

TEST_P(Look1060, every_mode_of_the_girdle_fits) {
    StationRecord bench(5, 4);
    fill(bench);
    GirdleStation panel(*bench.session);
    show(panel);
    ASSERT_TRUE(QTest::qWaitFor(
        [&] { return panel.planRunner().outcome() != nullptr && panel.planRunner().outcome()->isFinal; }, 9000));
    const std::pair<GirdleMode, const char*> modes[] = {{GirdleMode::gaps, "girdle-gaps"},
                                                        {GirdleMode::shims, "girdle-shims"},
                                                        {GirdleMode::stacks, "girdle-stacks"},
                                                        {GirdleMode::recheck, "girdle-recheck"}};
    for (const auto& [mode, name] : modes) {
        panel.setMode(mode);
        grab(panel, named(name));
    }
}

TEST_P(Look1060, nine_caps_fit_too) {
    StationRecord bench(9, 8);
    bench.survey(48, 0.9);
    GirdleStation panel(*bench.session);
    show(panel);
    grab(panel, named("girdle-nine-caps"));
    panel.setMode(GirdleMode::stacks);
    grab(panel, named("girdle-nine-stacks"));
}

TEST_P(Look1060, the_trial_fit_fits_locked_and_open) {
    StationRecord locked(5, 4);
    fill(locked);
    TrialFitStation shut(*locked.session);
    show(shut);
    grab(shut, named("trial-fit-locked"));
    StationRecord bench(5, 4);
    bench.readyToFit();
    TrialFitStation nuts(*bench.session);
    show(nuts);
    nuts.select("throw-1");
    grab(nuts, named("trial-fit-nuts"));
    bench.girdleToTorque();
    bench.make(TrialFitResult{TrialItem::dipstick, 0, TrialResult::pass, {}, ""});
    bench.make(TrialFitResult{TrialItem::counterweights, 1, TrialResult::measured, Entered<Length>{thou(72), ""}, ""});
    bench.make(TrialFitResult{TrialItem::counterweights, 2, TrialResult::fail, {}, "touches at 2R"});
    TrialFitStation open(*bench.session);
    show(open);
    grab(open, named("trial-fit-open"));
}

TEST_P(Look1060, the_pickup_fits_with_and_without_readings) {
    StationRecord bench(5, 4);
    PickupStation panel(*bench.session);
    show(panel);
    grab(panel, named("pickup-empty"));
    bench.pickup(7.55);
    panel.refresh();
    grab(panel, named("pickup"));
}

TEST_P(Look1060, the_closing_fits_locked_open_and_signed) {
    StationRecord locked(5, 4);
    fill(locked);
    ClosingStation shut(*locked.session);
    show(shut);
    grab(shut, named("closing-locked"));
    StationRecord bench;
    bench.readyToClose();
    ClosingStation panel(*bench.session);
    show(panel);
    // Each step with what it is about, at the size of a large window and of a small one.
    for (const auto& [step, name] : allWords<ClosingStep>()) {
        bench.close(step);
        panel.refresh();
        const QString picture = QStringLiteral("closing-%1").arg(static_cast<int>(step) + 1);
        panel.resize(1060, 680);
        grab(panel, named(picture.toLatin1().constData()));
        panel.resize(790, 440);
        grab(panel, named((picture + QStringLiteral("-small")).toLatin1().constData()));
        panel.resize(1060, 680);
    }
    bench.make(SignedOff{"Assembled and checked as recorded."});
    panel.refresh();
    grab(panel, named("closing-signed"));
}

INSTANTIATE_TEST_SUITE_P(LightAndDark, Look1060, testing::Bool(),
                         [](const auto& which) { return which.param ? "dark" : "light"; });

} // namespace
} // namespace caprail
