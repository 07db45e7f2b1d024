// SPDX-License-Identifier: GPL-3.0-or-later
#include <array>
#include <gmock/gmock.h>
#include <measure/survey.h>

using namespace caprail;
using testing::HasSubstr;
using testing::Not;

namespace {
const Units inch{};
const Length repeatLimit = thou(1);
} // namespace

TEST(GapSurvey, without_a_reading_says_so) {
    const auto survey = acceptGap({}, repeatLimit, 2, inch);
    EXPECT_EQ(survey.state, GapState::none);
    EXPECT_FALSE(survey.accepted);
    EXPECT_EQ(survey.sentence, "Not read yet.");
}

TEST(GapSurvey, of_one_pass_asks_for_another) {
    const auto survey = acceptGap(std::array{tenths(575)}, repeatLimit, 2, inch);
    EXPECT_EQ(survey.state, GapState::needsAnotherPass);
    EXPECT_EQ(survey.sentence, "1 reading of at least 2: read another pass.");
    EXPECT_FALSE(survey.odd);
}

TEST(GapSurvey, of_two_agreeing_passes_accepts_the_median) {
    const auto survey = acceptGap(std::array{tenths(575), tenths(580)}, repeatLimit, 2, inch);
    EXPECT_EQ(survey.state, GapState::accepted);
    EXPECT_EQ(survey.accepted, nanometres((575 + 580) * 2'540 / 2));
    EXPECT_EQ(survey.agreeing, 2U);
    EXPECT_EQ(survey.sentence, "0.0578 in, 2 readings within 0.0005 in.");
}

TEST(GapSurvey, counts_a_reading_exactly_at_the_limit_as_agreeing) {
    EXPECT_EQ(acceptGap(std::array{thou(57), thou(58)}, repeatLimit, 2, inch).state, GapState::accepted);
    EXPECT_EQ(acceptGap(std::array{thou(57), thou(58) + nanometres(1)}, repeatLimit, 2, inch).state,
              GapState::needsAnotherPass)
        << "the range counts, not the distance from the median";
}

TEST(GapSurvey, of_two_that_differ_names_neither_as_the_odd_one) {
    const auto survey = acceptGap(std::array{thou(57), thou(61)}, repeatLimit, 2, inch);
    EXPECT_EQ(survey.state, GapState::needsAnotherPass);
    EXPECT_FALSE(survey.accepted);
    EXPECT_THAT(survey.sentence, HasSubstr("differ by 0.0040 in"));
    EXPECT_THAT(survey.sentence, Not(HasSubstr("odd one")));
}

TEST(GapSurvey, outvotes_one_odd_reading_of_three_and_names_it) {
    const std::array readings{SurveyReading{thou(57), 1, "Ana"}, SurveyReading{tenths(575), 2, "Ana"},
                              SurveyReading{thou(62), 3, "Ben"}};
    const auto survey = surveyGap(readings, repeatLimit, 2, inch);
    EXPECT_EQ(survey.state, GapState::accepted);
    EXPECT_EQ(survey.accepted, tenths(575));
    EXPECT_EQ(survey.agreeing, 2U);
    EXPECT_EQ(survey.odd, 2U);
    EXPECT_THAT(survey.sentence, HasSubstr("0.0620 in (pass 3, Ben) is an outlier"));
}

TEST(GapSurvey, is_not_accepted_by_half_of_its_readings) {
    // Two agree with the median, two do not: more than half must.
    const std::array readings{thou(50), thou(57), thou(58), thou(66)};
    const auto survey = acceptGap(readings, repeatLimit, 2, inch);
    EXPECT_EQ(survey.agreeing, 2U);
    EXPECT_EQ(survey.state, GapState::needsAnotherPass);
    EXPECT_THAT(survey.sentence, HasSubstr("0.0660 in is the odd one: read another pass."));
}

TEST(GapSurvey, asks_for_as_many_passes_as_the_shop_wants) {
    const std::array readings{thou(57), thou(57)};
    EXPECT_EQ(acceptGap(readings, repeatLimit, 3, inch).state, GapState::needsAnotherPass);
    EXPECT_EQ(acceptGap(readings, repeatLimit, 1, inch).state, GapState::accepted);
}

TEST(GapSurvey, speaks_the_users_units) {
    const auto survey = acceptGap(std::array{millimetres(1.46), millimetres(1.46)}, repeatLimit, 2,
                                  Units{LengthUnit::millimetre, TorqueUnit::newtonMetre, ','});
    EXPECT_EQ(survey.sentence, "1,460 mm, 2 readings within 0,000 mm.");
}
