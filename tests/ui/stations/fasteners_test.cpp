// SPDX-License-Identifier: GPL-3.0-or-later
#include "panel_test.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QPlainTextEdit>
#include <QPushButton>
#include <planview/plan_view.h>
#include <stations/common/entry_field.h>
#include <session/storing_press.h>
#include <stations/fasteners/clamp.h>
#include <stations/common/entry_form.h>
#include <stations/fasteners/groups.h>
#include <stations/fasteners/station.h>
#include <stations/fasteners/tighten.h>
#include <stations/fasteners/verify.h>
#include <stations/fasteners/words.h>
#include <work/tightening.h>

namespace caprail {
namespace {

class Fasteners : public PanelTest<FastenersStation> {
protected:
    QLineEdit* tightenEdit() { return child<FastenersTighten>(panel)->field()->lineEdit(); }
    QLineEdit* verifyEdit() { return child<FastenersVerify>(panel)->field()->lineEdit(); }
    void beginRound() {
        panel.setMode(FastenersMode::verify);
        QTest::keyClick(child<QPushButton>(panel, "beginRound"), Qt::Key_Space);
        ASSERT_FALSE(facts().rounds.empty());
    }
    /// The group that is selected in the table of groups.
    QString shownGroup() {
        const auto* table = child<TableView>(child<FastenersGroups>(panel));
        return cell(table, table->currentIndex().row());
    }
};

TEST_F(Fasteners, enter_alone_enters_what_is_specified_and_goes_on_in_sequence) {
    const auto order = tighteningOrder(facts(), FastenerKind::mainCap);
    ASSERT_EQ(panel.selected(), order.front());
    EXPECT_EQ(order.front().number, 2) << "from the centre cap outwards; common practice, no source";
    QTest::keyClick(tightenEdit(), Qt::Key_Return);
    typeAndEnter(tightenEdit(), "900 in-lb");
    EXPECT_EQ(facts().fasteners.at(order[0]).tightened->what.torque->value, poundFeet(70));
    EXPECT_EQ(facts().fasteners.at(order[1]).tightened->what.torque->value, poundInches(900));
    EXPECT_EQ(facts().fasteners.at(order[1]).tightened->what.instrument, "W1");
    EXPECT_EQ(panel.selected(), order[2]);
}

TEST_F(Fasteners, a_whole_group_is_one_entry_for_each_fastener) {
    const auto before = entries();
    child<QPushButton>(panel, "wholeGroup")->click();
    EXPECT_EQ(entries() - before, 6);
    EXPECT_TRUE(bench.assessment().find("fasteners:main")->isGood());
    EXPECT_FALSE(child<QPushButton>(panel, "wholeGroup")->isEnabled()) << "nothing is left to enter";
}

TEST_F(Fasteners, an_absurd_torque_stays_in_the_field_with_a_sentence) {
    const auto before = entries();
    for (const char* text : {"-70", "70000", "tight"}) {
        tightenEdit()->clear();
        typeAndEnter(tightenEdit(), text);
        EXPECT_EQ(entries(), before) << text;
        EXPECT_FALSE(child<FastenersTighten>(panel)->field()->problem().isEmpty()) << text;
    }
}

TEST_F(Fasteners, a_loosened_fastener_is_told_by_word_on_the_diagram) {
    child<QPushButton>(panel, "wholeGroup")->click();
    child<QPushButton>(panel, "loosened")->click();
    EXPECT_EQ(bench.lastAs<FastenerLoosened>().fastener, panel.selected());
    const auto content = tightenedContent(facts(), FastenerKind::mainCap, {});
    const auto mark =
        std::ranges::find(content.marks, QString::fromStdString(code(panel.selected())), &PlanMark::place);
    ASSERT_NE(mark, content.marks.end());
    EXPECT_EQ(mark->spoken, "loosened");
    EXPECT_EQ(mark->state, CheckState::stale);
}

TEST_F(Fasteners, a_round_is_made_with_one_key_for_each_fastener_that_held) {
    bench.tighten();
    beginRound();
    EXPECT_EQ(child<FastenersVerify>(panel)->progressText(), "0 of 10");
    const auto before = entries();
    QTest::keyClick(verifyEdit(), Qt::Key_Return);
    EXPECT_EQ(entries(), before) << "Enter alone verifies nothing";
    EXPECT_TRUE(child<FastenersVerify>(panel)->field()->problem().contains("h if it held"));
    for (int n = 0; n < 10; ++n) {
        QTest::keyClick(verifyEdit(), Qt::Key_H);
    }
    EXPECT_EQ(facts().rounds.back().outcomes.size(), 10U);
    EXPECT_TRUE(bench.assessment().find("verify-round")->isGood());
    EXPECT_FALSE(child<FastenersVerify>(panel)->field()->isVisible()) << "the round is complete";
    EXPECT_TRUE(child<QPushButton>(panel, "beginRound")->isVisible());
}

TEST_F(Fasteners, a_moved_one_shows_the_window_of_the_gap_and_what_became_stale) {
    bench.tighten();
    bench.survey();
    beginRound();
    const FastenerId first = panel.selected();
    typeAndEnter(verifyEdit(), "4");
    const RoundOutcome& outcome = bench.lastAs<RoundOutcome>();
    EXPECT_EQ(outcome.outcome, Outcome::moved);
    EXPECT_EQ(outcome.angle->value, degrees(4));
    ASSERT_EQ(lines(child<QListView>(panel, "moved")), 1);
    const QString words = cell(child<QListView>(panel, "moved"), 0);
    // By hand: a 7/16-20 advances 0.05 in a turn, so 4° is 0.05·4/360 = 0.00056 in at most, on top of 0.0500.
    EXPECT_TRUE(words.contains("0.0492 in")) << words.toStdString();
    EXPECT_TRUE(words.contains("0.0514 in")) << words.toStdString();
    EXPECT_TRUE(words.contains("Gap at cap 2 left")) << words.toStdString();
    EXPECT_NE(panel.selected(), first) << "and the round goes on";
}

TEST_F(Fasteners, a_round_is_left_and_gone_on_with) {
    bench.tighten();
    beginRound();
    QTest::keyClick(verifyEdit(), Qt::Key_H);
    QTest::keyClick(verifyEdit(), Qt::Key_H);
    const FastenerId third = panel.selected();
    panel.setMode(FastenersMode::tighten);
    FastenersStation later(*bench.session); // the program was closed in between
    later.resize(1060, 680);
    later.show();
    later.select("round");
    EXPECT_EQ(later.selected(), third);
    EXPECT_EQ(child<FastenersVerify>(later)->progressText(), "2 of 10");
}

TEST_F(Fasteners, an_angle_beyond_reason_is_asked_back) {
    bench.tighten();
    beginRound();
    const auto before = entries();
    typeAndEnter(verifyEdit(), "400");
    EXPECT_EQ(entries(), before);
    EXPECT_EQ(verifyEdit()->text(), "400");
    EXPECT_FALSE(child<FastenersVerify>(panel)->field()->problem().isEmpty());
}

TEST_F(Fasteners, the_stacks_come_off_in_one_go_before_a_round) {
    bench.tighten();
    bench.survey();
    bench.kit();
    bench.build();
    panel.setMode(FastenersMode::verify);
    EXPECT_FALSE(child<QPushButton>(panel, "beginRound")->isVisible());
    child<QPushButton>(panel, "takeStacksOff")->click();
    EXPECT_TRUE(facts().stacksOn().empty());
    EXPECT_TRUE(child<QPushButton>(panel, "beginRound")->isVisible());
}

TEST_F(Fasteners, a_group_shows_its_working_and_warns_of_the_wrong_unit) {
    panel.setMode(FastenersMode::groups);
    child<FastenersGroups>(panel)->selectGroup("main");
    auto* form = child<EntryForm>(panel, "groupForm");
    form->type("grade", "SAE 8");
    form->type("lubricant", "engine oil");
    form->type("torque", "50");
    EXPECT_TRUE(child<QPlainTextEdit>(panel, "working")->toPlainText().contains("Share of proof load"))
        << child<QPlainTextEdit>(panel, "working")->toPlainText().toStdString();
    EXPECT_TRUE(child<QLabel>(panel, "groupWarning")->text().isEmpty()) << child<QLabel>(panel, "groupWarning")->text().toStdString();
    const auto warning = [&](const char* torque) {
        form->edit("torque")->selectAll();
        QTest::keyClicks(form->edit("torque"), torque);
        return child<QLabel>(panel, "groupWarning")->text();
    };
    EXPECT_TRUE(warning("70").contains("90 %")) << "75 % of proof, but 97 % at the lower friction";
    EXPECT_TRUE(warning("600").contains("lbf·in")) << "600 lbf·in entered as lbf·ft";
    EXPECT_TRUE(warning("5").contains("lbf·in")) << "60 lbf·in entered as lbf·ft";
    form->edit("torque")->selectAll();
    QTest::keyClicks(form->edit("torque"), "65 ft-lb");
    QTest::keyClick(form->edit("torque"), Qt::Key_Return);
    EXPECT_EQ(bench.lastAs<FastenerGroupSet>().torque->value, poundFeet(65));
    EXPECT_EQ(bench.lastAs<FastenerGroupSet>().torque->typed, "65 ft-lb");
}

TEST_F(Fasteners, a_thread_that_does_not_exist_is_refused_at_the_form) {
    panel.setMode(FastenersMode::groups);
    child<FastenersGroups>(panel)->selectGroup("main");
    auto* form = child<EntryForm>(panel, "groupForm");
    const auto before = entries();
    form->edit("thread")->selectAll();
    QTest::keyClicks(form->edit("thread"), "7/16-21");
    QTest::keyClick(form->edit("thread"), Qt::Key_Return);
    EXPECT_EQ(entries(), before);
    EXPECT_TRUE(form->problem().contains("7/16-21")) << form->problem().toStdString();
    EXPECT_EQ(form->edit("thread")->text(), "7/16-21");
}

TEST_F(Fasteners, the_sequence_is_set_by_touching_the_fasteners_in_turn) {
    panel.setMode(FastenersMode::groups);
    child<FastenersGroups>(panel)->selectGroup("main");
    child<QPushButton>(panel, "setSequence")->click();
    for (const char* place : {"main-1L", "main-2R", "main-2L", "main-3R"}) {
        emit child<PlanView>(panel, "groupPlan")->placeClicked(place);
    }
    // Touched again, what came after it is taken back.
    emit child<PlanView>(panel, "groupPlan")->placeClicked("main-2R");
    emit child<PlanView>(panel, "groupPlan")->placeActivated("main-3L");
    EXPECT_EQ(child<PlanView>(panel, "groupPlan")->content()->sequence.size(), 3U) << "only what was touched carries a number";
    child<QPushButton>(panel, "setSequence")->click();
    EXPECT_EQ(child<EntryForm>(panel, "groupForm")->text("tightening_order"), "main-1L main-2R main-3L");
    EXPECT_EQ(child<PlanView>(panel, "groupPlan")->content()->sequence.size(), 6U) << "the others follow";
    child<EntryForm>(panel, "groupForm")->save();
    const auto order = tighteningOrder(facts(), FastenerKind::mainCap);
    ASSERT_EQ(order.size(), 6U);
    EXPECT_EQ(code(order[0]), "main-1L");
    EXPECT_EQ(code(order[2]), "main-3L");
}

TEST_F(Fasteners, the_pan_rail_is_tightened_on_the_diagram_from_the_centre_outwards) {
    bench.make(FastenerGroupSet{FastenerKind::panRail,
                                std::nullopt,
                                14,
                                "1/4-20",
                                "",
                                "",
                                TighteningMethod::torque,
                                Entered<Torque>{poundFeet(8), "8"},
                                {},
                                {},
                                2,
                                {},
                                ""});
    panel.select("pan-3");
    EXPECT_EQ(child<PlanView>(panel, "plan")->drawing()->places().size(), 14);
    EXPECT_EQ(child<PlanView>(panel, "plan")->content()->title, "pan: 4.0 → 8.0 lbf·ft");
    EXPECT_EQ(code(panel.selected()), "pan-3");
    child<FastenersTighten>(panel)->type("8");
    QTest::keyClick(tightenEdit(), Qt::Key_Return);
    EXPECT_TRUE(isTightAsSpecified(facts(), {FastenerKind::panRail, 3, Side::left, Ring::inner}));
}

// --- Groups of places --------------------------------------------------------------------------------------------

TEST_F(Fasteners, a_rear_cap_is_split_off_named_set_to_bolts_and_joined_back) {
    panel.setMode(FastenersMode::groups);
    FastenersGroups& groups = *child<FastenersGroups>(panel);
    auto* parts = child<FastenersGroupParts>(panel);
    auto* form = child<EntryForm>(panel, "groupForm");
    auto* plan = child<PlanView>(panel, "groupPlan");
    groups.selectGroup("main");
    child<QPushButton>(panel, "splitOff")->click();
    child<QComboBox>(panel, "splitBy")->setCurrentIndex(1); // its whole cap
    emit plan->placeClicked("main-3R");
    EXPECT_EQ(parts->chosen().size(), 2U);
    QTest::keyClicks(child<QLineEdit>(panel, "newGroupName"), "rear cap");
    QTest::keyClick(child<QLineEdit>(panel, "newGroupName"), Qt::Key_Return);
    EXPECT_EQ(shownGroup(), "main: rear cap");
    EXPECT_FALSE(parts->isSplitting());

    form->choice("piece")->setCurrentText("bolt");
    emit form->choice("piece")->activated(form->choice("piece")->currentIndex());
    form->edit("torque")->selectAll();
    QTest::keyClicks(form->edit("torque"), "65 lbf·ft");
    form->save();
    const FastenerId rear{FastenerKind::mainCap, 3, Side::left, Ring::inner};
    EXPECT_EQ(facts().groupOf(rear)->what.torque->value, poundFeet(65)) << form->problem().toStdString();
    EXPECT_EQ(pieceOf(facts(), rear), FastenerPiece::bolt);
    EXPECT_EQ(plan->content()->pieces.count("main-3L"), 1U) << "and is drawn so";
    EXPECT_TRUE(plan->drawing()->nameOf("main-3L").contains("bolt"));

    child<QPushButton>(panel, "joinBack")->click();
    EXPECT_EQ(facts().groupOf(rear)->what.torque->value, poundFeet(70));
    EXPECT_EQ(shownGroup(), "main");
}

TEST_F(Fasteners, a_split_without_a_name_or_without_places_says_why) {
    panel.setMode(FastenersMode::groups);
    FastenersGroups& groups = *child<FastenersGroups>(panel);
    auto* parts = child<FastenersGroupParts>(panel);
    auto* form = child<EntryForm>(panel, "groupForm");
    auto* plan = child<PlanView>(panel, "groupPlan");
    groups.selectGroup("main");
    child<QPushButton>(panel, "splitOff")->click();
    const auto before = entries();
    child<QPushButton>(panel, "storeSplit")->click();
    EXPECT_EQ(entries(), before);
    EXPECT_TRUE(form->problem().contains("name")) << form->problem().toStdString();
    emit plan->placeActivated("main-3R");
    emit plan->placeActivated("main-3R");
    EXPECT_TRUE(parts->chosen().empty()) << "touched again, it is let go";
}

TEST_F(Fasteners, the_girdle_s_group_is_listed_with_what_the_layout_ties) {
    bench.group(FastenerKind::girdleNut, 10, "7/16-20", 35);
    panel.setMode(FastenersMode::groups);
    const auto* table = child<TableView>(child<FastenersGroups>(panel));
    EXPECT_EQ(cell(table, lineOf(table, "girdle"), 1), "6") << "three caps are tied, whatever was typed";
}

// --- By mark and by length ---------------------------------------------------------------------------------------

class VerifiedOtherwise : public Fasteners {
protected:
    /// The rods by this method and at it, and the mains pulled: the round stands before the first rod.
    void upToTheRods(TighteningMethod method) {
        FastenerGroupSet group = facts().groups.at({FastenerKind::rod}).what;
        group.method = method;
        group.angle = Entered<Angle>{degrees(90), "90"};
        group.stretch = Entered<Length>{thou(6), "0.0060"};
        bench.make(group);
        bench.tightenMains();
        for (const FastenerId f : facts().layout->rodFasteners()) {
            const bool isStretch = method == TighteningMethod::stretch;
            bench.make(FastenerTightened{f, isStretch ? std::nullopt : group.torque, isStretch ? std::nullopt : group.angle,
                                         isStretch ? group.stretch : std::nullopt, isStretch ? "MIC-1" : "W1"});
        }
        beginRound();
        for (int n = 0; n < 6; ++n) {
            QTest::keyClick(verifyEdit(), Qt::Key_H);
        }
        ASSERT_EQ(panel.selected().kind, FastenerKind::rod);
    }
};

TEST_F(VerifiedOtherwise, a_rod_bolt_by_angle_is_asked_for_its_mark_and_one_key_says_that_it_lines_up) {
    upToTheRods(TighteningMethod::torqueAndAngle);
    EXPECT_TRUE(child<FastenersVerify>(panel)->field()->title().contains("mark"))
        << child<FastenersVerify>(panel)->field()->title().toStdString();
    for (int n = 0; n < 4; ++n) {
        QTest::keyClick(verifyEdit(), Qt::Key_H);
    }
    EXPECT_EQ(bench.lastAs<RoundOutcome>().by, VerifyMethod::witnessMark);
    EXPECT_FALSE(bench.lastAs<RoundOutcome>().torque);
    EXPECT_TRUE(bench.assessment().find("verify-round")->isGood());
}

TEST_F(VerifiedOtherwise, a_stretched_rod_bolt_is_asked_for_the_stretch_that_is_read_now) {
    upToTheRods(TighteningMethod::stretch);
    const auto before = entries();
    QTest::keyClick(verifyEdit(), Qt::Key_Return);
    EXPECT_EQ(entries(), before) << "nothing typed is no reading";
    typeAndEnter(verifyEdit(), "0.0058");
    EXPECT_EQ(bench.lastAs<RoundOutcome>().by, VerifyMethod::length);
    EXPECT_EQ(bench.lastAs<RoundOutcome>().stretch->value, inches(0.0058));
    typeAndEnter(verifyEdit(), "0.0040");
    EXPECT_EQ(stillToPull(facts(), facts().rounds.back()).size(), 3U) << "outside its band, it counts for nothing";
}

TEST_F(Fasteners, a_single_use_bolt_may_be_said_to_be_new) {
    FastenerGroupSet group = facts().groups.at({FastenerKind::mainCap}).what;
    group.isSingleUse = true;
    bench.make(group);
    panel.refresh();
    EXPECT_TRUE(child<QCheckBox>(panel, "isNew")->isVisible());
    child<QCheckBox>(panel, "isNew")->setChecked(true);
    QTest::keyClick(tightenEdit(), Qt::Key_Return);
    EXPECT_EQ(bench.lastAs<FastenerTightened>().isNew, true);
    EXPECT_FALSE(child<QCheckBox>(panel, "isNew")->isChecked()) << "the next one is asked for itself";
}

TEST_F(Fasteners, the_clamp_is_worked_out_of_the_torques_on_and_off) {
    bench.tighten();
    panel.setMode(FastenersMode::clamp);
    auto* edit = child<FastenersClamp>(panel)->field()->lineEdit();
    typeAndEnter(edit, "70");
    EXPECT_FALSE(child<FastenersClamp>(panel)->field()->problem().isEmpty()) << "one torque says nothing";
    edit->clear();
    typeAndEnter(edit, "70 / 50");
    EXPECT_EQ(bench.lastAs<ClampChecked>().off.value, poundFeet(50));
    // By hand: π·240 lbf·in/0.05 in = 15 080 lbf; to whole mN·m 15 079.
    EXPECT_TRUE(child<QPlainTextEdit>(panel, "clampResult")->toPlainText().contains("15079 lbf")) << child<QPlainTextEdit>(panel, "clampResult")->toPlainText().toStdString();
    EXPECT_FALSE(child<FastenersClamp>(panel)->field()->isEnabled()) << "it is loose now";
}

// --- Keys --------------------------------------------------------------------------------------------------------

/// Five mains and eight rods: 26 fasteners in a round, each key press counted.
class RoundByKeys : public testing::Test {
protected:
    RoundByKeys() : bench(5, 4) {
        LayoutSet layout;
        layout.caps = 5;
        layout.tiedLast = 5;
        layout.rods = 8;
        layout.throws = 4;
        bench.make(layout);
        bench.group(FastenerKind::rod, 16, "3/8-24", 45);
        bench.tighten();
        panel = std::make_unique<FastenersStation>(*bench.session);
        QObject::connect(bench.session.get(), &RecordSession::changed, panel.get(), [this] { panel->refresh(); });
        panel->resize(1060, 680);
        panel->show();
        panel->setMode(FastenersMode::verify);
        child<QPushButton>(*panel, "beginRound")->click();
    }
    void press(Qt::Key key) {
        QTest::keyClick(child<FastenersVerify>(*panel)->field()->lineEdit(), key);
        ++keys;
    }
    StationRecord bench;
    std::unique_ptr<FastenersStation> panel;
    int keys = 0;
};

TEST_F(RoundByKeys, takes_26_for_26_fasteners_that_held) {
    while (roundUnderWay(bench.facts()) != nullptr && keys < 100) {
        press(Qt::Key_H);
    }
    EXPECT_TRUE(bench.assessment().find("verify-round")->isGood());
    EXPECT_EQ(keys, 26);
}

/// Presses at chosen times.
class TimedRound : public RoundByKeys {
protected:
    TimedRound() {
        StoringPress::setClock([this] { return m_time; });
    }
    ~TimedRound() override {
        StoringPress::setClock([time = m_time]() mutable { return time += 1000; });
    }
    void pressAt(qint64 milliseconds, Qt::Key key) {
        m_time = milliseconds;
        press(key);
    }
    [[nodiscard]] std::size_t outcomes() const { return bench.facts().rounds.back().outcomes.size(); }
    [[nodiscard]] QString problem() const { return child<FastenersVerify>(*panel)->field()->problem(); }

private:
    qint64 m_time = 0;
};

TEST_F(TimedRound, asks_back_the_same_word_a_tenth_of_a_second_later_and_takes_it_after_seven) {
    pressAt(10'000, Qt::Key_H);
    EXPECT_EQ(outcomes(), 1U);
    pressAt(10'100, Qt::Key_H);
    EXPECT_EQ(outcomes(), 1U) << "nobody felt the second fastener";
    EXPECT_TRUE(problem().contains("twice within half a second")) << problem().toStdString();
    pressAt(10'500, Qt::Key_H);
    EXPECT_EQ(outcomes(), 1U) << "a key that goes on bouncing stores nothing: it needs half a second of rest";
    pressAt(11'200, Qt::Key_H);
    EXPECT_EQ(outcomes(), 2U) << "one key, since the field was left empty";
    pressAt(11'900, Qt::Key_H);
    EXPECT_EQ(outcomes(), 3U);
}

TEST_F(TimedRound, takes_another_word_or_a_value_at_once) {
    pressAt(10'000, Qt::Key_H);
    pressAt(10'050, Qt::Key_8);
    pressAt(10'100, Qt::Key_Return);
    EXPECT_EQ(outcomes(), 2U);
    pressAt(10'150, Qt::Key_H);
    EXPECT_EQ(outcomes(), 3U) << "another word than the one just stored";
}

TEST_F(TimedRound, asks_a_double_click_on_the_button_back) {
    QPushButton* held = nullptr;
    for (QPushButton* button : child<FastenersVerify>(*panel)->findChildren<QPushButton*>()) {
        held = button->text() == QLatin1String("Hel&d") ? button : held;
    }
    ASSERT_NE(held, nullptr);
    held->click();
    held->click();
    EXPECT_EQ(outcomes(), 1U);
}

TEST_F(RoundByKeys, takes_no_more_than_8_besides_for_one_that_moved) {
    for (int n = 0; n < 9; ++n) {
        press(Qt::Key_H);
    }
    press(Qt::Key_8);
    press(Qt::Key_Return);
    while (roundUnderWay(bench.facts()) != nullptr && keys < 100) {
        press(Qt::Key_H);
    }
    EXPECT_EQ(bench.facts().rounds.back().outcomes.size(), 26U);
    EXPECT_LE(keys, 26 + 8);
    EXPECT_EQ(keys, 27) << "its angle and Enter, in place of one H";
}

} // namespace
} // namespace caprail
