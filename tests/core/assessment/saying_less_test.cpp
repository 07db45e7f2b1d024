// SPDX-License-Identifier: GPL-3.0-or-later
/// Saying less must never look better: what is not named, not measured or not known never makes a check good, tried on
/// random records.
#include "random_record.h"

#include <functional>
#include <set>

using namespace caprail;

namespace {

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
        if (auto* one = body.as<T>()) {
            change(*one);
        }
    }
}

} // namespace

TEST(SayingLess, is_tried_on_records_of_every_kind_that_a_verdict_rests_on) {
    std::set<std::string_view> drawn;
    for (unsigned seed = 1; seed <= 60; ++seed) {
        for (const Body& body : RandomRecord(seed).told()) {
            drawn.insert(body.visit([](const auto& one) { return std::decay_t<decltype(one)>::kind; }));
        }
    }
    const std::set<std::string_view> all{
        PersonAdded::kind,       LayoutSet::kind,      RulesSet::kind,     BandSet::kind,      FastenerGroupSet::kind,
        InstrumentAdded::kind,   JournalReading::kind, BoreReading::kind,  ShellMeasured::kind, ShellsFitted::kind,
        FitReading::kind,        CrankLaidIn::kind,    PartChanged::kind,  FastenerTightened::kind, RoundBegun::kind,
        RoundOutcome::kind,      GapReading::kind,     ShimAdded::kind,    ShimMeasured::kind, StackBuilt::kind,
        StackMoved::kind,        RecheckMade::kind,    FeelStudyBegun::kind, FeelAnswer::kind, GirdleWaySet::kind,
        TrialFitResult::kind,    PickupReading::kind,  FindingOpened::kind, FindingSettled::kind};
    EXPECT_EQ(drawn, all);
}

TEST(SayingLess, by_leaving_out_an_instrument_or_its_limit_never_makes_a_check_good) {
    std::size_t good = 0;
    for (unsigned seed = 1; seed <= 30; ++seed) {
        const Bodies whole = RandomRecord(seed).told();
        const Assessment before = assessed(whole);
        good += static_cast<std::size_t>(std::ranges::count_if(before.checks, &Check::isGood));
        for (const char* name : {"MIC", "BORE", "LEAVES", "EDGE", "WORN", "DEPTH", "DIAL", "STRIP"}) {
            Bodies withoutLimit = whole;
            eachOf<InstrumentAdded>(withoutLimit, [&](InstrumentAdded& i) {
                if (i.instrument == name) {
                    i.limitOfError.reset();
                }
            });
            expectNothingBetter(before, assessed(withoutLimit), std::string("no limit of ") + name);
            Bodies unknown = whole;
            for (Body& body : unknown) {
                if (const auto* i = body.as<InstrumentAdded>(); i != nullptr && i->instrument == name) {
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
        eachOf<ShellMeasured>(unnamed, [](ShellMeasured& r) { r.instrument.clear(); });
        const Assessment after = assessed(unnamed);
        expectNothingBetter(before, after, "nothing is named");
        for (const Check& check : after.checks) {
            EXPECT_FALSE(check.isGood() && !check.judged.empty() && check.kind != CheckKind::stack &&
                         check.kind != CheckKind::flushness)
                << check.code << " was judged by numbers that no instrument stands behind";
        }
    }
    EXPECT_GT(good, 30U * 5) << "the records must have something to lose";
}

TEST(SayingLess, by_leaving_out_a_setting_a_torque_a_bracket_or_a_temperature_never_makes_a_check_good) {
    for (unsigned seed = 100; seed < 130; ++seed) {
        const Bodies whole = RandomRecord(seed).told();
        const Assessment before = assessed(whole);
        Bodies less = whole;
        eachOf<InstrumentAdded>(less, [](InstrumentAdded& i) { i.setWith.reset(); });
        expectNothingBetter(before, assessed(less), "what the gauge was set in");
        less = whole;
        eachOf<RecheckMade>(less, [](RecheckMade& r) { r = RecheckMade{r.position, r.feel, r.instrument}; });
        expectNothingBetter(before, assessed(less), "the brackets");
        less = whole;
        for (Body& body : less) {
            if (body.is<FeelStudyBegun>() || body.is<FeelAnswer>()) {
                body = nothing;
            }
        }
        expectNothingBetter(before, assessed(less), "the study of the feel");
        less = whole;
        eachOf<RecheckMade>(less, [](RecheckMade& r) { r.instrument.clear(); });
        expectNothingBetter(before, assessed(less), "the straightedges of the rechecks");
        less = whole;
        eachOf<GapReading>(less, [](GapReading& r) { r.straightedge.reset(); });
        const Assessment unnamed = assessed(less);
        expectNothingBetter(before, unnamed, "the straightedges of the gaps");
        for (Body& body : less) {
            if (const auto* i = body.as<InstrumentAdded>(); i != nullptr && i->instrument == "WORN") {
                body = nothing;
            }
        }
        expectNothingBetter(unnamed, assessed(less), "the worse of two straightedges, none of them named");
        less = whole;
        eachOf<JournalReading>(less, [](JournalReading& r) { r.partTemperature.reset(); });
        eachOf<PickupReading>(less, [](PickupReading& r) { r.partTemperature.reset(); });
        eachOf<BoreReading>(less, [](BoreReading& r) { r.partTemperature.reset(); });
        eachOf<ShellMeasured>(less, [](ShellMeasured& r) { r.partTemperature.reset(); });
        expectNothingBetter(before, assessed(less), "the temperatures");
        for (std::size_t i = 0; i < whole.size(); ++i) {
            if (whole[i].is<FastenerTightened>()) {
                less = whole;
                less[i] = nothing;
                expectNothingBetter(before, assessed(less), "a torque");
            }
        }
    }
}

TEST(SayingLess, by_leaving_out_the_last_of_the_required_readings_never_makes_a_check_good) {
    for (unsigned seed = 200; seed < 215; ++seed) {
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
                    const auto* r = body.as<BoreReading>();
                    return r != nullptr && r->journal.number == number && r->station == station;
                });
                for (int direction = 1; direction <= 2; ++direction) {
                    without("a place of a journal", JournalId{JournalKind::main, number}, [&](const Body& body) {
                        const auto* r = body.as<JournalReading>();
                        return r != nullptr && r->journal.number == number && r->station == station &&
                               r->direction == direction;
                    });
                }
            }
            for (const Side side : {Side::left, Side::right}) {
                without("the second pass of a gap", Position{number, side}, [&](const Body& body) {
                    const auto* r = body.as<GapReading>();
                    return r != nullptr && r->position == Position{number, side} && r->pass == 2;
                });
                without("the readings of a shim", Position{number, side}, [&](const Body& body) {
                    const auto* r = body.as<ShimMeasured>();
                    return r != nullptr && r->shim == "S-" + code(Position{number, side});
                });
            }
        }
        int seen = 0;
        without("one reading of the pan", Subject{}, [&](const Body& body) {
            const auto* r = body.as<PickupReading>();
            return r != nullptr && r->term == PickupTerm::panDepth && seen++ == 0;
        });
    }
}

TEST(SayingMore, of_the_same_never_turns_a_worst_place_that_is_out_into_good) {
    std::size_t out = 0;
    for (unsigned seed = 300; seed < 320; ++seed) {
        const Bodies whole = RandomRecord(seed, 6).told();
        const Assessment before = assessed(whole);
        for (const int times : {1, 2, 5}) {
            Bodies more = whole;
            for (int i = 0; i < times; ++i) {
                for (const Body& body : whole) {
                    if (body.is<JournalReading>() || body.is<BoreReading>()) {
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
