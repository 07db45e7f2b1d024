// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <planview/callout_lanes.h>

namespace caprail {

TEST(CalloutLanes, leave_boxes_at_their_anchors_where_there_is_room) {
    const auto plan = placeInLane({{100, 40, 0}, {200, 40, 0}, {300, 40, 0}}, 0, 400, 6, 4);
    ASSERT_TRUE(plan);
    EXPECT_EQ(plan->rows, 1);
    EXPECT_DOUBLE_EQ(plan->boxes[0].middle, 100);
    EXPECT_DOUBLE_EQ(plan->boxes[1].middle, 200);
    EXPECT_DOUBLE_EQ(plan->farthestShift, 0);
}

TEST(CalloutLanes, share_the_push_between_two_that_would_overlap) {
    const auto plan = placeInLane({{100, 40, 0}, {120, 40, 0}}, 0, 400, 6, 1);
    ASSERT_TRUE(plan);
    EXPECT_DOUBLE_EQ(plan->boxes[0].middle, 87); // 46 apart about their common middle of 110
    EXPECT_DOUBLE_EQ(plan->boxes[1].middle, 133);
}

TEST(CalloutLanes, stay_within_the_lane_at_its_ends) {
    const auto plan = placeInLane({{2, 40, 0}, {399, 40, 0}}, 0, 400, 6, 1);
    ASSERT_TRUE(plan);
    EXPECT_DOUBLE_EQ(plan->boxes[0].middle, 20);
    EXPECT_DOUBLE_EQ(plan->boxes[1].middle, 380);
}

TEST(CalloutLanes, say_when_they_cannot_fit) {
    EXPECT_FALSE(placeInLane({{10, 60, 0}, {20, 60, 0}}, 0, 100, 6, 1));
    EXPECT_TRUE(placeInLane({}, 0, 100, 6, 1));
}

TEST(CalloutLanes, take_a_second_row_when_one_would_push_boxes_far_away) {
    std::vector<LaneBox> boxes;
    for (int i = 0; i < 10; ++i) {
        boxes.push_back({100.0 + 40.0 * (i / 2), 38, static_cast<double>(i % 2)});
    }
    const auto plan = placeInLane(boxes, 0, 600, 8, 4);
    ASSERT_TRUE(plan);
    EXPECT_EQ(plan->rows, 2);
}

TEST(CalloutLanes, lead_to_a_farther_row_between_the_boxes_of_the_nearer_ones) {
    for (int count = 2; count < 24; ++count) {
        std::vector<LaneBox> boxes;
        for (int i = 0; i < count; ++i) {
            boxes.push_back({40.0 + 520.0 * (i / 2 * 2) / count, 36.0 + i % 3, static_cast<double>(i % 2)});
        }
        const auto plan = placeInLane(boxes, 0, 600, 8, 4);
        if (!plan) {
            continue;
        }
        for (std::size_t i = 0; i < boxes.size(); ++i) {
            for (std::size_t j = 0; j < boxes.size(); ++j) {
                const double apart = std::abs(plan->boxes[i].middle - plan->boxes[j].middle);
                if (i != j && plan->boxes[i].row == plan->boxes[j].row) {
                    EXPECT_GE(apart, (boxes[i].extent + boxes[j].extent) / 2 + 8 - 1e-9) << count;
                }
                if (plan->boxes[j].row < plan->boxes[i].row) {
                    EXPECT_GT(std::abs(plan->boxes[i].channel - plan->boxes[j].middle), boxes[j].extent / 2) << count;
                }
            }
        }
    }
}

} // namespace caprail
