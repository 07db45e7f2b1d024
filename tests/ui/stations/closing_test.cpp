// SPDX-License-Identifier: GPL-3.0-or-later
#include "station_record.h"

#include <QBuffer>
#include <QComboBox>
#include <QImage>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QPushButton>
#include <gmock/gmock.h>
#include <ledger/history_line.h>
#include <planview/plan_view.h>
#include <stations/closing/findings.h>
#include <stations/closing/open_time.h>
#include <stations/closing/photos.h>
#include <stations/closing/station.h>
#include <stations/closing/steps.h>
#include <stations/closing/task.h>
#include <stations/common/checks_view.h>
#include <stations/common/entry_field.h>
#include <stations/common/optional_field.h>
#include <stations/common/photo_taken.h>
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
    bench.girdleToTorque();
    Shown<TrialFitStation> shown(bench);
    QLineEdit* edit = shown.panel.entryField()->lineEdit();
    typeAndEnter(edit, "p"); // dipstick
    typeAndEnter(edit, "p"); // pickup tube
    typeAndEnter(edit, ".072");
    EXPECT_EQ(bench.lastAs<TrialFitResult>().item, TrialItem::counterweights);
    EXPECT_EQ(bench.lastAs<TrialFitResult>().throwNumber, 1);
    EXPECT_EQ(bench.lastAs<TrialFitResult>().clearance->value, thou(72));
    EXPECT_EQ(shown.panel.task(), TrialTask(TrialId{TrialItem::counterweights, 2}));
}

TEST(TrialFitPanel, a_fail_opens_a_finding) {
    StationRecord bench;
    bench.readyToFit();
    bench.girdleToTorque();
    Shown<TrialFitStation> shown(bench);
    shown.panel.select("throw-2");
    typeAndEnter(shown.panel.entryField()->lineEdit(), "f touches the plate at 2R");
    const FindingOpened finding = bench.lastAs<FindingOpened>();
    EXPECT_EQ(finding.finding, "F1");
    EXPECT_EQ(finding.place, "throw 2");
    EXPECT_EQ(finding.text, "touches the plate at 2R");
    EXPECT_EQ(bench.facts().trialFits.at({TrialItem::counterweights, 2}).what.result, TrialResult::fail);
}

TEST(TrialFitPanel, leads_from_the_crank_over_the_nuts_to_the_items_with_one_enter_each) {
    StationRecord bench;
    bench.readyToFit();
    Shown<TrialFitStation> shown(bench);
    QLineEdit* edit = shown.panel.entryField()->lineEdit();
    shown.panel.select("turning-before the girdle");
    typeAndEnter(edit, "12/8");
    EXPECT_EQ(bench.lastAs<TurningTorqueRead>().breakaway.value, poundFeet(12));
    EXPECT_EQ(shown.panel.task(), TrialTask(GirdleNuts{}));
    EXPECT_EQ(shown.panel.subject(), "girdle-2L") << "from the centre outwards";
    for (int nut = 0; nut < 6; ++nut) {
        typeAndEnter(edit, "");
        EXPECT_EQ(bench.lastAs<FastenerTightened>().torque->value, poundFeet(30));
    }
    EXPECT_EQ(shown.panel.task(), TrialTask(TrialId{TrialItem::dipstick, 0}));
    typeAndEnter(edit, ".0005");
    EXPECT_EQ(bench.assessment().find("trial-fit:dipstick clear")->state, CheckState::out);
}

TEST(TrialFitPanel, a_jump_to_an_item_leads_to_the_nut_that_is_loose) {
    StationRecord bench;
    bench.readyToFit();
    Shown<TrialFitStation> shown(bench);
    shown.panel.select("throw-1");
    EXPECT_EQ(shown.panel.task(), TrialTask(GirdleNuts{}));
}

TEST(TrialFitPanel, asks_the_shops_own_checks_before_the_gate_opens) {
    StationRecord bench;
    OwnCheckSet set;
    set.ownCheck = "tray";
    set.words = "windage tray clear of every throw";
    set.holds = OwnCheckHolds::trialFit;
    set.places = 2;
    bench.make(set);
    Shown<TrialFitStation> shown(bench);
    shown.panel.select("own-tray:1");
    EXPECT_TRUE(shown.panel.entryField()->isEnabled());
    typeAndEnter(shown.panel.entryField()->lineEdit(), "n touches at 3");
    EXPECT_EQ(bench.lastAs<OwnCheckAnswered>().answer, YesNo::no);
    EXPECT_EQ(bench.lastAs<OwnCheckAnswered>().note, "touches at 3");
    EXPECT_EQ(shown.panel.task(), TrialTask(OwnPlace{"tray", 2}));
}

