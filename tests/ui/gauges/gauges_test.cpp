// SPDX-License-Identifier: GPL-3.0-or-later
/// Gauges that send their values: on a serial line (a pseudo-terminal here) and as a keyboard.
#include "../find.h"
#include "../stations/station_record.h"
#include "pseudo_terminal.h"

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>
#include <gauges/gauge_hub.h>
#include <stations/common/entry_field.h>
#include <stations/girdle/station.h>
#include <window/bench_view.h>

namespace caprail {
namespace {

using testing::HasSubstr;

class Gauges : public testing::Test {
protected:
    Gauges() : bench(3), girdle(*bench.session), hub([this] { return now += 1000; }) {
        QObject::connect(bench.session.get(), &RecordSession::changed, &girdle, [this] { girdle.refresh(); });
        bench.make(InstrumentAdded{
            "TAPER-7", InstrumentType::feelerGauge, "", "", Entered<Length>{tenths(1), ""}, {}, {}, {}, {}, {}, {}});
        girdle.resize(1060, 680);
        girdle.show();
        girdle.activateWindow();
        girdle.select("1L");
        EXPECT_TRUE(QTest::qWaitForWindowActive(&girdle));
        girdle.entryField()->setFocus();
        QObject::connect(&hub, &GaugeHub::said, [this](const QString& sentence) { said << sentence; });
    }
    static GaugeSetup gauge(GaugeWay way, const char* pattern = "01A#", const char* unit = "in") {
        GaugeSetup setup;
        setup.instrument = "TAPER-7";
        setup.way = way;
        setup.form = {pattern, unit};
        return setup;
    }
    [[nodiscard]] std::size_t count() const {
        std::size_t all = 0;
        for (const auto& [position, gaps] : bench.session->facts().gaps) {
            all += gaps.size();
        }
        return all;
    }
    [[nodiscard]] EntryField* field() const { return girdle.entryField(); }
    [[nodiscard]] std::string problem() const { return field()->problem().toStdString(); }
    /// Keys as a gauge sends them, to whatever has the keyboard.
    static void type(const QString& line, Qt::Key end = Qt::Key_Return) {
        for (const QChar c : line) {
            QTest::keyClick(QApplication::focusWidget(), c.toLatin1());
        }
        if (end != Qt::Key_unknown) {
            QTest::keyClick(QApplication::focusWidget(), end);
        }
    }

