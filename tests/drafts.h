// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// Entries that every invented record begins with, for the test benches.
#include <ledger/entries.h>

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
    g.torque = Entered<Torque>{poundFeet(torque), ""};
    return g;
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

} // namespace caprail::drafts