TEST(PickupPanel, asks_back_what_no_such_part_can_be) {
    StationRecord bench;
    Shown<PickupStation> shown(bench);
    shown.panel.select("gasket");
    typeAndEnter(shown.panel.entryField()->lineEdit(), "7.5");
    EXPECT_NE(shown.panel.entryField()->problem(), "");
    EXPECT_TRUE(bench.facts().pickup.empty());
}

TEST(PickupPanel, goes_from_term_to_term_and_adds_them_up) {
    StationRecord bench;
    Shown<PickupStation> shown(bench);
    QLineEdit* edit = shown.panel.entryField()->lineEdit();
    for (const char* value : {"7.5000", ".060", "1/4", "7.5000"}) {
        const PickupTerm asked = shown.panel.term();
        typeAndEnter(edit, value);
        EXPECT_EQ(shown.panel.term(), asked) << "measured twice before it steps on";
        typeAndEnter(edit, value);
        EXPECT_EQ(bench.facts().pickup.at(asked).size(), 2U);
    }
    ASSERT_TRUE(bench.assessment().pickup.clearance);
    EXPECT_EQ(*bench.assessment().pickup.clearance, thou(310));
    EXPECT_EQ(bench.assessment().find("pickup")->state, CheckState::good);
    EXPECT_EQ(shown.panel.term(), PickupTerm::panDepth);
}

TEST(PickupPanel, takes_the_temperature_of_the_part_that_was_measured) {
    StationRecord bench;
    Shown<PickupStation> shown(bench);
    QLineEdit* field = shown.panel.entryField()->lineEdit();
    field->setText("7.5000");
    typeAndEnter(shown.panel.temperature()->lineEdit(), "21 °C");
    ASSERT_TRUE(bench.lastAs<PickupReading>().partTemperature);
    EXPECT_EQ(bench.lastAs<PickupReading>().partTemperature->value, celsius(21));
    typeAndEnter(field, "7.5000");
    EXPECT_TRUE(bench.lastAs<PickupReading>().partTemperature) << "of the same part";
    typeAndEnter(field, ".060");
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
    EXPECT_EQ(shown.panel.entryField(), nullptr);
    EXPECT_EQ(static_cast<std::size_t>(child<ChecksView>(shown.panel, "holding")->count()),
              bench.assessment().gate(GateKind::closing).holding.size());
}

/// The keys of a whole closing of three caps: every entry is one Enter, and only what is counted, read, printed on a
/// tube or signed is typed besides.
TEST(ClosingPanel, is_closed_key_by_key_and_signed_off_and_begins_a_new_build) {
    StationRecord bench;
    bench.readyToClose();
    ASSERT_TRUE(bench.assessment().gate(GateKind::closing).isOpen)
        << bench.assessment().checks[bench.assessment().gate(GateKind::closing).holding.front()].code;
    Shown<ClosingStation> shown(bench);
    ClosingTaskPage* page = child<ClosingTaskPage>(shown.panel);
    const auto before = bench.session->ledger().size();
    std::int64_t enters = 0;
    std::size_t typed = 0;
    const auto keys = [&](const char* text) {
        typeAndEnter(page->field()->lineEdit(), text);
        EXPECT_EQ(page->field()->problem().toStdString(), "");
        ++enters;
        typed += std::string_view(text).size();
    };
    keys("6+0+0");
    EXPECT_EQ(bench.lastAs<ClosingStepDone>().fitted, 6);
    EXPECT_EQ(page->task().stack, (Position{1, Side::left}));
    EXPECT_TRUE(page->picture()->title().contains("S-1L")) << "which stack goes where";
    for (int stack = 0; stack < 6; ++stack) {
        keys("");
    }
    keys(""); // all are on
    keys("Grey sealant / 2231-A / 12");
    EXPECT_EQ(bench.lastAs<ClosingStepDone>().lot, "2231-A");
    EXPECT_TRUE(page->picture()->clock()->isVisible()) << "the open time runs";
    keys("");
    EXPECT_EQ(bench.lastAs<ClosingStepDone>().step, ClosingStep::girdleLowered);
    EXPECT_FALSE(page->picture()->clock()->isVisible());
    EXPECT_EQ(page->task().fastener->number, 2) << "from the centre outwards";
    EXPECT_EQ(shown.panel.subject(), QString::fromStdString(code(*page->task().fastener)));
    for (int nut = 0; nut < 6; ++nut) {
        keys("");
        EXPECT_EQ(bench.lastAs<FastenerTightened>().torque->value, poundFeet(30));
    }
    keys("");
    keys("12.5/8");
    EXPECT_EQ(bench.lastAs<TurningTorqueRead>().stage, TurningStage::girdleAtTorque);
    keys("");
    for (int fastener = 0; fastener < 8; ++fastener) {
        keys("");
    }
    keys("12.5/8");
    keys("");
    EXPECT_EQ(bench.lastAs<ClosingStepDone>().step, ClosingStep::panFastened);
    typeAndEnter(page->field()->lineEdit(), "");
    EXPECT_FALSE(bench.facts().isClosed()) << "Enter alone signs nothing";
    EXPECT_TRUE(page->field()->problem().contains("“sign”")) << page->field()->problem().toStdString();
    keys("sign");
    EXPECT_TRUE(bench.facts().isClosed());
    EXPECT_FALSE(bench.lastAs<SignedOff>().statement.empty());
    EXPECT_EQ(enters, 30) << "6 stacks, 6 nuts, 8 pan fasteners, 2 turning torques, 7 steps, 1 sign-off";
    EXPECT_EQ(bench.session->ledger().size() - before, enters) << "one entry, one Enter";
    EXPECT_EQ(typed, 47U) << "three counts, the tube, two turning torques, the word that signs";
    EXPECT_TRUE(child<ClosingSteps>(shown.panel)->buildButton()->isVisible());
}

