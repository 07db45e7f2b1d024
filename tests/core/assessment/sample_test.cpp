// SPDX-License-Identifier: GPL-3.0-or-later
/// The sample records are jobs that the program itself would have taken, entry by entry, gates and all.
#include <assessment/admission.h>
#include <assessment/fastener_groups.h>
#include <assessment/review.h>
#include <fstream>
#include <gtest/gtest.h>
#include <ledger/entry_json.h>

using namespace caprail;

class Sample : public testing::TestWithParam<const char*> {};

TEST_P(Sample, every_entry_may_be_made_when_it_is_made) {
    std::ifstream text(std::string(SAMPLE_BUILDS) + "/" + GetParam() + ".jsonl");
    ASSERT_TRUE(text.is_open());
    Ledger ledger;
    Facts facts;
    Assessment assessment = assess(facts);
    for (std::string line; std::getline(text, line);) {
        auto draft = fromJson(line);
        ASSERT_TRUE(draft) << draft.error().sentence;
        const auto ok = mayAppend(ledger, facts, assessment, draft->person, draft->body);
        ASSERT_TRUE(ok) << "entry " << ledger.size() + 1 << ": " << ok.error().sentence;
        ASSERT_TRUE(draft->time);
        const bool isStrike = draft->body.is<Struck>();
        const Entry& entry = ledger.append(*draft->time, draft->person, std::move(draft->body));
        if (isStrike) {
            facts = fold(ledger);
        } else {
            apply(facts, entry);
        }
        assessment = assess(facts);
    }
    EXPECT_GT(ledger.size(), 100);
    EXPECT_FALSE(reviewLedger(ledger).first);
    EXPECT_EQ(fold(ledger).isClosed(), facts.isClosed());
    const std::string name = GetParam();
    const bool isClosed = name == "closed" || name == "rear-cap-on-bolts";
    EXPECT_EQ(facts.isClosed(), isClosed);
    EXPECT_EQ(assessment.gate(GateKind::closing).isOpen, isClosed);
    if (name == "rear-cap-on-bolts") {
        const FastenerId rear{FastenerKind::mainCap, 5, Side::left, Ring::inner};
        EXPECT_EQ(pieceOf(facts, rear), FastenerPiece::bolt);
        EXPECT_EQ(facts.fasteners.at(rear).tightened->what.torque->value, poundFeet(65));
        EXPECT_EQ(membersOf(facts, {FastenerKind::girdleNut}).size(), 8U) << "the front four caps are tied";
        EXPECT_NE(facts.rounds.back().begun.person, facts.fasteners.at(rear).tightened->person);
    }
    if (name == "moved-in-verify-round") {
        EXPECT_EQ(assessment.find("gap:4R")->state, CheckState::stale);
        EXPECT_EQ(assessment.find("verify-round")->state, CheckState::out);
    }
}

INSTANTIATE_TEST_SUITE_P(All, Sample, testing::Values("mid-survey", "moved-in-verify-round", "closed", "rear-cap-on-bolts"));
