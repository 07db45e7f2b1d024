// SPDX-License-Identifier: GPL-3.0-or-later
#include <bearings/shell_problem.h>
#include <bearings/shell_selection.h>
#include <map>
#include <set>
#include <base/say.h>

namespace caprail {

namespace {

constexpr std::size_t mostBearings = 32;
constexpr std::size_t mostShells = 200;
constexpr Length longest = millimetres(1'000);

bool isPlausible(Length l) {
    return l > Length() && l <= longest;
}

std::string faultOf(const std::vector<BearingToFit>& bearings, const Units& units) {
    if (bearings.empty()) {
        return Core::say("There is no bearing to choose shells for: measure housing and journal first.");
    }
    if (bearings.size() > mostBearings) {
        return Core::say("Shells are chosen for at most %1 bearings at a time, not for %2.", mostBearings,
                         bearings.size());
    }
    std::set<std::string> names;
    for (const BearingToFit& b : bearings) {
        if (b.id.empty()) {
            return Core::say("A bearing has no name: give it one.");
        }
        if (!names.insert(b.id).second) {
            return Core::say("Bearing %1 is listed twice: leave one out.", b.id);
        }
        if (!isPlausible(b.housing) || !isPlausible(b.journal)) {
            return Core::say("Housing and journal of bearing %1 must be above zero and at most %2.", b.id,
                             format(longest, units));
        }
        if (!b.band.contains(b.target)) {
            return Core::say("The target %1 of bearing %2 lies outside its band, %3.", format(b.target, units), b.id,
                             format(b.band, units));
        }
        if (b.band.hi().magnitude() > longest || b.band.lo().magnitude() > longest) {
            return Core::say("The band of bearing %1 is wider than any clearance: look at its ends.", b.id);
        }
    }
    return {};
}

std::string faultOf(const std::vector<ShelfShell>& shelf, const Units& units) {
    if (shelf.size() > mostShells) {
        return Core::say(
            "The shelf holds %1 shells, more than the %2 that can be chosen from: leave out those that cannot fit.",
            shelf.size(), mostShells);
    }
    std::set<std::string> names;
    for (const ShelfShell& shell : shelf) {
        if (shell.id.empty()) {
            return Core::say("A shell on the shelf has no name: give it one.");
        }
        if (!names.insert(shell.id).second) {
            return Core::say("Shell %1 is on the shelf twice: leave one out.", shell.id);
        }
        if (!isPlausible(shell.thickness)) {
            return Core::say("The thickness of shell %1 must be above zero and at most %2.", shell.id,
                             format(longest, units));
        }
    }
    return {};
}

/// Hands out the shells of each class in the order of their names, bearing by bearing.
void handOut(const ShellFamily& family, const std::vector<ShellChoice>& chosen,
             std::map<std::string, ShellPair>& into) {
    std::vector<std::size_t> next(family.classes.size(), 0);
    const auto takeFrom = [&](int index) {
        const auto i = static_cast<std::size_t>(index);
        return family.classes[i].ids[next[i]++];
    };
    for (std::size_t j = 0; j < chosen.size(); ++j) {
        const BearingToFit& bearing = *family.bearings[j];
        ShellPair& pair = into[bearing.id];
        pair.bearing = bearing.id;
        if (chosen[j].hasShells()) {
            pair.upper = takeFrom(chosen[j].upper);
            pair.lower = takeFrom(chosen[j].lower);
            pair.clearance = Length(chosen[j].clearance);
            pair.isFitted = true;
            pair.isInBand = bearing.band.contains(pair.clearance);
        }
    }
}

std::string summary(const ShellSelection& s, const Units& units) {
    const std::size_t bearings = s.pairs.size();
    std::string text =
        Core::count(bearings, Core::mark("%2 of %1 bearing in band, %3 off target in all, spread %4; %5"),
                    Core::mark("%2 of %1 bearings in band, %3 off target in all, spread %4; %5"), s.inBand,
                    format(s.sumOfDeviations, units), format(s.spread, units),
                    s.isProven ? Core::say("proven: nothing better is on the shelf.")
                               : Core::say("the best found before it was stopped, not proven."));
    for (const ShellPair& pair : s.pairs) {
        if (!pair.isFitted) {
            text += " " + Core::say("No shells are left for %1.", pair.bearing);
        } else if (!pair.isInBand) {
            text += " " + Core::say("%1 comes to %2, out of band.", pair.bearing, format(pair.clearance, units));
        }
    }
    return text;
}

} // namespace

Result<ShellSelection> selectShells(const std::vector<BearingToFit>& bearings, const std::vector<ShelfShell>& shelf,
                                    const Units& units, const std::function<bool()>& shouldStop) {
    for (std::string fault : {faultOf(bearings, units), faultOf(shelf, units)}) {
        if (!fault.empty()) {
            return refuse(std::move(fault));
        }
    }
    ShellSelection selection;
    selection.isProven = true;
    std::map<std::string, ShellPair> pairs;
    for (const ShellFamily& family : familiesOf(bearings, shelf)) {
        const FamilySolution solution = solveFamily(family, shouldStop);
        selection.isProven = selection.isProven && solution.isProven;
        selection.spread += Length(spreadOf(solution.chosen));
        handOut(family, solution.chosen, pairs);
    }
    for (const BearingToFit& bearing : bearings) {
        const ShellPair& pair = selection.pairs.emplace_back(pairs[bearing.id]);
        selection.inBand += pair.isInBand ? 1U : 0U;
        if (pair.isFitted) {
            ++selection.fitted;
            selection.sumOfDeviations += (pair.clearance - bearing.target).magnitude();
        }
    }
    selection.sentence = summary(selection, units);
    return selection;
}

} // namespace caprail
