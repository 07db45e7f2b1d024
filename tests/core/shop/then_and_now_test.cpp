// SPDX-License-Identifier: GPL-3.0-or-later
#include "shop_records.h"

#include <gmock/gmock.h>
#include <shop/build_comparison.h>
#include <shop/record_figures.h>

namespace caprail {
namespace {

using namespace shoptest;

FastenerThenNow fastenerNamed(const BuildComparison& comparison, const char* name) {
    const auto at = std::ranges::find(comparison.fasteners, name, [](const auto& f) { return code(f.fastener); });
    EXPECT_NE(at, comparison.fasteners.end()) << name;
    return at == comparison.fasteners.end() ? FastenerThenNow{} : *at;
}

TEST(ThenAndNow, counts_the_rounds_in_which_each_fastener_moved_in_its_own_build) {
    Maker engine;
    engine.begin("Orrin Vale", "V8");
    engine.tightenAll();
    engine.bearings();
    engine.round({"rod-1L"});
    engine.round({"rod-1L", "rod-2R"});
    engine.survey();
    engine.kit();
    engine.stacks();
    engine.trialFit();
    engine.liftStacks();
    engine.round();
    engine.close();
    engine.make(BuildBegun{2, "a season of racing"});
    engine.tightenAll(72);
    engine.round({"main-1L", "main-2R"});
    engine.round({"main-1L"});
    const auto c = compareLastBuilds(engine.ledger);
    ASSERT_TRUE(c) << c.error().sentence;
    EXPECT_EQ(c->roundsThen.rounds, 3);
    EXPECT_EQ(c->roundsThen.pulls, 30);
    EXPECT_EQ(c->roundsThen.moved, 3);
    EXPECT_EQ(c->roundsThen.largest, degrees(4));
    EXPECT_EQ(c->roundsNow.rounds, 2);
    EXPECT_EQ(c->roundsNow.pulls, 20);
    EXPECT_EQ(c->roundsNow.moved, 3);
    EXPECT_EQ(c->roundsNow.largest, degrees(4));
    const auto moved = [&](const char* name) {
        const FastenerThenNow f = fastenerNamed(*c, name);
        return std::pair(f.movedThen, f.movedNow);
    };
    EXPECT_EQ(moved("main-1L"), (std::pair<std::int64_t, std::int64_t>(0, 2)));
    EXPECT_EQ(moved("main-2R"), (std::pair<std::int64_t, std::int64_t>(0, 1)));
    EXPECT_EQ(moved("rod-1L"), (std::pair<std::int64_t, std::int64_t>(2, 0)));
    EXPECT_EQ(moved("rod-2R"), (std::pair<std::int64_t, std::int64_t>(1, 0)));
    EXPECT_EQ(moved("main-3L"), (std::pair<std::int64_t, std::int64_t>(0, 0)));
    EXPECT_EQ(fastenerNamed(*c, "rod-1L").now, poundFeet(45));
}

TEST(WrenchFigure, keeps_its_own_due_date_and_count_and_has_the_usual_ones_without) {
    Maker maker;
    maker.begin("Orrin Vale", "V8");
    InstrumentAdded own{"W2", InstrumentType::torqueWrench, "", "T-10", {}, {}, {}, {}, {}, {}, {}};
    own.calibrated = *parseDate("2026-02-16");
    own.due = *parseDate("2026-08-16");
    own.dueCycles = 700;
    own.cycles = 12;
    maker.make(own);
    InstrumentAdded notDone{"W3", InstrumentType::torqueWrench, "", "", {}, {}, {}, {}, {}, {}, {}};
    maker.make(notDone);
    const auto of = [&](const char* name) {
        const RecordFigures figures = figuresOf(maker.ledger);
        const auto at = std::ranges::find(figures.instruments, name, &InstrumentFigure::name);
        EXPECT_NE(at, figures.instruments.end()) << name;
        return at == figures.instruments.end() ? InstrumentFigure{} : *at;
    };
    EXPECT_EQ(of("W2").due, *parseDate("2026-08-16"));
    EXPECT_EQ(of("W2").dueCycles, 700);
    EXPECT_EQ(of("W2").cycles, 12);
    EXPECT_EQ(of("W1").due, *parseDate("2027-02-16")) << "a year after it was done";
    EXPECT_EQ(of("W1").dueCycles, 5'000);
    EXPECT_FALSE(of("W3").due) << "never calibrated: no day can be said";
    EXPECT_EQ(of("W3").dueCycles, 5'000);
    EXPECT_EQ(of("MIC-1").due, Date{20'600});
    EXPECT_FALSE(of("BORE-1").due);
    EXPECT_FALSE(of("MIC-1").dueCycles) << "a micrometer has no cycles";
    maker.tightenAll();
    EXPECT_EQ(of("W1").cycles, 10);
    EXPECT_EQ(of("W2").cycles, 12);
}

} // namespace
} // namespace caprail
