// SPDX-License-Identifier: GPL-3.0-or-later
#include <assessment/second_person.h>

#include <base/say.h>

namespace caprail {

namespace {

Result<void> mayVerify(const Facts& facts, std::string_view person) {
    for (const auto& [fastener, fact] : facts.fasteners) {
        if (isVerified(fastener.kind) && fact.tightened && fact.tightened->person == person) {
            return refuse(Core::say("%1 tightened %2, and the shop's rule asks for a second person to verify: let somebody "
                                    "else make the round.",
                                    person, describe(fastener)));
        }
    }
    return {};
}

Result<void> maySign(const Facts& facts, std::string_view person) {
    for (const auto& [step, done] : facts.closing) {
        if (done.person == person) {
            return refuse(Core::say("%1 did “%2”, and the shop's rule asks for a second person to sign off: let somebody else "
                                    "look at it all and sign.",
                                    person, shown(step)));
        }
    }
    return {};
}

} // namespace

Result<void> maySecondPerson(const Facts& facts, std::string_view person, const Body& body) {
    if (isAnyOf<RoundBegun, RoundOutcome>(body) && facts.rules.secondPersonVerifies.value_or(false)) {
        return mayVerify(facts, person);
    }
    if (body.is<SignedOff>() && facts.rules.secondPersonSigns.value_or(false)) {
        return maySign(facts, person);
    }
    return {};
}

} // namespace caprail
