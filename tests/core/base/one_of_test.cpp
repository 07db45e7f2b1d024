// SPDX-License-Identifier: GPL-3.0-or-later
#include <base/one_of.h>

#include <gtest/gtest.h>
#include <string>
#include <vector>

namespace caprail {
namespace {

struct Small {
    int value = 3;
};
struct Large {
    std::string text = "as it begins";
    std::string more[8] = {};
};
using Either = OneOf<64, Small, Large>;

TEST(OneOf, has_the_room_that_was_asked_for_whatever_the_largest_needs) {
    static_assert(sizeof(Large) > 64);
    EXPECT_LE(sizeof(Either), 64U + sizeof(void*));
    EXPECT_LT(sizeof(Either), sizeof(Large));
    EXPECT_EQ(Either::besideOf(0), 0U);
    EXPECT_EQ(Either::besideOf(1), sizeof(Large));
}

TEST(OneOf, begins_with_the_first_and_knows_which_it_holds) {
    Either either;
    EXPECT_EQ(either.index(), 0U);
    ASSERT_NE(either.as<Small>(), nullptr);
    EXPECT_EQ(either.as<Small>()->value, 3);
    EXPECT_EQ(either.as<Large>(), nullptr);
    either = Large{"another"};
    EXPECT_EQ(either.index(), 1U);
    EXPECT_TRUE(either.is<Large>());
    EXPECT_FALSE(either.is<Small>());
    EXPECT_EQ(either.get<Large>().text, "another");
    EXPECT_THROW((void)either.get<Small>(), std::bad_variant_access);
    EXPECT_EQ(either.emplace<Large>().text, "as it begins");
    either.emplace<Small>().value = 4;
    EXPECT_EQ(either.get<Small>().value, 4);
}

TEST(OneOf, is_copied_with_what_lies_beside_and_does_not_share_it) {
    const Either first = Large{"one"};
    Either second = first;
    second.as<Large>()->text = "two";
    EXPECT_EQ(first.as<Large>()->text, "one");
    Either third;
    third = second;
    third.get<Large>().text = "three";
    EXPECT_EQ(second.as<Large>()->text, "two");
    const Either& itself = third;
    third = itself;
    EXPECT_EQ(third.as<Large>()->text, "three");
}

TEST(OneOf, moves_what_lies_beside_without_copying_it) {
    Either first = Large{"one"};
    const Large* const at = first.as<Large>();
    Either second = std::move(first);
    EXPECT_EQ(second.as<Large>(), at);
    first = Small{5}; // what was moved out of may be used again
    EXPECT_EQ(first.get<Small>().value, 5);
    std::vector<Either> many(3, second);
    many.resize(100);
    EXPECT_EQ(many[2].get<Large>().text, "one");
}

TEST(OneOf, shows_each_type_as_itself) {
    struct Look {
        std::string operator()(const Small& small) const { return std::to_string(small.value); }
        std::string operator()(const Large& large) const { return large.text; }
    };
    EXPECT_EQ(Either(Small{7}).visit(Look{}), "7");
    EXPECT_EQ(Either(Large{"shown"}).visit(Look{}), "shown");
    Either changed = Large{"before"};
    changed.visit([](auto& value) {
        if constexpr (requires { value.text; }) {
            value.text = "after";
        }
    });
    EXPECT_EQ(changed.get<Large>().text, "after");
}

} // namespace
} // namespace caprail
