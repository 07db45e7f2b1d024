// SPDX-License-Identifier: GPL-3.0-or-later
/// The shop's own checks: three sorts, each where it was placed.
#include "bench.h"

#include <gmock/gmock.h>

using namespace caprail;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

namespace {

OwnCheckSet ownCheck(const char* name, const char* words, OwnCheckSort sort, OwnCheckHolds holds,
                     std::int64_t places = 1) {
    OwnCheckSet set;
    set.ownCheck = name;
    set.words = words;
    set.sort = sort;
    set.holds = holds;
    set.places = places;
    if (sort == OwnCheckSort::measured) {
        set.lo = Entered<Length>{thou(20), ""};
        set.hi = Entered<Length>{thou(40), ""};
    }
    if (holds == OwnCheckHolds::closingStep) {
        set.step = ClosingStep::panFastened;
    }
    return set;
}

OwnCheckAnswered yes(const char* name, std::int64_t place = 1, YesNo answer = YesNo::yes) {
    OwnCheckAnswered answered;
    answered.ownCheck = name;
    answered.place = place;
    answered.answer = answer;
    return answered;
}

} // namespace

TEST(OwnChecks, each_holds_what_it_was_placed_before) {
    Bench bench;
    bench.make(ownCheck("tray", "windage tray clear of every throw", OwnCheckSort::yesNo, OwnCheckHolds::trialFit, 2));
    bench.make(ownCheck("seal", "rear main seal in", OwnCheckSort::yesNo, OwnCheckHolds::closing));
    bench.make(ownCheck("bolts", "pump and pickup bolts", OwnCheckSort::yesNo, OwnCheckHolds::closingStep));
    bench.upToTheFit();
    EXPECT_THAT(bench.holding(GateKind::trialFit), ElementsAre("own-check:tray:1", "own-check:tray:2"));
    bench.make(yes("tray"));
    bench.make(yes("tray", 2, YesNo::no));
    EXPECT_THAT(bench.holding(GateKind::trialFit), ElementsAre("own-check:tray:2"));
    EXPECT_EQ(bench.stateOf("own-check:tray:2"), CheckState::out);
    bench.make(yes("tray", 2));
    EXPECT_THAT(bench.holding(GateKind::trialFit), IsEmpty());
    bench.trialFit();
    bench.pickup();
    bench.stacks(StackMove::takenOff);
    bench.round();
    EXPECT_THAT(bench.holding(GateKind::closing), ElementsAre("own-check:seal:1"));
    bench.make(yes("seal"));
    EXPECT_TRUE(bench.isOpen(GateKind::closing)) << "the bolts hold their step alone";
    bench.close(ClosingStep::crankTurned);
    drafts::closingEvidence(bench, bench.facts, ClosingStep::panFastened);
    EXPECT_THAT(bench.refusal(ClosingStepDone{ClosingStep::panFastened, {}, ""}), HasSubstr("pump and pickup bolts"));
    bench.make(yes("bolts"));
    bench.make(ClosingStepDone{ClosingStep::panFastened, {}, ""});
}

TEST(OwnChecks, a_measured_one_is_judged_with_its_instrument_or_not_proven) {
    Bench bench;
    bench.make(ownCheck("tube", "dipstick tube to counterweight", OwnCheckSort::measured, OwnCheckHolds::closing));
    OwnCheckAnswered read;
    read.ownCheck = "tube";
    read.value = Entered<Length>{thou(30), ""};
    bench.make(read);
    EXPECT_EQ(bench.stateOf("own-check:tube:1"), CheckState::notProven) << "no instrument";
    read.instrument = "LEAVES";
    bench.make(read);
    EXPECT_EQ(bench.stateOf("own-check:tube:1"), CheckState::good);
    read.value = Entered<Length>{thou(15), ""};
    bench.make(read);
    EXPECT_EQ(bench.stateOf("own-check:tube:1"), CheckState::out) << "the last reading is judged";
    EXPECT_THAT(bench.refusal(yes("tube")), HasSubstr("answered by measured"));
}

TEST(OwnChecks, a_photo_must_be_in_the_record) {
    Bench bench;
    bench.make(ownCheck("plugs", "oil-way plugs", OwnCheckSort::photo, OwnCheckHolds::closing));
    OwnCheckAnswered shown;
    shown.ownCheck = "plugs";
    shown.photo = std::string(64, 'a');
    EXPECT_THAT(bench.refusal(shown), HasSubstr("not in this record"));
    AttachmentAdded photo;
    photo.fileName = "plugs.jpg";
    photo.sha256 = std::string(64, 'a');
    photo.originalSha256 = photo.sha256;
    bench.make(photo);
    bench.make(shown);
    EXPECT_EQ(bench.stateOf("own-check:plugs:1"), CheckState::good);
}

TEST(OwnChecks, another_wording_makes_the_answers_stale_and_no_places_withdraw_it) {
    Bench bench;
    OwnCheckSet set = ownCheck("holes", "blind holes dry", OwnCheckSort::yesNo, OwnCheckHolds::closing);
    bench.make(set);
    bench.make(yes("holes"));
    set.words = "blind holes dry and chased";
    bench.make(set);
    EXPECT_EQ(bench.stateOf("own-check:holes:1"), CheckState::stale);
    set.places = 0;
    bench.make(set);
    EXPECT_EQ(bench.assessment.find("own-check:holes:1"), nullptr);
    set.sort = OwnCheckSort::measured;
    EXPECT_THAT(bench.refusal(set), HasSubstr("has a band"));
    set = ownCheck("x y", "z", OwnCheckSort::yesNo, OwnCheckHolds::closing);
    EXPECT_THAT(bench.refusal(set), HasSubstr("without spaces"));
}

