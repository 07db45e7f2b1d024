// SPDX-License-Identifier: GPL-3.0-or-later
/// Every limit that a refusal names, from both sides.
#include <fasteners/grade.h>
#include <fasteners/movement.h>
#include <fasteners/preload.h>
#include <fasteners/sequence.h>
#include <fasteners/wrench.h>
#include <gmock/gmock.h>

using namespace caprail;
using testing::HasSubstr;

namespace {

template <class T> std::string answer(const Result<T>& result) {
    return result ? std::string("taken") : result.error().sentence;
}

constexpr Length step = nanometres(1);
const Units inchesHere;

/// Both values are taken; the ones a step outside are not, with a sentence that holds `says`.
template <class Q, class Of> void isFrom(Q lo, Q hi, Q little, const char* says, Of of) {
    EXPECT_EQ(answer(of(lo)), "taken") << says;
    EXPECT_EQ(answer(of(hi)), "taken") << says;
    EXPECT_THAT(answer(of(lo - little)), HasSubstr(says));
    EXPECT_THAT(answer(of(hi + little)), HasSubstr(says));
}

} // namespace

TEST(FastenerLimits, of_a_thread_are_those_that_its_refusals_name) {
    isFrom(millimetres(1), millimetres(100), step, "outside 1 to 100 mm",
           [](Length nominal) { return Thread::metric(nominal, Length(nominal.value() / 10)); });
    EXPECT_EQ(answer(Thread::inch(inches(0.05), 80)), "taken");
    EXPECT_THAT(answer(Thread::inch(inches(0.05) - step, 80)), HasSubstr("outside 0.05 to 4 in"));
    EXPECT_EQ(answer(Thread::inch(inches(4), 4)), "taken");
    EXPECT_THAT(answer(Thread::inch(inches(4) + step, 4)), HasSubstr("outside 0.05 to 4 in"));
    const auto pitched = [](Length pitch) { return answer(Thread::metric(millimetres(12), pitch)); };
    EXPECT_EQ(pitched(millimetres(4)), "taken");
    EXPECT_THAT(pitched(millimetres(4) + step), HasSubstr("a hundredth and a third"));
    EXPECT_EQ(pitched(millimetres(0.12)), "taken");
    EXPECT_THAT(pitched(millimetres(0.12) - step), HasSubstr("a hundredth and a third"));
    EXPECT_EQ(answer(Thread::inch(inches(1), 3)), "taken");
    EXPECT_THAT(answer(Thread::inch(inches(1), 2)), HasSubstr("a hundredth and a third"));
    EXPECT_EQ(answer(Thread::inch(inches(1), 100)), "taken");
    EXPECT_THAT(answer(Thread::inch(inches(1), 101)), HasSubstr("a hundredth and a third"));
    EXPECT_THAT(answer(Thread::inch(inches(1), 0)), HasSubstr("a hundredth and a third"));
    EXPECT_EQ(answer(Thread::inch(inches(3), 1)), "taken");
}

