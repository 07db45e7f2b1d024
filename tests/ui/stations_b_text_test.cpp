// SPDX-License-Identifier: GPL-3.0-or-later
#include "stations_b_bench.h"
#include <QBuffer>
#include <QImage>
#include <algorithm>
#include <assessment/standing.h>
#include <ledger/entry.h>
#include <session/cautions.h>
#include <set>
#include <stations/closing_open_time.h>
#include <stations/closing_photo.h>
#include <stations/findings.h>
#include <stations/girdle_kit_text.h>
#include <stations/girdle_order.h>
#include <stations/girdle_take_over.h>
#include <stations/girdle_words.h>
#include <stations/pickup_terms.h>
#include <stations/trial_fit_answer.h>

namespace caprail {
namespace {

const Units inchUnits;

TEST(KitLine, adds_one_shim_by_name_and_size) {
    const auto shims = parseKitLine("S001 10 thou", inchUnits, Facts{}, "A");
    ASSERT_TRUE(shims);
    ASSERT_EQ(shims->size(), 1U);
    EXPECT_EQ(shims->front().shim, "S001");
    EXPECT_EQ(shims->front().marked.value, thou(10));
    EXPECT_EQ(shims->front().bag, "A");
}

TEST(KitLine, names_a_counted_size_on_from_the_largest_number_of_the_kit) {
    StationBench bench;
    bench.shim("S007", 10, {});
    const auto shims = parseKitLine("3 x 0.254 mm", inchUnits, bench.facts(), {});
    ASSERT_TRUE(shims);
    ASSERT_EQ(shims->size(), 3U);
    EXPECT_EQ(shims->front().shim, "S008");
    EXPECT_EQ(shims->back().shim, "S010");
    EXPECT_EQ(shims->back().marked.value, thou(10));
}

TEST(KitLine, reads_a_run_of_names) {
    const auto shims = parseKitLine("A05-A08 5 thou", inchUnits, Facts{}, {});
    ASSERT_TRUE(shims);
    ASSERT_EQ(shims->size(), 4U);
    EXPECT_EQ(shims->at(1).shim, "A06");
}

TEST(KitLine, refuses_a_backward_run_a_known_name_and_a_missing_size) {
    StationBench bench;
    bench.shim("S001", 10, {});
    EXPECT_FALSE(parseKitLine("S009-S002 5 thou", inchUnits, Facts{}, {}));
    EXPECT_FALSE(parseKitLine("S001 5 thou", inchUnits, bench.facts(), {}));
    EXPECT_FALSE(parseKitLine("S002", inchUnits, Facts{}, {}));
    EXPECT_FALSE(parseKitLine("900 x 5 thou", inchUnits, Facts{}, {}));
    EXPECT_FALSE(parseKitLine("S002 10", inchUnits, Facts{}, {})); // 10 in? 10 thou?
}

TEST(ShimReading, takes_a_name_in_small_letters_and_else_the_selected_shim) {
    StationBench bench;
    bench.shim("S014", 10, {});
    const auto named = parseShimReading("s014 .0098", inchUnits, bench.facts(), {});
    ASSERT_TRUE(named);
    EXPECT_EQ(named->shim, "S014");
    EXPECT_EQ(named->thickness.value, tenths(98));
    EXPECT_TRUE(parseShimReading(".0098", inchUnits, bench.facts(), "S014"));
    EXPECT_FALSE(parseShimReading(".0098", inchUnits, bench.facts(), {}));
    EXPECT_FALSE(parseShimReading("S099 .0098", inchUnits, bench.facts(), "S014"));
}

TEST(TypedStack, refuses_a_shim_named_twice_or_set_aside) {
    StationBench bench;
    bench.shim("S001", 10, 10);
    bench.shim("S002", 10, 10);
    bench.make(ShimSetAside{"S002", true, "burr"});
    EXPECT_FALSE(parseStack("S001 S001", bench.facts()));
    EXPECT_FALSE(parseStack("S001 S002", bench.facts()));
    EXPECT_FALSE(parseStack("", bench.facts()));
    EXPECT_TRUE(parseStack("-", bench.facts())->empty());
}

TEST(PassOrder, must_name_every_place_once) {
    StationBench bench;
    const EngineLayout& layout = *bench.facts().layout;
    const auto order = parsePassOrder("3R, 3L 2R 2L 1R 1L", layout);
    ASSERT_TRUE(order);
    EXPECT_EQ(order->front(), (Position{3, Side::right}));
    EXPECT_NE(parsePassOrder("1L 1R 2L 2R 3L", layout).error().sentence.find("3R"), std::string::npos);
    EXPECT_FALSE(parsePassOrder("1L 1R 2L 2R 3L 3R 3R", layout));
    EXPECT_FALSE(parsePassOrder("1L 1R 2L 2R 3L 9R", layout));
}

TEST(PassOrder, walks_round_the_stand_when_asked_to) {
    StationBench bench;
    EXPECT_EQ(passOrderText(passOrder(*bench.facts().layout, PassOrder::sideBySide)), "1L 2L 3L 3R 2R 1R");
}

TEST(GapPass, goes_only_to_places_that_a_movement_spoiled) {
    StationBench bench;
    bench.survey();
    const auto order = bench.positions();
    EXPECT_TRUE(nextInPass(order, {1, Side::left}, 2, bench.assessment()).isFinished);
    bench.make(FastenerLoosened{{FastenerKind::mainCap, 2, Side::left, Ring::inner}, "look"});
    const PassPlace begin = beginPass(order, bench.assessment());
    EXPECT_EQ(begin.position, (Position{2, Side::left}));
    EXPECT_EQ(begin.pass, bench.assessment().survey.nextPass);
    EXPECT_EQ(begin.left, 2U);
    bench.make(GapReading{{2, Side::left}, begin.pass, {thou(51), ""}, "FEEL-1"});
    EXPECT_EQ(nextInPass(order, {2, Side::left}, begin.pass, bench.assessment()).position, (Position{2, Side::right}));
    bench.make(GapReading{{2, Side::right}, begin.pass, {thou(51), ""}, "FEEL-1"});
    const PassPlace again = nextInPass(order, {2, Side::right}, begin.pass, bench.assessment());
    EXPECT_EQ(again.position, (Position{2, Side::left}));
    EXPECT_EQ(again.pass, begin.pass + 1);
}

TEST(TakeOver, frees_shims_before_it_builds_with_them) {
    StationBench bench;
    bench.survey();
    bench.kit();
    // Built crosswise: each of two positions holds the shim that the plan wants at the other.
    bench.make(StackBuilt{{1, Side::left}, {{"S-1R"}}});
    bench.make(StackBuilt{{1, Side::right}, {{"S-1L"}}});
    const auto plan = planStacks(planRequestFor(bench.facts(), bench.assessment()));
    ASSERT_TRUE(plan) << plan.error().sentence;
    const auto stored = bench.session->appendAll(takeOver(*plan, bench.facts(), bench.assessment()));
    EXPECT_TRUE(stored) << stored.error().sentence;
    for (const PlannedStack& planned : plan->stacks) {
        const auto built = bench.facts().stacks.find(*parsePosition(planned.position));
        ASSERT_NE(built, bench.facts().stacks.end()) << planned.position;
        EXPECT_EQ(built->second.shims, planned.shims);
    }
    EXPECT_TRUE(takeOver(*plan, bench.facts(), bench.assessment()).empty()) << "nothing is left to do";
}

TEST(TakeOver, leaves_a_position_that_no_stack_meets) {
    StationBench bench;
    bench.survey();
    bench.shim("S001", 50, 50);
    const auto plan = planStacks(planRequestFor(bench.facts(), bench.assessment()));
    ASSERT_TRUE(plan);
    EXPECT_EQ(plan->unmet.size(), 5U);
    EXPECT_EQ(takeOver(*plan, bench.facts(), bench.assessment()).size(), 1U);
}

TEST(ConfirmedStack, is_judged_again_when_only_a_shim_was_measured_anew) {
    StationBench bench;
    bench.readyToFit();
    bench.make(ShimMeasured{"S-1L", {thou(50.2), ""}, "MIC-1"});
    ASSERT_EQ(bench.assessment().find("stack:1L")->state, CheckState::stale);
    const auto entry = confirmStack({1, Side::left}, bench.facts(), bench.assessment());
    ASSERT_TRUE(entry);
    EXPECT_TRUE(std::holds_alternative<JudgedAgain>(*entry));
    bench.make(*entry);
    EXPECT_EQ(bench.assessment().find("stack:1L")->state, CheckState::good);
}

TEST(StraightedgeFeel, follows_the_residual) {
    const Band band = *Band::between(tenths(-5), tenths(5));
    EXPECT_EQ(expectedFeel(tenths(-6), band), Feel::rocks);
    EXPECT_EQ(expectedFeel(tenths(5), band), Feel::drags);
    EXPECT_EQ(expectedFeel(tenths(6), band), Feel::loose);
}

TEST(TrialAnswer, reads_pass_fail_with_a_remark_and_a_clearance) {
    const auto fail = parseTrialAnswer("f touches the nut", TrialItem::rodBolts, 2, inchUnits);
    ASSERT_TRUE(fail);
    EXPECT_EQ(fail->result, TrialResult::fail);
    EXPECT_EQ(fail->note, "touches the nut");
    EXPECT_EQ(parseTrialAnswer("P", TrialItem::dipstick, 0, inchUnits)->result, TrialResult::pass);
    const auto measured = parseTrialAnswer(".072", TrialItem::counterweights, 1, inchUnits);
    ASSERT_TRUE(measured);
    EXPECT_EQ(measured->clearance->value, thou(72));
    EXPECT_FALSE(parseTrialAnswer("maybe", TrialItem::dipstick, 0, inchUnits));
    EXPECT_FALSE(parseTrialAnswer("", TrialItem::dipstick, 0, inchUnits));
}

TEST(PickupAdvice, says_which_way_and_by_how_much) {
    StationBench low;
    low.pickup(7.6); // clearance 0.210, middle of the band 0.3125
    EXPECT_TRUE(towardsMiddle(low.facts(), low.assessment(), inchUnits).contains("up by 0.1025 in"));
    StationBench high;
    high.pickup(7.4); // clearance 0.410
    EXPECT_TRUE(towardsMiddle(high.facts(), high.assessment(), inchUnits).contains("down by 0.0975 in"));
}

TEST(PickupReadings, fall_with_their_part_only) {
    StationBench bench;
    bench.pickup();
    bench.make(PartChanged{Part::gasket, "", "thicker one"});
    EXPECT_TRUE(standingPickup(bench.facts(), PickupTerm::gasket).empty());
    EXPECT_EQ(standingPickup(bench.facts(), PickupTerm::panDepth).size(), 2U);
}

TEST(Findings, are_numbered_on) {
    StationBench bench;
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

TEST(Cautions, each_that_a_station_shows_is_printed_too) {
    const QString printed = allCautions().join(QLatin1Char('\n'));
    std::set<QString> shown;
    for (const auto& station : allWords<Station>()) {
        for (const QString& sentence : cautionFor(station.value).split(QStringLiteral(". "), Qt::SkipEmptyParts)) {
            EXPECT_TRUE(printed.contains(sentence)) << sentence.toStdString();
            shown.insert(sentence);
        }
    }
    EXPECT_GE(shown.size(), 7U);
}

} // namespace
} // namespace caprail
