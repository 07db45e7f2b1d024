// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// Entries that every invented record begins with, for the test benches.
#include <ledger/entries.h>
#include <vector>

namespace caprail::drafts {

/// A band in thousandths of an inch.
inline BandSet band(std::string_view name, double lo, double hi) {
    return {std::string(name), {thou(lo), ""}, {thou(hi), ""}, {}, "test"};
}

/// A group that is brought to a torque, in pound-feet.
inline FastenerGroupSet group(FastenerKind kind, int count, const char* thread, double torque) {
    FastenerGroupSet g;
    g.group = kind;
    g.count = count;
    g.thread = thread;
    g.grade = "by hand 190 ksi";
    g.lubricant = "engine oil";
    g.torque = Entered<Torque>{poundFeet(torque), ""};
    return g;
}

/// A shim of the kit, measured twice.
template <class Bench>
void measuredShim(Bench& bench, const char* name, double thickness, double marked = 50, const char* micrometer = "MIC") {
    bench.make(ShimAdded{name, {thou(marked), ""}, ""});
    for (int reading = 0; reading < 2; ++reading) {
        bench.make(ShimMeasured{name, {thou(thickness), ""}, micrometer});
    }
}

/// It drags as built, rocks with one shim exchanged for a thicker one, and is loose with it exchanged for a thinner one.
inline RecheckMade bracketed(Position p, const char* straightedge, const char* out, const char* thicker,
                             const char* thinner) {
    RecheckMade recheck{p, Feel::drags, straightedge};
    recheck.thickerOut = recheck.thinnerOut = NameList{{out}};
    recheck.thickerIn = NameList{{thicker}};
    recheck.thickerFelt = Feel::rocks;
    recheck.thinnerIn = NameList{{thinner}};
    recheck.thinnerFelt = Feel::loose;
    return recheck;
}

/// Three mains with two fasteners each, all tied; two rods on two throws.
inline LayoutSet threeMains() {
    LayoutSet layout;
    layout.caps = 3;
    layout.tiedLast = 3;
    layout.rods = 2;
    layout.throws = 2;
    layout.pickupCap = 2;
    layout.dipstickCap = 1;
    return layout;
}

/// A torque wrench from 5 to 150 lbf·ft.
inline InstrumentAdded wrench(const char* name = "W1") {
    InstrumentAdded i;
    i.instrument = name;
    i.type = InstrumentType::torqueWrench;
    i.smallestTorque = Entered<Torque>{poundFeet(5), ""};
    i.largestTorque = Entered<Torque>{poundFeet(150), ""};
    return i;
}

/// One that held in a round when it was pulled to the torque that these drafts specify: 70 lbf·ft, rods 45.
inline RoundOutcome held(std::int64_t round, FastenerId f, const std::string& with = "W1") {
    return {round, f, Outcome::held, {}, Entered<Torque>{poundFeet(f.kind == FastenerKind::rod ? 45 : 70), ""}, with};
}

/// A length instrument with a limit of error in tenths of a thousandth of an inch; zero: nobody entered it.
inline InstrumentAdded instrument(const char* name, InstrumentType type, double limitTenths,
                                  std::optional<std::string> setWith = {}) {
    InstrumentAdded i;
    i.instrument = name;
    i.type = type;
    if (limitTenths > 0) {
        i.limitOfError = Entered<Length>{thou(limitTenths / 10), ""};
    }
    i.setWith = std::move(setWith);
    return i;
}

/// The tools of a bench, each with its limit of error: MIC, BORE (set in MIC), LEAVES, EDGE, DEPTH.
inline std::vector<InstrumentAdded> tools(double limitTenths = 0.4) {
    return {instrument("MIC", InstrumentType::micrometer, limitTenths),
            instrument("BORE", InstrumentType::boreGauge, limitTenths, "MIC"),
            instrument("LEAVES", InstrumentType::feelerGauge, limitTenths),
            instrument("EDGE", InstrumentType::straightedge, limitTenths),
            instrument("DEPTH", InstrumentType::depthGauge, limitTenths)};
}

} // namespace caprail::drafts
