// SPDX-License-Identifier: GPL-3.0-or-later
/// How a recheck is led from the stack as built to a bracket around its residual.
#include "work_bench.h"

#include <gmock/gmock.h>
#include <work/recheck_guide.h>

namespace caprail {
namespace {

using testing::HasSubstr;

const Position place{2, Side::right};
const WhoFeels mira{"Mira", "EDGE"};

/// A stack that arithmetic cannot prove, and shims of its marking that differ by tenths.
class Bracketing : public testing::Test {
protected:
    Bracketing() : bench(false) {
        bench.make(drafts::instrument("MIC", InstrumentType::micrometer, 0.3));
        bench.make(drafts::instrument("LEAVES", InstrumentType::feelerGauge, 3.5));
        bench.make(drafts::instrument("EDGE", InstrumentType::straightedge, 1));
        RulesSet rules;
        rules.decision = DecisionRule::guarded;
        bench.make(rules);
        bench.layIn();
        bench.twoPasses(place, 50);
        shim("S", 50);
        bench.make(StackBuilt{place, {{"S"}}});
    }
    void shim(const std::string& name, double thickness) {
        bench.make(ShimAdded{name, {thou(50), ""}, ""});
        for (int i = 0; i < 2; ++i) {
            bench.make(ShimMeasured{name, {thou(thickness), ""}, "MIC"});
        }
    }
    void shims() {
        for (const auto& [name, thickness] :
             {std::pair{"A1", 50.1}, {"A2", 50.2}, {"A3", 50.3}, {"A4", 50.45}, {"B1", 49.9}, {"B2", 49.8}, {"B3", 49.7}}) {
            shim(name, thickness);
        }
    }
    RecheckGuide guide(const WhoFeels& who = mira, bool isWanted = false) {
        return guideRecheck(bench.facts, bench.assessment, place, who, isWanted);
    }
    void answer(Feel feel) { bench.make(recheckOf(bench.facts, place, guide(), feel, mira)); }
    Bench bench;
};

TEST_F(Bracketing, begins_with_the_stack_as_built_and_goes_on_where_arithmetic_cannot_prove_it) {
    shims();
    ASSERT_EQ(bench.stateOf("stack:2R"), CheckState::tooCloseToCall);
    EXPECT_EQ(guide().ask, RecheckAsk::asBuilt);
    answer(Feel::drags);
    const RecheckGuide thicker = guide();
    ASSERT_EQ(thicker.ask, RecheckAsk::thicker);
    ASSERT_TRUE(thicker.exchange);
    EXPECT_TRUE(thicker.wouldProve) << thicker.doubt;
    EXPECT_EQ(thicker.exchange->out, std::vector<std::string>{"S"});
    EXPECT_GT(thicker.exchange->change, Length());
    answer(Feel::rocks);
    const RecheckGuide thinner = guide();
    ASSERT_EQ(thinner.ask, RecheckAsk::thinner);
    EXPECT_LT(thinner.exchange->change, Length());
    answer(Feel::loose);
    EXPECT_EQ(guide().ask, RecheckAsk::nothing);
    EXPECT_EQ(bench.stateOf("stack:2R"), CheckState::good) << bench.assessment.find("stack:2R")->sentence;
    EXPECT_EQ(bench.assessment.stacks.at(place).carriedBy, ResidualBy::bracket);
    EXPECT_EQ(bench.assessment.stacks.at(place).feltBy, ResidualBy::bracket);
}

TEST_F(Bracketing, proposes_the_largest_exchange_that_still_proves_the_end) {
    shims();
    answer(Feel::drags);
    const RecheckGuide thicker = guide();
    const Uncertainty left = bracketEnd(bench.facts, *thicker.exchange, "EDGE", {});
    EXPECT_FALSE(left.isKnown()) << "without any scatter nothing is known";
    EXPECT_EQ(thicker.exchange->in, std::vector<std::string>{"A3"}) << "0.00045 in and the straightedge go past the band";
}

TEST_F(Bracketing, of_a_step_that_only_dragged_asks_for_a_larger_one) {
    shims();
    answer(Feel::drags);
    const Length first = guide().exchange->change;
    answer(Feel::drags);
    const RecheckGuide again = guide();
    EXPECT_EQ(again.ask, RecheckAsk::thicker);
    if (again.exchange) {
        EXPECT_GT(again.exchange->change, first);
    }
    EXPECT_FALSE(again.wouldProve);
    EXPECT_FALSE(again.doubt.empty());
    EXPECT_NE(bench.stateOf("stack:2R"), CheckState::good);
}

TEST_F(Bracketing, says_when_the_kit_has_no_exchange) {
    answer(Feel::drags);
    EXPECT_EQ(guide().ask, RecheckAsk::thicker);
    EXPECT_FALSE(guide().exchange);
    EXPECT_THAT(guide().doubt, HasSubstr("no exchange"));
    bench.make(recheckOf(bench.facts, place, guide(), Feel::drags, mira));
    EXPECT_FALSE(bench.facts.rechecks.at(place).what.thickerFelt) << "an answer without an exchange is of the stack";
}

TEST_F(Bracketing, says_what_cannot_be_and_begins_anew) {
    shims();
    answer(Feel::drags);
    answer(Feel::loose);
    EXPECT_EQ(guide().ask, RecheckAsk::asBuilt);
    EXPECT_THAT(guide().doubt, HasSubstr("cannot be"));
}

TEST_F(Bracketing, does_not_go_on_with_what_another_person_or_straightedge_felt) {
    shims();
    bench.make(PersonAdded{"Tom", ""});
    answer(Feel::drags);
    EXPECT_EQ(guide({"Tom", "EDGE"}).ask, RecheckAsk::asBuilt);
    EXPECT_EQ(guide({"Mira", ""}).ask, RecheckAsk::asBuilt);
    EXPECT_EQ(guide().ask, RecheckAsk::thicker);
}

TEST_F(Bracketing, leaves_a_stack_alone_that_is_good_without_unless_it_is_wanted) {
    shims();
    RulesSet simple;
    simple.decision = DecisionRule::simple;
    bench.make(simple);
    answer(Feel::drags);
    ASSERT_EQ(bench.stateOf("stack:2R"), CheckState::good);
    EXPECT_EQ(guide().ask, RecheckAsk::nothing);
    EXPECT_EQ(guide(mira, true).ask, RecheckAsk::thicker);
}

} // namespace
} // namespace caprail
