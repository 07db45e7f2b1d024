// SPDX-License-Identifier: GPL-3.0-or-later
/// Saying less must never look better: what is not named, not measured or not known never makes a check good, tried on
/// random records. Random numbers come from std::mt19937, whose sequence the C++ standard fixes.
#include "bench.h"

#include <functional>
#include <random>

using namespace caprail;

namespace {

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
        for (int number = 1; number <= 3; ++number) {
            for (const Side side : {Side::left, Side::right}) {
                all.emplace_back(FastenerTightened{
                    {FastenerKind::mainCap, number, side, Ring::inner}, Entered<Torque>{poundFeet(70), ""}, {}, {}, ""});
            }
            bearing(all, {JournalKind::main, number});
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
        r.decision = upTo(3) == 0 ? DecisionWord::simple : DecisionWord::guarded;
        r.coverage = upTo(2) == 0 ? CoverageWord::two : CoverageWord::student;
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
                    GapReading gap{p, pass, near(50'000, 400), "LEAVES", {}, "EDGE"};
                    if (upTo(2) == 0) {
                        gap.doesNotGo = Entered<Length>{gap.gap.value + thou(0.2 + upTo(8) / 10.0), ""};
                    }
                    all.emplace_back(gap);
                    all.emplace_back(ShimMeasured{shim, near(50'000, 200), "MIC"});
                }
                all.emplace_back(StackBuilt{p, {{shim}}});
                RecheckMade recheck{p, Feel::drags, "EDGE"};
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

Assessment assessed(const Bodies& bodies) {
    Facts facts;
    std::int64_t sequence = 0;
    for (const Body& body : bodies) {
        Entry entry;
        entry.sequence = ++sequence;
        entry.time = {1'700'000'000'000 + sequence * 1000};
        entry.person = "Mira";
        entry.body = body;
        apply(facts, entry);
    }
    return assess(facts);
}

void expectNothingBetter(const Assessment& before, const Assessment& after, const std::string& what) {
    for (const Check& check : after.checks) {
        const Check* was = before.find(check.code);
        ASSERT_NE(was, nullptr) << check.code;
        EXPECT_FALSE(check.isGood() && !was->isGood())
            << what << ": " << check.code << " was " << word(was->state) << " (" << was->sentence << "), is "
            << check.sentence;
    }
}

/// What is left out of one place is held against the checks of that place, and against the gates: how well readings repeat
/// is pooled over places, so another place's U may move either way when there is less to pool.
void expectNotBetterThere(const Assessment& before, const Assessment& after, const Subject& there, const std::string& what) {
    for (const Check& check : after.checks) {
        if (check.subject == there) {
            EXPECT_FALSE(check.isGood() && !before.find(check.code)->isGood()) << what << ": " << check.code;
        }
    }
    for (const GateKind gate : {GateKind::trialFit, GateKind::closing}) {
        EXPECT_FALSE(after.gate(gate).isOpen && !before.gate(gate).isOpen) << what;
    }
}

/// Leaves the number of every other entry as it is: what is left out becomes a note.
const Body nothing = NoteAdded{"", "nothing"};

template <class T> void eachOf(Bodies& bodies, const std::function<void(T&)>& change) {
    for (Body& body : bodies) {
        if (auto* one = std::get_if<T>(&body)) {
            change(*one);
        }
    }
}

} // namespace

TEST(SayingLess, by_leaving_out_an_instrument_or_its_limit_never_makes_a_check_good) {
    std::size_t good = 0;
    for (unsigned seed = 1; seed <= 60; ++seed) {
        const Bodies whole = RandomRecord(seed).told();
        const Assessment before = assessed(whole);
        good += static_cast<std::size_t>(std::ranges::count_if(before.checks, &Check::isGood));
        for (const char* name : {"MIC", "BORE", "LEAVES", "EDGE", "DEPTH", "DIAL"}) {
            Bodies withoutLimit = whole;
            eachOf<InstrumentAdded>(withoutLimit, [&](InstrumentAdded& i) {
                if (i.instrument == name) {
                    i.limitOfError.reset();
                }
            });
            expectNothingBetter(before, assessed(withoutLimit), std::string("no limit of ") + name);
            Bodies unknown = whole;
            for (Body& body : unknown) {
                if (const auto* i = std::get_if<InstrumentAdded>(&body); i != nullptr && i->instrument == name) {
                    body = nothing;
                }
            }
            expectNothingBetter(before, assessed(unknown), std::string("no ") + name);
        }
        Bodies unnamed = whole;
        eachOf<JournalReading>(unnamed, [](JournalReading& r) { r.instrument.clear(); });
        eachOf<BoreReading>(unnamed, [](BoreReading& r) { r.instrument.clear(); });
        eachOf<GapReading>(unnamed, [](GapReading& r) { r.instrument.clear(); });
        eachOf<ShimMeasured>(unnamed, [](ShimMeasured& r) { r.instrument.clear(); });
        eachOf<FitReading>(unnamed, [](FitReading& r) { r.instrument.clear(); });
        eachOf<PickupReading>(unnamed, [](PickupReading& r) { r.instrument.clear(); });
        const Assessment after = assessed(unnamed);
        expectNothingBetter(before, after, "nothing is named");
        for (const Check& check : after.checks) {
            EXPECT_FALSE(check.isGood() && !check.judged.empty() && check.kind != CheckKind::stack &&
                         check.kind != CheckKind::flushness)
                << check.code << " was judged by numbers that no instrument stands behind";
        }
    }
    EXPECT_GT(good, 60U * 5) << "the records must have something to lose";
}

TEST(SayingLess, by_leaving_out_a_setting_a_torque_a_bracket_or_a_temperature_never_makes_a_check_good) {
    for (unsigned seed = 100; seed < 160; ++seed) {
        const Bodies whole = RandomRecord(seed).told();
        const Assessment before = assessed(whole);
        Bodies less = whole;
        eachOf<InstrumentAdded>(less, [](InstrumentAdded& i) { i.setWith.reset(); });
        expectNothingBetter(before, assessed(less), "what the gauge was set in");
        less = whole;
        eachOf<RecheckMade>(less, [](RecheckMade& r) { r = RecheckMade{r.position, r.feel, r.instrument}; });
        expectNothingBetter(before, assessed(less), "the brackets");
        less = whole;
        eachOf<JournalReading>(less, [](JournalReading& r) { r.partTemperature.reset(); });
        eachOf<PickupReading>(less, [](PickupReading& r) { r.partTemperature.reset(); });
        expectNothingBetter(before, assessed(less), "the temperatures");
        for (std::size_t i = 0; i < whole.size(); ++i) {
            if (std::holds_alternative<FastenerTightened>(whole[i])) {
                less = whole;
                less[i] = nothing;
                expectNothingBetter(before, assessed(less), "a torque");
            }
        }
    }
}

TEST(SayingLess, by_leaving_out_the_last_of_the_required_readings_never_makes_a_check_good) {
    for (unsigned seed = 200; seed < 230; ++seed) {
        const Bodies whole = RandomRecord(seed).told();
        const Assessment before = assessed(whole);
        const auto without = [&](const char* what, const Subject& there, auto isOne) {
            Bodies less = whole;
            for (Body& body : less) {
                if (isOne(body)) {
                    body = nothing;
                }
            }
            const Assessment after = assessed(less);
            expectNotBetterThere(before, after, there, what);
            EXPECT_FALSE(std::ranges::any_of(after.checks, [&](const Check& c) {
                return c.subject == there && c.isGood() && !c.judged.empty() && c.kind != CheckKind::taper &&
                       c.kind != CheckKind::outOfRound && c.kind != CheckKind::flushness;
            })) << what
                << " is required";
        };
        for (int number = 1; number <= 3; ++number) {
            for (int station = 1; station <= 2; ++station) {
                without("bores of a station", JournalId{JournalKind::main, number}, [&](const Body& body) {
                    const auto* r = std::get_if<BoreReading>(&body);
                    return r != nullptr && r->journal.number == number && r->station == station;
                });
                for (int direction = 1; direction <= 2; ++direction) {
                    without("a place of a journal", JournalId{JournalKind::main, number}, [&](const Body& body) {
                        const auto* r = std::get_if<JournalReading>(&body);
                        return r != nullptr && r->journal.number == number && r->station == station &&
                               r->direction == direction;
                    });
                }
            }
            for (const Side side : {Side::left, Side::right}) {
                without("the second pass of a gap", Position{number, side}, [&](const Body& body) {
                    const auto* r = std::get_if<GapReading>(&body);
                    return r != nullptr && r->position == Position{number, side} && r->pass == 2;
                });
                without("the readings of a shim", Position{number, side}, [&](const Body& body) {
                    const auto* r = std::get_if<ShimMeasured>(&body);
                    return r != nullptr && r->shim == "S-" + code(Position{number, side});
                });
            }
        }
        int seen = 0;
        without("one reading of the pan", Subject{}, [&](const Body& body) {
            const auto* r = std::get_if<PickupReading>(&body);
            return r != nullptr && r->term == PickupTerm::panDepth && seen++ == 0;
        });
    }
}

TEST(SayingMore, of_the_same_never_turns_a_worst_place_that_is_out_into_good) {
    std::size_t out = 0;
    for (unsigned seed = 300; seed < 340; ++seed) {
        const Bodies whole = RandomRecord(seed, 6).told();
        const Assessment before = assessed(whole);
        for (const int times : {1, 2, 5}) {
            Bodies more = whole;
            for (int i = 0; i < times; ++i) {
                for (const Body& body : whole) {
                    if (std::holds_alternative<JournalReading>(body) || std::holds_alternative<BoreReading>(body)) {
                        more.push_back(body);
                    }
                }
            }
            const Assessment after = assessed(more);
            for (const Check& check : before.checks) {
                if (check.state == CheckState::out && std::holds_alternative<JournalId>(check.subject)) {
                    ++out;
                    EXPECT_EQ(after.find(check.code)->state, CheckState::out) << check.code << " " << check.sentence;
                }
            }
        }
    }
    EXPECT_GT(out, 50U) << "there must be bad places to excuse";
}