    qint64 now = 0;
    QTemporaryDir folder;
    StationRecord bench;
    GirdleStation girdle;
    QStringList said;
    GaugeHub hub;
};

class SerialGauges : public Gauges {
protected:
    SerialGauges() : port(folder.filePath("gauge")) {
        GaugeSetup setup = gauge(GaugeWay::serial);
        setup.device = port.name();
        hub.use({setup});
        QTest::qWait(50); // it is opened once the window listens
    }
    PseudoTerminal port;
};

TEST_F(SerialGauges, store_at_the_place_in_focus_under_their_own_name_and_go_on) {
    const auto positions = bench.positions();
    for (std::size_t i = 0; i < positions.size(); ++i) {
        ASSERT_TRUE(port.send("01A+00.050" + std::to_string(i) + "\r\n"));
        ASSERT_TRUE(QTest::qWaitFor([&] { return count() == i + 1; })) << problem();
        const GapReading& reading = bench.facts().gaps.at(positions[i]).front().what;
        EXPECT_EQ(reading.gap.typed, "0.050" + std::to_string(i) + " in");
        EXPECT_EQ(reading.instrument, "TAPER-7");
    }
    EXPECT_TRUE(said.isEmpty()) << said.join('\n').toStdString();
}

TEST_F(SerialGauges, are_judged_like_a_typed_value_and_replace_what_was_refused) {
    port.send("01A+5.75\r");
    ASSERT_TRUE(QTest::qWaitFor([&] { return !problem().empty(); }));
    EXPECT_EQ(field()->text(), "5.75 in");
    EXPECT_EQ(count(), 0U);
    port.send("01A+0.0575\r");
    ASSERT_TRUE(QTest::qWaitFor([&] { return count() == 1; })) << problem();
}

TEST_F(SerialGauges, store_nothing_where_no_value_field_has_the_keyboard_and_say_so_once) {
    field()->lineEdit()->clearFocus();
    for (int i = 0; i < 3; ++i) {
        port.send("01A+0.0575\r");
        QTest::qWait(30);
    }
    EXPECT_EQ(count(), 0U);
    ASSERT_EQ(said.size(), 1);
    EXPECT_THAT(said.front().toStdString(), HasSubstr("0.0575 in came from TAPER-7 and is not stored"));
}

TEST_F(SerialGauges, say_in_the_field_that_a_line_does_not_fit) {
    port.send("02A+0.0575\r");
    ASSERT_TRUE(QTest::qWaitFor([&] { return !problem().empty(); }));
    EXPECT_THAT(problem(), HasSubstr("“02A+0.0575” came from the gauge and does not fit its pattern"));
    EXPECT_EQ(count(), 0U);
}

TEST_F(SerialGauges, are_taken_up_again_after_they_were_pulled_out) {
    port.send("01A+0.0575\r01A+0.05"); // pulled out in the middle of a value
    ASSERT_TRUE(QTest::qWaitFor([&] { return count() == 1; }));
    port.pullOut();
    ASSERT_TRUE(QTest::qWaitFor([&] { return said.size() == 1; }));
    EXPECT_THAT(said.front().toStdString(), HasSubstr("TAPER-7 went away"));
    QTest::qWait(2200); // it is tried again, and that it is still away is not said again
    EXPECT_LE(said.size(), 2);
    said.clear();
    port.plugIn();
    ASSERT_TRUE(QTest::qWaitFor([&] { return said.size() == 1; }));
    EXPECT_THAT(said.front().toStdString(), HasSubstr("TAPER-7 is connected again"));
    port.send("80\r01A+0.0580\r"); // what was cut off is not put together with what comes now
    ASSERT_TRUE(QTest::qWaitFor([&] { return count() == 2; })) << problem();
}

TEST_F(SerialGauges, that_send_without_an_end_hold_nothing_up) {
    qsizetype sent = 0;
    QElapsedTimer longest;
    qint64 stood = 0;
    while (sent < 300'000) {
        sent += port.send(std::string(1000, '7')) ? 1000 : 0;
        longest.start();
        QCoreApplication::processEvents();
        stood = std::max(stood, longest.elapsed());
    }
    EXPECT_LT(stood, 500) << "milliseconds in one piece";
    port.send("\r");
    ASSERT_TRUE(QTest::qWaitFor([&] { return !problem().empty(); }));
    port.send("01A+0.0575\r");
    ASSERT_TRUE(QTest::qWaitFor([&] { return count() == 1; })) << problem();
}

TEST_F(Gauges, that_send_by_themselves_store_only_the_first_value) {
    GaugeHub fast([this] { return now += 100; });
    QStringList sentences;
    QObject::connect(&fast, &GaugeHub::said, [&](const QString& sentence) { sentences << sentence; });
    for (int i = 0; i < 20; ++i) {
        fast.take(gauge(GaugeWay::serial), "01A+0.0575");
    }
    EXPECT_EQ(count(), 1U);
    ASSERT_EQ(sentences.size(), 1);
    EXPECT_THAT(sentences.front().toStdString(), HasSubstr("faster than anyone presses its button"));
}

TEST_F(Gauges, that_this_record_does_not_know_store_nothing_under_another_name) {
    GaugeSetup unknown = gauge(GaugeWay::serial);
    unknown.instrument = "TAPER-8";
    hub.take(unknown, "01A+0.0575");
    EXPECT_EQ(count(), 0U);
    EXPECT_THAT(problem(), HasSubstr("TAPER-8"));
    EXPECT_EQ(field()->text(), "0.0575 in");
}

TEST_F(Gauges, leave_a_typed_value_that_is_not_stored_alone) {
    QTest::keyClicks(field()->lineEdit(), "0.061");
    hub.take(gauge(GaugeWay::serial), "01A+0.0575");
    EXPECT_EQ(count(), 0U);
    EXPECT_EQ(field()->text(), "0.061");
    EXPECT_THAT(problem(), HasSubstr("stands here and is not stored"));
}

TEST_F(Gauges, that_are_missing_at_the_start_are_said_to_be) {
    GaugeSetup setup = gauge(GaugeWay::serial);
    setup.device = folder.filePath("nothing");
    hub.use({setup});
    ASSERT_TRUE(QTest::qWaitFor([&] { return !said.isEmpty(); }));
    EXPECT_THAT(said.front().toStdString(), HasSubstr("TAPER-7 is not connected at"));
}

TEST_F(Gauges, work_in_the_bench_view) {
    BenchView view(*bench.session);
    view.resize(1280, 800);
    view.show();
    view.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&view));
    ASSERT_TRUE(view.enter(&girdle));
    hub.take(gauge(GaugeWay::serial), "01A+0.0575");
    EXPECT_EQ(count(), 1U) << view.field()->problem().toStdString();
    EXPECT_TRUE(child<QLabel>(view, "storedLast")->text().contains("0.0575 in"));
}

