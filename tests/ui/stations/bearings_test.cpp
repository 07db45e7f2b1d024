// SPDX-License-Identifier: GPL-3.0-or-later
#include "panel_test.h"

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>
#include <planview/plan_view.h>
#include <stations/bearings/fits.h>
#include <stations/bearings/measure.h>
#include <stations/bearings/shells.h>
#include <stations/bearings/station.h>
#include <stations/bearings/warm.h>
#include <stations/common/entry_field.h>
#include <stations/common/entry_form.h>
#include <stations/common/optional_field.h>

namespace caprail {
namespace {

class Bearings : public PanelTest<BearingsStation, false> {
protected:
    Bearings() { bench.tighten(); }
    QLineEdit* edit() { return child<BearingsMeasure>(panel)->field()->lineEdit(); }
};

constexpr JournalId main1{JournalKind::main, 1};
constexpr JournalId main2{JournalKind::main, 2};

TEST_F(Bearings, a_journal_is_filled_station_by_station_and_the_next_one_follows) {
    for (const char* value : {"2.4481", "2.4480", "2.4479", "2.4480"}) {
        typeAndEnter(edit(), value);
    }
    const auto& readings = facts().journals.at(main1);
    ASSERT_EQ(readings.size(), 4U);
    EXPECT_EQ(readings[1].what.direction, 2);
    EXPECT_EQ(readings[2].what.station, 2);
    EXPECT_EQ(readings[3].what.instrument, "MIC-1") << "the micrometer offers itself";
    EXPECT_EQ(child<BearingsMeasure>(panel)->slot().journal, main2);
    EXPECT_EQ(child<PlanView>(panel, "plan")->selected(), "main-2");
}

TEST_F(Bearings, a_place_chosen_on_the_diagram_is_what_typing_fills) {
    child<PlanView>(panel, "plan")->setFocus();
    QTest::keyClick(child<PlanView>(panel, "plan"), Qt::Key_End);
    const QString place = child<PlanView>(panel, "plan")->selected();
    ASSERT_FALSE(place.isEmpty());
    QTest::keyClicks(child<PlanView>(panel, "plan"), "2");
    typeAndEnter(edit(), ".1001");
    const JournalReading& reading = bench.lastAs<JournalReading>();
    EXPECT_EQ(code(reading.journal), place.toStdString());
    EXPECT_EQ(reading.diameter.value, inches(2.1001));
}

TEST_F(Bearings, an_implausible_diameter_is_asked_back_and_stays_typed) {
    const auto before = entries();
    typeAndEnter(edit(), "24.48");
    EXPECT_EQ(entries(), before);
    EXPECT_EQ(edit()->text(), "24.48");
    EXPECT_FALSE(child<BearingsMeasure>(panel)->field()->problem().isEmpty());
}

TEST_F(Bearings, the_parts_temperature_goes_with_the_readings_of_its_place_and_with_no_other) {
    QLineEdit* temperature = child<BearingsMeasure>(panel)->temperature()->lineEdit();
    edit()->setText("2.4481");
    typeAndEnter(temperature, "70 °F");
    ASSERT_TRUE(bench.lastAs<JournalReading>().partTemperature);
    EXPECT_EQ(bench.lastAs<JournalReading>().partTemperature->typed, "70 °F");
    for (const char* value : {"2.4480", "2.4479", "2.4480"}) {
        typeAndEnter(edit(), value);
        EXPECT_TRUE(bench.lastAs<JournalReading>().partTemperature) << "of the same journal";
    }
    ASSERT_EQ(child<BearingsMeasure>(panel)->slot().journal, main2);
    typeAndEnter(edit(), "2.4480");
    EXPECT_FALSE(bench.lastAs<JournalReading>().partTemperature) << "nobody held a thermometer to this one";
    const auto before = entries();
    edit()->setText("2.4480");
    typeAndEnter(temperature, "warm");
    EXPECT_EQ(entries(), before);
    EXPECT_TRUE(child<BearingsMeasure>(panel)->field()->problem().contains("temperature"));
}

TEST_F(Bearings, bores_follow_and_give_the_clearance_of_the_journal) {
    for (const char* value : {"2.4480", "2.4480", "2.4480", "2.4480"}) {
        typeAndEnter(edit(), value);
    }
    panel.setMode(BearingsMode::bores);
    panel.select("main-1");
    typeAndEnter(edit(), "2.4502");
    typeAndEnter(edit(), "2.4503");
    const ClearanceResult& result = bench.assessment().clearances.at(main1);
    ASSERT_TRUE(result.clearance);
    EXPECT_EQ(*result.smallest, thou(2.2));
    EXPECT_EQ(*result.largest, thou(2.3));
    EXPECT_EQ(child<BearingsMeasure>(panel)->slot().journal, main2) << "the next bore follows";
}

TEST_F(Bearings, a_changed_crank_asks_for_every_journal_again) {
    for (const char* value : {"2.4480", "2.4480", "2.4480", "2.4480"}) {
        typeAndEnter(edit(), value);
    }
    child<QPushButton>(panel, "crank")->click();
    EXPECT_EQ(bench.lastAs<PartChanged>().part, Part::crank);
    panel.select("main-1");
    EXPECT_EQ(child<BearingsMeasure>(panel)->slot(), (BearingSlot{main1, 1, 1}));
    EXPECT_FALSE(currentAt(facts(), bench.assessment(), BearingsMode::journals, {main1, 1, 1}));
}

TEST_F(Bearings, a_gauging_strip_gives_a_clearance_in_one_reading) {
    panel.setMode(BearingsMode::strip);
    typeAndEnter(edit(), "2 thou");
    EXPECT_EQ(bench.lastAs<BoreReading>().method, BoreMethod::strip);
    EXPECT_EQ(*bench.assessment().clearances.at(main1).clearance, thou(2));
}

TEST_F(Bearings, the_crank_is_laid_in_and_lifted_out_by_one_button) {
    auto* button = panel.findChild<QPushButton*>(QStringLiteral("crank-laid-in"));
    ASSERT_NE(button, nullptr);
    button->click();
    EXPECT_TRUE(facts().isCrankIn());
    const auto before = entries();
    typeAndEnter(edit(), "2.4481");
    EXPECT_EQ(entries(), before) << "a journal is measured on the bench";
    button->click();
    EXPECT_FALSE(facts().isCrankIn());
}

TEST_F(Bearings, fits_are_read_down_the_list) {
    bench.band(bands::crankEndPlay, 4, 8);
    bench.band(bands::rodSideClearance, 10, 20);
    bench.band("ring gap", 16, 20);
    bench.layIn();
    panel.setMode(BearingsMode::fits);
    ASSERT_EQ(lines(child<QTableView>(panel, "fits")), 4) << "end play, two throws, one ring gap";
    for (const char* value : {"0.006", "14 thou", "15 thou", "18 thou"}) {
        typeAndEnter(child<BearingsFits>(panel)->field()->lineEdit(), value);
    }
    EXPECT_EQ(facts().fits.at({std::string(bands::crankEndPlay), 1}).front().what.value.value, thou(6));
    EXPECT_EQ(facts().fits.at({std::string(bands::rodSideClearance), 2}).front().what.value.value, thou(15));
    EXPECT_EQ(facts().fits.at({"ring gap", 1}).front().what.value.value, thou(18));
    EXPECT_EQ(lines(child<QTableView>(panel, "fits")), 5) << "a place for the next ring";
}

TEST_F(Bearings, a_fit_is_chosen_in_the_list_and_stepped_to_in_its_order) {
    bench.band(bands::crankEndPlay, 4, 8);
    bench.band(bands::rodSideClearance, 10, 20);
    bench.layIn();
    panel.setMode(BearingsMode::fits);
    auto* page = child<BearingsFits>(panel);
    auto* table = child<QTableView>(page, "fits");
    EXPECT_EQ(table->model()->headerData(1, Qt::Horizontal).toString(), "Band (in)") << "its figures are bare";
    table->selectRow(1);
    EXPECT_EQ(page->id(), (FitId{std::string(bands::rodSideClearance), 1}));
    table->sortByColumn(1, Qt::DescendingOrder);
    QTest::keyClick(page->field()->lineEdit(), Qt::Key_Down);
    EXPECT_EQ(page->id(), (FitId{std::string(bands::rodSideClearance), 2}));
    QTest::keyClick(page->field()->lineEdit(), Qt::Key_Down);
    EXPECT_EQ(page->id(), (FitId{std::string(bands::crankEndPlay), 1})) << "the smaller band is last now";
}

TEST_F(Bearings, shells_are_chosen_from_the_shelf_and_taken_over) {
    for (const JournalId j : facts().layout->mainJournals()) {
        bench.make(JournalReading{j, 1, 1, {inches(2.4480), ""}, "MIC-1"});
        bench.make(BoreReading{j, BoreMethod::housing, 1, {inches(2.6402), ""}, "BORE-1"});
    }
    for (int n = 1; n <= 6; ++n) {
        bench.make(
            ShellMeasured{"U" + std::to_string(n), JournalKind::main, ShellHalf::either, {thou(95), ""}, true, ""});
    }
    panel.setMode(BearingsMode::shells);
    child<QPushButton>(panel, "chooseShells")->click();
    ASSERT_TRUE(QTest::qWaitFor([&] { return child<QPushButton>(panel, "takeOverShells")->isEnabled(); }));
    ASSERT_TRUE(child<QPushButton>(panel, "takeOverShells")->isEnabled()) << child<QLabel>(panel, "shellWords")->text().toStdString();
    child<QPushButton>(panel, "takeOverShells")->click();
    EXPECT_EQ(facts().shellsFitted.size(), 3U) << child<QLabel>(panel, "shellWords")->text().toStdString();
    EXPECT_EQ(*bench.assessment().clearances.at(main1).clearance, thou(2.2)) << "2.6402 − 2 × 0.095 − 2.4480";
}

TEST_F(Bearings, a_shell_is_entered_by_keyboard) {
    panel.setMode(BearingsMode::shells);
    auto* form = child<EntryForm>(panel, "shellForm");
    QTest::keyClicks(form->edit("shell"), "U9");
    QTest::keyClicks(form->edit("thickness"), "0.0948");
    QTest::keyClick(form->edit("thickness"), Qt::Key_Return);
    EXPECT_EQ(form->problem().toStdString(), "");
    EXPECT_EQ(bench.lastAs<ShellMeasured>().shell, "U9");
    EXPECT_EQ(form->edit("thickness")->text(), "") << "ready for the next";
}

TEST_F(Bearings, a_warm_clearance_grows_by_the_difference_of_the_coefficients) {
    bench.bearings();
    panel.setMode(BearingsMode::warm);
    auto* block = child<QLineEdit>(panel, "blockCoefficient");
    block->selectAll();
    QTest::keyClicks(block, "22.3");
    // By hand: 2.4480 in × (22.3·70 − 12.3·70)·10⁻⁶ = 0.00171 in on top of 0.0022.
    EXPECT_EQ(cell(child<QTableView>(panel, "warmClearances"), 0, 2), "0.0039 in");
    child<QLineEdit>(panel, "blockThen")->selectAll();
    QTest::keyClicks(child<QLineEdit>(panel, "blockThen"), "900");
    EXPECT_TRUE(child<QLabel>(panel, "warmRemark")->text().contains("300")) << child<QLabel>(panel, "warmRemark")->text().toStdString();
}

} // namespace
} // namespace caprail
