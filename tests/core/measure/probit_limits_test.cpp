// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>
#include <limits>
#include <measure/probit.h>

using namespace caprail;
using testing::HasSubstr;

namespace {

std::string answer(std::vector<Response> responses) {
    const auto fit = probitFit(responses);
    return fit ? std::string("taken") : fit.error().sentence;
}

} // namespace

TEST(ProbitLimits, are_an_answer_at_each_step_and_no_more_yes_than_answers) {
    const Response low{1, 10, 2}, high{2, 10, 8};
    EXPECT_EQ(answer({low, high}), "taken");
    EXPECT_EQ(answer({low, {1.5, 1, 1}, high}), "taken");
    EXPECT_THAT(answer({low, {1.5, 0, 0}, high}), HasSubstr("none or more than all"));
    EXPECT_THAT(answer({low, {1.5, 2, 3}, high}), HasSubstr("none or more than all"));
    EXPECT_THAT(answer({low, {std::numeric_limits<double>::infinity(), 2, 1}, high}), HasSubstr("none or more than all"));
}

TEST(ProbitLimits, are_two_steps_that_do_not_part_all_answers) {
    EXPECT_THAT(answer({}), HasSubstr("two different steps"));
    EXPECT_THAT(answer({{1, 10, 2}}), HasSubstr("two different steps"));
    EXPECT_THAT(answer({{1, 10, 2}, {1, 10, 8}}), HasSubstr("two different steps"));
    EXPECT_THAT(answer({{1, 10, 0}, {2, 10, 10}}), HasSubstr("parts all answers"));
    EXPECT_EQ(answer({{1, 10, 1}, {2, 10, 10}}), "taken");
    EXPECT_FALSE(upperDose(std::vector<Response>{{1, 10, 2}}, 0.95, 0.95));
    EXPECT_FALSE(upperDose(std::vector<Response>{{1, 10, 2}, {1, 10, 8}}, 0.95, 0.95));
    EXPECT_TRUE(upperDose(std::vector<Response>{{1, 10, 0}, {2, 10, 10}}, 0.95, 0.95));
}
