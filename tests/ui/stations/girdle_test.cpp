// SPDX-License-Identifier: GPL-3.0-or-later
#include "station_record.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableView>
#include <QToolButton>
#include <planview/plan_view.h>
#include <stations/common/budget_window.h>
#include <stations/common/entry_field.h>
#include <stations/common/place_heading.h>
#include <stations/girdle/actions.h>
#include <stations/girdle/gaps.h>
#include <stations/girdle/kit.h>
#include <stations/girdle/recheck.h>
#include <stations/girdle/stacks.h>
#include <stations/girdle/station.h>

namespace caprail {
namespace {

class Girdle : public testing::Test {
protected:
    Girdle() : panel(*bench.session) {
        // As the window does: a panel in sight is told of every change.
        QObject::connect(bench.session.get(), &RecordSession::changed, &panel, [this] { panel.refresh(); });
        panel.resize(1060, 680);
        panel.show();
    }
    QLineEdit* gapEdit() { return child<GirdleGaps>(panel)->field()->lineEdit(); }
    void waitForPlan() {
        panel.refresh();
        const auto isDone = [this] {
            const PlanOutcome* outcome = panel.planRunner().outcome();
            return outcome != nullptr && outcome->isFinal;
        };
        ASSERT_TRUE(QTest::qWaitFor(isDone, 9000));
    }
    StationRecord bench;
    GirdleStation panel;
};

TEST_F(Girdle, a_whole_pass_is_typed_without_leaving_the_field) {
    for (const char* gap : {"57.5 thou", ".0575", "1.46 mm", "22+23+12.5 thou", ".0574", ".0576"}) {
        typeAndEnter(gapEdit(), gap);
    }
    for (const Position p : bench.positions()) {
        ASSERT_EQ(bench.facts().gaps.count(p), 1U) << code(p);
        EXPECT_EQ(bench.facts().gaps.at(p).front().what.pass, 1);
        EXPECT_EQ(bench.facts().gaps.at(p).front().what.instrument, "FEEL-1") << "the feeler gauge offers itself";
    }
    EXPECT_EQ(bench.facts().gaps.at({2, Side::right}).front().what.gap.value, thou(57.5)) << "the summed leaves";
    EXPECT_EQ(bench.facts().gaps.at({2, Side::right}).front().what.gap.typed, "22+23+12.5 thou");
    EXPECT_EQ(panel.position(), (Position{1, Side::left})) << "the second pass begins at the head of the order";
    EXPECT_EQ(child<GirdleGaps>(panel)->pass(), 2);
}

TEST_F(Girdle, the_aim_of_the_plan_shows_what_it_is_when_another_is_refused) {
    QComboBox* aim = nullptr;
    for (auto* box : panel.findChildren<QComboBox*>()) {
        aim = box->accessibleName() == QLatin1String("What the plan aims for") ? box : aim;
    }
    ASSERT_NE(aim, nullptr);
    const int before = aim->currentIndex();
    bench.session->setPerson(QStringLiteral("Nobody"));
    aim->setCurrentIndex(1 - before);
    emit aim->activated(1 - before);
    EXPECT_EQ(static_cast<int>(bench.facts().rules.objective), before);
    EXPECT_EQ(aim->currentIndex(), before);
}

TEST_F(Girdle, a_value_that_cannot_be_read_stays_in_the_field_with_a_sentence) {
    const auto before = bench.session->ledger().size();
    typeAndEnter(gapEdit(), "57");
    EXPECT_EQ(bench.session->ledger().size(), before);
    EXPECT_EQ(gapEdit()->text(), "57");
    EXPECT_FALSE(child<GirdleGaps>(panel)->field()->problem().isEmpty());
    EXPECT_EQ(panel.position(), (Position{1, Side::left}));
}

TEST_F(Girdle, arrows_in_the_field_step_through_the_pass) {
    QTest::keyClick(gapEdit(), Qt::Key_Down);
    EXPECT_EQ(panel.position(), (Position{1, Side::right}));
    QTest::keyClick(gapEdit(), Qt::Key_Up);
    QTest::keyClick(gapEdit(), Qt::Key_Up);
    EXPECT_EQ(panel.position(), (Position{3, Side::right})) << "round the end";
}

TEST_F(Girdle, typing_on_the_diagram_goes_into_the_field) {
    child<PlanView>(panel, "plan")->setFocus();
    QTest::keyClicks(child<PlanView>(panel, "plan"), ".");
    EXPECT_EQ(gapEdit()->text(), ".");
    typeAndEnter(gapEdit(), "0575");
    EXPECT_EQ(bench.lastAs<GapReading>().gap.value, thou(57.5));
}

TEST_F(Girdle, selecting_on_the_diagram_selects_the_place_that_is_entered) {
    emit child<PlanView>(panel, "plan")->placeSelected("3R");
    typeAndEnter(gapEdit(), ".0600");
    EXPECT_EQ(bench.lastAs<GapReading>().position, (Position{3, Side::right}));
}

TEST_F(Girdle, the_diagram_shows_the_gap_beside_its_place) {
    typeAndEnter(gapEdit(), "57.5 thou");
    const PlanContent* content = child<PlanView>(panel, "plan")->content();
    ASSERT_NE(content, nullptr);
    const auto mark = std::ranges::find(content->marks, QString("1L"), &PlanMark::place);
    ASSERT_NE(mark, content->marks.end());
    EXPECT_EQ(mark->figure, "57.5");
}

TEST_F(Girdle, alt_and_a_number_choose_the_mode) {
    panel.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&panel));
    const std::pair<Qt::Key, GirdleMode> keys[] = {{Qt::Key_2, GirdleMode::shims},
                                                   {Qt::Key_4, GirdleMode::recheck},
                                                   {Qt::Key_3, GirdleMode::stacks},
                                                   {Qt::Key_1, GirdleMode::gaps}};
    for (const auto& [key, mode] : keys) {
        QTest::keyClick(&panel, key, Qt::AltModifier);
        // A button shows that it is pressed for a moment before it acts.
        EXPECT_TRUE(QTest::qWaitFor([&, wanted = mode] { return panel.mode() == wanted; }, 3000));
    }
}