class TypingGauges : public Gauges {};

TEST_F(TypingGauges, store_their_value_without_their_prefix) {
    hub.use({gauge(GaugeWay::keyboard)});
    type("01A+00.0575");
    ASSERT_EQ(count(), 1U) << problem();
    const GapReading& reading = bench.facts().gaps.begin()->second.front().what;
    EXPECT_EQ(reading.gap.typed, "0.0575 in");
    EXPECT_EQ(reading.instrument, "TAPER-7");
}

TEST_F(TypingGauges, may_end_with_tab_or_with_nothing) {
    GaugeSetup tab = gauge(GaugeWay::keyboard);
    tab.end = GaugeEnd::tab;
    GaugeSetup pause = gauge(GaugeWay::keyboard, "B#");
    pause.end = GaugeEnd::pause;
    hub.use({tab, pause});
    type("01A+0.0575", Qt::Key_Tab);
    EXPECT_EQ(count(), 1U) << problem();
    type("B.0581", Qt::Key_unknown);
    EXPECT_EQ(count(), 1U) << "before the pause";
    EXPECT_TRUE(QTest::qWaitFor([&] { return count() == 2; })) << problem();
}

TEST_F(TypingGauges, leave_a_person_who_types_the_value_alone) {
    hub.use({gauge(GaugeWay::keyboard, "#", "thou")});
    for (const char key : {'.', '0', '5', '7', '5'}) {
        QTest::keyClick(field()->lineEdit(), key, {}, 70);
    }
    QTest::keyClick(field()->lineEdit(), Qt::Key_Return, {}, 70);
    ASSERT_EQ(count(), 1U) << problem();
    EXPECT_EQ(bench.facts().gaps.begin()->second.front().what.gap.typed, ".0575");
    EXPECT_EQ(bench.facts().gaps.begin()->second.front().what.instrument, "FEEL-1");
}

TEST_F(TypingGauges, replace_what_was_refused_and_not_what_was_typed) {
    hub.use({gauge(GaugeWay::keyboard)});
    type("01A+5.75");
    EXPECT_EQ(field()->text(), "5.75 in");
    EXPECT_EQ(count(), 0U);
    QTest::qWait(120);
    type("01A+0.0575");
    EXPECT_EQ(count(), 1U) << problem();
    QTest::keyClicks(field()->lineEdit(), "0.06");
    QTest::qWait(120);
    type("01A+0.0575");
    EXPECT_EQ(count(), 1U);
    EXPECT_EQ(field()->text(), "0.06");
}

/// Where a gauge types without a value field: nothing is pressed, nothing stored, nothing left behind.
TEST_F(TypingGauges, press_no_button_and_fill_no_form_elsewhere) {
    QWidget window;
    auto* button = new QPushButton("Take off all", &window);
    auto* note = new QLineEdit(&window);
    note->move(0, 50);
    QSignalSpy pressed(button, &QPushButton::clicked), returned(note, &QLineEdit::returnPressed);
    window.show();
    window.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
    hub.use({gauge(GaugeWay::keyboard)});
    for (QWidget* widget : {static_cast<QWidget*>(button), static_cast<QWidget*>(note)}) {
        widget->setFocus();
        type("01A+0.0575");
    }
    EXPECT_EQ(pressed.count() + returned.count(), 0);
    EXPECT_EQ(note->text(), "");
    EXPECT_EQ(said.size(), 1);
    EXPECT_EQ(count(), 0U);
}

TEST_F(TypingGauges, give_keys_that_are_a_persons_back_in_order) {
    QLineEdit note;
    note.show();
    note.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&note));
    note.setFocus();
    hub.use({gauge(GaugeWay::keyboard)});
    QTest::keyClicks(&note, "01B 01A"); // begins twice like the gauge's line
    QTest::keyClick(&note, Qt::Key_Backspace);
    EXPECT_EQ(note.text(), "01B 01");
    QTest::keyClicks(&note, "0");
    EXPECT_TRUE(QTest::qWaitFor([&] { return note.text() == "01B 010"; })) << note.text().toStdString();
}

} // namespace
} // namespace caprail
