// SPDX-License-Identifier: GPL-3.0-or-later
#include "station_record.h"

#include <QComboBox>
#include <QImage>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QPushButton>
#include <QSpinBox>
#include <stations/common/checks_view.h>
#include <stations/closing/findings.h>
#include <stations/closing/open_time.h>
#include <stations/closing/photos.h>
#include <stations/closing/station.h>
#include <stations/closing/steps.h>
#include <stations/common/entry_field.h>
#include <stations/common/optional_field.h>
#include <stations/pickup/station.h>
#include <stations/trial_fit/station.h>
#include <stations/trial_fit/way.h>

namespace caprail {
namespace {

template <class Panel> class Shown {
public:
    explicit Shown(StationRecord& bench) : panel(*bench.session) {
        QObject::connect(bench.session.get(), &RecordSession::changed, &panel, [this] { panel.refresh(); });
        panel.resize(1060, 680);
        panel.show();
    }
    Panel panel;
};

TEST(TrialFitPanel, says_why_it_is_locked_and_each_reason_is_a_jump) {
    StationRecord bench;
    Shown<TrialFitStation> shown(bench);
    EXPECT_FALSE(shown.panel.entryField()->isEnabled());
    ASSERT_GT(child<ChecksView>(shown.panel, "holding")->count(), 0);
    std::optional<Destination> place;
    QObject::connect(bench.session.get(), &RecordSession::destinationRequested,
                     [&](const Destination& p) { place = p; });
    emit child<ChecksView>(shown.panel, "holding")->lineActivated(0);
    ASSERT_TRUE(place);
    EXPECT_EQ(place->station, Station::girdle);
    EXPECT_EQ(place->subject, "1L");
}

TEST(TrialFitPanel, takes_the_girdles_way_round) {
    StationRecord bench;
    Shown<TrialFitStation> shown(bench);
    child<QComboBox>(shown.panel, "cutoutSide")->setCurrentIndex(static_cast<int>(Side::left));
    child<TrialFitWay>(shown.panel)->button()->click();
    EXPECT_EQ(bench.lastAs<GirdleWaySet>().cutoutSide, Side::left);
}

TEST(TrialFitPanel, is_answered_by_keyboard_row_by_row) {
    StationRecord bench;
    bench.readyToFit();
    Shown<TrialFitStation> shown(bench);
    QLineEdit* edit = shown.panel.entryField()->lineEdit();
    typeAndEnter(edit, "p"); // dipstick
    typeAndEnter(edit, "p"); // pickup tube
    typeAndEnter(edit, ".072");
    EXPECT_EQ(bench.lastAs<TrialFitResult>().item, TrialItem::counterweights);
    EXPECT_EQ(bench.lastAs<TrialFitResult>().throwNumber, 1);
    EXPECT_EQ(bench.lastAs<TrialFitResult>().clearance->value, thou(72));
    EXPECT_EQ(shown.panel.item(), (TrialId{TrialItem::counterweights, 2}));
}

TEST(TrialFitPanel, a_fail_opens_a_finding) {
    StationRecord bench;
    bench.readyToFit();
    Shown<TrialFitStation> shown(bench);
    shown.panel.select("throw-2");
    typeAndEnter(shown.panel.entryField()->lineEdit(), "f touches the plate at 2R");
    const FindingOpened finding = bench.lastAs<FindingOpened>();
    EXPECT_EQ(finding.finding, "F1");
    EXPECT_EQ(finding.place, "throw 2");
    EXPECT_EQ(finding.text, "touches the plate at 2R");
    EXPECT_EQ(bench.facts().trialFits.at({TrialItem::counterweights, 2}).what.result, TrialResult::fail);
}

TEST(PickupPanel, goes_from_term_to_term_and_adds_them_up) {
    StationRecord bench;
    Shown<PickupStation> shown(bench);
    QLineEdit* edit = shown.panel.entryField()->lineEdit();
    for (int reading = 0; reading < 2; ++reading) {
        for (const char* value : {"7.5000", ".060", "1/4", "7.5000"}) {
            typeAndEnter(edit, value);
        }
    }
    ASSERT_TRUE(bench.assessment().pickup.clearance);
    EXPECT_EQ(*bench.assessment().pickup.clearance, thou(310));
    EXPECT_EQ(bench.assessment().find("pickup")->state, CheckState::good);
    EXPECT_EQ(shown.panel.term(), PickupTerm::panDepth);
}

TEST(PickupPanel, takes_the_temperature_of_the_part_that_was_measured) {
    StationRecord bench;
    Shown<PickupStation> shown(bench);
    shown.panel.field()->lineEdit()->setText("7.5000");
    typeAndEnter(shown.panel.temperature()->lineEdit(), "21 °C");
    ASSERT_TRUE(bench.lastAs<PickupReading>().partTemperature);
    EXPECT_EQ(bench.lastAs<PickupReading>().partTemperature->value, celsius(21));
    typeAndEnter(shown.panel.field()->lineEdit(), ".060");
    EXPECT_EQ(bench.lastAs<PickupReading>().term, PickupTerm::gasket);
    EXPECT_FALSE(bench.lastAs<PickupReading>().partTemperature);
}

TEST(PickupPanel, jumps_to_a_term_by_its_name) {
    StationRecord bench;
    Shown<PickupStation> shown(bench);
    shown.panel.select("girdle plate");
    EXPECT_EQ(shown.panel.term(), PickupTerm::plate);
    QTest::keyClick(shown.panel.entryField()->lineEdit(), Qt::Key_Down);
    EXPECT_EQ(shown.panel.term(), PickupTerm::pickupDepth);
}

TEST(ClosingPanel, is_locked_with_its_reasons) {
    StationRecord bench;
    Shown<ClosingStation> shown(bench);
    EXPECT_FALSE(child<ClosingSteps>(shown.panel)->button(ClosingStep::stacksRefitted)->isEnabled());
    EXPECT_EQ(static_cast<std::size_t>(child<ChecksView>(shown.panel, "holding")->count()),
              bench.assessment().gate(GateKind::closing).holding.size());
}

TEST(ClosingPanel, ticks_the_steps_in_order_and_signs_off_and_begins_a_new_build) {
    StationRecord bench;
    bench.readyToClose();
    ASSERT_TRUE(bench.assessment().gate(GateKind::closing).isOpen)
        << bench.assessment().checks[bench.assessment().gate(GateKind::closing).holding.front()].code;
    Shown<ClosingStation> shown(bench);
    auto* steps = child<ClosingSteps>(shown.panel);
    EXPECT_FALSE(steps->button(ClosingStep::girdleLowered)->isEnabled()) << "not before its turn";
    steps->button(ClosingStep::stacksRefitted)->click();
    EXPECT_EQ(bench.lastAs<ClosingStepDone>().step, ClosingStep::stacksRefitted);
    steps->findChild<QSpinBox*>()->setValue(12);
    steps->button(ClosingStep::beadLaid)->click();
    EXPECT_EQ(bench.lastAs<ClosingStepDone>().openMinutes, 12);
    EXPECT_TRUE(child<OpenTime>(steps)->isVisible());
    for (const ClosingStep step : {ClosingStep::girdleLowered, ClosingStep::nutsTightened, ClosingStep::panFastened}) {
        QTest::keyClick(steps->button(step), Qt::Key_Space);
        EXPECT_EQ(bench.lastAs<ClosingStepDone>().step, step);
    }
    EXPECT_FALSE(child<OpenTime>(steps)->isVisible());
    child<QPushButton>(steps, "signOff")->click();
    EXPECT_TRUE(bench.facts().isClosed());
    EXPECT_FALSE(bench.lastAs<SignedOff>().statement.empty());
}

TEST(FindingsPanel, opens_and_settles_a_finding_and_takes_a_note) {
    StationRecord bench;
    Shown<ClosingStation> shown(bench);
    auto* findings = child<ClosingFindings>(shown.panel);
    QTest::keyClicks(child<QLineEdit>(findings, "findingPlace"), "3R");
    typeAndEnter(child<QLineEdit>(findings, "findingText"), "burr on the washer");
    EXPECT_EQ(bench.lastAs<FindingOpened>().finding, "F1");
    EXPECT_EQ(bench.lastAs<FindingOpened>().place, "3R");
    shown.panel.select("findings");
    typeAndEnter(child<QLineEdit>(findings, "findingDone"), "dressed and measured again");
    EXPECT_EQ(bench.lastAs<FindingSettled>().finding, "F1");
    EXPECT_TRUE(bench.assessment().openFindings.empty());
}

TEST(FindingsPanel, keeps_the_finding_that_is_selected_while_others_are_opened_and_offers_no_settled_one) {
    StationRecord bench;
    Shown<ClosingStation> shown(bench);
    auto* list = child<QListView>(shown.panel, "findings");
    QLineEdit* done = child<QLineEdit>(shown.panel, "findingDone");
    EXPECT_EQ(lines(list), 0);
    bench.make(FindingOpened{"F1", "3R", "burr on the washer"});
    bench.make(FindingOpened{"F2", "", "a thread insert is missing"});
    shown.panel.select("F2");
    bench.make(FindingOpened{"F0", "", "a scratch"});
    bench.make(NoteAdded{"", "crank polished"});
    ASSERT_EQ(lines(list), 4);
    EXPECT_TRUE(cell(list, 0).contains("F0")) << cell(list, 0).toStdString();
    typeAndEnter(done, "fitted");
    EXPECT_EQ(bench.lastAs<FindingSettled>().finding, "F2") << "not the one that stands in its line now";
    EXPECT_FALSE(done->isEnabled()) << "it is settled";
    EXPECT_TRUE(cell(list, 2).startsWith("✓ F2")) << "below the open ones";
    EXPECT_TRUE(cell(list, 3).contains("crank polished"));
}

TEST(PhotosPanel, keeps_a_scaled_copy_and_refuses_other_files) {
    StationRecord bench;
    Shown<ClosingStation> shown(bench);
    const QString path = bench.folder.filePath("cap3.png");
    QImage picture(2400, 1200, QImage::Format_RGB32);
    picture.fill(Qt::darkCyan);
    ASSERT_TRUE(picture.save(path));
    child<ClosingPhotos>(shown.panel)->addFiles({path});
    const AttachmentAdded kept = bench.lastAs<AttachmentAdded>();
    const auto bytes = bench.session->file().attachmentBytes(kept.sha256);
    ASSERT_TRUE(bytes);
    const QByteArray data(bytes->data(), static_cast<qsizetype>(bytes->size()));
    EXPECT_EQ(QImage::fromData(data).width(), 1600);
    EXPECT_EQ(lines(child<QListView>(shown.panel, "photos")), 1);
    const auto before = bench.session->ledger().size();
    QFile text(bench.folder.filePath("notes.txt"));
    ASSERT_TRUE(text.open(QIODevice::WriteOnly));
    text.write("no picture");
    text.close();
    child<ClosingPhotos>(shown.panel)->addFiles({text.fileName()});
    EXPECT_EQ(bench.session->ledger().size(), before);
    EXPECT_TRUE(child<QLabel>(shown.panel, "photoMessage")->text().contains("notes.txt"));
}

} // namespace
} // namespace caprail
