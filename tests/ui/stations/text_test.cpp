// SPDX-License-Identifier: GPL-3.0-or-later
#include "station_record.h"
#include <QBuffer>
#include <QImage>
#include <QImageReader>
#include <algorithm>
#include <assessment/current_readings.h>
#include <ledger/entry.h>
#include <session/cautions.h>
#include <session/picture.h>
#include <set>
#include <stations/all_stations.h>
#include <stations/closing/open_time.h>
#include <stations/common/findings.h>
#include <stations/common/prepared_photo.h>
#include <stations/girdle/words.h>
#include <stations/pickup/terms.h>

namespace caprail {
namespace {

const Units inchUnits;

TEST(PlanSentence, says_that_nobody_set_the_band_which_the_plan_was_made_for) {
    StationRecord bench;
    bench.survey();
    bench.kit();
    PlanOutcome outcome;
    outcome.task = planTaskFor(bench.facts(), bench.assessment());
    outcome.plan = *planStacks(outcome.task.request);
    EXPECT_FALSE(planSentence(outcome, inchUnits).contains("No residual band")) << "the record has set one";
    outcome.task.band.isSet = false;
    EXPECT_TRUE(planSentence(outcome, inchUnits)
                    .contains("No residual band is set: the usual −0.0005 in to +0.0005 in is taken"))
        << planSentence(outcome, inchUnits).toStdString();
}

TEST(PlanSentence, says_of_a_plan_that_is_not_proven_what_may_still_be_bettered) {
    StationRecord bench;
    bench.survey();
    bench.kit();
    PlanOutcome outcome;
    outcome.task = planTaskFor(bench.facts(), bench.assessment());
    outcome.plan = *planStacks(outcome.task.request);
    StackPlan& plan = *outcome.plan;
    plan.proven = false;
    const auto says = [&](Objective objective, const char* words) {
        outcome.task.request.objective = objective;
        EXPECT_TRUE(planSentence(outcome, inchUnits).contains(words)) << planSentence(outcome, inchUnits).toStdString();
    };
    says(Objective::leastTwist, "No plan is better in any figure.");
    plan.sumResidual = tenths(5);
    says(Objective::smallestResidual, "only the residuals may still be bettered");
    plan.twistSum = 12;
    says(Objective::leastTwist, "only the twist and the residuals may still be bettered");
    plan.sumSquareLoad = 40;
    says(Objective::leastLoad, "only the loads may still be bettered");
    plan.bound.shims = plan.shims - 1;
    says(Objective::leastLoad, "nor then fewer than 5 shims");
}

TEST(ComparisonSentence, tells_no_saving_as_nothing) {
    PlanComparison built;
    built.inBand = 6;
    built.shims = 9;
    built.largestLoad = inNewtons(poundsForce(40));
    const auto says = [&](PlanFigure figure, const char* words) {
        built.decides = figure;
        EXPECT_TRUE(comparisonSentence(built, inchUnits).endsWith(words))
            << comparisonSentence(built, inchUnits).toStdString();
    };
    built.largerLoad = inNewtons(poundsForce(12));
    says(PlanFigure::largestLoad, "largest load 40 lbf. The plan's largest load is 12 lbf smaller.");
    built.largerLoad = inNewtons(poundsForce(0.3));
    says(PlanFigure::largestLoad, "The plan's largest load is a little smaller.");
    built.largerResidual = tenths(3);
    built.largerSum = tenths(4);
    says(PlanFigure::largestResidual, "The plan's largest residual is 0.0003 in smaller.");
    says(PlanFigure::sumResidual, "The plan's residuals add up to 0.0004 in less.");
    built.largerResidual = built.largerSum = Length(900);
    says(PlanFigure::largestResidual, "The plan's largest residual is a little smaller.");
    says(PlanFigure::sumResidual, "The plan's residuals add up to a little less.");
}

TEST(PickupAdvice, says_which_way_and_by_how_much) {
    StationRecord low;
    low.pickup(7.6); // clearance 0.210, middle of the band 0.3125
    EXPECT_TRUE(towardsMiddle(low.facts(), low.assessment(), inchUnits).contains("up by 0.1025 in"));
    StationRecord high;
    high.pickup(7.4); // clearance 0.410
    EXPECT_TRUE(towardsMiddle(high.facts(), high.assessment(), inchUnits).contains("lower the pickup by 0.0975 in"));
}

TEST(PickupReadings, fall_with_their_part_only) {
    StationRecord bench;
    bench.pickup();
    bench.make(PartChanged{Part::gasket, "", "thicker one"});
    EXPECT_TRUE(currentPickup(bench.facts(), PickupTerm::gasket).empty());
    EXPECT_EQ(currentPickup(bench.facts(), PickupTerm::panDepth).size(), 2U);
}

TEST(Findings, are_numbered_on) {
    StationRecord bench;
    EXPECT_EQ(nextFinding(bench.facts()), "F1");
    bench.make(FindingOpened{"F7", "3R", "burr"});
    EXPECT_EQ(nextFinding(bench.facts()), "F8");
}

TEST(OpenTime, counts_down_and_says_when_it_is_over) {
    OpenTime timer;
    const UtcTime laid{1'700'000'000'000};
    timer.run(laid, 10);
    EXPECT_TRUE(timer.words({laid.milliseconds + 90'000}).contains("8:30 left"));
    EXPECT_TRUE(timer.words({laid.milliseconds + 600'000 + 65'000}).contains("1:05"));
    EXPECT_TRUE(timer.words({laid.milliseconds + 600'000 + 65'000}).contains("over"));
    timer.run(laid, {});
    EXPECT_FALSE(timer.isVisibleTo(nullptr));
}

QByteArray picture(int width, int height, QImage::Format format, const char* type) {
    QImage image(width, height, format);
    image.fill(QColor(180, 90, 20, format == QImage::Format_ARGB32 ? 100 : 255));
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    image.save(&buffer, type);
    return bytes;
}

TEST(Photo, is_scaled_down_and_keeps_the_hash_of_its_original) {
    const QByteArray original = picture(4000, 3000, QImage::Format_RGB32, "JPEG");
    const auto photo = preparePhoto(original, "/somewhere/cap3.JPG");
    ASSERT_TRUE(photo) << photo.error().sentence;
    const QImage kept = QImage::fromData(photo->bytes);
    EXPECT_EQ(kept.size(), QSize(1600, 1200));
    EXPECT_EQ(photo->what.mediaType, "image/jpeg");
    EXPECT_EQ(photo->what.fileName, "cap3.jpg");
    EXPECT_EQ(photo->what.originalSha256, sha256Hex({original.constData(), static_cast<std::size_t>(original.size())}));
    EXPECT_NE(photo->what.sha256, photo->what.originalSha256);
}

TEST(Photo, leaves_what_its_file_says_besides_the_picture) {
    QImage image(64, 48, QImage::Format_RGB32);
    image.fill(QColor(180, 90, 20));
    image.setText("Description", "secret comment");
    for (const char* type : {"JPEG", "PNG"}) {
        QByteArray bytes;
        QBuffer buffer(&bytes);
        buffer.open(QIODevice::WriteOnly);
        image.save(&buffer, type);
        ASSERT_TRUE(QImage::fromData(bytes).text().contains("secret")) << type;
        const auto photo = preparePhoto(bytes, "cap3.jpg");
        ASSERT_TRUE(photo);
        EXPECT_EQ(QImage::fromData(photo->bytes).text(), "") << type;
        EXPECT_NEAR(QImage::fromData(photo->bytes).pixelColor(20, 20).red(), 180, 3) << type;
    }
}

TEST(Photo, of_every_ending_that_the_dialog_offers_can_be_read) {
    for (QString ending : readablePictures().split(' ')) {
        ending.remove("*.").replace("heic", "heif").replace("jpg", "jpeg");
        EXPECT_TRUE(QImageReader::supportedImageFormats().contains(ending.toLatin1())) << ending.toStdString();
    }
    EXPECT_TRUE(readablePictures().startsWith("*.jpg *.jpeg *.png"));
}

TEST(Photo, is_never_made_larger_and_keeps_transparency) {
    const auto photo = preparePhoto(picture(640, 480, QImage::Format_ARGB32, "PNG"), "sketch.png");
    ASSERT_TRUE(photo);
    EXPECT_EQ(QImage::fromData(photo->bytes).size(), QSize(640, 480));
    EXPECT_EQ(photo->what.mediaType, "image/png");
}

TEST(Photo, refuses_what_is_no_picture) {
    const auto refused = preparePhoto(QByteArray("not a picture"), "notes.txt");
    ASSERT_FALSE(refused);
    EXPECT_NE(refused.error().sentence.find("notes.txt"), std::string::npos);
}

TEST(Photo, is_read_by_its_first_bytes_as_one_of_four_kinds_and_as_nothing_else) {
    for (const char* type : {"JPEG", "PNG"}) {
        EXPECT_TRUE(preparePhoto(picture(64, 48, QImage::Format_RGB32, type), "without an ending")) << type;
    }
    const QByteArray drawing = "<?xml version='1.0'?><svg xmlns='http://www.w3.org/2000/svg' width='9' height='9'/>";
    const QByteArray bitmap = picture(64, 48, QImage::Format_RGB32, "BMP");
    const QByteArray graph = "/* XPM */ static char* a[] = {\"1 1 1 1\", \"a c red\", \"a\"};";
    for (const QByteArray& other : {drawing, bitmap, graph, picture(64, 48, QImage::Format_RGB32, "PPM")}) {
        const auto refused = preparePhoto(other, "photo.jpg");
        ASSERT_FALSE(refused) << other.left(20).toStdString();
        EXPECT_NE(refused.error().sentence.find("not a JPEG, PNG, WebP or HEIF"), std::string::npos);
    }
    EXPECT_EQ(pictureFormat("RIFF\x10\x20\x30\x40WEBPVP8 "), "webp");
    EXPECT_EQ(pictureFormat(QByteArray("\0\0\0\x18" "ftypheic\0\0\0\0", 16)), "heif");
    EXPECT_EQ(pictureFormat(QByteArray("\0\0\0\x18" "ftypqt  \0\0\0\0", 16)), "") << "a film";
    // What begins as one kind and goes on as another is read by no reader but that of its beginning.
    EXPECT_FALSE(readPicture(QByteArray("\xFF\xD8\xFF") + drawing));
}

TEST(Cautions, each_that_a_station_shows_is_printed_too) {
    const QString printed = allCautions().join(QLatin1Char('\n'));
    std::set<QString> shown;
    const StationRecord here;
    for (const auto& station : allWords<Station>()) {
        const std::unique_ptr<StationPanel> panel(makeStation(station.value, *here.session, nullptr));
        EXPECT_FALSE(panel->help().isEmpty()) << station.word;
        const QString text = cautionText(panel->cautions());
        for (const QString& sentence : text.split(QStringLiteral(". "), Qt::SkipEmptyParts)) {
            EXPECT_TRUE(printed.contains(sentence)) << sentence.toStdString();
            shown.insert(sentence);
        }
    }
    EXPECT_GE(shown.size(), 7U);
}

} // namespace
} // namespace caprail
