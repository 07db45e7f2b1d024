// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <assessment/check.h>
#include <span>

namespace caprail {

/// One row of the table of what rests on what: a check, and the topics whose change makes it stale.
struct RestsOnRow {
    CheckKind check;
    std::span<const Topic> topics;
};

/// The whole table, one row per kind of check, in the order of CheckKind: it does not compile with one missing.
std::span<const RestsOnRow> restsOnTable();

/// The newest change of anything that the check rests on; entry 0 when nothing changed. A change of a band counts only
/// if it is newer than the last time a person judged this check again.
Change newestChange(const Facts&, const Check&);

/// Whether a stale check is stale only by arithmetic (a band, a shim's thickness, another accepted gap), so that a
/// person may look at the numbers and let them stand. What a movement or another part made stale must be measured
/// again.
bool canBeJudgedAgain(const Facts&, const Check&);

/// Whether a clearance is stale only because a fastener of its cap moved in a verify round, the crank being in: a person
/// may accept it again, beside what the movement is predicted to have changed, or measure it anew.
bool isMovedOnly(const Facts&, const Check&);

/// Makes the check stale if anything that it rests on changed after `madeAt`, and says so in its sentence and remedy.
/// A check that was never made is left alone.
void applyStaleness(Check&, const Facts&, const Units&);

} // namespace caprail
