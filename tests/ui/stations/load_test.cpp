// SPDX-License-Identifier: GPL-3.0-or-later
#include "station_record.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QTableView>
#include <charts/deflection_chart.h>
#include <charts/spread_chart.h>
#include <cmath>
#include <planview/plan_view.h>
#include <stations/bearings/film.h>
#include <stations/bearings/station.h>
#include <stations/common/entry_field.h>
#include <stations/girdle/load_page.h>
#include <stations/girdle/station.h>

namespace caprail {
namespace {

class Load : public testing::Test {
protected:
    Load() : panel(*bench.session) {
        QObject::connect(bench.session.get(), &RecordSession::changed, &panel, [this] { panel.refresh(); });
        panel.resize(1060, 680);
        panel.show();
    }
    void describePlate() {
        bench.describePlate();
        bench.waitForGirdle();
    }
    QString text(const char* label) { return child<QLabel>(panel, label)->text(); }
    QString echo() { return child<QLabel>(child<EntryField>(panel, "stack"), "echo")->text(); }
    StationRecord bench;
    GirdleStation panel;
};

TEST_F(Load, says_what_it_needs_before_it_tells_a_load) {
    panel.setMode(GirdleMode::load);
    EXPECT_TRUE(text("loadSummary").contains("thickness and metal")) << text("loadSummary").toStdString();
    EXPECT_EQ(child<QTableView>(panel, "loads")->model()->rowCount(), 0);
    EXPECT_TRUE(child<DeflectionChart>(panel)->points().empty());
    describePlate();
    EXPECT_TRUE(text("loadSummary").contains("no gap is accepted")) << text("loadSummary").toStdString();
    EXPECT_TRUE(child<DeflectionChart>(panel)->points().empty()) << "nothing is drawn of what is not known";
}

TEST_F(Load, is_worked_out_beside_the_window_and_only_when_the_plate_is_another) {
    bench.buildOneLow();
    panel.setMode(GirdleMode::load);
    bench.describePlate();
    GirdleRunner& girdle = GirdleRunner::of(*bench.session);
    EXPECT_TRUE(girdle.isBusy());
    EXPECT_EQ(text("loadSummary"), "Working out …");
    EXPECT_EQ(panel.planRunner().outcome(), nullptr) << "the plan waits for its loads";
    bench.waitForGirdle();
    EXPECT_FALSE(girdle.isBusy());
    EXPECT_FALSE(text("loadSummary").contains("Working out")) << text("loadSummary").toStdString();
    // What the studs are like is put in series at once.
    FastenerGroupSet mains = bench.facts().groups.at({FastenerKind::mainCap, {}}).what;
    mains.grip = Entered<Length>{inches(2.5), ""};
    mains.clamped = "cast iron";
    EXPECT_FALSE(girdle.model()->springsNotKnown().empty());
    bench.make(mains);
    EXPECT_FALSE(girdle.isBusy());
    ASSERT_NE(girdle.model(), nullptr);
    EXPECT_TRUE(girdle.model()->springsNotKnown().empty());
    // Paper waits for what the screen does not.
    LayoutSet thinner = bench.session->ledger().at(bench.facts().layoutEntry).body.get<LayoutSet>();
    thinner.plateThickness = inches(0.2);
    bench.make(thinner);
    ASSERT_TRUE(girdle.isBusy());
    EXPECT_EQ(girdle.model(), nullptr) << "what is outdated is not given";
    EXPECT_NE(girdle.finished(), nullptr);
    EXPECT_FALSE(girdle.isBusy());
    EXPECT_FALSE(text("loadSummary").contains("Working out"));
}

TEST_F(Load, builds_its_chart_when_it_is_first_shown) {
    EXPECT_EQ(panel.findChild<DeflectionChart*>(), nullptr);
    panel.setMode(GirdleMode::load);
    auto* deflections = child<DeflectionChart>(panel);
    EXPECT_TRUE(deflections->isVisible());
    EXPECT_FALSE(child<SpreadChart>(panel)->isVisible());
    panel.setMode(GirdleMode::recheck);
    EXPECT_FALSE(deflections->isVisible());
    EXPECT_TRUE(child<SpreadChart>(panel)->isVisible());
}

TEST_F(Load, is_told_at_each_place_by_shape_and_word) {
    describePlate();
    bench.buildOneLow();
    panel.setMode(GirdleMode::load);
    auto* loads = child<QTableView>(panel, "loads");
    ASSERT_EQ(loads->model()->rowCount(), 6);
    EXPECT_TRUE(cell(loads, 2, 2).startsWith("▲ ")) << cell(loads, 2, 2).toStdString();
    EXPECT_TRUE(cell(loads, 2, 2).endsWith(" lbf up"));
    const PlanContent* content = child<PlanView>(panel, "plan")->content();
    ASSERT_NE(content, nullptr);
    const auto mark = std::ranges::find(content->marks, QString("2L"), &PlanMark::place);
    ASSERT_NE(mark, content->marks.end());
    EXPECT_TRUE(mark->figure.endsWith(" lbf")) << mark->figure.toStdString();
    EXPECT_EQ(mark->note, "up");
    EXPECT_GT(content->loads.at("2L"), 0);
    EXPECT_EQ(child<DeflectionChart>(panel)->points().size(), 6U);
    EXPECT_TRUE(text("loadSummary").contains("cap 2 left, up")) << text("loadSummary").toStdString();
    // On its nuts alone the plate gives way: the load is another, and no ± is told for it.
    const QString held = cell(loads, 2, 2);
    QComboBox* rail = nullptr;
    for (auto* box : panel.findChildren<QComboBox*>()) {
        rail = box->accessibleName() == QLatin1String("How the girdle is held") ? box : rail;
    }
    ASSERT_NE(rail, nullptr);
    rail->setCurrentIndex(1);
    emit rail->activated(1);
    EXPECT_NE(cell(loads, 2, 2), held);
    EXPECT_EQ(cell(loads, 2, 3), "");
}

TEST_F(Load, is_no_longer_told_once_a_stack_is_stale) {
    describePlate();
    bench.buildOneLow();
    panel.setMode(GirdleMode::load);
    ASSERT_FALSE(child<DeflectionChart>(panel)->points().empty());
    bench.make(ShimMeasured{"S-3R", {thou(51), ""}, "MIC-1"});
    EXPECT_TRUE(text("loadSummary").contains("stale, at cap 3 right")) << text("loadSummary").toStdString();
    EXPECT_TRUE(child<DeflectionChart>(panel)->points().empty());
}

TEST_F(Load, a_typed_stack_says_what_it_takes_off_the_cap) {
    describePlate();
    bench.buildOneLow();
    panel.select("2L");
    panel.setMode(GirdleMode::stacks);
    child<EntryField>(panel, "stack")->lineEdit()->setText("S-2L");
    EXPECT_TRUE(echo().contains("takes ")) << echo().toStdString();
    EXPECT_TRUE(echo().contains(" off the cap"));
}

TEST_F(Load, is_not_worked_out_anew_when_a_plan_comes) {
    describePlate();
    bench.buildOneLow();
    panel.setMode(GirdleMode::stacks);
    auto* load = child<QLabel>(panel, "loadOfStacks");
    EXPECT_TRUE(load->text().contains("Largest load")) << load->text().toStdString();
    load->setText("as it was");
    emit panel.planRunner().planReady();
    EXPECT_EQ(load->text(), "as it was");
    emit GirdleRunner::of(*bench.session).ready();
    EXPECT_TRUE(load->text().contains("Largest load")) << load->text().toStdString();
}

TEST_F(Load, says_what_a_band_is_worth_and_back) {
    describePlate();
    bench.survey();
    panel.setMode(GirdleMode::load);
    child<QLineEdit>(panel, "largestLoad")->setText("40");
    EXPECT_TRUE(text("bandForLoad").contains("keep every load at or below 40 lbf"))
        << text("bandForLoad").toStdString();
    // What is told of either keeps its promise: the band rounded down, its cost up.
    const SharedGirdle girdle = GirdleRunner::of(*bench.session).model();
    ASSERT_NE(girdle, nullptr);
    const auto pounds = [&](const char* band) {
        return std::ceil(inPoundsForce(girdle->largestWithin(inches(QString(band).toDouble()), Rail::held)) - 1e-3);
    };
    for (const char* band : {"0.0003", "0.0004", "0.0005", "0.0006", "0.0007"}) {
        child<QLineEdit>(panel, "bandOfResidual")->setText(band);
        EXPECT_TRUE(text("costOfBand").contains(QStringLiteral(" %1 lbf").arg(pounds(band))))
            << text("costOfBand").toStdString();
    }
    for (const char* load : {"11", "17", "23", "31", "37"}) {
        child<QLineEdit>(panel, "largestLoad")->setText(load);
        const double told = text("bandForLoad").section("± ", 1).section(' ', 0, 0).toDouble();
        EXPECT_LE(girdle->largestWithin(inches(told), Rail::held), poundsForce(QString(load).toDouble() + 1e-3));
    }
    child<QLineEdit>(panel, "bandOfResidual")->setText("0.0010");
    const QString once = text("costOfBand");
    EXPECT_TRUE(once.contains("can cost up to ")) << once.toStdString();
    child<QLineEdit>(panel, "bandOfResidual")->setText("0.0020");
    EXPECT_NE(text("costOfBand"), once);
    child<QLineEdit>(panel, "largestLoad")->setText("much");
    EXPECT_TRUE(text("bandForLoad").contains("“much” cannot be read")) << text("bandForLoad").toStdString();
}

TEST_F(Load, is_what_the_plan_is_made_for_where_the_rules_say_so) {
    describePlate();
    bench.survey();
    bench.kit();
    RulesSet rules = bench.facts().rules;
    rules.objective = Objective::leastLoad;
    bench.make(rules);
    panel.setMode(GirdleMode::stacks);
    const auto isDone = [this] {
        const PlanOutcome* outcome = panel.planRunner().outcome();
        return outcome != nullptr && outcome->isFinal;
    };
    ASSERT_TRUE(QTest::qWaitFor(isDone, 9000));
    EXPECT_EQ(panel.planRunner().outcome()->request.objective, Objective::leastLoad);
    EXPECT_EQ(panel.planRunner().outcome()->plan->loads.size(), 6U);
}

TEST(OilFilm, is_not_told_until_somebody_names_a_load) {
    StationRecord bench(3, 2, false);
    bench.tighten();
    bench.bearings();
    BearingsStation panel(*bench.session);
    panel.setMode(BearingsMode::warm);
    auto* films = child<QTableView>(panel, "films");
    EXPECT_EQ(films->model()->rowCount(), 0);
    const auto remark = [&] { return child<QLabel>(panel, "filmRemark")->text(); };
    EXPECT_TRUE(remark().contains("No load is named")) << remark().toStdString();
    child<QLineEdit>(panel, "filmLoad")->setText("3000");
    ASSERT_EQ(films->model()->rowCount(), 3) << remark().toStdString();
    EXPECT_TRUE(cell(films, 0, 2).endsWith(" thou")) << cell(films, 0, 2).toStdString();
    EXPECT_NE(cell(films, 0, 1), cell(films, 0, 2)) << "warm the clearance is another";
    EXPECT_TRUE(remark().contains("no verdict"));
    QSignalSpy edited(child<BearingsFilm>(panel), &BearingsFilm::edited);
    auto* oil = child<QComboBox>(panel, "filmOil");
    const QString before = cell(films, 0, 2);
    oil->setCurrentIndex(1);
    emit oil->activated(1);
    EXPECT_NE(cell(films, 0, 2), before);
    EXPECT_EQ(edited.count(), 1) << "of the one oil or of the other, never of half of each";
    child<QLineEdit>(panel, "filmSpeed")->setText("fast");
    EXPECT_EQ(films->model()->rowCount(), 0);
    EXPECT_TRUE(remark().contains("“fast”")) << remark().toStdString();
}

} // namespace
} // namespace caprail
