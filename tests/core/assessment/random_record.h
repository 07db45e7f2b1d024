// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// Records drawn at random, told as the entries that a complete one has. Random numbers come from std::mt19937, whose
/// sequence the C++ standard fixes.
#include "bench.h"

#include <random>

namespace caprail {

using Bodies = std::vector<Body>;

/// A record that was measured well or badly, told as the entries that a complete one has.
class RandomRecord {
public:
    /// `worse`: how many times as uneven the bearings are.
    explicit RandomRecord(unsigned seed, int worse = 1) : m_random(seed), m_worse(worse) {}

    Bodies told() {
        Bodies all{PersonAdded{"Mira", ""}, drafts::threeMains(), rules()};
        all.emplace_back(drafts::band(bands::residual, -0.5, 0.5));
        all.emplace_back(drafts::band(bands::mainClearance, 1.8, 2.5));
        all.emplace_back(drafts::band(bands::pickupClearance, 250, 375));
        all.emplace_back(drafts::band(bands::crankEndPlay, 4, 8));
        all.emplace_back(drafts::band(bands::twist, -1, 1));
        all.emplace_back(drafts::group(FastenerKind::mainCap, 6, "7/16-20", 70));
        all.emplace_back(drafts::group(FastenerKind::rod, 4, "3/8-24", 45));
        for (InstrumentAdded tool : drafts::tools(0.2 + upTo(8) / 10.0)) {
            all.emplace_back(tool);
        }
        all.emplace_back(drafts::instrument("DIAL", InstrumentType::dialIndicator, 1));
        all.emplace_back(drafts::instrument("STRIP", InstrumentType::gaugingStrip, 2));
        all.emplace_back(drafts::instrument("WORN", InstrumentType::straightedge, 1 + upTo(20)));
        all.emplace_back(drafts::instrument("WRENCH", InstrumentType::torqueWrench, 0));
        all.emplace_back(drafts::band(bands::rodClearance, 1.6, 2.4));
        all.emplace_back(PartChanged{Part::pickup, "", "another"});
        for (int number = 1; number <= 3; ++number) {
            for (const Side side : {Side::left, Side::right}) {
                all.emplace_back(FastenerTightened{
                    {FastenerKind::mainCap, number, side, Ring::inner}, Entered<Torque>{poundFeet(70), ""}, {}, {}, ""});
            }
            bearing(all, {JournalKind::main, number});
        }
        rods(all);
        if (upTo(2) == 0) {
            feelStudy(all);
        }
        all.emplace_back(CrankLaidIn{});
        for (int i = 0; i < 2; ++i) {
            all.emplace_back(FitReading{std::string(bands::crankEndPlay), 1, near(5500, 2500), "DIAL"});
        }
        girdle(all);
        for (int i = 0; i < 2; ++i) {
            all.emplace_back(PickupReading{PickupTerm::panDepth, near(7'500'000, 60'000), "DEPTH", temperature()});
            all.emplace_back(PickupReading{PickupTerm::gasket, near(60'000, 500), "MIC"});
            all.emplace_back(PickupReading{PickupTerm::plate, near(250'000, 500), "MIC"});
            all.emplace_back(PickupReading{PickupTerm::pickupDepth, near(7'500'000, 60'000), "DEPTH", temperature()});
        }
        trialFit(all);
        verifyRound(all);
        if (upTo(3) == 0) {
            all.emplace_back(FindingOpened{"F1", "", "a burr"});
            all.emplace_back(FindingSettled{"F1", "stoned off"});
        }
        return all;
    }

private:
    int upTo(int n) { return static_cast<int>(m_random() % static_cast<unsigned>(n)); }
    /// Millionths of an inch, to within ± `spread`.
    Entered<Length> near(int middle, int spread) { return {thou((middle + upTo(2 * spread + 1) - spread) / 1000.0), ""}; }
    std::optional<Entered<Temperature>> temperature() {
        return upTo(3) == 0 ? std::nullopt : std::optional(Entered<Temperature>{celsius(20 + upTo(16) / 10.0), ""});
    }
    RulesSet rules() {
        RulesSet r;
        r.decision = upTo(3) == 0 ? DecisionRule::simple : DecisionRule::guarded;
        r.coverage = upTo(2) == 0 ? Coverage::two : Coverage::student;
        return r;
    }
    void bearing(Bodies& all, JournalId j) {
        for (const auto& [station, direction] : {std::pair{1, 1}, {1, 2}, {2, 1}, {2, 2}, {1, 1}, {2, 1}}) {
            all.emplace_back(JournalReading{j, station, direction, near(2'448'000, 150 * m_worse), "MIC", temperature()});
        }
        for (const int station : {1, 2, 1, 2}) {
            all.emplace_back(
                BoreReading{j, BoreMethod::boreWithShells, station, near(2'450'150, 250 * m_worse), "BORE", temperature()});
        }
    }
    /// One with its bare housing and two shells, the other by gauging strip.
    void rods(Bodies& all) {
        for (int number = 1; number <= 2; ++number) {
            for (const Side side : {Side::left, Side::right}) {
                all.emplace_back(FastenerTightened{
                    {FastenerKind::rod, number, side, Ring::inner}, Entered<Torque>{poundFeet(45), ""}, {}, {}, "WRENCH"});
            }
        }
        const JournalId first{JournalKind::rod, 1};
        for (const auto& [station, direction] : {std::pair{1, 1}, {1, 2}, {2, 1}, {2, 2}, {1, 1}}) {
            all.emplace_back(JournalReading{first, station, direction, near(2'098'000, 100 * m_worse), "MIC", temperature()});
        }
        for (const char* shell : {"U1", "L1"}) {
            for (int i = 0; i < 2; ++i) {
                all.emplace_back(
                    ShellMeasured{shell, JournalKind::rod, ShellHalf::either, near(62'000, 30), false, "MIC", temperature()});
            }
        }
        all.emplace_back(ShellsFitted{first, "U1", "L1"});
        for (const int station : {1, 2, 1}) {
            all.emplace_back(
                BoreReading{first, BoreMethod::housing, station, near(2'224'000, 100 * m_worse), "BORE", temperature()});
        }
        for (int i = 0; i < 2; ++i) {
            all.emplace_back(BoreReading{{JournalKind::rod, 2}, BoreMethod::strip, 1, near(2'000, 200), "STRIP"});
        }
    }
    void feelStudy(Bodies& all) {
        all.emplace_back(FeelStudyBegun{1, "Mira", upTo(2) == 0 ? "EDGE" : "WORN", "flat"});
        for (int i = 0; i < 40; ++i) {
            const Entered<Length> height = near(0, 500);
            const double felt = inThou(height.value) + (upTo(101) - 50) / 1000.0;
            all.emplace_back(
                FeelAnswer{1, height, {}, felt > 0.2 ? Feel::rocks : felt < -0.2 ? Feel::loose : Feel::drags});
        }
    }
    void trialFit(Bodies& all) {
        all.emplace_back(GirdleWaySet{});
        for (const auto& [item, name] : allWords<TrialItem>()) {
            for (int number = isPerThrow(item) ? 1 : 0; number <= (isPerThrow(item) ? 2 : 0); ++number) {
                all.emplace_back(
                    TrialFitResult{item, number, upTo(20) == 0 ? TrialResult::fail : TrialResult::pass, {}, ""});
            }
        }
    }
    void verifyRound(Bodies& all) {
        if (upTo(2) == 0) {
            return;
        }
        for (int number = 1; number <= 3; ++number) {
            for (const Side side : {Side::left, Side::right}) {
                all.emplace_back(StackMoved{{number, side}, StackMove::takenOff});
            }
        }
        all.emplace_back(RoundBegun{1, "WRENCH"});
        for (int number = 1; number <= 3; ++number) {
            for (const Side side : {Side::left, Side::right}) {
                RoundOutcome outcome{1, {FastenerKind::mainCap, number, side, Ring::inner}, Outcome::held, {}, {}, "WRENCH"};
                if (upTo(12) == 0) {
                    outcome.outcome = Outcome::moved;
                    outcome.angle = Entered<Angle>{degrees(3), ""};
                }
                outcome.torque = Entered<Torque>{poundFeet(70), ""};
                all.emplace_back(outcome);
            }
        }
    }
    void girdle(Bodies& all) {
        for (const char* more : {"T1", "T2", "T3", "T4"}) {
            all.emplace_back(ShimAdded{more, near(20'000, 400), ""});
            all.emplace_back(ShimMeasured{more, near(20'000, 400), "MIC"});
        }
        for (int number = 1; number <= 3; ++number) {
            for (const Side side : {Side::left, Side::right}) {
                const Position p{number, side};
                const std::string shim = "S-" + code(p);
                all.emplace_back(ShimAdded{shim, near(50'000, 0), ""});
                for (int pass = 1; pass <= 2; ++pass) {
                    GapReading gap{p, pass, near(50'000, 400), "LEAVES", {}, upTo(4) == 0 ? "WORN" : "EDGE"};
                    if (upTo(2) == 0) {
                        gap.doesNotGo = Entered<Length>{gap.gap.value + thou(0.2 + upTo(8) / 10.0), ""};
                    }
                    all.emplace_back(gap);
                    all.emplace_back(ShimMeasured{shim, near(50'000, 200), "MIC"});
                }
                all.emplace_back(StackBuilt{p, {{shim}}});
                RecheckMade recheck{p, upTo(12) == 0 ? Feel::rocks : Feel::drags, upTo(3) == 0 ? "WORN" : "EDGE"};
                if (upTo(3) != 0) {
                    recheck.thickerOut = NameList{{"T1"}};
                    recheck.thickerIn = NameList{{"T2"}};
                    recheck.thickerFelt = Feel::rocks;
                    recheck.thinnerOut = NameList{{"T2"}};
                    recheck.thinnerIn = NameList{{"T1"}};
                    recheck.thinnerFelt = Feel::loose;
                }
                all.emplace_back(recheck);
            }
        }
    }

    std::mt19937 m_random;
    int m_worse;
};

} // namespace caprail
