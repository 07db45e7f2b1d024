// SPDX-License-Identifier: GPL-3.0-or-later
/// Each panel on a record of five caps, in both looks, at the size that a window of 1280 × 800 gives it. Checked: that
/// nothing wants more room, and that it draws. With CAPRAIL_PICTURES set to a folder, the pictures are kept to be
/// looked at.
#include "station_record.h"

#include <QLineEdit>
#include <QPainter>
#include <QPalette>
#include <QPushButton>
#include <QTabWidget>
#include <set>
#include <stations/bearings/measure.h>
#include <stations/bearings/station.h>
#include <stations/common/entry_field.h>
#include <stations/engine/station.h>
#include <stations/fasteners/groups.h>
#include <stations/fasteners/station.h>
#include <stations/girdle/feel.h>
#include <stations/girdle/recheck.h>
#include <stations/girdle/station.h>
#include <stations/history/station.h>
#include <stations/pickup/station.h>

namespace caprail {
namespace {

QPalette darkPalette() {
    QPalette dark;
    dark.setColor(QPalette::Window, QColor("#23282b"));
    dark.setColor(QPalette::Base, QColor("#191d20"));
    dark.setColor(QPalette::AlternateBase, QColor("#20262a"));
    dark.setColor(QPalette::Button, QColor("#2f363a"));
    dark.setColor(QPalette::Mid, QColor("#434a4e"));
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText, QPalette::ToolTipText}) {
        dark.setColor(role, QColor("#ece9e1"));
        dark.setColor(QPalette::Disabled, role, QColor("#8a918e"));
    }
    dark.setColor(QPalette::PlaceholderText, QColor("#a9b0ad"));
    dark.setColor(QPalette::Highlight, QColor("#2f5f8f"));
    return dark;
}

class Pictures : public testing::TestWithParam<bool> {
protected:
    Pictures() : bench(5, 4) {
        const QPalette light = QApplication::palette();
        if (GetParam()) {
            QApplication::setPalette(darkPalette());
        }
        before = light;
        bench.band(bands::rodClearance, 1.6, 2.2);
        bench.band(bands::crankEndPlay, 4, 8);
        bench.band(bands::rodSideClearance, 10, 20);
        bench.band("ring gap", 16, 20);
        FastenerGroupSet group = bench.facts().groups.at({FastenerKind::mainCap, std::nullopt}).what;
        group.grade = "by hand 170 ksi";
        group.lubricant = "engine oil";
        group.source = "stud maker's sheet";
        bench.make(group);
        FastenerGroupSet rear = group;
        rear.thread = "1/2-13";
        rear.name = "rear cap";
        rear.places = NameList{{"main-5L", "main-5R"}};
        rear.piece = FastenerPiece::bolt;
        bench.make(rear);
        FastenerGroupSet pan{FastenerKind::panRail,
                             std::nullopt,
                             19,
                             "1/4-20",
                             "SAE J429 grade 5",
                             "",
                             TighteningMethod::torque,
                             Entered<Torque>{poundFeet(8), "8"},
                             {},
                             {},
                             2,
                             {},
                             "shop"};
        bench.make(pan);
        FastenerGroupSet studs = pan;
        studs.name = "studs";
        studs.places = NameList{{"pan-2", "pan-9", "pan-16"}};
        studs.piece = FastenerPiece::stud;
        bench.make(studs);
        pan.group = FastenerKind::front;
        pan.count = 4;
        bench.make(pan);
        bench.make(InstrumentAdded{"TW-150",
                                   InstrumentType::torqueWrench,
                                   "",
                                   "88-1",
                                   {},
                                   {},
                                   Entered<Torque>{poundFeet(150), "150"},
                                   *parseDate("2024-03-01"),
                                   {},
                                   {},
                                   {}});
        bench.tighten();
        bench.bearings();
        bench.rodBearings();
        bench.make(FitReading{std::string(bands::crankEndPlay), 1, {thou(6), ""}, ""});
        bench.make(FitReading{std::string(bands::rodSideClearance), 2, {thou(22), ""}, ""});
        bench.tighten();
        bench.survey(50, 1.5);
        bench.make(RoundBegun{1, "TW-150"});
        int n = 0;
        for (const FastenerId f : bench.facts().layout->verifiedFasteners()) {
            RoundOutcome outcome = drafts::held(1, f, "TW-150");
            if (++n == 4) {
                outcome.outcome = Outcome::moved;
                outcome.angle = Entered<Angle>{degrees(4), "4"};
            }
            if (n < 12) {
                bench.make(outcome);
            }
        }
    }
    ~Pictures() override { QApplication::setPalette(before); }

    void look(StationPanel& panel, const char* name) {
        panel.resize(1060, 680);
        panel.show();
        panel.refresh();
        EXPECT_LE(panel.minimumSizeHint().width(), 1060) << name;
        EXPECT_LE(panel.minimumSizeHint().height(), 680) << name;
        QApplication::processEvents();
        const QImage image = panel.grab().toImage();
        std::set<QRgb> colours;
        for (int y = 0; y < image.height(); y += 3) {
            for (int x = 0; x < image.width(); x += 3) {
                colours.insert(image.pixel(x, y));
            }
        }
        EXPECT_GT(colours.size(), 20U) << name << " draws next to nothing";
        const QByteArray folder = qgetenv("CAPRAIL_PICTURES");
        if (!folder.isEmpty()) {
            image.save(
                QString::fromLocal8Bit(folder) +
                QStringLiteral("/%1-%2.png")
                    .arg(QString::fromLatin1(name), GetParam() ? QStringLiteral("dark") : QStringLiteral("light")));
        }
    }
    StationRecord bench;
    QPalette before;
};

