// SPDX-License-Identifier: GPL-3.0-or-later
#include "story.h"

#include <algorithm>
#include <assessment/bracket.h>
#include <assessment/closing_steps.h>
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <ledger/band_names.h>
#include <ledger/entry_json.h>
#include <shims/plan/stack_plan.h>
#include <units/format.h>
#include <work/closing_work.h>

namespace caprail::samples {

namespace {

[[noreturn]] void giveUp(const std::string& sentence) {
    std::fprintf(stderr, "%s\n", sentence.c_str());
    std::exit(1);
}

Entered<Length> typedInches(double value, int decimals) {
    return {inches(value), formatNumber(value, decimals)};
}
Entered<Length> typedThou(double value, int decimals) {
    return {thou(value), formatNumber(value, decimals) + " thou"};
}

/// Leaves of one set that make so many whole thousandths: there is one leaf of each, none thicker than 35.
Entered<Length> leaves(int wholeThou) {
    if (wholeThou <= 35) {
        return {thou(wholeThou), std::to_string(wholeThou) + " thou"};
    }
    const int first = (wholeThou + 2) / 2;
    return {thou(wholeThou), std::to_string(first) + "+" + std::to_string(wholeThou - first) + " thou"};
}

} // namespace

Story::Story(UtcTime begin) : m_time(begin) {}

std::int64_t Story::tell(Body body, int seconds) {
    m_time.milliseconds += seconds * 1000LL;
    if (const auto ok = mayAppend(m_ledger, m_facts, m_assessment, m_person, body); !ok) {
        giveUp("Entry " + std::to_string(m_ledger.size() + 1) + " (" + std::string(kindOf(body).kind) +
               "): " + ok.error().sentence);
    }
    const bool isStrike = body.is<Struck>();
    const Entry& entry = m_ledger.append(m_time, m_person, std::move(body));
    if (isStrike) {
        m_facts = fold(m_ledger);
    } else {
        apply(m_facts, entry);
    }
    m_assessment = assess(m_facts);
    return entry.sequence;
}

void Story::people() {
    tell(PersonAdded{"Mira Solheim", "assembler"}, 0);
    tell(PersonAdded{"Teo Brandt", "second pair of eyes"});
}

void Story::engine(const std::string& templateFile, const std::string& customer, const std::string& engine,
                   const std::string& serial) {
    EngineDescribed described{"Kestrel Lane Engine Works", customer, engine, serial, ""};
    described.address = "4 Kestrel Lane, Upper Wharf";
    described.telephone = "555 0142";
    tell(described, 40);
    std::ifstream lines(std::string(TEMPLATES) + "/" + templateFile);
    for (std::string line; std::getline(lines, line);) {
        auto draft = fromJson(line);
        if (!draft) {
            giveUp(draft.error().sentence);
        }
        tell(std::move(draft->body), 5);
    }
}

void Story::rodBolts() {
    FastenerGroupSet bolts;
    bolts.group = FastenerKind::rod;
    bolts.count = static_cast<std::int64_t>(m_facts.layout->rodFasteners().size());
    bolts.thread = "3/8-24";
    bolts.grade = "170 ksi";
    bolts.lubricant = "engine oil";
    bolts.torque = Entered<Torque>{poundFeet(45), "45 lbf·ft"};
    bolts.source = "rod bolt maker's card, read by Mira Solheim";
    tell(bolts, 40);
}

void Story::girdlePlate() {
    LayoutSet layout = m_ledger.at(m_facts.layoutEntry).body.get<LayoutSet>();
    layout.plateThickness = inches(0.25);
    layout.plateMetal = PlateMetal::steel;
    layout.windowAlong = inches(2.6);
    layout.windowAcross = inches(2.4);
    layout.source = "girdle and block measured by Mira Solheim";
    tell(layout, 120);
}

void Story::rearCapOnBolts() {
    LayoutSet layout = m_ledger.at(m_facts.layoutEntry).body.get<LayoutSet>();
    layout.source = "looked at: the girdle ends at the fourth cap";
    layout.tiedLast = 4;
    tell(layout, 60);
    FastenerGroupSet studs = m_facts.groups.at({FastenerKind::mainCap}).what;
    studs.grip = Entered<Length>{inches(3.25), "3.250 in"};
    studs.clamped = "nodular iron";
    studs.source = "stud maker's card";
    tell(studs, 60);
    FastenerGroupSet bolts = studs;
    bolts.name = "rear cap";
    bolts.places = NameList{{"main-5L", "main-5R"}};
    bolts.count = 2;
    bolts.piece = FastenerPiece::bolt;
    bolts.thread = "1/2-13";
    bolts.grade = "SAE J429 grade 8";
    bolts.torque = Entered<Torque>{poundFeet(65), "65 lbf·ft"};
    bolts.grip = Entered<Length>{inches(2.5), "2.500 in"};
    bolts.source = "block maker's manual";
    tell(bolts, 60);
    FastenerGroupSet rail = m_facts.groups.at({FastenerKind::panRail}).what;
    rail.name = "locating studs";
    rail.places = NameList{{"pan-5", "pan-14"}};
    rail.count = 2;
    rail.piece = FastenerPiece::stud;
    tell(rail, 60);
    RulesSet rules = m_facts.rules;
    rules.secondPersonVerifies = true;
    rules.secondPersonSigns = true;
    rules.source = "shop's own rules";
    tell(rules, 40);
}

void Story::washerTurned(Position p) {
    tell(WasherWorked{p, WasherWork::turned, "a thousandth more on one side than on the other"}, 60);
}

void Story::instruments() {
    const auto add = [&](const char* name, InstrumentType type, const char* serial, double limit, int decimals,
                         std::optional<double> step = {}, std::optional<std::string> setWith = {}) {
        InstrumentAdded i;
        i.instrument = name;
        i.type = type;
        i.serial = serial;
        i.limitOfError = typedInches(limit, decimals);
        i.calibrated = parseDate("2026-02-10").value();
        i.due = parseDate("2027-02-10").value();
        if (step) {
            i.step = typedInches(*step, 4);
        }
        i.setWith = std::move(setWith);
        tell(i, 40);
    };
    add("MIC-25", InstrumentType::micrometer, "K-118", 0.0001, 4, 0.0001);
    add("MIC-75", InstrumentType::micrometer, "K-121", 0.0001, 4, 0.0001);
    add("BORE-1", InstrumentType::boreGauge, "K-204", 0.0001, 4, 0.0001, "MIC-75");
    add("LEAVES-2", InstrumentType::feelerGauge, "K-310", 0.00035, 5, 0.0010);
    add("EDGE-1", InstrumentType::straightedge, "K-402", 0.0002, 4);
    add("DEPTH-1", InstrumentType::depthGauge, "K-233", 0.0010, 4, 0.0010);
    add("DIAL-1", InstrumentType::dialIndicator, "K-240", 0.0002, 4, 0.0005);
    InstrumentAdded wrench;
    wrench.instrument = "WRENCH-90";
    wrench.type = InstrumentType::torqueWrench;
    wrench.serial = "K-507";
    wrench.smallestTorque = Entered<Torque>{poundFeet(20), "20 lbf·ft"};
    wrench.largestTorque = Entered<Torque>{poundFeet(100), "100 lbf·ft"};
    wrench.calibrated = parseDate("2026-03-02").value();
    wrench.due = parseDate("2027-03-02").value();
    tell(wrench, 40);
    wrench.instrument = "WRENCH-15";
    wrench.serial = "K-511";
    wrench.smallestTorque = Entered<Torque>{poundFeet(1), "1 lbf·ft"};
    wrench.largestTorque = Entered<Torque>{poundFeet(15), "15 lbf·ft"};
    tell(wrench, 40);
}

/// With the wrench whose range the value lies in.
const char* Story::wrenchFor(Torque torque) {
    return torque <= poundFeet(15) ? "WRENCH-15" : "WRENCH-90";
}

void Story::tighten(FastenerId f) {
    const auto torque = m_facts.groupOf(f)->what.torque;
    tell(FastenerTightened{f, torque, {}, {}, wrenchFor(torque->value)}, 30);
}

void Story::bores(JournalId j) {
    const double bore = j.kind == JournalKind::main ? 2.6431 + 0.0001 * (j.number % 2) : 2.1019;
    const auto read = [&](int station, double value) {
        tell(BoreReading{j, BoreMethod::boreWithShells, station, typedInches(value, 4), "BORE-1",
                         Entered<Temperature>{celsius(20.5), "20.5 °C"}},
             30);
    };
    read(1, bore);
    read(2, bore);
    read(1, bore);
}

void Story::journal(JournalId j) {
    const double diameter = j.kind == JournalKind::main ? 2.6410 + 0.0001 * (j.number % 2) : 2.1000;
    const auto read = [&](int station, int direction, double value) {
        tell(JournalReading{j, station, direction, typedInches(value, 4), "MIC-75",
                            Entered<Temperature>{celsius(20.5), "20.5 °C"}},
             25);
    };
    read(1, 1, diameter);
    read(1, 2, diameter);
    read(2, 1, diameter);
    read(2, 2, diameter);
    read(1, 1, diameter);
}

void Story::bottomEnd() {
    const auto mains = m_facts.layout->mainFasteners();
    const auto rods = m_facts.layout->rodFasteners();
    std::ranges::for_each(mains, [&](FastenerId f) { tighten(f); });
    std::ranges::for_each(rods, [&](FastenerId f) { tighten(f); });
    for (const JournalId j : m_facts.layout->mainJournals()) {
        bores(j);
    }
    for (const JournalId j : m_facts.layout->rodJournals()) {
        bores(j);
    }
    for (const auto& journals : {m_facts.layout->mainJournals(), m_facts.layout->rodJournals()}) {
        for (const JournalId j : journals) {
            journal(j);
        }
    }
    for (const auto* fasteners : {&mains, &rods}) {
        for (const FastenerId f : *fasteners) {
            tell(FastenerLoosened{f, "cap off, to lay the crank in"}, 10);
        }
    }
    for (const auto* fasteners : {&mains, &rods}) {
        std::ranges::for_each(*fasteners, [&](FastenerId f) { tighten(f); });
    }
    tell(CrankLaidIn{true, "turns freely, caps at torque"}, 60);
}

void Story::fits() {
    for (int i = 0; i < 2; ++i) {
        tell(FitReading{std::string(bands::crankEndPlay), 1, typedThou(5.5, 1), "DIAL-1"}, 60);
    }
    for (int number = 1; number <= m_facts.layout->throws(); ++number) {
        tell(FitReading{std::string(bands::rodSideClearance), number, typedThou(14 + number % 2, 0), "LEAVES-2"}, 45);
    }
    tell(FitReading{std::string(bands::rodSideClearance), 1, typedThou(15, 0), "LEAVES-2"}, 45);
}

void Story::gapPass(int pass, const std::vector<Position>& where) {
    static const std::map<Position, double> true0{
        {{1, Side::left}, 46.3},  {{1, Side::right}, 51.6}, {{2, Side::left}, 53.1}, {{2, Side::right}, 57.2},
        {{3, Side::left}, 44.4},  {{3, Side::right}, 60.8}, {{4, Side::left}, 55.5}, {{4, Side::right}, 64.7},
        {{5, Side::left}, 43.2},  {{5, Side::right}, 49.6}};
    for (const Position p : where) {
        const auto at = m_gaps.try_emplace(p, thou(true0.at(p))).first;
        // The leaves are not what is marked on them: at one place of three the next sum goes in at the second pass.
        const int goes = static_cast<int>(at->second.value() / 25'400) + (pass == 2 && p.cap % 3 == 0 ? 1 : 0);
        GapReading reading{p, pass, leaves(goes), "LEAVES-2"};
        reading.doesNotGo = leaves(goes + 1);
        reading.straightedge = "EDGE-1";
        tell(reading, 38);
    }
}

void Story::kit() {
    constexpr std::pair<int, int> bags[] = {{2, 6},  {3, 6},  {4, 6},  {5, 6},  {8, 7}, {10, 7},
                                          {12, 7}, {15, 7}, {20, 8}, {25, 9}, {30, 9}};
    constexpr double offsets[] = {-0.1, 0.1, 0.2, -0.2, 0.0, 0.3};
    std::vector<std::pair<std::string, double>> shims;
    for (const auto& [marked, count] : bags) {
        for (int i = 0; i < count; ++i) {
            const std::string name = "S" + std::string(shims.size() < 9 ? "0" : "") + std::to_string(shims.size() + 1);
            tell(ShimAdded{name, typedThou(marked, 0), std::to_string(marked) + " thou"}, 6);
            shims.emplace_back(name, marked + offsets[i % 6]);
        }
    }
    // One was in the wrong bag.
    shims[40].second = 8.1;
    int n = 0;
    for (const auto& [name, thickness] : shims) {
        tell(ShimMeasured{name, typedInches(thickness / 1000, 4), "MIC-25"}, 12);
        const double again = thickness + (++n % 5 == 0 ? 0.1 : 0);
        tell(ShimMeasured{name, typedInches(again / 1000, 4), "MIC-25"}, 12);
    }
    const std::string& wrong = shims[40].first;
    tell(FindingOpened{"F1", "shim " + wrong, "marked 12 thou, measures 8.1: it was in the wrong bag"}, 30);
    tell(ShimSetAside{wrong, true, "measures 8.1, marked 12"}, 15);
    tell(FindingSettled{"F1", "set aside; goes back into the 8 thou bag after this build"}, 15);
}

void Story::stacks(const std::vector<Position>& where) {
    PlanRequest request;
    request.band = Band::between(-thou(0.12), thou(0.12)).value();
    request.largestStack = 5;
    request.caps = m_facts.layout->caps();
    for (const Position p : where) {
        // The assembler tries by straightedge until it drags: the stack comes out at what the gap is.
        request.positions.push_back({code(p), p.cap, p.side == Side::left ? -1 : 1, truth(p), {}});
    }
    for (const auto& [name, shim] : m_facts.shims) {
        const bool isHere = shim.inStackAt && std::ranges::find(where, *shim.inStackAt) != where.end();
        if (!shim.isSetAside && (!shim.inStackAt || isHere)) {
            request.shims.push_back({name, shim.thickness()});
        }
    }
    const auto plan = planStacks(request);
    if (!plan) {
        giveUp(plan.error().sentence);
    }
    for (const Position p : where) {
        if (m_facts.stacks.contains(p)) {
            tell(StackMoved{p, StackMove::takenApart}, 20);
        }
    }
    for (const PlannedStack& stack : plan->stacks) {
        tell(StackBuilt{parsePosition(stack.position).value(), {stack.shims}}, 50);
    }
    for (const Position p : where) {
        recheck(p);
    }
}

void Story::recheck(Position p) {
    Length thickness;
    for (const auto& name : m_facts.stacks.at(p).shims) {
        thickness += m_facts.shims.at(name).thickness();
    }
    const Length residual = truth(p) - thickness;
    RecheckMade made{p, Feel::drags, "EDGE-1"};
    // By a few tenths of a thousandth each way, as evenly as the kit allows, and by more than the stack is off: else it
    // would not rock, or not be loose.
    std::optional<std::pair<Exchange, Exchange>> best;
    const auto worth = [](const Exchange& thicker, const Exchange& thinner) {
        return (thicker.change + thinner.change).magnitude() * 2 + thicker.change - thinner.change;
    };
    for (const double up : {0.15, 0.2, 0.25, 0.3}) {
        for (const double down : {0.15, 0.2, 0.25, 0.3}) {
            const auto thicker = exchangeFor(m_facts, p, thou(up));
            const auto thinner = exchangeFor(m_facts, p, -thou(down));
            if (thicker && thinner && thicker->change > residual && thinner->change < residual &&
                (!best || worth(*thicker, *thinner) < worth(best->first, best->second))) {
                best = {*thicker, *thinner};
            }
        }
    }
    if (best) {
        made.thickerOut = NameList{best->first.out};
        made.thickerIn = NameList{best->first.in};
        made.thickerFelt = Feel::rocks;
        made.thinnerOut = NameList{best->second.out};
        made.thinnerIn = NameList{best->second.in};
        made.thinnerFelt = Feel::loose;
    }
    tell(made, 90);
    if (const Check* stack = m_assessment.find(CheckKind::stack, p); !stack->isGood()) {
        giveUp(stack->title + ": " + stack->sentence + " " + stack->remedy + "\n" + toJsonLine(m_ledger.entries().back()) +
               "\nin truth " + formatFineSigned(residual, {}));
    }
}

void Story::trialFit() {
    turning(TurningStage::beforeGirdle, 11, 7.5);
    tell(GirdleWaySet{GirdleFace::stamped, EngineEnd::rear, m_facts.layout->description().pickupSide}, 300);
    for (const auto& [nut, isTight] : fastenersToTighten(m_facts, ClosingStep::nutsTightened)) {
        tighten(nut);
    }
    const auto measured = [&](TrialItem item, std::int64_t number, double clearance) {
        tell(TrialFitResult{item, number, TrialResult::measured, typedThou(clearance, 0), ""}, 60);
    };
    const auto passed = [&](TrialItem item, std::int64_t number) {
        tell(TrialFitResult{item, number, TrialResult::pass, {}, ""}, 40);
    };
    passed(TrialItem::dipstick, 0);
    measured(TrialItem::pickupTube, 0, 110);
    for (int number = 1; number <= m_facts.layout->throws(); ++number) {
        measured(TrialItem::counterweights, number, 95 + 5 * (number % 3));
        passed(TrialItem::rodBolts, number);
    }
    passed(TrialItem::turnsFreely, 0);
    turning(TurningStage::girdleAtTorque, 11.5, 8);
    passed(TrialItem::keyway, 0);
}

void Story::turning(TurningStage stage, double breakaway, double running) {
    const auto typed = [](double value) {
        return Entered<Torque>{poundFeet(value), formatNumber(value, 1) + " lbf·ft"};
    };
    tell(TurningTorqueRead{stage, typed(breakaway), typed(running), "WRENCH-15"}, 90);
}

void Story::pickup() {
    const auto twice = [&](PickupTerm term, double first, double second, int decimals, const char* with) {
        for (const double value : {first, second}) {
            tell(PickupReading{term, typedInches(value, decimals), with}, 45);
        }
    };
    twice(PickupTerm::panDepth, 7.411, 7.412, 3, "DEPTH-1");
    twice(PickupTerm::gasket, 0.0630, 0.0632, 4, "MIC-25");
    twice(PickupTerm::plate, 0.2501, 0.2502, 4, "MIC-25");
    twice(PickupTerm::pickupDepth, 7.417, 7.418, 3, "DEPTH-1");
}

void Story::partsAndChecks() {
    const auto part = [&](PartSort sort, const char* what, const char* maker, const char* number, const char* lot,
                          const char* stamped, bool isNew) {
        PartEntered entered;
        entered.sort = sort;
        entered.what = what;
        entered.maker = maker;
        entered.number = number;
        entered.lot = lot;
        entered.stamped = *stamped == 0 ? Rare<std::string>() : stamped;
        entered.isNew = isNew;
        return entered;
    };
    PartEntered block = part(PartSort::block, "", "", "", "", "K 340 C2", false);
    block.machined = "mains line-honed with these studs, decks cut 0.004 in";
    block.machinedBy = "Harl Machine Shop";
    block.machinedOn = parseDate("2026-05-12").value();
    tell(block, 60);
    PartEntered crank = part(PartSort::crank, "", "Arden", "CR-362", "", "7741", false);
    crank.machined = "journals polished";
    crank.machinedBy = "Harl Machine Shop";
    crank.machinedOn = parseDate("2026-05-14").value();
    tell(crank, 60);
    tell(part(PartSort::mainShells, "", "Norwood", "7312 P", "7731", "", true), 40);
    tell(part(PartSort::rodShells, "", "Norwood", "2208 P", "7518", "", true), 40);
    tell(part(PartSort::mainStuds, "", "Brightling", "MS-716", "B-2231", "", true), 40);
    PartEntered bolts = part(PartSort::rodBolts, "", "Brightling", "RB-38", "B-1987", "", false);
    bolts.timesTightened = 1;
    tell(bolts, 40);
    tell(part(PartSort::girdle, "", "Kestrel Lane Engine Works", "G5", "", "", true), 40);
    tell(part(PartSort::sealant, "", "Tamsin", "grey", "T-0418", "", true), 40);
    tell(part(PartSort::oil, "for running in", "Wexcombe", "SAE 30", "W-2291", "", true), 40);
    const auto tried = [&](const char* instrument, const char* standard, double nominal, double read, int decimals) {
        tell(ZeroChecked{instrument, standard, typedInches(nominal, decimals), typedInches(read, decimals)}, 60);
    };
    tried("MIC-25", "closed anvils", 0, 0, 4);
    tried("MIC-75", "2 in setting rod", 2, 2.0001, 4);
    tell(ValueConfirmed{"band:residual", "shim kit maker's sheet"}, 30);
    tell(ValueConfirmed{"band:main clearance", "Norwood's bearing sheet"}, 30);
    tell(ValueConfirmed{"band:rod clearance", "Norwood's bearing sheet"}, 30);
    tell(ValueConfirmed{"group:main", "Brightling's card, MS-716"}, 30);
}

void Story::stacksOff() {
    for (const Position p : m_facts.stacksOn()) {
        tell(StackMoved{p, StackMove::takenOff}, 12);
    }
}

void Story::stacksOn() {
    for (const Position p : positions()) {
        const auto stack = m_facts.stacks.find(p);
        if (stack != m_facts.stacks.end() && !stack->second.isOn) {
            tell(StackMoved{p, StackMove::putBack}, 12);
        }
    }
}

void Story::round(std::int64_t number, const std::string& moving, double degreesTurned) {
    tell(RoundBegun{number, "WRENCH-90"}, 120);
    for (const FastenerId f : m_facts.layout->verifiedFasteners()) {
        RoundOutcome o{number, f, Outcome::held, {}, m_facts.groupOf(f)->what.torque, "WRENCH-90"};
        if (code(f) == moving) {
            o.outcome = Outcome::moved;
            o.angle = Entered<Angle>{degrees(degreesTurned), formatNumber(degreesTurned, 0)};
            // The cap goes down by about a quarter of what the nut advances.
            if (const auto gap = m_gaps.find({f.number, f.side}); gap != m_gaps.end()) {
                gap->second += thou(50.0 * degreesTurned / 360 / 4);
            }
        }
        tell(o, 22);
    }
}

void Story::close() {
    for (const auto& [step, name] : allWords<ClosingStep>()) {
        if (step == ClosingStep::stacksRefitted) {
            stacksOn();
        }
        for (const auto& [fastener, isTight] : fastenersToTighten(m_facts, step)) {
            tighten(fastener);
        }
        if (step == ClosingStep::crankTurned) {
            turning(TurningStage::girdleAtTorque, 11.5, 8);
        } else if (step == ClosingStep::panFastened) {
            turning(TurningStage::afterPan, 12, 8);
        }
        ClosingStepDone done;
        done.step = step;
        if (step == ClosingStep::shimsCounted) {
            const ShimCount counted = shimCountOf(m_facts);
            done.fitted = counted.fitted;
            done.aside = counted.aside;
            done.leftOver = counted.leftOver;
        } else if (step == ClosingStep::beadLaid) {
            done.product = "Grey flange sealant";
            done.lot = "2231-A";
            done.openMinutes = 15;
        }
        tell(done, 240);
    }
    person("Teo Brandt");
    tell(SignedOff{"Every check good, closed on the stand."}, 300);
}

} // namespace caprail::samples
