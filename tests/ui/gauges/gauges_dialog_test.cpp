// SPDX-License-Identifier: GPL-3.0-or-later
/// A gauge is set up once, with its own lines in sight.
#include "../find.h"
#include "../pictures.h"
#include "../reading_order.h"
#include "pseudo_terminal.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTest>
#include <gauges/gauges_dialog.h>

namespace caprail {
namespace {

using testing::HasSubstr;

class GaugesDialogs : public testing::Test {
protected:
    void SetUp() override { useSettingsIn(folder.path()); }
    static std::string linesOf(const GaugesDialog& dialog) {
        return child<QPlainTextEdit>(dialog, "lines")->toPlainText().toStdString();
    }
    QTemporaryDir folder;
};

TEST_F(GaugesDialogs, shows_the_lines_of_a_port_as_they_come_and_fits_the_pattern_to_them) {
    PseudoTerminal port(folder.filePath("gauge"));
    GaugeSetup setup;
    setup.way = GaugeWay::serial;
    setup.device = port.name();
    GaugesDialog dialog({setup}, {"DEPTH-1"});
    dialog.show();
    EXPECT_THAT(linesOf(dialog), HasSubstr("is open"));
    port.send("DGTL 1.460 mm\r\n");
    ASSERT_TRUE(QTest::qWaitFor([&] { return linesOf(dialog).find("DGTL") != std::string::npos; }));
    EXPECT_THAT(linesOf(dialog), HasSubstr("does not fit its pattern “#”"));
    child<QPushButton>(dialog, "propose")->click();
    EXPECT_EQ(child<QLineEdit>(dialog, "pattern")->text(), "DGTL #");
    EXPECT_THAT(linesOf(dialog), HasSubstr("is read as  1.460 mm"));
    EXPECT_EQ(dialog.gauges().front().form.pattern, "DGTL #");
    picture(dialog, "gauges-dialog");
}

TEST_F(GaugesDialogs, are_read_by_the_tab_key_from_top_to_bottom) {
    GaugeSetup serial;
    serial.way = GaugeWay::serial;
    GaugesDialog dialog({serial, GaugeSetup{}}, {});
    dialog.show();
    QApplication::processEvents();
    EXPECT_EQ(outOfReadingOrder(dialog), "");
}

TEST_F(GaugesDialogs, learns_from_a_gauge_that_types_how_its_line_ends) {
    GaugesDialog dialog({GaugeSetup{}}, {});
    dialog.show();
    auto* tryIt = child<QLineEdit>(dialog, "try");
    QTest::keyClicks(tryIt, "01A+0.0575");
    QTest::keyClick(tryIt, Qt::Key_Tab);
    EXPECT_TRUE(dialog.isVisible());
    EXPECT_EQ(dialog.gauges().front().end, GaugeEnd::tab);
    child<QPushButton>(dialog, "propose")->click();
    EXPECT_EQ(dialog.gauges().front().form.pattern, "01A#");
    EXPECT_THAT(linesOf(dialog), HasSubstr("without a unit"));
}

TEST_F(GaugesDialogs, refuses_a_pattern_without_a_value_and_a_serial_gauge_without_a_port) {
    GaugeSetup noValue;
    noValue.form.pattern = "01A";
    GaugesDialog dialog({noValue}, {});
    dialog.show();
    child<QDialogButtonBox>(dialog)->button(QDialogButtonBox::Ok)->click();
    EXPECT_TRUE(dialog.isVisible());
    EXPECT_THAT(child<QLabel>(dialog, "problem")->text().toStdString(), HasSubstr("must have one #"));
    GaugeSetup noPort;
    noPort.way = GaugeWay::serial;
    GaugesDialog other({noPort}, {});
    other.show();
    child<QDialogButtonBox>(other)->button(QDialogButtonBox::Ok)->click();
    EXPECT_THAT(child<QLabel>(other, "problem")->text().toStdString(), HasSubstr("Choose the port"));
}

TEST_F(GaugesDialogs, keeps_what_was_set_for_the_next_start) {
    GaugeSetup serial;
    serial.instrument = "DEPTH-1";
    serial.way = GaugeWay::serial;
    serial.end = GaugeEnd::pause;
    serial.form = {"D #", "mm"};
    serial.device = "/dev/ttyUSB3";
    serial.speed = 2400;
    serial.dataBits = 7;
    serial.stopBits = 2;
    serial.parity = GaugeParity::even;
    serial.isUsed = false;
    GaugeSetup typing;
    typing.form = {"01A#", "in"};
    saveGauges({serial, typing});
    EXPECT_EQ(loadGauges(), (std::vector{serial, typing}));
    saveGauges({typing});
    EXPECT_EQ(loadGauges(), std::vector{typing});
}

} // namespace
} // namespace caprail