TEST(ClosingPanel, lists_every_fastener_with_the_next_one_marked_and_the_steps_of_its_torque) {
    StationRecord bench;
    bench.readyToClose();
    bench.close(ClosingStep::girdleLowered);
    Shown<ClosingStation> shown(bench);
    ClosingPicture* picture = child<ClosingTaskPage>(shown.panel)->picture();
    ASSERT_EQ(lines(picture->list()), 6);
    EXPECT_TRUE(cell(picture->list(), 0).startsWith("▶"));
    EXPECT_TRUE(picture->title().contains("30"));
    typeAndEnter(child<ClosingTaskPage>(shown.panel)->field()->lineEdit(), "");
    EXPECT_TRUE(cell(picture->list(), 0).startsWith("✓"));
    EXPECT_TRUE(cell(picture->list(), 1).startsWith("▶"));
    EXPECT_EQ(picture->plan()->selected(), shown.panel.subject());
}

TEST(ClosingPanel, says_what_is_wrong_with_what_was_typed) {
    StationRecord bench;
    bench.readyToClose();
    Shown<ClosingStation> shown(bench);
    EntryField* field = child<ClosingTaskPage>(shown.panel)->field();
    typeAndEnter(field->lineEdit(), "6");
    EXPECT_TRUE(field->problem().contains("29+1+16"));
    field->clear();
    typeAndEnter(field->lineEdit(), "5+0+0");
    EXPECT_TRUE(field->problem().contains("find what is missing"));
}

TEST(ClosingPanel, asks_the_shops_own_checks_where_they_belong) {
    StationRecord bench;
    OwnCheckSet set;
    set.ownCheck = "bolts";
    set.words = "pump and pickup bolts marked";
    set.holds = OwnCheckHolds::closingStep;
    set.step = ClosingStep::stacksRefitted;
    bench.make(set);
    bench.readyToClose();
    bench.close(ClosingStep::shimsCounted);
    Shown<ClosingStation> shown(bench);
    EXPECT_EQ(child<ClosingTaskPage>(shown.panel)->picture()->title(), "Pump and pickup bolts marked");
    typeAndEnter(child<ClosingTaskPage>(shown.panel)->field()->lineEdit(), "y");
    EXPECT_EQ(bench.lastAs<OwnCheckAnswered>().answer, YesNo::yes);
    EXPECT_EQ(child<ClosingTaskPage>(shown.panel)->task().stack, (Position{1, Side::left}));
}