TEST_P(Pictures, of_the_engine_station) {
    OwnCheckSet check;
    check.ownCheck = "windage-tray";
    check.words = "windage tray clear of every throw";
    check.holds = OwnCheckHolds::trialFit;
    check.places = 4;
    bench.make(check);
    EngineStation panel(*bench.session);
    look(panel, "engine-layout");
    panel.select("rules");
    look(panel, "engine-bands");
    panel.select("people");
    look(panel, "engine-people");
    panel.select("own checks");
    look(panel, "engine-own-checks");
}

TEST_P(Pictures, of_the_bearings_station) {
    BearingsStation panel(*bench.session);
    look(panel, "bearings-journals");
    const char* names[] = {"bearings-journals", "bearings-bores",  "bearings-housings", "bearings-strip",
                           "bearings-fits",     "bearings-shells", "bearings-warm"};
    for (int mode = 1; mode < 7; ++mode) {
        panel.setMode(static_cast<BearingsMode>(mode));
        look(panel, names[mode]);
    }
}

TEST_P(Pictures, of_the_girdle_station) {
    RulesSet rules;
    rules.decision = DecisionRule::guarded;
    bench.make(rules);
    double gap = 50;
    for (const Position p : bench.positions()) {
        bench.shim("S-" + code(p), gap, gap + 0.1);
        gap += 1.5;
    }
    int n = 0;
    for (const double thickness : {10.0, 10.0, 9.6, 9.7, 9.8, 9.9, 10.05, 10.1, 10.2, 10.3, 10.4}) {
        bench.shim("F" + std::to_string(++n), 10, thickness);
    }
    bench.make(StackBuilt{{5, Side::right}, {{"S-5R"}}});
    bench.make(RecheckMade{{5, Side::right}, Feel::drags, "EDGE-1"});
    bench.make(FeelStudyBegun{1, "Mira", "EDGE-1", "surface plate"});
    for (int i = 0; i < 44; ++i) {
        const int tenth = i * 7 % 11 - 5;
        const double turns = i % 3 == 0 ? 1.2 : 3.3;
        bench.make(FeelAnswer{1, {tenths(tenth), ""}, {}, tenth > turns ? Feel::rocks : tenth < -turns ? Feel::loose : Feel::drags});
    }
    GirdleStation panel(*bench.session);
    look(panel, "girdle-gaps");
    panel.select("5R");
    panel.setMode(GirdleMode::recheck);
    look(panel, "girdle-recheck");
    panel.setMode(GirdleMode::feel);
    look(panel, "girdle-feel");
    PickupStation pickup(*bench.session);
    look(pickup, "pickup");
}

TEST_P(Pictures, of_the_load_that_the_girdle_puts_into_the_block) {
    bench.describePlate();
    bench.waitForGirdle();
    const auto gapAt = [](Position p) { return 50 + 1.5 * (2 * (p.cap - 1) + (p.side == Side::right ? 1 : 0)); };
    for (const int pass : {3, 4}) { // a nut of cap 2 moved
        for (const Side side : {Side::left, Side::right}) {
            bench.make(GapReading{{2, side}, pass, {thou(gapAt({2, side})), ""}, "FEEL-1", {}, "EDGE-1"});
        }
    }
    for (const Position p : bench.positions()) {
        const double gap = gapAt(p);
        const double thickness = gap - (p.cap == 3 ? 1.2 : 0.3);
        bench.shim("S-" + code(p), thickness, thickness);
        bench.make(StackBuilt{p, {{"S-" + code(p)}}});
    }
    GirdleStation panel(*bench.session);
    panel.setMode(GirdleMode::load);
    look(panel, "girdle-load");
    panel.setMode(GirdleMode::stacks);
    child<QLineEdit>(child<EntryField>(panel, "stack"))->setText("S-1R");
    look(panel, "girdle-stacks-load");
    BearingsStation bearings(*bench.session);
    bearings.setMode(BearingsMode::warm);
    look(bearings, "bearings-film-none");
    child<QLineEdit>(bearings, "filmLoad")->setText("3000");
    look(bearings, "bearings-film");
}

TEST_P(Pictures, of_the_fasteners_station) {
    FastenersStation panel(*bench.session);
    look(panel, "fasteners-tighten");
    panel.setMode(FastenersMode::verify);
    look(panel, "fasteners-verify");
    panel.select("pan-3");
    look(panel, "fasteners-pan");
    panel.select("front-2");
    look(panel, "fasteners-front");
    panel.setMode(FastenersMode::groups);
    look(panel, "fasteners-groups");
    child<FastenersGroups>(panel)->selectGroup("main: rear cap");
    look(panel, "fasteners-groups-rear");
    child<FastenersGroups>(panel)->selectGroup("main");
    child<QPushButton>(panel, "splitOff")->click();
    child<FastenersGroupParts>(panel)->touch("main-1L");
    look(panel, "fasteners-groups-split");
    panel.setMode(FastenersMode::clamp);
    look(panel, "fasteners-clamp");
}

TEST_P(Pictures, of_the_history_station) {
    HistoryStation panel(*bench.session);
    look(panel, "history-ledger");
    panel.select("rounds");
    look(panel, "history-rounds");
    panel.select("repeatability");
    look(panel, "history-repeatability");
}

INSTANTIATE_TEST_SUITE_P(BothLooks, Pictures, testing::Bool());

} // namespace
} // namespace caprail
