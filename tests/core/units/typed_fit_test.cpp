// SPDX-License-Identifier: GPL-3.0-or-later
/// Whether what was typed can mean what is stored beside it, and what its last digit is worth.
#include <gtest/gtest.h>
#include <units/parse.h>

namespace caprail {
namespace {

TypedFit fit(const char* typed, Length value) {
    return fitOfTyped(Entered<Length>{value, typed});
}

TEST(TypedFit, takes_a_length_in_any_unit_that_a_bare_number_may_have_been_in) {
    EXPECT_EQ(fit("", thou(57.5)), TypedFit::agrees) << "nothing was typed";
    EXPECT_EQ(fit("0.0575", thou(57.5)), TypedFit::agrees);
    EXPECT_EQ(fit("0,0575", thou(57.5)), TypedFit::agrees);
    EXPECT_EQ(fit("57.5", thou(57.5)), TypedFit::agrees);
    EXPECT_EQ(fit("1.46", microns(1'460)), TypedFit::agrees);
    EXPECT_EQ(fit("57.5 thou", thou(57.5)), TypedFit::agrees);
    EXPECT_EQ(fit("22+23+12.5", thou(57.5)), TypedFit::agrees);
    EXPECT_EQ(fit("22+23+12.5", thou(58.5)), TypedFit::contradicts);
    EXPECT_EQ(fit("-3 thou", thou(-3)), TypedFit::agrees);
    EXPECT_EQ(fit("-3 thou", thou(3)), TypedFit::contradicts);
    EXPECT_EQ(fit("57.5 thou", microns(58)), TypedFit::contradicts) << "the unit was typed";
    EXPECT_EQ(fit("snug", thou(57.5)), TypedFit::unreadable);
}

TEST(TypedFit, holds_the_value_to_half_of_the_last_digit) {
    // The last digit of 1.46 mm is worth 10 000 nm.
    EXPECT_EQ(fit("1.46 mm", nanometres(1'464'999)), TypedFit::agrees);
    EXPECT_EQ(fit("1.46 mm", nanometres(1'465'001)), TypedFit::contradicts);
    EXPECT_EQ(fit("1.46 mm", nanometres(1'455'001)), TypedFit::agrees);
    EXPECT_EQ(fit("1.46 mm", nanometres(1'454'999)), TypedFit::contradicts);
}

TEST(TypedFit, holds_the_value_to_a_fraction_exactly) {
    // 7/16 in is 11 112 500 nm, 2/3 in is 16 933 333.3 nm.
    EXPECT_EQ(fit("7/16 in", nanometres(11'112'500)), TypedFit::agrees);
    EXPECT_EQ(fit("7/16 in", nanometres(11'112'502)), TypedFit::contradicts);
    EXPECT_EQ(fit("7/16", nanometres(11'112'500)), TypedFit::agrees);
    EXPECT_EQ(fit("2/3 in", nanometres(16'933'333)), TypedFit::agrees);
    EXPECT_EQ(fit("1 7/16 in", nanometres(36'512'500)), TypedFit::agrees);
    EXPECT_EQ(fit("1 7/16 in", nanometres(11'112'500)), TypedFit::contradicts);
}

TEST(TypedFit, takes_torque_angle_and_temperature_likewise) {
    const auto torque = [](const char* typed, Torque value) { return fitOfTyped(Entered<Torque>{value, typed}); };
    EXPECT_EQ(torque("70", poundFeet(70)), TypedFit::agrees);
    EXPECT_EQ(torque("70", poundInches(70)), TypedFit::agrees);
    EXPECT_EQ(torque("70", newtonMetres(70)), TypedFit::agrees);
    EXPECT_EQ(torque("70 N·m", poundFeet(70)), TypedFit::contradicts);
    EXPECT_EQ(torque("70", poundFeet(71)), TypedFit::contradicts);
    EXPECT_EQ(torque("hand tight", poundFeet(70)), TypedFit::unreadable);
    const auto angle = [](const char* typed, Angle value) { return fitOfTyped(Entered<Angle>{value, typed}); };
    EXPECT_EQ(angle("8", degrees(8)), TypedFit::agrees);
    EXPECT_EQ(angle("8", degrees(8.4)), TypedFit::agrees);
    EXPECT_EQ(angle("8.0", degrees(8.4)), TypedFit::contradicts);
    const auto warm = [](const char* typed, Temperature value) {
        return fitOfTyped(Entered<Temperature>{value, typed});
    };
    EXPECT_EQ(warm("21", celsius(21)), TypedFit::agrees);
    EXPECT_EQ(warm("70 °F", fahrenheit(70)), TypedFit::agrees);
    EXPECT_EQ(warm("70 °F", celsius(21.3)), TypedFit::agrees) << "70.3 °F";
    EXPECT_EQ(warm("70 °F", celsius(21.5)), TypedFit::contradicts) << "70.7 °F";
}

TEST(LastDigit, is_worth_what_its_unit_and_its_place_say) {
    const auto digit = [](const char* typed, Length value) { return lastDigitOf({value, typed}); };
    EXPECT_EQ(digit("57.5 thou", thou(57.5)), tenths(1));
    EXPECT_EQ(digit("57.5", thou(57.5)), tenths(1));
    EXPECT_EQ(digit("0.0575", thou(57.5)), tenths(1));
    EXPECT_EQ(digit("1.46", microns(1'460)), microns(10));
    EXPECT_EQ(digit("22+23+12.5", thou(57.5)), thou(1)) << "of a sum, the coarsest";
    EXPECT_EQ(digit("12.5+22+23", thou(57.5)), thou(1));
    EXPECT_EQ(digit("7/16 in", nanometres(11'112'500)), std::nullopt) << "a fraction has none";
    EXPECT_EQ(digit("", thou(57.5)), std::nullopt);
    EXPECT_EQ(digit("58 thou", thou(60)), std::nullopt) << "it does not mean the value";
}

} // namespace
} // namespace caprail
