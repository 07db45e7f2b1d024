// SPDX-License-Identifier: GPL-3.0-or-later
#include "sentences.h"
#include <fasteners/wrench.h>
#include <gtest/gtest.h>

using namespace caprail;
using testing::HasSubstr;

namespace {

const Units inchUnits{};

Torque settingAt(double degreesOfOffset) {
    const auto worked = wrenchSetting(poundFeet(80), {inches(16), inches(4), degrees(degreesOfOffset)}, inchUnits);
    EXPECT_TRUE(worked) << (worked ? "" : worked.error().sentence);
    return worked ? worked->value : Torque();
}

} // namespace

TEST(WrenchSetting, follows_the_lever) {
    // 80 lbf·ft on a lever of 16 in: straight on 80·16/20 = 64; square 80 (no change); folded back 80·16/12 = 106.67;
    // at 60° 80·16/18 = 71.11.
    EXPECT_NEAR(inPoundFeet(settingAt(0)), 64.0, 0.01);
    EXPECT_NEAR(inPoundFeet(settingAt(90)), 80.0, 0.01);
    EXPECT_NEAR(inPoundFeet(settingAt(180)), 106.67, 0.01);
    EXPECT_NEAR(inPoundFeet(settingAt(60)), 71.11, 0.01);
}

TEST(WrenchSetting, shows_how_the_lever_adds_up) {
    // 420 + 55·cos 35° = 465.053 mm; 110·420/465.053 = 99.34 N·m.
    const Units metric{LengthUnit::millimetre, TorqueUnit::newtonMetre, '.'};
    const auto setting = wrenchSetting(newtonMetres(110), {millimetres(420), millimetres(55), degrees(35)}, metric);
    ASSERT_TRUE(setting);
    EXPECT_NEAR(inNewtonMetres(setting->value), 99.34, 0.01);
    EXPECT_THAT(setting->working, testing::ElementsAre(HasSubstr("465.053 mm"), HasSubstr("99.3 N·m")));
}

TEST(WrenchSetting, refuses_a_lever_that_is_none) {
    const auto refused = [](WrenchExtension extension) {
        return sentenceOf(wrenchSetting(poundFeet(80), extension, inchUnits));
    };
    EXPECT_THAT(refused({Length(), inches(4), Angle()}), IsOneSentence());
    EXPECT_THAT(refused({inches(16), inches(-4), Angle()}), IsOneSentence());
    EXPECT_THAT(refused({inches(16), inches(4), degrees(200)}), IsOneSentence());
    EXPECT_THAT(refused({inches(16), inches(4), degrees(-10)}), IsOneSentence());
    EXPECT_THAT(refused({inches(16), inches(16), degrees(180)}), HasSubstr("no lever"));
    EXPECT_THAT(sentenceOf(wrenchSetting(poundFeet(-80), {inches(16), inches(4), Angle()}, inchUnits)),
                IsOneSentence());
}

TEST(WrenchRange, starts_at_a_fifth_of_its_largest_value_unless_marked) {
    const auto plain = WrenchRange::upTo(poundFeet(250));
    ASSERT_TRUE(plain);
    EXPECT_NEAR(inPoundFeet(plain->smallest()), 50.0, 0.001);
    EXPECT_EQ(rangeVerdict(poundFeet(50), *plain), RangeVerdict::within);
    EXPECT_EQ(rangeVerdict(poundFeet(49.9), *plain), RangeVerdict::below);
    EXPECT_EQ(rangeVerdict(poundFeet(250), *plain), RangeVerdict::within);
    EXPECT_EQ(rangeVerdict(poundFeet(250.1), *plain), RangeVerdict::above);
    const auto marked = WrenchRange::upTo(poundFeet(250), poundFeet(30));
    ASSERT_TRUE(marked);
    EXPECT_EQ(rangeVerdict(poundFeet(40), *marked), RangeVerdict::within);
}

TEST(WrenchRange, marks_what_lies_outside_and_nothing_else) {
    const auto range = *WrenchRange::upTo(poundFeet(250));
    EXPECT_EQ(rangeMark(poundFeet(100), range, inchUnits), "");
    EXPECT_EQ(rangeMark(poundFeet(30), range, inchUnits),
              "30.0 lbf·ft is below the wrench's range (from 50.0 lbf·ft, 20 % of its largest value, ISO 6789)");
    EXPECT_EQ(rangeMark(poundFeet(20), *WrenchRange::upTo(poundFeet(250), poundFeet(30)), inchUnits),
              "20.0 lbf·ft is below the wrench's range (from 30.0 lbf·ft, as marked on it)");
    EXPECT_THAT(rangeMark(poundFeet(260), range, inchUnits), HasSubstr("above the wrench's largest value"));
}

TEST(WrenchRange, the_wrong_way_round_is_refused) {
    EXPECT_THAT(sentenceOf(WrenchRange::upTo(Torque())), IsOneSentence());
    EXPECT_THAT(sentenceOf(WrenchRange::upTo(poundFeet(100), poundFeet(100))), IsOneSentence());
    EXPECT_THAT(sentenceOf(WrenchRange::upTo(poundFeet(100), poundFeet(-1))), IsOneSentence());
}

TEST(Calibration, holds_for_a_year_or_five_thousand_cycles_unless_said_otherwise) {
    const Date done = *parseDate("2026-03-10");
    const Calibration usual{done, std::nullopt, std::nullopt};
    EXPECT_EQ(dueByDefault(done), *parseDate("2027-03-10"));
    EXPECT_EQ(dueByDefault(*parseDate("2028-02-29")), *parseDate("2029-02-28"));
    EXPECT_EQ(calibrationState(usual, *parseDate("2027-03-10"), 0), CalibrationState::current);
    EXPECT_EQ(calibrationState(usual, *parseDate("2027-03-11"), 0), CalibrationState::pastDate);
    EXPECT_EQ(calibrationState(usual, *parseDate("2026-06-01"), 5'000), CalibrationState::current);
    EXPECT_EQ(calibrationState(usual, *parseDate("2026-06-01"), 5'001), CalibrationState::pastCycles);
    EXPECT_EQ(calibrationState(usual, *parseDate("2026-03-09"), 0), CalibrationState::notYetDone);
    const Calibration own{done, *parseDate("2026-09-10"), 1'000};
    EXPECT_EQ(calibrationState(own, *parseDate("2026-09-11"), 0), CalibrationState::pastDate);
    EXPECT_EQ(calibrationState(own, *parseDate("2026-09-10"), 1'001), CalibrationState::pastCycles);
}

TEST(Calibration, mark_names_the_day_or_the_count) {
    const Calibration usual{*parseDate("2026-03-10"), std::nullopt, std::nullopt};
    EXPECT_EQ(calibrationMark(usual, *parseDate("2026-04-01"), 10), "");
    EXPECT_EQ(calibrationMark(usual, *parseDate("2027-05-01"), 10), "calibration was due on 2027-03-10");
    EXPECT_EQ(calibrationMark(usual, *parseDate("2026-03-01"), 10),
              "used on 2026-03-01, before its calibration of 2026-03-10");
    EXPECT_EQ(calibrationMark(usual, *parseDate("2026-04-01"), 6'000),
              "calibration was due after 5000 cycles, and 6000 were made");
}
