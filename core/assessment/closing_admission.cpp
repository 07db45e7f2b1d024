// SPDX-License-Identifier: GPL-3.0-or-later
/// What a closing step must carry, and whether it may be entered now.
#include <assessment/closing_steps.h>

#include <base/say.h>
#include <base/text.h>

namespace caprail {

ShimCount shimCountOf(const Facts& facts) {
    ShimCount count;
    for (const auto& [name, shim] : facts.shims) {
        ++(shim.inStackAt ? count.fitted : shim.isSetAside ? count.aside : count.leftOver);
    }
    return count;
}

namespace {

/// No girdle was lowered on the bead that was laid last.
bool beadLiesOpen(const Facts& facts) {
    const auto bead = facts.closing.find(ClosingStep::beadLaid);
    const auto girdle = facts.closing.find(ClosingStep::girdleLowered);
    return bead != facts.closing.end() &&
           (girdle == facts.closing.end() || girdle->second.entry < bead->second.entry);
}

Result<void> countIsRight(const Facts& facts, const ClosingStepDone& e) {
    if (!e.fitted || !e.aside || !e.leftOver) {
        return refuse(Core::say("Count the shims by hand, and give three numbers: in the stacks, set aside, left over."));
    }
    const ShimCount is = shimCountOf(facts);
    const std::int64_t counted = *e.fitted + *e.aside + *e.leftOver;
    if (*e.fitted < 0 || *e.aside < 0 || *e.leftOver < 0 || counted > 100'000) {
        return refuse(Core::say("A count of shims is not negative, and no kit has so many."));
    }
    if (counted < is.kit()) {
        return refuse(Core::say("%1 + %2 + %3 = %4 shims were counted, and the kit has %5: find what is missing before "
                                "anything goes on. One left in the engine can destroy it.",
                                *e.fitted, *e.aside, *e.leftOver, counted, is.kit()));
    }
    if (counted > is.kit() || *e.fitted != is.fitted || *e.aside != is.aside) {
        return refuse(Core::say("%1 + %2 + %3 shims were counted; by the record it is %4 in the stacks, %5 set aside and "
                                "%6 left over: count again, or correct the record.",
                                *e.fitted, *e.aside, *e.leftOver, is.fitted, is.aside, is.leftOver));
    }
    return {};
}

Result<void> beadIsNamed(const ClosingStepDone& e) {
    if (isBlank(e.product.value_or("")) || isBlank(e.lot.value_or("")) || !e.openMinutes) {
        return refuse(Core::say("Name the sealant's product and lot, and give its open time in minutes, as printed on "
                                "the tube."));
    }
    if (*e.openMinutes < 1 || *e.openMinutes > 1440) {
        return refuse(Core::say("The sealant's open time is given in minutes, 1 to 1440."));
    }
    return {};
}

} // namespace

Result<void> mayBeDone(const Facts& facts, const ClosingStepDone& e) {
    const Units units;
    for (const auto& step : allWords<ClosingStep>()) {
        if (step.value == e.step) {
            break;
        }
        const Standing before = standingOf(facts, step.value, units);
        if (before.state == CheckState::notDone) {
            return refuse(Core::say("“%1” comes after “%2”: do that first.", shown(e.step), shown(step.value)));
        }
        if (before.state != CheckState::good) {
            return refuse(Core::say("“%1” comes after “%2”, which does not stand: %3 %4", shown(e.step),
                                    shown(step.value), before.sentence, before.remedy));
        }
    }
    // A bead may be laid again while the girdle does not lie on it.
    const bool isBeadOpen = e.step == ClosingStep::beadLaid && beadLiesOpen(facts);
    if (!isBeadOpen && standingOf(facts, e.step, units).state == CheckState::good) {
        return refuse(Core::say("“%1” is ticked already: strike that entry if it is wrong.", shown(e.step)));
    }
    if (const auto lack = lackOf(facts, e.step, units)) {
        return refuse(Core::say("“%1” cannot be entered yet: %2", shown(e.step), lack->sentence));
    }
    if (e.step != ClosingStep::shimsCounted && (e.fitted || e.aside || e.leftOver)) {
        return refuse(Core::say("Shims are counted back in a step of their own: leave the counts out of “%1”.",
                                shown(e.step)));
    }
    return e.step == ClosingStep::shimsCounted ? countIsRight(facts, e) : e.step == ClosingStep::beadLaid ? beadIsNamed(e) : Result<void>();
}

} // namespace caprail
