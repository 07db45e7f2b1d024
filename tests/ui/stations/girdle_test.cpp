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
#include <set>
#include <stations/common/budget_window.h>
#include <stations/common/entry_field.h>
#include <stations/common/instrument_box.h>
#include <stations/common/optional_field.h>
#include <stations/common/place_heading.h>
#include <session/storing_press.h>
#include <stations/girdle/actions.h>
#include <stations/girdle/board.h>
#include <stations/girdle/feel.h>
#include <stations/girdle/feel_results.h>
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
    typeAndEnter(gapEdit(), "9");
    EXPECT_EQ(bench.session->ledger().size(), before);
    EXPECT_EQ(gapEdit()->text(), "9");
    EXPECT_FALSE(child<GirdleGaps>(panel)->field()->problem().isEmpty());
    EXPECT_EQ(panel.position(), (Position{1, Side::left}));
}

TEST_F(Girdle, a_bare_number_that_cannot_be_inches_is_taken_as_thousandths_with_its_echo) {
    for (const auto& [text, gap] : {std::pair("39", thou(39)), {"57.5", thou(57.5)}}) {
        panel.select("1L");
        QTest::keyClicks(gapEdit(), QString::fromLatin1(text));
        EXPECT_TRUE(child<QLabel>(child<GirdleGaps>(panel)->field(), "echo")->text().contains(qtText(format(gap, Units{}))))
            << child<QLabel>(child<GirdleGaps>(panel)->field(), "echo")->text().toStdString();
        typeAndEnter(gapEdit(), "");
        EXPECT_EQ(bench.lastAs<GapReading>().gap.value, gap);
        EXPECT_EQ(bench.lastAs<GapReading>().gap.typed, text) << "as it was typed";
        bench.make(Struck{bench.session->ledger().size(), "a trial"});
    }
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
                                                   {Qt::Key_5, GirdleMode::feel},
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

TEST_F(Girdle, the_board_draws_what_stands_and_the_plan_beside_it_only_where_something_is_open) {
    bench.survey();
    bench.kit();
    panel.setMode(GirdleMode::stacks);
    waitForPlan();
    for (const BoardCell& cell : boardCells(*bench.session, panel.planRunner().outcome())) {
        EXPECT_TRUE(cell.leaves.empty()) << "nothing stands yet";
        EXPECT_EQ(cell.planned.size(), 1U);
    }
    // Built by hand, crosswise: a plan from bare washers would have them otherwise.
    bench.make(StackBuilt{{1, Side::left}, {{"S-3R"}}});
    bench.make(StackBuilt{{3, Side::right}, {{"S-1L"}}});
    waitForPlan();
    for (const BoardCell& cell : boardCells(*bench.session, panel.planRunner().outcome())) {
        const bool isBuilt = code(cell.position) == "1L" || code(cell.position) == "3R";
        EXPECT_EQ(cell.isBuilt, isBuilt) << code(cell.position);
        EXPECT_EQ(cell.plannedResidual.has_value(), !isBuilt) << code(cell.position) << ": what stands stays";
    }
    child<QPushButton>(panel, "takeOverPlan")->click();
    waitForPlan();
    for (const BoardCell& cell : boardCells(*bench.session, panel.planRunner().outcome())) {
        EXPECT_TRUE(cell.isBuilt);
        EXPECT_FALSE(cell.plannedResidual) << code(cell.position);
        ASSERT_EQ(cell.leaves.size(), 1U);
        EXPECT_EQ(coreText(cell.leaves.front().name), bench.facts().stacks.at(cell.position).shims.front());
    }
    EXPECT_FALSE(child<QPushButton>(panel, "takeOverPlan")->isEnabled()) << "nothing new is planned";
    child<QPushButton>(panel, "planAllAnew")->click();
    waitForPlan();
    EXPECT_TRUE(child<QPushButton>(panel, "takeOverPlan")->isEnabled()) << "the person asked for it";
}

TEST_F(Girdle, what_is_typed_after_a_stack_was_picked_goes_into_its_field) {
    bench.survey();
    bench.kit();
    panel.setMode(GirdleMode::stacks);
    waitForPlan();
    auto* board = child<GirdleBoard>(panel);
    const QPoint secondCapRight(board->width() / 2, board->height() * 3 / 4);
    board->setFocus();
    QTest::mouseClick(board, Qt::LeftButton, {}, secondCapRight);
    EXPECT_EQ(panel.position(), (Position{2, Side::right}));
    QTest::keyClick(board, Qt::Key_S, Qt::NoModifier);
    QLineEdit* edit = child<EntryField>(panel, "stack")->lineEdit();
    EXPECT_EQ(edit->text(), "s");
    QTest::keyClicks(edit, "-3R");
    QTest::keyClick(edit, Qt::Key_Return);
    EXPECT_EQ(bench.lastAs<StackBuilt>().position, (Position{2, Side::right}));
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

TEST_F(Girdle, the_same_answer_at_once_at_the_next_stack_is_asked_back) {
    bench.survey();
    bench.kit();
    bench.build();
    panel.setMode(GirdleMode::recheck);
    qint64 time = 10'000;
    StoringPress::setClock([&time] { return time; });
    QTest::keyClick(panel.recheck(), Qt::Key_D);
    time += 100;
    QTest::keyClick(panel.recheck(), Qt::Key_D);
    EXPECT_EQ(bench.facts().rechecks.size(), 1U) << "nobody felt the second stack";
    EXPECT_TRUE(panel.recheck()->task().contains("twice within half a second")) << panel.recheck()->task().toStdString();
    time += 700;
    QTest::keyClick(panel.recheck(), Qt::Key_D);
    EXPECT_EQ(bench.facts().rechecks.size(), 2U);
    StoringPress::setClock([time]() mutable { return time += 1000; });
}

TEST_F(Girdle, a_stack_that_arithmetic_cannot_prove_is_led_to_a_bracket_by_the_same_keys) {
    bench.make(drafts::instrument("FEEL-1", InstrumentType::feelerGauge, 3.5));
    RulesSet rules;
    rules.decision = DecisionRule::guarded;
    bench.make(rules);
    bench.survey();
    bench.kit();
    bench.shim("A", 50, 50.3);
    bench.shim("B", 50, 49.7);
    bench.build();
    const Position here{1, Side::left};
    panel.setMode(GirdleMode::recheck);
    GirdleRecheck& page = *panel.recheck();
    EXPECT_TRUE(page.carried().contains("by arithmetic")) << page.carried().toStdString();
    QTest::keyClick(&page, Qt::Key_D);
    ASSERT_EQ(panel.position(), here) << "the arithmetic proves nothing, so the page stays";
    EXPECT_TRUE(page.task().contains("Take out S-1L, lay in A")) << page.task().toStdString();
    EXPECT_TRUE(page.task().contains("should rock"));
    QTest::keyClick(&page, Qt::Key_R);
    EXPECT_EQ(bench.lastAs<RecheckMade>().thickerFelt, Feel::rocks);
    EXPECT_EQ(bench.lastAs<RecheckMade>().thickerIn->names, std::vector<std::string>{"A"});
    EXPECT_EQ(bench.lastAs<RecheckMade>().feel, Feel::drags) << "what was felt before stands in it too";
    EXPECT_TRUE(page.task().contains("lay in B")) << page.task().toStdString();
    QTest::keyClick(&page, Qt::Key_L);
    EXPECT_EQ(bench.lastAs<RecheckMade>().thinnerFelt, Feel::loose);
    EXPECT_EQ(panel.position(), (Position{1, Side::right})) << "on to the next stack";
    EXPECT_EQ(bench.session->assessment().find("stack:1L")->state, CheckState::good);
    panel.select("1L");
    EXPECT_TRUE(page.carried().startsWith("The verdict is carried by the bracketed recheck")) << page.carried().toStdString();
    EXPECT_TRUE(page.carried().contains("±"));
}

TEST_F(Girdle, a_good_stack_is_bracketed_where_the_person_wants_it) {
    bench.survey();
    bench.kit();
    bench.shim("A", 50, 50.3);
    bench.build();
    panel.setMode(GirdleMode::recheck);
    QTest::keyClick(panel.recheck(), Qt::Key_D);
    panel.select("1L");
    panel.setMode(GirdleMode::recheck);
    const auto before = bench.session->ledger().size();
    QTest::keyClick(panel.recheck(), Qt::Key_B);
    EXPECT_TRUE(panel.recheck()->task().contains("lay in A")) << panel.recheck()->task().toStdString();
    EXPECT_EQ(bench.session->ledger().size(), before) << "asking is no entry";
}

TEST_F(Girdle, what_does_not_go_and_the_straightedge_are_stored_with_the_gap) {
    QLineEdit* tried = child<GirdleGaps>(panel)->doesNotGo()->lineEdit();
    gapEdit()->setText("22+23+12 thou");
    typeAndEnter(tried, "22+23+13 thou");
    const GapReading reading = bench.lastAs<GapReading>();
    EXPECT_EQ(reading.gap.value, thou(57));
    ASSERT_TRUE(reading.doesNotGo);
    EXPECT_EQ(reading.doesNotGo->value, thou(58));
    EXPECT_EQ(reading.doesNotGo->typed, "22+23+13 thou");
    EXPECT_EQ(reading.straightedge, "EDGE-1") << "the straightedge offers itself";
    EXPECT_TRUE(tried->text().isEmpty()) << "it is of this gap alone";
    typeAndEnter(gapEdit(), "57 thou");
    EXPECT_FALSE(bench.lastAs<GapReading>().doesNotGo) << "who does not use it types nothing more";
    const auto before = bench.session->ledger().size();
    gapEdit()->setText("57 thou");
    typeAndEnter(tried, "56 thou");
    EXPECT_EQ(bench.session->ledger().size(), before);
    EXPECT_TRUE(child<GirdleGaps>(panel)->field()->problem().contains("must be more")) << child<GirdleGaps>(panel)->field()->problem().toStdString();
    typeAndEnter(tried, "5x");
    EXPECT_TRUE(child<GirdleGaps>(panel)->field()->problem().contains("Does not go")) << child<GirdleGaps>(panel)->field()->problem().toStdString();
}

TEST_F(Girdle, a_feel_is_tried_by_keyboard_and_then_carries_a_stack) {
    int n = 0;
    for (const double thickness : {10.0, 10.0, 9.6, 9.7, 9.8, 9.9, 10.05, 10.1, 10.2, 10.3, 10.4}) {
        bench.shim("F" + std::to_string(++n), 10, thickness);
    }
    panel.setMode(GirdleMode::feel);
    GirdleFeel& page = *panel.feel();
    EXPECT_TRUE(page.stepsField()->text().contains("F")) << "the kit proposes the steps";
    EXPECT_EQ(page.step(), nullptr) << "no study is under way";
    QTest::keyClick(page.beginButton(), Qt::Key_Space);
    EXPECT_EQ(bench.lastAs<FeelStudyBegun>().whose, "Mira");
    EXPECT_EQ(bench.lastAs<FeelStudyBegun>().straightedge, "EDGE-1");
    std::set<Length> felt;
    for (int i = 0; i < 40; ++i) {
        ASSERT_NE(page.step(), nullptr) << i << " " << page.task().toStdString();
        const Length height = page.step()->height;
        const auto shims = page.step()->shims;
        EXPECT_TRUE(page.task().contains(QString::fromStdString(shims.front()))) << page.task().toStdString();
        EXPECT_FALSE(page.task().contains("0.000")) << "the height is not told";
        page.refresh();
        ASSERT_EQ(page.step()->height, height) << "what lies there stays asked for, whatever else is entered";
        felt.insert(height);
        // She turns at 0.00015 in, give or take a little.
        const Length turns = i % 3 == 0 ? thou(0.12) : thou(0.18);
        QTest::keyClick(&page, height > turns ? Qt::Key_R : height < -turns ? Qt::Key_L : Qt::Key_D);
        EXPECT_EQ(bench.lastAs<FeelAnswer>().height.value, height);
        EXPECT_EQ(bench.lastAs<FeelAnswer>().shims.names, shims);
    }
    EXPECT_GE(felt.size(), 5U) << "many steps in turn";
    EXPECT_TRUE(page.results()->conclusion().contains("is worth ±")) << page.results()->conclusion().toStdString();
    const auto* standings = child<QTableView>(page, "feelStandings");
    ASSERT_EQ(standings->model()->rowCount(), 1);
    EXPECT_EQ(standings->model()->index(0, 3).data().toString(), "40");
    EXPECT_FALSE(page.results()->chart()->points().empty());
    panel.setMode(GirdleMode::recheck);
    EXPECT_TRUE(panel.recheck()->feel().contains("is worth ±")) << panel.recheck()->feel().toStdString();
}

TEST_F(Girdle, steps_that_cannot_be_read_are_told_and_nothing_is_asked) {
    bench.shim("F1", 10, 10.0);
    bench.shim("F2", 10, std::nullopt);
    panel.setMode(GirdleMode::feel);
    GirdleFeel& page = *panel.feel();
    page.stepsField()->setText("F1; F2");
    QTest::keyClick(page.stepsField(), Qt::Key_Return);
    EXPECT_EQ(page.step(), nullptr);
    EXPECT_TRUE(page.task().contains("Name the rests and the steps"));
    page.stepsField()->setText("-0.2 thou; 0.0 thou; 0.2 thou");
    QTest::keyClick(page.stepsField(), Qt::Key_Return);
    EXPECT_TRUE(page.task().contains("3 steps are ready")) << page.task().toStdString();
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
