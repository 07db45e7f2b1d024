// SPDX-License-Identifier: GPL-3.0-or-later
#include <work/torque_working.h>

#include <base/say.h>
#include <fasteners/lubricant.h>
#include <fasteners/preload.h>
#include <fasteners/sequence.h>
#include <fasteners/wrench.h>
#include <units/parse.h>

namespace caprail {

namespace {

void addLines(std::vector<std::string>& lines, std::string heading, const std::vector<std::string>& working) {
    lines.push_back(std::move(heading));
    for (const auto& line : working) {
        lines.push_back("    " + line);
    }
}

void addSteps(GroupWorking& result, const FastenerGroupSet& group, const Units& units) {
    const auto steps = equalSteps(group.torque->value, static_cast<int>(group.steps));
    if (!steps) {
        result.missing.push_back(steps.error().sentence);
        return;
    }
    std::string values;
    for (const Torque step : *steps) {
        values += (values.empty() ? "" : "  →  ") + format(step, units);
    }
    result.lines.push_back(Core::say("Steps: %1", values));
}

/// Preload by both forms. The short form's refusal ends the working.
bool addPreload(GroupWorking& result, Torque torque, const Thread& thread, const Lubricant& lubricant,
                const Units& units) {
    result.lines.push_back(Core::say(
        "%1: K = %2, μ = %3 (%4)", Core::say(lubricant.name), formatNumber(lubricant.nutFactor, 2, units.decimalMark),
        formatNumber(lubricant.friction, 3, units.decimalMark), Core::say(lubricant.source)));
    const auto shortForm = preloadShortForm(torque, thread, lubricant.nutFactor, units);
    if (!shortForm) {
        result.missing.push_back(shortForm.error().sentence);
        return false;
    }
    addLines(result.lines, Core::say("Preload, short form: %1", format(shortForm->value, units)), shortForm->working);
    const JointFriction friction{lubricant.friction, lubricant.friction, usualBearingRadius(thread)};
    if (const auto longForm = preloadLongForm(torque, thread, friction, units)) {
        addLines(result.lines, Core::say("Preload, long form: %1", format(longForm->value, units)), longForm->working);
    }
    return true;
}

void addShareOfProof(GroupWorking& result, Torque torque, const Thread& thread, const Grade& grade,
                     const Lubricant& lubricant, std::int64_t scatterPercent, const Units& units) {
    const auto judged = judgeTorque(torque, thread, grade, lubricant.nutFactor, lubricant.friction,
                                    static_cast<double>(scatterPercent) / 100.0, units);
    if (!judged) {
        result.missing.push_back(judged.error().sentence);
        return;
    }
    const auto percent = [&](double share) { return formatPercent(share, units); };
    addLines(result.lines,
             Core::say("Share of proof load: %1 (%2 to %3 with ± %4 % scatter)", percent(judged->share.nominal),
                       percent(judged->share.low), percent(judged->share.high), scatterPercent),
             judged->share.working);
    addLines(result.lines,
             Core::say("With the torsion of tightening: %1 of proof, %2 at the lower friction",
                       percent(judged->equivalent.nominal), percent(judged->equivalent.high)),
             judged->stress.working);
    for (const auto& warning : judged->warnings) {
        result.warnings.push_back(warning.sentence);
    }
}

} // namespace

GroupWorking workingOf(const FastenerGroupSet& group, std::int64_t scatterPercent, const Units& units) {
    GroupWorking result;
    if (!group.torque) {
        result.missing.push_back(Core::say("No torque is given: there is nothing to work out a preload from."));
        return result;
    }
    addSteps(result, group, units);
    if (hasAngle(group.method)) {
        result.missing.push_back(Core::say("By torque and angle: what follows is the preload before the angle."));
    }
    const auto thread = parseThread(group.thread);
    const auto grade = parseGrade(group.grade);
    const auto lubricant = findLubricant(group.lubricant);
    if (!thread) {
        result.missing.push_back(thread.error().sentence);
    }
    if (!lubricant) {
        result.missing.push_back(lubricant.error().sentence);
    }
    if (!thread || !lubricant || !addPreload(result, group.torque->value, *thread, *lubricant, units)) {
        return result;
    }
    if (!grade) {
        result.missing.push_back(grade.error().sentence);
        return result;
    }
    addShareOfProof(result, group.torque->value, *thread, *grade, *lubricant, scatterPercent, units);
    return result;
}

Result<Worked<Torque>> settingAsTyped(Torque wanted, std::string_view length, std::string_view offset,
                                      std::string_view angle, const Units& units) {
    const auto wrench = parseLength(length, units, {Core::say("the wrench's length"), {}, {}});
    const auto reach = parseLength(offset, units, {Core::say("the extension's length"), {}, {}});
    const auto turn = parseAngle(angle, units, {Core::say("the extension's angle"), {}, {}});
    if (!wrench || !reach || !turn) {
        return tl::unexpected(!wrench ? wrench.error() : !reach ? reach.error() : turn.error());
    }
    return wrenchSetting(wanted, {wrench->value, reach->value, turn->value}, units);
}

} // namespace caprail