TEST_F(Girdle, a_kit_is_typed_in_and_measured_down_the_list) {
    panel.setMode(GirdleMode::shims);
    typeAndEnter(child<EntryField>(panel.kit(), "addShims")->lineEdit(), "3 x 10 thou");
    EXPECT_EQ(bench.facts().shims.size(), 3U);
    panel.kit()->selectShim("S001");
    typeAndEnter(child<EntryField>(panel.kit(), "measureShim")->lineEdit(), ".0101");
    EXPECT_EQ(bench.lastAs<ShimMeasured>().shim, "S001");
    EXPECT_EQ(bench.lastAs<ShimMeasured>().instrument, "MIC-1");
    EXPECT_EQ(panel.kit()->selectedShim(), "S002");
    typeAndEnter(child<EntryField>(panel.kit(), "measureShim")->lineEdit(), "S003 .0099");
    EXPECT_EQ(bench.lastAs<ShimMeasured>().shim, "S003");
    EXPECT_EQ(panel.kit()->selectedShim(), "S002") << "the next one without a reading";
}

TEST_F(Girdle, a_sorted_kit_is_stepped_and_measured_in_the_order_in_which_it_is_shown) {
    panel.setMode(GirdleMode::shims);
    for (const char* shim : {"S1 12 thou", "S2 9.5 thou", "S3 14 thou", "S4 11 thou"}) {
        typeAndEnter(child<EntryField>(panel.kit(), "addShims")->lineEdit(), shim);
    }
    auto* kit = child<QTableView>(panel.kit(), "kit");
    panel.kit()->selectShim("S2");
    kit->sortByColumn(1, Qt::AscendingOrder); // by marking; as text, 9.5 thou would come last
    EXPECT_EQ(cell(kit, 0) + cell(kit, 1) + cell(kit, 2) + cell(kit, 3), "S2S4S1S3");
    EXPECT_EQ(panel.kit()->selectedShim(), "S2") << "sorting selects nothing else";
    QLineEdit* edit = child<EntryField>(panel.kit(), "measureShim")->lineEdit();
    typeAndEnter(edit, ".0095");
    EXPECT_EQ(bench.lastAs<ShimMeasured>().shim, "S2");
    EXPECT_EQ(panel.kit()->selectedShim(), "S4");
    QTest::keyClick(edit, Qt::Key_Down);
    typeAndEnter(edit, ".0121");
    EXPECT_EQ(bench.lastAs<ShimMeasured>().shim, "S1");
    typeAndEnter(child<EntryField>(panel.kit(), "addShims")->lineEdit(), "S0 1 thou");
    EXPECT_EQ(cell(kit, 0), "S0") << "a new shim takes its place in the order";
    EXPECT_EQ(panel.kit()->selectedShim(), "S3") << "and leaves the selection alone";
}

TEST_F(Girdle, the_plan_is_solved_beside_the_screen_and_taken_over_in_one_action) {
    bench.survey();
    bench.kit();
    panel.setMode(GirdleMode::stacks);
    waitForPlan();
    ASSERT_TRUE(panel.planRunner().outcome()->plan);
    EXPECT_TRUE(panel.planRunner().outcome()->plan->proven);
    child<QPushButton>(panel, "takeOverPlan")->click();
    EXPECT_EQ(bench.facts().stacks.size(), bench.positions().size());
    for (const Position p : bench.positions()) {
        EXPECT_EQ(bench.assessment().find("stack:" + code(p))->state, CheckState::good) << code(p);
    }
    EXPECT_FALSE(child<QPushButton>(panel, "takeOverPlan")->isEnabled());
}

