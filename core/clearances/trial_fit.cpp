// SPDX-License-Identifier: GPL-3.0-or-later
#include <clearances/trial_fit.h>
#include <base/say.h>

namespace caprail {

namespace {

std::string named(const TrialFitObservation& seen) {
    const std::string name = shown(seen.item);
    return isPerThrow(seen.item) ? Core::say("%1 at throw %2", name, seen.throwNumber) : name;
}

std::string faultOf(const TrialFitObservation& seen, Length minimum, const Units& units) {
    const std::string name = "“" + shown(seen.item) + "”";
    if (isPerThrow(seen.item) && seen.throwNumber < 1) {
        return Core::say("Say at which throw %1 was looked at: throws count from 1.", name);
    }
    if (!isPerThrow(seen.item) && seen.throwNumber != 0) {
        return Core::say("%1 is looked at once, not by throw: leave the throw out.", name);
    }
    if (seen.found == TrialResult::measured && !mayBeMeasured(seen.item)) {
        return Core::say("%1 is a pass or a fail: no clearance is measured for it.", name);
    }
    if (seen.found == TrialResult::measured && !seen.clearance) {
        return Core::say("Enter the clearance that was measured for %1.", name);
    }
    if (seen.found != TrialResult::measured && seen.clearance) {
        return Core::say("A clearance was entered with a pass or a fail for %1: enter it as measured, or leave it out.",
                         name);
    }
    if (seen.clearance && *seen.clearance < Length()) {
        return Core::say("A clearance of %1 for %2 is below zero: parts that touch are a fail.",
                         format(*seen.clearance, units), name);
    }
    if (minimum < Length()) {
        return Core::say("The least clearance must be zero or more.");
    }
    return {};
}

/// What to do about an item that is not good.
std::string remedyFor(TrialItem item) {
    switch (item) {
    case TrialItem::dipstick:
        return Core::say("Make room for the dipstick, then try again.");
    case TrialItem::pickupTube:
        return Core::say("Bring the pickup tube clear of nuts and studs, then try again.");
    case TrialItem::counterweights:
    case TrialItem::rodBolts:
        return Core::say("Make room at that throw, then turn the crank through two full turns again.");
    case TrialItem::turnsFreely:
        return Core::say("Find what binds before going on, then turn the crank through two full turns again.");
    case TrialItem::keyway:
        break;
    }
    return Core::say("Find top dead centre again, and look at the keyway.");
}

} // namespace

Result<TrialFitJudgement> judgeTrialFit(const TrialFitObservation& seen, Length minimum, const Units& units) {
    if (std::string fault = faultOf(seen, minimum, units); !fault.empty()) {
        return refuse(std::move(fault));
    }
    TrialFitJudgement judgement;
    if (seen.found == TrialResult::measured) {
        judgement.isGood = *seen.clearance >= minimum && *seen.clearance > Length();
        judgement.sentence = Core::say("%1: %2 measured, %3 asked.", named(seen), format(*seen.clearance, units),
                                       minimum > Length() ? Core::say("at least %1", format(minimum, units))
                                                          : Core::say("no minimum is set"));
    } else {
        judgement.isGood = seen.found == TrialResult::pass;
        judgement.sentence = !judgement.isGood ? Core::say("%1: fail.", named(seen))
                             : mayBeMeasured(seen.item) && minimum > Length()
                                 ? Core::say("%1: passed by eye, not measured (at least %2 asked).", named(seen),
                                             format(minimum, units))
                                 : Core::say("%1: pass.", named(seen));
    }
    judgement.remedy = judgement.isGood ? "" : remedyFor(seen.item);
    return judgement;
}

} // namespace caprail
