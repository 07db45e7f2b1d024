// SPDX-License-Identifier: GPL-3.0-or-later
#include <chrono>
#include <fasteners/review.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace caprail;
using testing::ElementsAre;

namespace {

OutcomeRow held(std::int64_t round, const char* fastener, int cap, const char* person = "Ada",
                const char* wrench = "T1") {
    return {round, fastener, cap, person, wrench, false, Angle()};
}
OutcomeRow moved(std::int64_t round, const char* fastener, int cap, double angle, const char* person = "Ada",
                 const char* wrench = "T1") {
    return {round, fastener, cap, person, wrench, true, degrees(angle)};
}

std::vector<std::string> names(const std::vector<MovementCount>& rows) {
    std::vector<std::string> out;
    for (const MovementCount& row : rows) {
        out.push_back(row.what);
    }
    return out;
}

} // namespace

TEST(Review, counts_by_fastener_cap_wrench_and_person) {
    const std::vector<OutcomeRow> rows{moved(1, "cap 3 left", 3, 4), moved(1, "cap 3 right", 3, 2, "Ben", "T2"),
                                       held(1, "rod 2 left", 0),     moved(2, "cap 3 left", 3, 1.5),
                                       held(2, "cap 3 right", 3),    held(2, "rod 2 left", 0, "Ben", "")};
    const MovementReview review = reviewMovement(rows);
    EXPECT_THAT(review.fasteners, ElementsAre(MovementCount{"cap 3 left", 2, 2, degrees(4)},
                                              MovementCount{"cap 3 right", 2, 1, degrees(2)},
                                              MovementCount{"rod 2 left", 2, 0, Angle()}));
    EXPECT_THAT(review.caps, ElementsAre(MovementCount{"cap 3", 4, 3, degrees(4)}));
    EXPECT_THAT(review.wrenches,
                ElementsAre(MovementCount{"T1", 4, 2, degrees(4)}, MovementCount{"T2", 1, 1, degrees(2)},
                            MovementCount{"not named", 1, 0, Angle()}));
    EXPECT_THAT(review.persons,
                ElementsAre(MovementCount{"Ada", 4, 2, degrees(4)}, MovementCount{"Ben", 2, 1, degrees(2)}));
    EXPECT_DOUBLE_EQ(review.fasteners[1].share(), 0.5);
    EXPECT_THAT(review.rounds, ElementsAre(RoundMovement{1, 3, 2, degrees(4), degrees(6)},
                                           RoundMovement{2, 3, 1, degrees(1.5), degrees(1.5)}));
}

TEST(Review, ranks_by_movements_then_share_then_angle_then_name) {
    const std::vector<OutcomeRow> rows{moved(1, "often", 1, 1), moved(2, "often", 1, 1),  moved(1, "small", 1, 1),
                                       moved(1, "wide", 1, 9),  moved(1, "seldom", 1, 9), held(2, "seldom", 1),
                                       moved(1, "alike", 1, 1)};
    EXPECT_THAT(names(reviewMovement(rows).fasteners), ElementsAre("often", "wide", "alike", "small", "seldom"));
}

TEST(Review, says_whether_movement_dies_down) {
    std::vector<OutcomeRow> rows;
    EXPECT_EQ(reviewMovement(rows).trendSentence, "No round has been made yet.");
    rows = {moved(1, "a", 1, 3), moved(1, "b", 1, 3)};
    EXPECT_EQ(reviewMovement(rows).trend, MovementTrend::tooFewRounds);
    rows.push_back(moved(2, "a", 1, 1));
    rows.push_back(held(3, "a", 1));
    EXPECT_EQ(reviewMovement(rows).trend, MovementTrend::diesDown);
    EXPECT_EQ(reviewMovement(rows).trendSentence, "Movements per round: 2, 1, 0. They are getting fewer.");
    rows.push_back(moved(4, "a", 1, 1));
    EXPECT_EQ(reviewMovement(rows).trend, MovementTrend::doesNotDieDown);
    EXPECT_EQ(reviewMovement(rows).trendSentence, "Movements per round: 2, 1, 0, 1. They are not getting fewer.");
}

TEST(Review, of_rounds_that_all_held_says_that_nothing_moved) {
    const std::vector<OutcomeRow> rows{held(1, "a", 1), held(2, "a", 1)};
    EXPECT_EQ(reviewMovement(rows).trend, MovementTrend::neverMoved);
    const std::vector<OutcomeRow> steady{moved(1, "a", 1, 2), moved(2, "a", 1, 2)};
    EXPECT_EQ(reviewMovement(steady).trend, MovementTrend::doesNotDieDown);
}

TEST(Review, does_not_depend_on_the_order_of_the_rows) {
    std::vector<OutcomeRow> rows{moved(2, "b", 2, 3), held(1, "a", 1), moved(1, "b", 2, 5),
                                 held(2, "a", 1, "Ben", "T2")};
    const MovementReview forward = reviewMovement(rows);
    std::reverse(rows.begin(), rows.end());
    const MovementReview backward = reviewMovement(rows);
    EXPECT_EQ(forward.fasteners, backward.fasteners);
    EXPECT_EQ(forward.persons, backward.persons);
    EXPECT_EQ(forward.rounds, backward.rounds);
    EXPECT_EQ(forward.trend, backward.trend);
}

TEST(Review, of_five_hundred_rounds_of_sixty_fasteners_is_quick) {
    std::vector<OutcomeRow> rows;
    for (std::int64_t round = 1; round <= 500; ++round) {
        for (int i = 0; i < 60; ++i) {
            rows.push_back(
                {round, "fastener " + std::to_string(i), i % 9, "Ada", "T1", (round + i) % 7 == 0, degrees(2)});
        }
    }
    const auto start = std::chrono::steady_clock::now();
    const MovementReview review = reviewMovement(rows);
    const auto took = std::chrono::steady_clock::now() - start;
    EXPECT_EQ(review.rounds.size(), 500U);
    EXPECT_EQ(review.persons.front().pulled, 30'000);
    EXPECT_LT(took, std::chrono::seconds(1)) << "an unoptimised build with sanitizers must still be far from a hitch";
    RecordProperty("milliseconds",
                   static_cast<int>(std::chrono::duration_cast<std::chrono::milliseconds>(took).count()));
}