TEST_F(Girdle, a_change_asks_for_a_new_plan_and_the_old_answer_is_not_shown) {
    bench.survey();
    bench.kit();
    waitForPlan();
    bench.make(ShimSetAside{"S-1L", true, "burr"});
    EXPECT_EQ(panel.planRunner().outcome(), nullptr) << "outdated";
    waitForPlan();
    EXPECT_EQ(panel.planRunner().outcome()->plan->inBand, 5);
    ASSERT_EQ(panel.planRunner().outcome()->plan->unmet.size(), 1U);
    ASSERT_FALSE(panel.planRunner().outcome()->remedies.empty());
    EXPECT_EQ(panel.planRunner().outcome()->remedies.front().kind, Remedy::Kind::buy);
}

TEST_F(Girdle, a_stack_is_built_by_hand_from_typed_names) {
    bench.survey();
    bench.kit();
    panel.setMode(GirdleMode::stacks);
    waitForPlan();
    QLineEdit* edit = child<EntryField>(panel, "stack")->lineEdit();
    QTest::keyClicks(edit, "s-3r");
    EXPECT_TRUE(child<QLabel>(child<EntryField>(panel, "stack"), "echo")->text().contains("in band")) << child<QLabel>(child<EntryField>(panel, "stack"), "echo")->text().toStdString();
    QTest::keyClick(edit, Qt::Key_Return);
    EXPECT_EQ(bench.lastAs<StackBuilt>().position, (Position{1, Side::left}));
    EXPECT_EQ(bench.lastAs<StackBuilt>().shims.names, std::vector<std::string>{"S-3R"});
    typeAndEnter(edit, "S-3R");
    EXPECT_FALSE(child<EntryField>(panel, "stack")->problem().isEmpty()) << "one shim cannot lie in two stacks";
}

TEST_F(Girdle, a_pin_is_kept_by_the_plan) {
    bench.survey();
    bench.kit();
    bench.make(StackBuilt{{1, Side::left}, {{"S-2R"}}});
    panel.setMode(GirdleMode::stacks);
    waitForPlan();
    child<QPushButton>(panel, "pinStack")->click();
    EXPECT_EQ(bench.facts().pins.at({1, Side::left}), std::vector<std::string>{"S-2R"});
    waitForPlan();
    const auto& stacks = panel.planRunner().outcome()->plan->stacks;
    EXPECT_TRUE(std::ranges::find(stacks, "1L", &PlannedStack::position)->pinned);
    child<QPushButton>(panel, "pinStack")->click();
    EXPECT_TRUE(bench.facts().pins.empty());
}

TEST_F(Girdle, one_key_rechecks_a_stack_and_goes_on) {
    bench.survey();
    bench.kit();
    bench.build();
    panel.setMode(GirdleMode::recheck);
    QTest::keyClick(panel.recheck(), Qt::Key_D);
    EXPECT_EQ(bench.lastAs<RecheckMade>().feel, Feel::drags);
    EXPECT_EQ(bench.lastAs<RecheckMade>().position, (Position{1, Side::left}));
    QTest::keyClick(panel.recheck(), Qt::Key_R);
    EXPECT_EQ(bench.lastAs<RecheckMade>().feel, Feel::rocks);
    EXPECT_EQ(bench.lastAs<RecheckMade>().position, (Position{1, Side::right}));
    EXPECT_EQ(panel.position(), (Position{2, Side::left}));
}

TEST_F(Girdle, all_stacks_come_off_and_go_back_in_one_action) {
    bench.readyToFit();
    child<GirdleActions>(panel)->takeAllOff();
    EXPECT_TRUE(bench.facts().stacksOn().empty());
    child<GirdleActions>(panel)->putAllBack();
    EXPECT_EQ(bench.facts().stacksOn().size(), bench.positions().size());
}

TEST_F(Girdle, a_gap_says_what_its_uncertainty_is_made_of) {
    bench.survey();
    child<QToolButton>(child<GirdleGaps>(panel), "why")->click();
    const auto* window = child<GirdleGaps>(panel)->findChild<BudgetWindow*>();
    ASSERT_NE(window, nullptr);
    EXPECT_GE(lines(child<QTableView>(window, "budget")), 2) << "repeatability and the feeler gauge";
    EXPECT_TRUE(child<QLabel>(window, "budgetWords")->text().contains("±"));
}

TEST_F(Girdle, a_jump_opens_what_the_position_needs_first) {
    panel.select("2R");
    EXPECT_EQ(panel.mode(), GirdleMode::gaps);
    bench.survey();
    panel.select("2R");
    EXPECT_EQ(panel.mode(), GirdleMode::stacks);
    bench.kit();
    bench.build();
    panel.select("2R");
    EXPECT_EQ(panel.mode(), GirdleMode::recheck);
    EXPECT_EQ(panel.position(), (Position{2, Side::right}));
    panel.select("nowhere");
    EXPECT_EQ(panel.position(), (Position{2, Side::right})) << "an unknown place changes nothing";
}

} // namespace
} // namespace caprail