TEST(ClosingPanel, a_jump_to_a_check_of_the_shops_asks_it_while_the_gate_is_still_held) {
    StationRecord bench;
    OwnCheckSet set;
    set.ownCheck = "seal";
    set.words = "rear main seal in";
    bench.make(set);
    Shown<ClosingStation> shown(bench);
    shown.panel.select("own-seal:1");
    EXPECT_EQ(child<ClosingTaskPage>(shown.panel)->picture()->title(), "Rear main seal in");
    typeAndEnter(child<ClosingTaskPage>(shown.panel)->field()->lineEdit(), "y");
    EXPECT_EQ(bench.lastAs<OwnCheckAnswered>().answer, YesNo::yes);
    EXPECT_TRUE(child<ChecksView>(shown.panel, "holding")->isVisible()) << "the rest holds it as before";
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

/// The camera's notes (Exif 2.32, 4.6): a TIFF of one directory that leads to another, which holds DateTimeOriginal.
QByteArray exifOf(const QByteArray& dateTime) {
    const auto number = [](quint32 value, int size) {
        QByteArray bytes;
        for (int i = 0; i < size; ++i) {
            bytes += static_cast<char>(value >> (8 * i));
        }
        return bytes;
    };
    const auto directory = [&](quint32 tag, quint32 type, quint32 count, quint32 value) {
        return number(1, 2) + number(tag, 2) + number(type, 2) + number(count, 4) + number(value, 4) + number(0, 4);
    };
    constexpr quint32 leadsToExif = 0x8769;
    constexpr quint32 dateTimeOriginal = 0x9003;
    const QByteArray text = dateTime + '\0';
    return QByteArray("II*\0", 4) + number(8, 4) + directory(leadsToExif, 4, 1, 26) +
           directory(dateTimeOriginal, 2, static_cast<quint32>(text.size()), 44) + text;
}

/// A JPEG with a segment (ISO/IEC 10918-1, B.2.4) put in behind its beginning.
QByteArray withSegment(const QByteArray& jpeg, char marker, const QByteArray& content) {
    const auto length = static_cast<quint16>(content.size() + 2);
    return jpeg.left(2) + '\xFF' + marker + static_cast<char>(length >> 8) + static_cast<char>(length & 0xFF) +
           content + jpeg.mid(2);
}

QByteArray plainPhoto(const char* format) {
    QImage picture(320, 240, QImage::Format_RGB32);
    picture.fill(Qt::darkCyan);
    QBuffer buffer;
    buffer.open(QIODevice::WriteOnly);
    picture.save(&buffer, format);
    return buffer.data();
}

TEST(PhotosPanel, keeps_when_a_photo_was_taken_and_nothing_else_that_its_file_says) {
    StationRecord bench;
    Shown<ClosingStation> shown(bench);
    const QByteArray exif = exifOf("2026:05:03 09:30:07");
    QFile file(bench.folder.filePath("cap3.jpg"));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(withSegment(withSegment(plainPhoto("JPEG"), '\xFE', "a secret comment"), '\xE1',
                           QByteArray("Exif\0\0", 6) + exif));
    file.close();
    child<ClosingPhotos>(shown.panel)->addFiles({file.fileName()});
    const AttachmentAdded kept = bench.lastAs<AttachmentAdded>();
    ASSERT_TRUE(kept.taken);
    EXPECT_EQ(format(*kept.taken), "2026-05-03T09:30:07");
    const auto bytes = bench.session->file().attachmentBytes(kept.sha256);
    ASSERT_TRUE(bytes);
    EXPECT_EQ(bytes->find("secret"), std::string::npos);
    EXPECT_EQ(bytes->find("Exif"), std::string::npos);
    const auto* list = child<QListView>(shown.panel, "photos");
    EXPECT_TRUE(cell(list, 0).endsWith("2026-05-03 09:30")) << cell(list, 0).toStdString();
    EXPECT_THAT(historyLine(kept, bench.session->units()),
                testing::HasSubstr("taken 2026-05-03 09:30 by the camera's clock"));
}

TEST(PhotoTaken, is_read_from_every_format_and_never_guessed) {
    const QByteArray exif = exifOf("2026:05:03 09:30:07");
    const QByteArray png = plainPhoto("PNG");
    const auto taken = [](const QByteArray& photo) {
        const auto at = takenAt(photo);
        return at ? format(*at) : "none";
    };
    const std::string moment = "2026-05-03T09:30:07";
    EXPECT_EQ(taken(png.left(33) + QByteArray("\0\0\0\x40", 4) + "eXIf" + exif + png.mid(33)), moment);
    EXPECT_EQ(taken(QByteArray("RIFF\0\0\0\0WEBPVP8 ", 16) + QByteArray("EXIF\x40\0\0\0", 8) + exif), moment);
    EXPECT_EQ(taken(QByteArray("\0\0\0\x18", 4) + "ftypheic" + QByteArray(40, '\0') + QByteArray("Exif\0\0", 6) + exif),
              moment);
    EXPECT_EQ(taken(plainPhoto("JPEG")), "none");
    const auto saying = [](const QByteArray& text) {
        return withSegment(plainPhoto("JPEG"), '\xE1', QByteArray("Exif\0\0", 6) + exifOf(text));
    };
    EXPECT_EQ(taken(saying("0000:00:00 00:00:00")), "none") << "a camera whose clock was never set";
    EXPECT_EQ(taken(saying("    :  :     :  :  ")), "none");
    EXPECT_EQ(taken(saying("2026:05:03 09:30:0")), "none");
    for (qsizetype length = 0; length < exif.size(); ++length) {
        EXPECT_EQ(taken(QByteArray("\xFF\xD8\xFF", 3) + QByteArray("Exif\0\0", 6) + exif.left(length)), "none")
            << length;
    }
}

} // namespace
} // namespace caprail
