// SPDX-License-Identifier: GPL-3.0-or-later
/// Ledgers that came from elsewhere, judged as if each entry had been typed in the window when it was made.
#include "bench.h"

#include <assessment/ledger_fold.h>
#include <assessment/review.h>
#include <gmock/gmock.h>

using namespace caprail;
using testing::HasSubstr;

namespace {

/// Everything up to the sign-off.
void close(Bench& bench) {
    bench.close();
    bench.make(SignedOff{"Assembled and checked as recorded."});
}

/// A ledger made past every rule, as an import can bring one.
class Forged {
public:
    explicit Forged(const Ledger& begin) {
        for (const Entry& entry : begin.entries()) {
            add(entry.body);
        }
    }
    std::int64_t add(Body body, const std::string& person = "Mira") {
        return ledger.append({1'700'000'000'000 + ledger.size() * 1000}, person, std::move(body)).sequence;
    }
    void close() {
        for (const auto& [step, name] : allWords<ClosingStep>()) {
            add(ClosingStepDone{step, {}, ""});
        }
        add(SignedOff{"All is well."});
    }
    [[nodiscard]] std::int64_t firstNotAllowed() const {
        const LedgerReview review = reviewLedger(ledger);
        EXPECT_TRUE(review.isWhole);
        EXPECT_TRUE(!review.first || !review.first->why.empty());
        return review.first ? review.first->entry : 0;
    }
    Ledger ledger;
};

} // namespace

TEST(Review, finds_nothing_in_a_job_done_in_the_window) {
    Bench bench;
    bench.readyToClose();
    close(bench);
    EXPECT_FALSE(reviewLedger(bench.ledger).first);
    bench.make(BuildBegun{2, "spun a bearing"});
    bench.tightenAll();
    const auto slip = bench.gapAt({1, Side::left}, 51);
    bench.make(Struck{slip, "a slip"});
    const LedgerReview review = reviewLedger(bench.ledger);
    EXPECT_FALSE(review.first) << sentenceOf(*review.first, "0");
    EXPECT_TRUE(review.isWhole);
}

TEST(Review, a_sign_off_behind_a_locked_gate_is_named_and_is_no_sign_off) {
    const Bench bench;
    Forged forged(bench.ledger);
    forged.close();
    const auto step = bench.ledger.size() + 1;
    EXPECT_EQ(forged.firstNotAllowed(), step);
    const LedgerReview review = reviewLedger(forged.ledger);
    EXPECT_THAT(sentenceOf(*review.first, "9.9.9"),
                testing::AllOf(HasSubstr("Entry " + std::to_string(step)), HasSubstr("Closing step done"),
                               HasSubstr("Mira"), HasSubstr("Caprail 9.9.9"), HasSubstr("Closing is locked")));
    const Facts facts = fold(forged.ledger);
    EXPECT_FALSE(facts.isClosed());
    EXPECT_TRUE(facts.closing.empty());
    ASSERT_EQ(facts.neverValid.size(), 8U);
    EXPECT_EQ(facts.neverValid.back().entry, forged.ledger.size());
    const Assessment assessment = assess(facts);
    EXPECT_FALSE(assessment.isReadyToSign);
    EXPECT_THAT(assessment.next.sentence, HasSubstr("The sign-off in entry " + std::to_string(forged.ledger.size()) +
                                                    ", by Mira, was never valid"));
}

TEST(Review, measuring_after_the_sign_off_does_not_make_it_valid) {
    Bench bench;
    Forged forged(bench.ledger);
    forged.close();
    const auto before = bench.ledger.size();
    bench.readyToClose();
    for (std::int64_t n = before + 1; n <= bench.ledger.size(); ++n) {
        forged.add(bench.ledger.at(n).body);
    }
    const Facts facts = fold(forged.ledger);
    EXPECT_TRUE(assess(facts).gate(GateKind::closing).isOpen);
    EXPECT_FALSE(facts.isClosed()) << "the gate was locked when it was made";
}

