// SPDX-License-Identifier: GPL-3.0-or-later
/// What leads the trial fit and the closing, and what a person types for each thing.
#include "work_bench.h"

#include <work/closing_work.h>
#include <work/tightening.h>
#include <work/trial_work.h>

using namespace caprail;

namespace {

const Units inch;
using Kind = ClosingTask::Kind;

Result<Body> typedFor(const Bench& bench, std::string_view text) {
    return closingEntry(bench.facts, closingTask(bench.facts, bench.assessment), text, "W1", inch);
}

} // namespace

TEST(ClosingWork, leads_from_the_count_to_the_sign_off_with_nothing_typed_but_what_is_read) {
    Bench bench;
    EXPECT_EQ(closingTask(bench.facts, bench.assessment).kind, Kind::locked);
    bench.readyToClose();
    std::vector<Kind> kinds;
    for (ClosingTask task = closingTask(bench.facts, bench.assessment); task.kind != Kind::closed && kinds.size() < 60;
         task = closingTask(bench.facts, bench.assessment)) {
        if (kinds.empty() || kinds.back() != task.kind) {
            kinds.push_back(task.kind);
        }
        const char* text = task.kind == Kind::count     ? "6 0 0"
                           : task.kind == Kind::bead    ? "Grey sealant / 2231-A / 15"
                           : task.kind == Kind::turning ? "12.5/8"
                           : task.kind == Kind::sign    ? "sign"
                                                        : "";
        const auto entry = typedFor(bench, text);
        ASSERT_TRUE(entry) << entry.error().sentence;
        bench.make(*entry);
    }
    EXPECT_EQ(kinds, (std::vector{Kind::count, Kind::stack, Kind::tick, Kind::bead, Kind::tick, Kind::fastener, Kind::tick,
                                  Kind::turning, Kind::tick, Kind::fastener, Kind::turning, Kind::tick, Kind::sign}));
    EXPECT_TRUE(bench.facts.isClosed());
}

TEST(ClosingWork, is_not_signed_by_enter_alone_nor_by_a_stray_key) {
    Bench bench;
    bench.readyToClose();
    const ClosingTask sign{Kind::sign, ClosingStep::shimsCounted, {}, {}, {}, {}};
    for (const char* stray : {"", " ", "h", "8"}) {
        const auto refused = closingEntry(bench.facts, sign, stray, "", inch);
        ASSERT_FALSE(refused) << "“" << stray << "”";
        EXPECT_NE(refused.error().sentence.find("build 1 of "), std::string::npos) << "it names what is signed";
    }
    EXPECT_EQ(closingEntry(bench.facts, sign, "Sign", "", inch)->get<SignedOff>().statement,
              "Assembled and checked as recorded.");
    EXPECT_EQ(closingEntry(bench.facts, sign, "Built for the dyno only.", "", inch)->get<SignedOff>().statement,
              "Built for the dyno only.");
}

TEST(ClosingWork, takes_the_fasteners_in_the_order_of_tightening) {
    Bench bench;
    bench.readyToClose();
    bench.close(ClosingStep::girdleLowered);
    const auto order = tighteningOrder(bench.facts, FastenerKind::girdleNut);
    EXPECT_NE(order.front(), bench.facts.layout->girdleNuts().front()) << "the layout counts from the front";
    for (const FastenerId f : order) {
        EXPECT_EQ(closingTask(bench.facts, bench.assessment).fastener, f);
        bench.make(*typedFor(bench, ""));
    }
}

TEST(ClosingWork, says_what_would_do_where_something_else_was_typed) {
    Bench bench;
    bench.readyToClose();
    const auto sentence = [&](std::string_view text) {
        const auto entry = typedFor(bench, text);
        return entry ? std::string() : entry.error().sentence;
    };
    EXPECT_NE(sentence("six"), "");
    EXPECT_NE(sentence("6+0").find("29+1+16"), std::string::npos);
    bench.close(ClosingStep::shimsCounted);
    EXPECT_NE(sentence("3R").find("labelled 1L"), std::string::npos) << "another stack's label";
    EXPECT_EQ(sentence("1l"), "") << "the label itself may be typed";
    bench.close(ClosingStep::stacksRefitted);
    EXPECT_NE(sentence("Grey sealant / 15").find("product / lot"), std::string::npos);
    bench.close(ClosingStep::nutsTightened);
    EXPECT_NE(sentence("12").find("12 / 8"), std::string::npos);
}

TEST(ClosingWork, a_bead_laid_again_is_the_same_tube_with_enter_alone) {
    Bench bench;
    bench.readyToClose();
    bench.close(ClosingStep::beadLaid);
    const ClosingTask bead{Kind::bead, ClosingStep::beadLaid, {}, {}, {}, {}};
    const auto again = closingEntry(bench.facts, bead, "", "", inch);
    ASSERT_TRUE(again);
    EXPECT_EQ(again->get<ClosingStepDone>().lot, bench.facts.closing.at(ClosingStep::beadLaid).what.lot);
}

TEST(TrialWork, goes_from_the_crank_over_the_nuts_to_the_items) {
    Bench bench;
    const auto tasks = trialTasks(bench.facts);
    EXPECT_EQ(tasks.front(), TrialTask(TurningStage::beforeGirdle));
    EXPECT_EQ(tasks[1], TrialTask(GirdleNuts{}));
    EXPECT_EQ(tasks.size(), 3U + 4U + 2U * 2U) << "two throws";
    EXPECT_EQ(trialTaskState(bench.facts, bench.assessment, GirdleNuts{}), CheckState::notDone);
    bench.survey();
    bench.kit();
    bench.build();
    bench.recheck();
    drafts::girdleToTorque(bench, bench.facts);
    EXPECT_EQ(trialTaskState(bench.facts, bench.assessment, GirdleNuts{}), CheckState::good);
    EXPECT_EQ(trialTaskState(bench.facts, bench.assessment, TurningStage::beforeGirdle), CheckState::good);
    EXPECT_FALSE(nutsAtTorque(bench.facts).next);
}

TEST(TrialWork, a_photo_answers_where_it_says_that_it_belongs) {
    Bench bench;
    OwnCheckSet plugs;
    plugs.ownCheck = "plugs";
    plugs.words = "oil-way plugs in";
    plugs.sort = OwnCheckSort::photo;
    bench.make(plugs);
    const OwnPlace place{"plugs", 1};
    const auto missing = parseOwnAnswer(bench.facts, place, "", "", inch);
    ASSERT_FALSE(missing);
    EXPECT_NE(missing.error().sentence.find("own-check:plugs:1"), std::string::npos);
    AttachmentAdded photo;
    photo.place = photoPlaceOf(place);
    photo.fileName = "plugs.jpg";
    photo.sha256 = std::string(64, 'b');
    photo.originalSha256 = photo.sha256;
    bench.make(photo);
    bench.make(*parseOwnAnswer(bench.facts, place, "", "", inch));
    EXPECT_EQ(bench.stateOf("own-check:plugs:1"), CheckState::good);
}