TEST(FastenerLimits, of_a_material_are_those_that_its_refusals_name) {
    isFrom(megapascals(40'000), megapascals(400'000), kilopascals(1), "outside 40 to 400 GPa", plausibleModulus);
    isFrom(megapascals(50), megapascals(3'000), kilopascals(1), "outside 50 to 3000 MPa",
           [](Stress proof) { return Grade::ofProofStress(proof); });
}

TEST(FastenerLimits, of_a_preload_and_its_torque_are_those_that_their_refusals_name) {
    const Thread thread = *Thread::inch(inches(0.4375), 20);
    isFrom(millinewtonMetres(100), newtonMetres(2'000), millinewtonMetres(1), "outside what a fastener here can have",
           [](Torque t) { return plausibleTorque(t, inchesHere); });
    isFrom(Force(1), newtons(2'000'000), Force(1), "outside what a fastener here can have",
           [](Force f) { return plausiblePreload(f, inchesHere); });
    isFrom(0.03, 1.0, 0.0001, "outside 0.03 to 1",
           [&](double k) { return preloadShortForm(poundFeet(70), thread, k, inchesHere); });
    const auto withFriction = [&](JointFriction friction) {
        return preloadLongForm(poundFeet(70), thread, friction, inchesHere);
    };
    isFrom(0.01, 1.0, 0.0001, "outside 0.01 to 1",
           [&](double mu) { return withFriction({mu, 0.12, millimetres(7)}); });
    isFrom(0.01, 1.0, 0.0001, "outside 0.01 to 1",
           [&](double mu) { return withFriction({0.12, mu, millimetres(7)}); });
    EXPECT_EQ(answer(withFriction({0.12, 0.12, step})), "taken");
    EXPECT_THAT(answer(withFriction({0.12, 0.12, Length()})), HasSubstr("above zero"));
    isFrom(0.0, 0.9, 0.001, "outside 0 to 90 %", [&](double scatter) {
        return shareOfProof(newtons(10'000), thread, Grade::of(StandardGrade::sae8), scatter, inchesHere);
    });
}

TEST(FastenerLimits, of_a_wrench_are_those_that_its_refusals_name) {
    const Length longest = millimetres(5'000);
    const auto lever = [](Length wrench, Length offset, Angle angle) {
        return wrenchSetting(poundFeet(70), {wrench, offset, angle}, inchesHere);
    };
    isFrom(step, longest, step, "at most 5 m", [&](Length l) { return lever(l, Length(), Angle()); });
    isFrom(Length(), longest, step, "negative or above 5 m", [&](Length l) { return lever(inches(16), l, Angle()); });
    isFrom(Angle(), degrees(180), Angle(1), "between 0°",
           [&](Angle angle) { return lever(inches(16), inches(1), angle); });
    EXPECT_EQ(answer(lever(inches(10), inches(9), degrees(180))), "taken") << "a tenth of the wrench is left";
    EXPECT_THAT(answer(lever(inches(10), inches(9) + step, degrees(180))), HasSubstr("leaves no lever"));
    EXPECT_EQ(answer(WrenchRange::upTo(millinewtonMetres(1))), "taken");
    const Torque most = newtonMetres(300);
    EXPECT_EQ(answer(WrenchRange::upTo(most, millinewtonMetres(1))), "taken");
    EXPECT_NE(answer(WrenchRange::upTo(most, Torque())), "taken");
    EXPECT_EQ(answer(WrenchRange::upTo(most, most - millinewtonMetres(1))), "taken");
    EXPECT_NE(answer(WrenchRange::upTo(most, most)), "taken");
}

TEST(FastenerLimits, of_a_movement_are_more_than_nothing_and_a_whole_turn) {
    EXPECT_EQ(answer(plausibleMovement(Angle(1))), "taken");
    EXPECT_NE(answer(plausibleMovement(Angle())), "taken");
    EXPECT_EQ(answer(plausibleMovement(degrees(360))), "taken");
    EXPECT_THAT(answer(plausibleMovement(degrees(360) + Angle(1))), HasSubstr("more than a whole turn"));
}

TEST(FastenerLimits, of_sequences_are_those_that_their_refusals_name) {
    for (const int caps : {3, 9}) {
        EXPECT_EQ(answer(mainCapSequence(caps, 2)), "taken") << caps;
        EXPECT_EQ(answer(mainCapSequence(caps, 4)), "taken") << caps;
    }
    EXPECT_THAT(answer(mainCapSequence(2, 2)), HasSubstr("3 to 9 main caps"));
    EXPECT_THAT(answer(mainCapSequence(10, 2)), HasSubstr("3 to 9 main caps"));
    EXPECT_THAT(answer(mainCapSequence(5, 3)), HasSubstr("2 or 4 fasteners"));
    for (const int rods : {1, 16}) {
        EXPECT_EQ(answer(rodSequence(rods)), "taken") << rods;
    }
    EXPECT_THAT(answer(rodSequence(0)), HasSubstr("1 to 16 rods"));
    EXPECT_THAT(answer(rodSequence(17)), HasSubstr("1 to 16 rods"));
    const auto row = [](int count) {
        std::vector<PlanPoint> points;
        for (int i = 0; i < count; ++i) {
            points.push_back({inches(i), Length()});
        }
        return answer(outwardSequence(points));
    };
    EXPECT_EQ(row(1), "taken");
    EXPECT_EQ(row(500), "taken");
    EXPECT_NE(row(0), "taken");
    EXPECT_THAT(row(501), HasSubstr("500"));
}

TEST(FastenerLimits, of_steps_are_one_to_ten_and_more_than_nothing) {
    EXPECT_EQ(equalSteps(poundFeet(70), 1)->size(), 1U);
    EXPECT_EQ(equalSteps(poundFeet(70), 10)->size(), 10U);
    EXPECT_THAT(answer(equalSteps(poundFeet(70), 0)), HasSubstr("1 to 10 steps"));
    EXPECT_THAT(answer(equalSteps(poundFeet(70), 11)), HasSubstr("1 to 10 steps"));
    EXPECT_EQ(answer(equalSteps(millinewtonMetres(1), 1)), "taken");
    EXPECT_THAT(answer(equalSteps(Torque(), 3)), HasSubstr("above zero"));
}