TEST(Review, a_sign_off_without_its_steps_in_order_is_none) {
    Bench bench;
    bench.readyToClose();
    Forged skipped(bench.ledger);
    skipped.add(drafts::closingStep(bench.facts, ClosingStep::shimsCounted));
    const auto outOfOrder = skipped.add(ClosingStepDone{ClosingStep::girdleLowered, {}, ""});
    skipped.add(SignedOff{"x"});
    EXPECT_EQ(skipped.firstNotAllowed(), outOfOrder);
    const Facts facts = fold(skipped.ledger);
    EXPECT_FALSE(facts.isClosed());
    EXPECT_EQ(facts.closing.size(), 1U) << "the step that was allowed counts";
}

TEST(Review, names_the_first_entry_of_every_sort_that_was_not_allowed) {
    Bench bench;
    bench.tightenAll();
    bench.bearings();
    bench.survey();
    bench.kit();
    bench.build();
    const Position p{2, Side::right};
    const std::vector<Body> wrong{GapReading{{4, Side::left}, 1, {thou(50), ""}, ""},
                                  GapReading{p, 1, {thou(50), ""}, "NO-SUCH"},
                                  TrialFitResult{TrialItem::dipstick, 0, TrialResult::pass, {}, ""},
                                  RoundBegun{1, "W1"},
                                  ClosingStepDone{ClosingStep::stacksRefitted, {}, ""},
                                  SignedOff{"x"},
                                  StackBuilt{p, {{"S-1L"}}},
                                  ShimAdded{"S-1L", {thou(5), ""}, ""},
                                  JudgedAgain{"gap:1L", "x"},
                                  BuildBegun{2, "x"},
                                  PersonAdded{"Mi\u202era", ""},
                                  drafts::group(FastenerKind::mainCap, 6, "9/99-3 banana", 70),
                                  Struck{3, "the layout that all the rest needs"},
                                  Struck{9999, "x"},
                                  FindingSettled{"F9", "x"}};
    for (const Body& body : wrong) {
        Forged forged(bench.ledger);
        const auto at = forged.add(body);
        forged.add(NoteAdded{"", "later"});
        EXPECT_EQ(forged.firstNotAllowed(), at) << kindOf(body).kind;
    }
    Forged stranger(bench.ledger);
    const auto unknown = stranger.add(NoteAdded{"", "x"}, "Nobody");
    EXPECT_EQ(stranger.firstNotAllowed(), unknown);
}

TEST(Review, after_the_sign_off_only_notes_and_a_new_build_are_allowed) {
    Bench bench;
    bench.readyToClose();
    close(bench);
    Forged forged(bench.ledger);
    forged.add(NoteAdded{"", "ran well"});
    const auto wrong = forged.add(GapReading{{1, Side::left}, 3, {thou(50), ""}, ""});
    EXPECT_EQ(forged.firstNotAllowed(), wrong);
    Forged struck(bench.ledger);
    const auto strike = struck.add(Struck{12, "behind its back"});
    EXPECT_EQ(struck.firstNotAllowed(), strike);
    Forged reopened(bench.ledger);
    reopened.add(Struck{bench.ledger.size(), "the bead was dry"});
    EXPECT_EQ(reopened.firstNotAllowed(), 0) << "the sign-off itself may be struck";
    reopened.add(Struck{bench.ledger.size(), "again"});
    EXPECT_EQ(reopened.firstNotAllowed(), reopened.ledger.size());
}

