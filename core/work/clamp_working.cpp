// SPDX-License-Identifier: GPL-3.0-or-later
#include <work/clamp_working.h>

#include <assessment/fastener_groups.h>
#include <assessment/program_findings.h>
#include <base/say.h>

namespace caprail {

namespace {

Result<Worked<Force>> worked(const Facts& facts, const ClampChecked& check, const Units& units) {
    const auto thread = threadOf(facts, check.fastener);
    return thread ? clampFromTorques(check.on.value, check.off.value, *thread, units)
                  : Result<Worked<Force>>(tl::unexpected(thread.error()));
}

} // namespace

std::optional<Force> clampOf(const Facts& facts, const ClampChecked& check) {
    const auto clamp = worked(facts, check, Units{});
    return clamp ? std::optional(clamp->value) : std::nullopt;
}

std::vector<std::string> clampWorking(const Facts& facts, FastenerId f, const Units& units) {
    std::vector<std::string> lines;
    const auto at = facts.fasteners.find(f);
    if (at == facts.fasteners.end()) {
        return lines;
    }
    const auto* group = facts.groupOf(f);
    const auto aimed = group == nullptr ? Result<TorqueJudgement>(refuse(""))
                                        : judgeGroup(group->what, facts.rules.torqueScatterPercent, units);
    const auto& clamps = at->second.clamps;
    // NOLINTNEXTLINE(modernize-loop-convert): clang 14 knows no views::reverse
    for (auto newest = clamps.rbegin(); newest != clamps.rend(); ++newest) {
        const auto& seen = *newest;
        const auto clamp = worked(facts, seen.what, units);
        if (!clamp) {
            continue;
        }
        lines.push_back(Core::say("Entry %1, %2: %3", seen.entry, seen.person, format(clamp->value, units)));
        for (const std::string& line : clamp->working) {
            lines.push_back("    " + line);
        }
        if (aimed) {
            const double share = inNewtons(clamp->value) / inNewtons(aimed->preload);
            lines.push_back("    " + Core::say("%1 of the %2 that its specification aims at",
                                               formatPercent(share, units), format(aimed->preload, units)));
        }
    }
    return lines;
}

} // namespace caprail
