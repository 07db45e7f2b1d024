// SPDX-License-Identifier: GPL-3.0-or-later
/// Work on a thread of its own: done in order, answered in the owner's thread, stopped, and left behind where it hangs.
#include <QElapsedTimer>
#include <QTest>
#include <atomic>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <latch>
#include <session/apart.h>
#include <string>
#include <vector>

using namespace caprail;
using testing::ElementsAre;

namespace {

constexpr auto patience = std::chrono::milliseconds(300);

/// Who gives the work, and keeps what is told.
class Giver : public QObject {
public:
    std::vector<std::string> told;
    std::vector<std::thread::id> threads;
    void take(const std::string& what) {
        told.push_back(what);
        threads.push_back(std::this_thread::get_id());
    }
    bool has(std::size_t count) {
        return QTest::qWaitFor([&] { return told.size() >= count; }, 10'000);
    }
};

struct Hand {
    WayBack<Giver> back;
    std::string name;
    std::thread::id home = std::this_thread::get_id();

    Hand(WayBack<Giver> way, std::string called) : back(std::move(way)), name(std::move(called)) {}
    void tell(const std::string& what) const {
        back.tell([what](Giver& giver) { giver.take(what); });
    }
};

using Work = Apart<Hand, Giver>;

TEST(Apart, does_one_call_after_another_in_one_thread_and_answers_in_the_owner_s) {
    Giver giver;
    Work work(giver, patience, std::string("hand"));
    const auto here = std::this_thread::get_id();
    for (const char* topic : {"one", "two", "three"}) {
        EXPECT_TRUE(work.post(topic, [topic, here](Hand& hand, const std::stop_token&) {
            EXPECT_NE(std::this_thread::get_id(), here);
            EXPECT_EQ(std::this_thread::get_id(), hand.home) << "where it was made";
            hand.tell(hand.name + ", " + topic);
        }));
    }
    ASSERT_TRUE(giver.has(3));
    EXPECT_THAT(giver.told, ElementsAre("hand, one", "hand, two", "hand, three"));
    EXPECT_THAT(giver.threads, testing::Each(here));
}

TEST(Apart, does_what_is_asked_again_before_its_turn_once_and_as_it_was_asked_last) {
    Giver giver;
    Work work(giver, patience, std::string());
    std::latch begun(1), mayGoOn(1);
    work.post("first", [&](const Hand&, const std::stop_token&) {
        begun.count_down();
        mayGoOn.wait();
    });
    begun.wait();
    const auto saying = [](const std::string& what) {
        return [what](const Hand& hand, const std::stop_token&) { hand.tell(what); };
    };
    EXPECT_TRUE(work.post("list", saying("list, as it was asked first")));
    EXPECT_TRUE(work.post("people", saying("people")));
    EXPECT_FALSE(work.post("list", saying("list, as it was asked last")));
    EXPECT_TRUE(work.post("first", saying("again"))) << "what is begun is no longer waiting";
    mayGoOn.count_down();
    ASSERT_TRUE(giver.has(3));
    QTest::qWait(20);
    EXPECT_THAT(giver.told, ElementsAre("list, as it was asked last", "people", "again"));
}

TEST(Apart, stops_what_was_asked_until_then_and_nothing_that_is_asked_later) {
    Giver giver;
    Work work(giver, patience, std::string());
    std::latch begun(1);
    work.post("long", [&](const Hand& hand, const std::stop_token& stop) {
        begun.count_down();
        while (!stop.stop_requested()) {
            std::this_thread::yield();
        }
        hand.tell("stopped");
    });
    const auto saying = [](const Hand& hand, const std::stop_token& stop) {
        hand.tell(stop.stop_requested() ? "stopped, too" : "done");
    };
    work.post("waits", saying);
    begun.wait();
    work.stop();
    work.post("later", saying);
    ASSERT_TRUE(giver.has(3));
    EXPECT_THAT(giver.told, ElementsAre("stopped", "stopped, too", "done"));
}

TEST(Apart, waits_for_work_that_ends_when_it_is_asked_to_and_does_nothing_that_still_waited) {
    Giver giver;
    std::atomic<bool> hasEnded = false, hasBegunMore = false;
    {
        Work work(giver, std::chrono::seconds(30), std::string());
        std::latch begun(1);
        work.post("long", [&](const Hand& hand, const std::stop_token& stop) {
            begun.count_down();
            while (!stop.stop_requested()) {
                std::this_thread::yield();
            }
            hand.tell("to nobody");
            hasEnded = true;
        });
        work.post("more", [&](const Hand&, const std::stop_token&) { hasBegunMore = true; });
        begun.wait();
    }
    EXPECT_TRUE(hasEnded);
    EXPECT_FALSE(hasBegunMore);
    QTest::qWait(20);
    EXPECT_THAT(giver.told, ElementsAre()) << "nobody is told once it is let go, though the owner is still there";
}

TEST(Apart, leaves_behind_what_hangs) {
    auto giver = std::make_unique<Giver>();
    auto hung = std::make_shared<std::latch>(1);
    auto gone = std::make_shared<std::latch>(1);
    QElapsedTimer clock;
    {
        Work work(*giver, patience, std::string());
        std::latch begun(1);
        work.post("hangs", [&begun, hung, gone](const Hand& hand, const std::stop_token&) {
            begun.count_down();
            hung->wait();
            hand.tell("too late");
            gone->count_down();
        });
        begun.wait();
        clock.start();
    }
    EXPECT_GE(clock.elapsed(), patience.count());
    EXPECT_LT(clock.elapsed(), 5'000);
    giver.reset();
    hung->count_down(); // the disk answers after all
    gone->wait();
    QTest::qWait(20);
}

TEST(Apart, that_was_never_asked_has_no_thread_to_wait_for) {
    Giver giver;
    struct Never : Hand {
        Never(const WayBack<Giver>& way, std::atomic<int>* made) : Hand(way, {}) { ++*made; }
    };
    std::atomic<int> made = 0;
    QElapsedTimer clock;
    clock.start();
    { const Apart<Never, Giver> work(giver, std::chrono::seconds(30), &made); }
    EXPECT_EQ(made, 0);
    EXPECT_LT(clock.elapsed(), 5'000);
}

} // namespace
