// SPDX-License-Identifier: GPL-3.0-or-later
#include "../shop/shop_records.h"

#include <atomic>
#include <shopserver/publish_queue.h>
#include <thread>

namespace {

using namespace caprail;

constexpr std::int64_t minute = 60'000;
constexpr UtcTime noon{1'777'896'000'000};
constexpr UtcTime after(UtcTime time, std::int64_t minutes) {
    return {time.milliseconds + minutes * minute};
}

class TheQueue : public testing::Test {
protected:
    shoptest::Folder folder;
    PublishQueue queue{folder / "queue"};
};

TEST_F(TheQueue, keeps_each_record_once_and_longest_first_for_whoever_asks) {
    ASSERT_TRUE(queue.addChanged("/shop/b.caprail", noon));
    ASSERT_TRUE(queue.addChanged("/shop/a.caprail", after(noon, 1)));
    ASSERT_TRUE(queue.addChanged("/shop/b.caprail", after(noon, 2)));
    const std::vector<WaitingRecord> expected{{"/shop/b.caprail", noon, after(noon, 2)},
                                              {"/shop/a.caprail", after(noon, 1), after(noon, 1)}};
    EXPECT_EQ(PublishQueue(folder / "queue").waiting(), expected) << "another program sees the same";
}

TEST_F(TheQueue, keeps_a_name_that_is_no_text_to_the_byte) {
    const std::string name = "/shop/\xff two\nlines.caprail";
    ASSERT_TRUE(queue.addChanged(name, noon));
    ASSERT_EQ(queue.waiting().size(), 1U);
    EXPECT_EQ(queue.waiting().front().path, name);
}

TEST_F(TheQueue, lets_go_of_what_was_published_unless_it_was_added_to_meanwhile) {
    ASSERT_TRUE(queue.addChanged("/shop/a.caprail", noon));
    const WaitingRecord taken = queue.waiting().front();
    ASSERT_TRUE(queue.addChanged("/shop/a.caprail", after(noon, 1)));
    queue.settle(taken);
    ASSERT_EQ(queue.waiting().size(), 1U);
    queue.settle(queue.waiting().front());
    EXPECT_TRUE(queue.waiting().empty());
}

TEST_F(TheQueue, keeps_what_was_added_again_at_the_same_moment_or_by_a_clock_that_was_set_back) {
    for (const UtcTime again : {noon, after(noon, -5)}) {
        ASSERT_TRUE(queue.addAsked("/shop/a.caprail", noon));
        const WaitingRecord taken = queue.waiting().front();
        ASSERT_TRUE(queue.addAsked("/shop/a.caprail", again));
        queue.settle(taken);
        ASSERT_EQ(queue.waiting().size(), 1U);
        queue.settle(queue.waiting().front());
    }
    EXPECT_TRUE(queue.waiting().empty());
}

TEST_F(TheQueue, loses_nothing_that_is_added_at_the_moment_when_another_is_let_go) {
    const PublishQueue other(folder / "queue");
    std::atomic<int> changes = 0; // of the record
    std::atomic<bool> isOver = false;
    int sent = 0;
    std::thread publisher([&] {
        while (!isOver) {
            for (const WaitingRecord& taken : other.waiting()) {
                sent = changes;
                other.settle(taken);
            }
        }
    });
    int lost = 0;
    for (int i = 0; i < 100; ++i) { // each waits for the disk
        ++changes;
        EXPECT_TRUE(queue.addChanged("/shop/a.caprail", after(noon, i)));
    }
    for (int i = 0; i < 1000 && !queue.waiting().empty(); ++i) {
        std::this_thread::sleep_for(std::chrono::milliseconds(5));
    }
    isOver = true;
    publisher.join();
    lost = changes - sent;
    EXPECT_EQ(lost, 0) << "the last state of the record was sent";
}

TEST_F(TheQueue, makes_a_record_that_a_person_asks_for_due_at_once_whatever_the_schedule) {
    ASSERT_TRUE(queue.addChanged("/shop/a.caprail", noon));
    EXPECT_FALSE(dueAt(queue.waiting().front(), PublishSchedule::never));
    ASSERT_TRUE(queue.addAsked("/shop/a.caprail", noon));
    EXPECT_EQ(dueAt(queue.waiting().front(), PublishSchedule::never), UtcTime());
    ASSERT_TRUE(queue.addChanged("/shop/a.caprail", after(noon, 1)));
    EXPECT_EQ(dueAt(queue.waiting().front(), PublishSchedule::daily), UtcTime()) << "a change does not make it wait";
}

TEST_F(TheQueue, goes_on_waiting_for_a_change_when_a_person_asks_no_more) {
    ASSERT_TRUE(queue.addChanged("/shop/a.caprail", noon));
    ASSERT_TRUE(queue.addAsked("/shop/a.caprail", after(noon, 1)));
    ASSERT_TRUE(queue.addAsked("/shop/b.caprail", after(noon, 1)));
    for (const WaitingRecord& one : queue.waiting()) {
        EXPECT_TRUE(one.isAsked) << one.path;
        queue.takeBack(one);
    }
    ASSERT_EQ(queue.waiting().size(), 1U) << "nothing of b had changed";
    EXPECT_EQ(queue.waiting().front().path, "/shop/a.caprail");
    EXPECT_EQ(dueAt(queue.waiting().front(), PublishSchedule::hourly), after(noon, 60));
}

TEST_F(TheQueue, waits_for_a_pause_after_a_change_but_not_for_ever) {
    const WaitingRecord once{"a", noon, noon};
    EXPECT_EQ(dueAt(once, PublishSchedule::eachChange), (UtcTime{noon.milliseconds + 10'000}));
    const WaitingRecord busy{"a", noon, after(noon, 5)};
    EXPECT_EQ(dueAt(busy, PublishSchedule::eachChange), after(noon, 2));
    EXPECT_EQ(dueAt(busy, PublishSchedule::hourly), after(noon, 60));
    EXPECT_EQ(dueAt(busy, PublishSchedule::daily), after(noon, 24 * 60));
}

TEST_F(TheQueue, passes_over_what_somebody_else_left_in_its_folder) {
    ASSERT_TRUE(queue.addChanged("/shop/a.caprail", noon));
    std::ofstream(folder / "queue/torn.waits") << "17";
    std::ofstream(folder / "queue/late.waits") << "9223372036854775807 9223372036854775807 0\nx";
    std::ofstream(folder / "queue/readme.txt") << "1 1\nx";
    EXPECT_EQ(queue.waiting().size(), 1U);
    std::ofstream(folder / "queue/early.waits") << "0 1777896000000\n/shop/b.caprail";
    ASSERT_EQ(queue.waiting().size(), 2U);
    EXPECT_EQ(queue.waiting().front(), (WaitingRecord{"/shop/b.caprail", {}, noon, true}))
        << "as it was written before";
}

} // namespace
