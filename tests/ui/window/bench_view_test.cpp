// SPDX-License-Identifier: GPL-3.0-or-later
/// The view for the engine stand: one value at a time, large, with the station's own field; and how an entry is
/// confirmed to a person who looks elsewhere.
#include "../find.h"
#include "../stations/station_record.h"

#include <QLabel>
#include <QLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>
#include <session/spoken_words.h>
#include <stations/closing/station.h>
#include <stations/closing/task.h>
#include <stations/common/entry_field.h>
#include <stations/girdle/gaps.h>
#include <stations/girdle/station.h>
#include <window/bench_pad.h>
#include <window/bench_view.h>
#include <window/confirmation.h>

namespace caprail {
namespace {

class BenchViewTest : public testing::Test {
protected:
    BenchViewTest() : bench(3), girdle(*bench.session), view(*bench.session) {
        girdle.resize(1060, 680);
        girdle.show();
        girdle.select("1L");
        view.resize(1280, 800);
        view.show();
    }
    StationRecord bench;
    GirdleStation girdle;
    BenchView view;
};

TEST_F(BenchViewTest, fills_a_whole_pass_with_value_and_enter_alone) {
    ASSERT_TRUE(view.enter(&girdle));
    EXPECT_EQ(child<QLabel>(view, "place")->text(), "Cap 1 left");
    const auto positions = bench.facts().layout->positions();
    for (std::size_t i = 0; i < positions.size(); ++i) {
        QTest::keyClicks(view.field()->lineEdit(), QStringLiteral("50.%1 thou").arg(i));
        QTest::keyClick(view.field()->lineEdit(), Qt::Key_Return);
        EXPECT_EQ(bench.facts().gaps.at(positions[i]).size(), 1U);
    }
    EXPECT_TRUE(child<QLabel>(view, "storedLast")->text().contains("cap 3 right, 0.0505 in")) << child<QLabel>(view, "storedLast")->text().toStdString();
}

TEST_F(BenchViewTest, shows_figures_several_times_larger_and_gives_the_field_back_as_it_was) {
    EntryField* field = girdle.entryField();
    QWidget* owner = field->parentWidget();
    const int before = field->lineEdit()->fontMetrics().height();
    ASSERT_TRUE(view.enter(&girdle));
    EXPECT_EQ(view.field(), field);
    EXPECT_GT(field->lineEdit()->fontMetrics().height(), 2 * before);
    QSignalSpy left(&view, &BenchView::left);
    QTest::keyClick(field->lineEdit(), Qt::Key_Escape);
    view.leave();
    EXPECT_EQ(left.count(), 1);
    EXPECT_EQ(field->parentWidget(), owner);
    EXPECT_EQ(field->lineEdit()->fontMetrics().height(), before);
    EXPECT_GE(owner->layout()->indexOf(field), 0);
}

TEST_F(BenchViewTest, walks_over_the_places_with_the_arrow_keys) {
    ASSERT_TRUE(view.enter(&girdle));
    QTest::keyClick(view.field()->lineEdit(), Qt::Key_Down);
    EXPECT_EQ(child<QLabel>(view, "place")->text(), "Cap 1 right");
    QTest::keyClick(view.field()->lineEdit(), Qt::Key_Up);
    EXPECT_EQ(child<QLabel>(view, "place")->text(), "Cap 1 left");
}

TEST_F(BenchViewTest, is_refused_where_no_value_is_typed) {
    girdle.setMode(GirdleMode::recheck);
    EXPECT_FALSE(view.enter(&girdle));
    EXPECT_FALSE(view.isActive());
}

TEST_F(BenchViewTest, keeps_what_was_refused_in_the_field) {
    ASSERT_TRUE(view.enter(&girdle));
    QTest::keyClicks(view.field()->lineEdit(), "9");
    QTest::keyClick(view.field()->lineEdit(), Qt::Key_Return);
    EXPECT_EQ(view.field()->text(), "9");
    EXPECT_FALSE(view.field()->problem().isEmpty());
    EXPECT_TRUE(bench.facts().gaps.empty());
}

/// A closing at the engine stand: which stack goes where, and one nut after another, with the keyboard alone.
TEST(BenchViewOfClosing, shows_what_the_step_is_about_and_takes_its_field) {
    StationRecord bench;
    bench.readyToClose();
    bench.close(ClosingStep::shimsCounted);
    ClosingStation closing(*bench.session);
    QObject::connect(bench.session.get(), &RecordSession::changed, &closing, [&] { closing.refresh(); });
    closing.resize(1060, 680);
    closing.show();
    BenchView view(*bench.session);
    view.resize(1280, 800);
    view.show();
    ASSERT_TRUE(view.enter(&closing));
    ClosingPicture* picture = child<ClosingTaskPage>(closing)->picture();
    EXPECT_TRUE(view.isAncestorOf(picture));
    EXPECT_TRUE(picture->title().contains("S-1L"));
    for (int stack = 0; stack < 6; ++stack) {
        QTest::keyClick(view.field()->lineEdit(), Qt::Key_Return);
    }
    EXPECT_TRUE(bench.facts().stacksOn().size() == 6U);
    view.leave();
    EXPECT_TRUE(closing.isAncestorOf(picture));
    EXPECT_TRUE(closing.isAncestorOf(child<ClosingTaskPage>(closing)->field()));
}

TEST(Confirmation, rings_once_for_an_entry_and_twice_for_a_refusal) {
    Confirmation confirmation;
    QSignalSpy rings(&confirmation, &Confirmation::rang);
    confirmation.stored("cap 1 left, 0.0500 in");
    EXPECT_EQ(rings.count(), 0) << "silent until it is asked for";
    confirmation.setChoice(ConfirmationChoice::sound);
    confirmation.stored("cap 1 left, 0.0500 in");
    confirmation.refused("57 could be inches or thousandths.");
    ASSERT_EQ(rings.count(), 2);
    EXPECT_EQ(rings[0][0].toInt(), 1);
    EXPECT_EQ(rings[1][0].toInt(), 2);
}

TEST(Confirmation, speaks_or_where_nothing_speaks_rings) {
    qputenv("SPEECHD_ADDRESS", "unix_socket:/nonexistent/speech");
    Confirmation confirmation;
    QSignalSpy rings(&confirmation, &Confirmation::rang);
    QSignalSpy words(&confirmation, &Confirmation::spoke);
    confirmation.setChoice(ConfirmationChoice::spoken);
    confirmation.stored("cap 1 left, 0.0500 in");
    EXPECT_EQ(rings.count() + words.count(), 1);
    if (words.count() == 1) {
        EXPECT_EQ(words[0][0].toString(), "cap 1 left, 0.0500 in");
    }
}

TEST(SpokenWords, say_the_place_and_the_value_and_no_more) {
    const auto words = [](Body body) {
        Ledger ledger;
        return spokenWords(ledger.append({0}, "Mira", std::move(body)), Units{});
    };
    EXPECT_EQ(words(GapReading{{3, Side::right}, 1, {thou(57.5), "57.5 thou"}, ""}), "cap 3 right, 0.0575 in");
    EXPECT_EQ(words(RecheckMade{{3, Side::right}, Feel::drags, ""}), "cap 3 right drags");
    const FastenerId fastener{FastenerKind::mainCap, 2, Side::left, Ring::inner};
    EXPECT_EQ(words(RoundOutcome{1, fastener, Outcome::held, {}, {}, ""}), "main 2 left held");
    EXPECT_EQ(words(RoundOutcome{1, fastener, Outcome::moved, Entered<Angle>{degrees(4), "4"}, {}, ""}),
              "main 2 left moved 4.0°");
}

TEST(BenchPadTest, keeps_the_remark_that_is_typed_behind_its_word) {
    BenchPad pad(nullptr);
    EntryField field;
    QString taken;
    field.ask(
        "Dipstick clear", {}, [](const QString&) { return Result<QString>(QString()); },
        [&](const QString& text) {
            taken = text;
            return Result<void>();
        });
    pad.typeInto(&field);
    const std::vector<BenchWord> words{{"Pass", "p"}, {"Fail", "f"}};
    pad.showWords(words);
    QPushButton* fail = nullptr;
    for (QPushButton* button : pad.findChildren<QPushButton*>()) {
        fail = button->text() == QLatin1String("Fail") ? button : fail;
    }
    ASSERT_NE(fail, nullptr);
    field.lineEdit()->setText("touches the tube");
    pad.showWords(words); // as with every refresh
    EXPECT_FALSE(fail->isHidden()) << "a key that is pressed must not go away under the finger";
    fail->click();
    EXPECT_EQ(taken, "f touches the tube");
}

} // namespace
} // namespace caprail