TEST(Review, judges_an_entry_by_what_stood_when_it_was_made) {
    // A gap is struck after a closing step: the step was allowed when it was made, and stays so.
    Bench bench;
    bench.readyToClose();
    bench.close(ClosingStep::shimsCounted);
    std::int64_t gap = 0;
    for (const Entry& entry : bench.ledger.entries()) {
        gap = entry.body.is<GapReading>() ? entry.sequence : gap;
    }
    bench.make(Struck{gap, "a slip"});
    const LedgerReview review = reviewLedger(bench.ledger);
    EXPECT_FALSE(review.first) << sentenceOf(*review.first, "0");
    const Facts facts = fold(bench.ledger);
    EXPECT_TRUE(facts.closing.contains(ClosingStep::shimsCounted));
    EXPECT_TRUE(facts.neverValid.empty());
    // The next one meets a locked gate, and so does one that is forged.
    EXPECT_THAT(bench.refusal(ClosingStepDone{ClosingStep::beadLaid, {}, ""}), HasSubstr("locked"));
    Forged forged(bench.ledger);
    const auto step = forged.add(ClosingStepDone{ClosingStep::beadLaid, {}, ""});
    EXPECT_EQ(forged.firstNotAllowed(), step);
}

TEST(Review, names_the_strike_that_later_entries_cannot_stand_without) {
    Bench bench;
    const auto shim = bench.make(ShimAdded{"S1", {thou(50), ""}, ""});
    bench.make(StackBuilt{{2, Side::right}, {{"S1"}}});
    bench.make(NoteAdded{"", "x"});
    Forged forged(bench.ledger);
    const auto strike = forged.add(Struck{shim, "wrong bag"});
    EXPECT_EQ(forged.firstNotAllowed(), strike);
    EXPECT_THAT(reviewLedger(forged.ledger).first->why, HasSubstr("needs entry " + std::to_string(shim)));
}

TEST(Review, does_not_hold_a_strike_for_what_older_rules_allowed) {
    Bench bench;
    Forged old(bench.ledger);
    const auto slip = old.add(NoteAdded{"", "a slip"});
    old.add(drafts::group(FastenerKind::girdleNut, 6, "9/99-3 banana", 30));
    const Facts facts = fold(old.ledger);
    EXPECT_TRUE(mayAppend(old.ledger, facts, assess(facts), "Mira", Struck{slip, "a slip"}));
}

TEST(Review, a_salvage_is_told_by_the_salvage_alone) {
    Bench bench;
    Salvaged salvaged{"smith.caprail", 1, std::string(64, 'a'), "", {}, {}};
    EXPECT_THAT(bench.refusal(salvaged), HasSubstr("salvaging"));
    Forged forged(bench.ledger);
    const auto entry = forged.add(salvaged, "Caprail");
    EXPECT_EQ(forged.firstNotAllowed(), 0) << "it stands in the file of a salvaged record";
    const auto strike = forged.add(Struck{entry, "look away"});
    EXPECT_EQ(forged.firstNotAllowed(), strike);
}

TEST(Review, random_jobs_done_by_the_rules_are_allowed_by_them) {
    Bench bench;
    bench.readyToClose();
    for (std::int64_t n = bench.ledger.size(); n > bench.ledger.size() - 60 && n > 0; --n) {
        (void)bench.tryTo(Struck{n, "tried"});
    }
    const LedgerReview review = reviewLedger(bench.ledger);
    EXPECT_FALSE(review.first) << sentenceOf(*review.first, "0");
}

TEST(Review, judges_a_long_ledger_whole_and_gives_up_on_one_made_to_last_for_ever) {
    Bench bench;
    bench.layIn();
    Forged readings(bench.ledger);
    for (int i = 0; i < 200'000; ++i) {
        readings.add(GapReading{{1 + i % 3, Side::left}, 1 + i % 9, {thou(50), ""}, "LEAVES"});
    }
    EXPECT_EQ(readings.firstNotAllowed(), 0);

    Forged endless(bench.ledger);
    for (int i = 0; i < 20'000; ++i) {
        const auto gap = endless.add(GapReading{{1, Side::left}, 1, {thou(50), ""}, "LEAVES"});
        endless.add(ClosingStepDone{ClosingStep::stacksRefitted, {}, ""});
        endless.add(Struck{gap, "again"});
    }
    EXPECT_FALSE(fold(endless.ledger).isClosed());
}
