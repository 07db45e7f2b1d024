// SPDX-License-Identifier: GPL-3.0-or-later
#include <clearances/trial_fit.h>

namespace caprail {

namespace {

std::string placeOf(const TrialFitObservation& seen) {
    const std::string name(word(seen.item));
    return needsThrow(seen.item) ? name + " at throw " + std::to_string(seen.throwNumber) : name;
}

std::string faultOf(const TrialFitObservation& seen, Length minimum, const Units& units) {
    const std::string name = "“" + std::string(word(seen.item)) + "”";
    if (needsThrow(seen.item) && seen.throwNumber < 1) {
        return "Say at which throw " + name + " was looked at: throws count from 1.";
    }
    if (!needsThrow(seen.item) && seen.throwNumber != 0) {
        return name + " is looked at once, not by throw: leave the throw out.";
    }
    if (seen.found == TrialFitFound::clearance && !mayBeMeasured(seen.item)) {
        return name + " is a pass or a fail: no clearance is measured for it.";
    }
    if (seen.found == TrialFitFound::clearance && !seen.clearance) {
        return "Enter the clearance that was measured for " + name + ".";
    }
    if (seen.found != TrialFitFound::clearance && seen.clearance) {
        return "A clearance was entered with a pass or a fail for " + name + ": enter it as measured, or leave it out.";
    }
    if (seen.clearance && *seen.clearance < Length()) {
        return "A clearance of " + format(*seen.clearance, units) + " for " + name +
               " is below zero: parts that touch are a fail.";
    }
    if (minimum < Length()) {
        return "The least clearance must be zero or more.";
    }
    return {};
}

/// What to do about an item that is not good.
std::string remedyFor(TrialFitItem item) {
    switch (item) {
    case TrialFitItem::wayRound:
        return "Turn the girdle so that its cutout lies on the pickup's side.";
    case TrialFitItem::dipstick:
        return "Make room for the dipstick, then try again.";
    case TrialFitItem::pickupTube:
        return "Bring the pickup tube clear of nuts and studs, then try again.";
    case TrialFitItem::counterweights:
    case TrialFitItem::rodBolts:
        return "Make room at that throw, then turn the crank through two full turns again.";
    case TrialFitItem::turnsFreely:
        return "Find what binds before going on, then turn the crank through two full turns again.";
    case TrialFitItem::keywayAtTopDeadCentre:
        break;
    }
    return "Find top dead centre again, and look at the keyway.";
}

} // namespace

Result<TrialFitJudgement> judgeTrialFit(const TrialFitObservation& seen, Length minimum, const Units& units) {
    if (std::string fault = faultOf(seen, minimum, units); !fault.empty()) {
        return refuse(std::move(fault));
    }
    TrialFitJudgement judgement;
    if (seen.found == TrialFitFound::clearance) {
        const Length least = needsThrow(seen.item) ? minimum : Length();
        judgement.isGood = *seen.clearance >= least && *seen.clearance > Length();
        judgement.sentence = placeOf(seen) + ": " + format(*seen.clearance, units) + " measured, " +
                             (least > Length() ? "at least " + format(least, units) : "more than nothing") + " asked.";
    } else {
        judgement.isGood = seen.found == TrialFitFound::pass;
        judgement.sentence = placeOf(seen) + ": " + (judgement.isGood ? "pass." : "fail.");
    }
    judgement.remedy = judgement.isGood ? "" : remedyFor(seen.item);
    return judgement;
}

} // namespace caprail
