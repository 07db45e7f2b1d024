// SPDX-License-Identifier: GPL-3.0-or-later
#include "../reading_order.h"
#include "panel_test.h"

#include <QComboBox>
#include <QLineEdit>
#include <QTabWidget>
#include <planview/plan_view.h>
#include <stations/common/entry_form.h>
#include <stations/engine/bands.h>
#include <stations/engine/layout.h>
#include <stations/engine/own_checks.h>
#include <stations/engine/people.h>
#include <stations/engine/station.h>

namespace caprail {
namespace {

using Engine = PanelTest<EngineStation>;

void retype(QLineEdit* edit, const char* text) {
    edit->selectAll();
    QTest::keyClicks(edit, QString::fromUtf8(text));
}

TEST_F(Engine, a_customer_is_entered_by_keyboard) {
    auto* form = panel.layoutPage()->engineForm();
    retype(form->edit("customer"), "Anselm Roth");
    QTest::keyClick(form->edit("customer"), Qt::Key_Return);
    EXPECT_EQ(bench.lastAs<EngineDescribed>().customer, "Anselm Roth");
    EXPECT_EQ(bench.lastAs<EngineDescribed>().engine, "V8") << "what was not touched stays";
}

TEST_F(Engine, the_plan_follows_what_is_typed_before_it_is_stored) {
    auto* form = panel.layoutPage()->layoutForm();
    const auto before = entries();
    retype(form->edit("tied_last"), "4");
    retype(form->edit("caps"), "5");
    ASSERT_NE(child<PlanView>(panel, "layoutPlan")->content(), nullptr);
    EXPECT_EQ(child<PlanView>(panel, "layoutPlan")->content()->layout.caps(), 5);
    EXPECT_EQ(entries(), before);
    QTest::keyClick(form->edit("caps"), Qt::Key_Return);
    EXPECT_EQ(bench.lastAs<LayoutSet>().caps, 5);
    EXPECT_EQ(bench.lastAs<LayoutSet>().tiedLast, 4);
}

TEST_F(Engine, an_impossible_layout_is_refused_at_the_form_and_stays_typed) {
    auto* form = panel.layoutPage()->layoutForm();
    const auto before = entries();
    retype(form->edit("caps"), "2");
    QTest::keyClick(form->edit("caps"), Qt::Key_Return);
    EXPECT_EQ(entries(), before);
    EXPECT_EQ(form->edit("caps")->text(), "2");
    EXPECT_FALSE(form->problem().isEmpty());
    bench.band("crank end play", 4, 8); // another entry meanwhile does not overwrite what was typed
    EXPECT_EQ(form->edit("caps")->text(), "2");
    QTest::keyClick(form->edit("caps"), Qt::Key_Escape);
    EXPECT_EQ(form->edit("caps")->text(), "3") << "Escape puts the record's value back";
}

TEST_F(Engine, a_band_keeps_what_was_typed_and_shows_it_again) {
    panel.select("bands");
    auto* form = child<EntryForm>(panel, "bandForm");
    retype(form->edit("band"), "ring gap");
    retype(form->edit("lo"), "16 thou");
    retype(form->edit("hi"), "0.020");
    retype(form->edit("source"), "ring maker's sheet");
    QTest::keyClick(form->edit("source"), Qt::Key_Return);
    EXPECT_EQ(form->problem().toStdString(), "");
    const BandSet& band = bench.lastAs<BandSet>();
    EXPECT_EQ(band.band, "ring gap");
    EXPECT_EQ(band.lo.value, thou(16));
    EXPECT_EQ(band.lo.typed, "16 thou");
    EXPECT_FALSE(band.target);
    child<EngineBands>(panel)->selectBand("ring gap");
    EXPECT_EQ(form->edit("lo")->text(), "16 thou");
    bench.session->setUnits({LengthUnit::millimetre, TorqueUnit::newtonMetre, '.'});
    EXPECT_EQ(form->edit("hi")->text(), "0.508 mm") << "a bare 0.020 would mean millimetres now";
}

TEST_F(Engine, a_band_the_wrong_way_round_is_refused_with_both_ends_named) {
    panel.select("bands");
    auto* form = child<EntryForm>(panel, "bandForm");
    const auto before = entries();
    child<EngineBands>(panel)->selectBand("residual");
    retype(form->edit("lo"), "0.0009");
    QTest::keyClick(form->edit("lo"), Qt::Key_Return);
    EXPECT_EQ(entries(), before);
    EXPECT_TRUE(form->problem().contains("0.0009")) << form->problem().toStdString();
}

TEST_F(Engine, the_rules_restate_all_of_themselves) {
    panel.select("rules");
    auto* form = child<EngineBands>(panel)->rulesForm();
    retype(form->edit("minimum_passes"), "3");
    QTest::keyClick(form->edit("minimum_passes"), Qt::Key_Return);
    EXPECT_EQ(bench.lastAs<RulesSet>().minimumPasses, 3);
    EXPECT_EQ(bench.lastAs<RulesSet>().decision, DecisionRule::simple) << "as it was set before";
}

TEST_F(Engine, a_wrench_with_its_calibration_is_entered_by_keyboard) {
    panel.select("instruments");
    auto* form = child<EntryForm>(panel, "instrumentForm");
    retype(form->edit("instrument"), "TW-2");
    form->choice("type")->setFocus();
    QTest::keyClicks(form->choice("type"), "torque w");
    retype(form->edit("largest_torque"), "150");
    retype(form->edit("calibrated"), "2026-02-30");
    QTest::keyClick(form->edit("calibrated"), Qt::Key_Return);
    EXPECT_TRUE(form->problem().contains("2026-02-30")) << form->problem().toStdString();
    retype(form->edit("calibrated"), "2026-02-28");
    QTest::keyClick(form->edit("calibrated"), Qt::Key_Return);
    EXPECT_EQ(form->problem().toStdString(), "");
    const InstrumentAdded& wrench = bench.lastAs<InstrumentAdded>();
    EXPECT_EQ(wrench.instrument, "TW-2");
    ASSERT_TRUE(wrench.largestTorque);
    EXPECT_EQ(wrench.largestTorque->value, poundFeet(150));
    ASSERT_TRUE(wrench.calibrated);
    EXPECT_EQ(format(*wrench.calibrated), "2026-02-28");
}

TEST_F(Engine, a_person_is_added_and_the_form_is_ready_for_the_next) {
    panel.select("people");
    auto* form = panel.peoplePage()->personForm();
    retype(form->edit("name"), "Tove Brandt");
    QTest::keyClick(form->edit("name"), Qt::Key_Return);
    EXPECT_EQ(bench.lastAs<PersonAdded>().name, "Tove Brandt");
    EXPECT_EQ(form->edit("name")->text(), "");
}

TEST_F(Engine, a_zero_check_that_is_being_typed_outlives_what_others_store) {
    panel.select("instruments");
    auto* form = panel.peoplePage()->zeroForm();
    retype(form->edit("instrument"), "MIC-1");
    retype(form->edit("nominal"), "1.0000");
    retype(form->edit("reading"), "1.0001");
    bench.band("crank end play", 4, 8);
    EXPECT_EQ(form->edit("nominal")->text(), "1.0000");
    EXPECT_EQ(form->edit("reading")->text(), "1.0001");
    QTest::keyClick(form->edit("reading"), Qt::Key_Escape);
    EXPECT_EQ(form->edit("reading")->text(), "") << "Escape takes back what was typed";
    EXPECT_EQ(form->edit("nominal")->text(), "");
}

TEST_F(Engine, escape_takes_back_what_was_typed_of_a_person) {
    panel.select("people");
    auto* form = panel.peoplePage()->personForm();
    retype(form->edit("name"), "Tove Brandt");
    QTest::keyClick(form->edit("name"), Qt::Key_Escape);
    EXPECT_EQ(form->edit("name")->text(), "");
}

TEST_F(Engine, the_tab_key_goes_through_every_page_as_it_is_read) {
    auto* pages = child<QTabWidget>(panel);
    for (int page = 0; page < pages->count(); ++page) {
        pages->setCurrentIndex(page);
        QApplication::processEvents();
        EXPECT_EQ(outOfReadingOrder(*pages->currentWidget()), "") << pages->tabText(page).toStdString();
    }
}

TEST(ExactText, writes_a_length_so_that_reading_it_gives_the_same_length) {
    for (const Units units : {Units{}, Units{LengthUnit::millimetre, TorqueUnit::newtonMetre, ','}}) {
        for (const Length length : {thou(0.75), inches(2.4481), microns(1), nanometres(7), thou(-57.25), Length()}) {
            const auto back = parseLength(exactText(length, units).toStdString(), units, {});
            ASSERT_TRUE(back) << exactText(length, units).toStdString() << ": " << back.error().sentence;
            EXPECT_EQ(back->value, length) << exactText(length, units).toStdString();
        }
    }
}

TEST_F(Engine, a_check_of_the_shops_own_is_set_restated_and_withdrawn) {
    panel.select("own checks");
    auto* form = child<EngineOwnChecks>(panel)->findChild<EntryForm*>();
    form->type("own_check", "tray");
    form->type("words", "windage tray clear of every throw");
    form->type("places", "2");
    form->choice("holds")->setCurrentIndex(0);
    form->save();
    EXPECT_EQ(form->problem().toStdString(), "");
    EXPECT_EQ(bench.lastAs<OwnCheckSet>().places, 2);
    EXPECT_EQ(bench.lastAs<OwnCheckSet>().holds, OwnCheckHolds::trialFit);
    EXPECT_EQ(child<EngineOwnChecks>(panel)->findChild<QAbstractItemView*>()->model()->rowCount(), 1);
    panel.select("tray");
    form->type("places", "0");
    form->save();
    EXPECT_EQ(facts().ownCheckNamed("tray")->what.places, 0);
    EXPECT_EQ(facts().ownCheckNamed("tray")->what.words, "windage tray clear of every throw");
}

TEST_F(Engine, the_rules_say_what_is_common_practice_and_take_a_rise_of_the_shop) {
    panel.select("rules");
    auto* form = child<EngineBands>(panel)->rulesForm();
    EXPECT_EQ(form->text("turning_rise"), "") << "nobody confirmed one";
    form->type("turning_rise", "1.5 lbf·ft");
    form->type("pickup_tube_minimum", "0.120");
    form->save();
    EXPECT_EQ(bench.lastAs<RulesSet>().turningRise, poundFeet(1.5));
    EXPECT_EQ(bench.lastAs<RulesSet>().pickupTubeMinimum, thou(120));
    EXPECT_FALSE(bench.lastAs<RulesSet>().dipstickMinimum);
}

} // namespace
} // namespace caprail
