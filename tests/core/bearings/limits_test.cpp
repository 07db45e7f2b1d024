// SPDX-License-Identifier: GPL-3.0-or-later
/// Every limit that a refusal names, from both sides.
#include <bearings/clearance.h>
#include <bearings/expansion.h>
#include <bearings/shell_selection.h>
#include <gmock/gmock.h>

using namespace caprail;
using testing::HasSubstr;

namespace {

constexpr Length step = nanometres(1);

template <class T> std::string answer(const Result<T>& result) {
    return result ? std::string("taken") : result.error().sentence;
}

BearingToFit bearing(const std::string& id) {
    return {id, inches(2.6405), inches(2.4480), *Band::between(thou(1), thou(3)), thou(2), ""};
}

std::string shells(const BearingToFit& one, Length thickness = thou(95)) {
    return answer(selectShells({one}, {{"A", thickness, ShellHalf::either, ""}}));
}

} // namespace

TEST(ShellLimits, are_32_bearings_and_200_shells) {
    const auto stopped = [] { return true; };
    std::vector<BearingToFit> bearings;
    for (int i = 1; i <= 32; ++i) {
        bearings.push_back(bearing("b" + std::to_string(i)));
    }
    std::vector<ShelfShell> shelf;
    for (int i = 1; i <= 200; ++i) {
        shelf.push_back({"s" + std::to_string(i), thou(95), ShellHalf::either, ""});
    }
    EXPECT_EQ(answer(selectShells(bearings, shelf, {}, stopped)), "taken");
    bearings.push_back(bearing("b33"));
    EXPECT_EQ(answer(selectShells(bearings, shelf, {}, stopped)),
              "Shells are chosen for at most 32 bearings at a time, not for 33.");
    bearings.pop_back();
    shelf.push_back({"s201", thou(95), ShellHalf::either, ""});
    EXPECT_THAT(answer(selectShells(bearings, shelf, {}, stopped)), HasSubstr("201 shells, more than the 200"));
}

TEST(ShellLimits, of_each_size_are_above_zero_and_one_metre) {
    const Length most = millimetres(1'000);
    for (Length BearingToFit::*size : {&BearingToFit::housing, &BearingToFit::journal}) {
        BearingToFit one = bearing("b");
        for (const Length good : {step, most}) {
            one.*size = good;
            EXPECT_EQ(shells(one), "taken");
        }
        for (const Length wrong : {Length(), most + step}) {
            one.*size = wrong;
            EXPECT_THAT(shells(one), HasSubstr("above zero and at most"));
        }
    }
    EXPECT_EQ(shells(bearing("b"), step), "taken");
    EXPECT_EQ(shells(bearing("b"), most), "taken");
    EXPECT_THAT(shells(bearing("b"), Length()), HasSubstr("above zero and at most"));
    EXPECT_THAT(shells(bearing("b"), most + step), HasSubstr("above zero and at most"));
    BearingToFit one = bearing("b");
    one.band = *Band::between(-most, most);
    EXPECT_EQ(shells(one), "taken");
    one.band = *Band::between(-most, most + step);
    EXPECT_THAT(shells(one), HasSubstr("wider than any clearance"));
    one.band = *Band::between(-most - step, most);
    EXPECT_THAT(shells(one), HasSubstr("wider than any clearance"));
}

TEST(WarmLimits, are_those_that_the_refusal_names) {
    const Warming usual{millionthsPerKelvin(11.4), millionthsPerKelvin(12.3), celsius(20), celsius(90), celsius(90), {}};
    const auto warmed = [](const Warming& w) { return answer(clearanceAt(thou(2), inches(2.5), w)); };
    for (Expansion Warming::*of : {&Warming::block, &Warming::crank}) {
        Warming w = usual;
        for (const double good : {0.0, 100.0}) {
            w.*of = millionthsPerKelvin(good);
            EXPECT_EQ(warmed(w), "taken") << good;
        }
        for (const double wrong : {-0.001, 100.001}) {
            w.*of = millionthsPerKelvin(wrong);
            EXPECT_THAT(warmed(w), HasSubstr("between 0 and 100 millionths")) << wrong;
        }
    }
    for (Temperature Warming::*of : {&Warming::measuredAt, &Warming::blockNow, &Warming::crankNow}) {
        Warming w = usual;
        for (const double good : {-60.0, 300.0}) {
            w.*of = celsius(good);
            EXPECT_EQ(warmed(w), "taken") << good;
        }
        for (const double wrong : {-60.001, 300.001}) {
            w.*of = celsius(wrong);
            EXPECT_THAT(warmed(w), HasSubstr("between −60 °C and 300 °C")) << wrong;
        }
    }
    EXPECT_EQ(answer(clearanceAt(thou(2), step, usual)), "taken");
    EXPECT_THAT(answer(clearanceAt(thou(2), Length(), usual)), HasSubstr("above zero"));
    Warming shelled = usual;
    shelled.shells = WarmShells{Length(), millionthsPerKelvin(11.3)};
    EXPECT_EQ(warmed(shelled), "taken");
    shelled.shells->both = -step;
    EXPECT_THAT(warmed(shelled), HasSubstr("cannot be below zero"));
}
