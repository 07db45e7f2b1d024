// SPDX-License-Identifier: GPL-3.0-or-later
#include <fasteners/preload.h>
#include <fasteners/text.h>
#include <base/say.h>

namespace caprail {

using namespace fastenertext;

namespace {

constexpr double mostOfProof = 0.90;
constexpr double suspiciouslySmall = 0.12;
constexpr double suspiciouslyLarge = 3.0;

} // namespace

Result<ProofShare> shareOfProof(Force preload, const Thread& thread, const Grade& grade, double scatter,
                                const Units& units) {
    if (const auto checked = plausiblePreload(preload, units); !checked) {
        return tl::unexpected(checked.error());
    }
    if (!(scatter >= 0.0 && scatter <= 0.9)) {
        return refuse(Core::say("A scatter of %1 is outside 0 to 90 %: a torque wrench reaches about 25 to 35 %.",
                                formatPercent(scatter, units, 1)));
    }
    const auto load = proofLoad(thread, grade);
    if (!load) {
        return tl::unexpected(load.error());
    }
    const auto stress = grade.proofStress(thread);
    const double share = inNewtons(preload) / inNewtons(*load);
    ProofShare out{share * (1.0 - scatter), share, share * (1.0 + scatter), *load, {}};
    out.working = {Core::say("proof load = %1 × %2 = %3 (%4, %5)", format(*stress, units),
                             areaText(thread.stressArea(), units), format(*load, units), grade.name(), thread.name()),
                   Core::say("share of proof = %1 / %2 = %3", format(preload, units), format(*load, units),
                             formatPercent(share, units)),
                   Core::say("with a scatter of ±%1: %2 at the higher friction to %3 at the lower",
                             formatPercent(scatter, units), formatPercent(out.low, units),
                             formatPercent(out.high, units))};
    return out;
}

std::vector<TorqueWarning> torqueWarnings(Torque torque, const ProofShare& share, double equivalentHigh,
                                          const Units& units) {
    // A factor of 12 lies between lbf·ft and lbf·in, whichever unit is shown here.
    if (share.nominal > suspiciouslyLarge) {
        return {
            {TorqueWarningKind::looksTwelveTimesTooLarge,
             Core::say("A torque of %1 would pull the fastener to %2 of its proof load: was a value in lbf·in entered "
                       "as lbf·ft? As lbf·in it would be %3.",
                       format(torque, units), formatPercent(share.nominal, units),
                       formatPercent(share.nominal / 12.0, units))}};
    }
    if (share.nominal < suspiciouslySmall) {
        return {
            {TorqueWarningKind::looksTwelveTimesTooSmall,
             Core::say("A torque of %1 pulls the fastener to only %2 of its proof load: was a value in lbf·ft entered "
                       "as lbf·in? As lbf·ft it would be %3.",
                       format(torque, units), formatPercent(share.nominal, units, 1),
                       formatPercent(share.nominal * 12.0, units))}};
    }
    if (equivalentHigh > mostOfProof) {
        return {
            {TorqueWarningKind::passesNinetyPercentOfProof,
             Core::say("A torque of %1 gives %2 of the proof load, but at the lower friction and with the torsion of "
                       "tightening %3, which is more than 90 %: check the value, the lubricant and the grade.",
                       format(torque, units), formatPercent(share.nominal, units),
                       formatPercent(equivalentHigh, units))}};
    }
    return {};
}

bool TorqueJudgement::isOverProof() const {
    return equivalent.high > mostOfProof;
}

Result<TorqueJudgement> judgeTorque(Torque torque, const Thread& thread, const Grade& grade, double nutFactor,
                                    double threadFriction, double scatter, const Units& units) {
    auto preload = preloadShortForm(torque, thread, nutFactor, units);
    if (!preload) {
        return tl::unexpected(preload.error());
    }
    auto share = shareOfProof(preload->value, thread, grade, scatter, units);
    if (!share) {
        return tl::unexpected(share.error());
    }
    const auto stress = threadStress(preload->value, thread, threadFriction, units);
    if (!stress) {
        return tl::unexpected(stress.error());
    }
    const double factor = stress->factor();
    const ProofShare equivalent{share->low * factor, share->nominal * factor, share->high * factor, share->proofLoad, {}};
    TorqueJudgement out{preload->value, *share, equivalent, *stress, torqueWarnings(torque, *share, equivalent.high, units),
                        std::move(preload->working)};
    out.working.insert(out.working.end(), share->working.begin(), share->working.end());
    out.working.insert(out.working.end(), stress->working.begin(), stress->working.end());
    out.working.push_back(Core::say("with torsion: %1 of proof, %2 at the lower friction",
                                    formatPercent(equivalent.nominal, units), formatPercent(equivalent.high, units)));
    return out;
}

} // namespace caprail
