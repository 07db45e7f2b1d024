// SPDX-License-Identifier: GPL-3.0-or-later
#include <base/rare.h>

#include <gtest/gtest.h>
#include <string>

namespace caprail {
namespace {

struct Typed {
    int value = 0;
    std::string text;
    friend bool operator==(const Typed&, const Typed&) = default;
};

TEST(Rare, takes_the_room_of_a_pointer_whatever_it_may_hold) {
    EXPECT_EQ(sizeof(Rare<Typed>), sizeof(void*));
}

TEST(Rare, is_empty_until_something_is_put_in) {
    Rare<Typed> rare;
    EXPECT_FALSE(rare);
    EXPECT_EQ(rare, std::nullopt);
    EXPECT_EQ(rare.value_or(Typed{7, "seven"}), (Typed{7, "seven"}));
    rare = Typed{1, "one"};
    ASSERT_TRUE(rare.has_value());
    EXPECT_EQ(rare->text, "one");
    EXPECT_EQ(rare.value_or(Typed{7, "seven"}), (Typed{1, "one"}));
    rare = {};
    EXPECT_FALSE(rare);
}

TEST(Rare, is_copied_with_its_value_and_not_shared) {
    Rare<Typed> first{Typed{1, "one"}};
    Rare<Typed> second = first;
    second->text = "another";
    EXPECT_EQ(first->text, "one");
    EXPECT_NE(first, second);
    second = first;
    EXPECT_EQ(first, second);
    second.reset();
    EXPECT_NE(first, second);
    first = second;
    EXPECT_FALSE(first);
}

TEST(Rare, turns_from_and_into_an_optional) {
    const std::optional<std::string> given = "typed";
    Rare<std::string> rare = given;
    EXPECT_EQ(rare, "typed");
    const std::optional<std::string> back = rare;
    EXPECT_EQ(back, given);
    rare = std::optional<std::string>();
    EXPECT_FALSE(rare);
    EXPECT_FALSE(std::optional<std::string>(rare));
}

} // namespace
} // namespace caprail
