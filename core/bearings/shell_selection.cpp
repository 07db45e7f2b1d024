// SPDX-License-Identifier: GPL-3.0-or-later
#include <bearings/shell_problem.h>
#include <bearings/shell_selection.h>
#include <map>
#include <set>

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
        return "There is no bearing to choose shells for: measure housing and journal first.";
    }
    if (bearings.size() > mostBearings) {
        return "Shells are chosen for at most " + std::to_string(mostBearings) + " bearings at a time, not for " +
               std::to_string(bearings.size()) + ".";
    }
    std::set<std::string> names;
    for (const BearingToFit& b : bearings) {
        if (b.id.empty()) {
            return "A bearing has no name: give it one.";
        }
        if (!names.insert(b.id).second) {
            return "Bearing " + b.id + " is listed twice: leave one out.";
        }
        if (!isPlausible(b.housing) || !isPlausible(b.journal)) {
            return "Housing and journal of bearing " + b.id + " must be above zero and at most " +
                   format(longest, units) + ".";
        }
        if (!b.band.contains(b.target)) {
            return "The target " + format(b.target, units) + " of bearing " + b.id + " lies outside its band, " +
                   format(b.band, units) + ".";
        }
        if (b.band.hi().magnitude() > longest || b.band.lo().magnitude() > longest) {
            return "The band of bearing " + b.id + " is wider than any clearance: look at its ends.";
        }
    }
    return {};
}

std::string faultOf(const std::vector<ShelfShell>& shelf, const Units& units) {
    if (shelf.size() > mostShells) {
        return "The shelf holds " + std::to_string(shelf.size()) + " shells, more than the " +
               std::to_string(mostShells) + " that can be chosen from: leave out those that cannot fit.";
    }
    std::set<std::string> names;
    for (const ShelfShell& shell : shelf) {
        if (shell.id.empty()) {
            return "A shell on the shelf has no name: give it one.";
        }
        if (!names.insert(shell.id).second) {
            return "Shell " + shell.id + " is on the shelf twice: leave one out.";
        }
        if (!isPlausible(shell.thickness)) {
            return "The thickness of shell " + shell.id + " must be above zero and at most " + format(longest, units) +
                   ".";
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
    std::string text = std::to_string(s.inBand) + " of " + std::to_string(bearings) +
                       (bearings == 1 ? " bearing" : " bearings") + " in band, " + format(s.sumOfDeviations, units) +
                       " off target in all, spread " + format(s.spread, units) +
                       (s.isProven ? "; proven: nothing better is on the shelf."
                                   : "; the best found before it was stopped, not proven.");
    for (const ShellPair& pair : s.pairs) {
        if (!pair.isFitted) {
            text += " No shells are left for " + pair.bearing + ".";
        } else if (!pair.isInBand) {
            text += " " + pair.bearing + " comes to " + format(pair.clearance, units) + ", out of band.";
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
