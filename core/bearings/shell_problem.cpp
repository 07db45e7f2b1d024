// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <bearings/shell_problem.h>
#include <map>

namespace caprail {

namespace {

/// The two shells of a pair and which lies where; nothing when they cannot make one.
std::optional<ShellChoice> paired(const std::vector<ShellClass>& classes, std::size_t a, std::size_t b) {
    const auto mayLie = [&](std::size_t i, ShellHalf half) {
        return classes[i].half == ShellHalf::either || classes[i].half == half;
    };
    if (a == b && classes[a].ids.size() < 2) {
        return {};
    }
    ShellChoice choice;
    if (mayLie(a, ShellHalf::upper) && mayLie(b, ShellHalf::lower)) {
        choice.upper = static_cast<std::int16_t>(a);
        choice.lower = static_cast<std::int16_t>(b);
    } else if (mayLie(b, ShellHalf::upper) && mayLie(a, ShellHalf::lower)) {
        choice.upper = static_cast<std::int16_t>(b);
        choice.lower = static_cast<std::int16_t>(a);
    } else {
        return {};
    }
    return choice;
}

void addChoices(ShellFamily& family, const BearingToFit& bearing) {
    auto& in = family.inBand.emplace_back();
    auto& out = family.outOfBand.emplace_back();
    for (std::size_t a = 0; a < family.classes.size(); ++a) {
        for (std::size_t b = a; b < family.classes.size(); ++b) {
            auto choice = paired(family.classes, a, b);
            if (!choice) {
                continue;
            }
            const Length clearance =
                bearing.housing - family.classes[a].thickness - family.classes[b].thickness - bearing.journal;
            choice->clearance = clearance.value();
            choice->cost = (clearance - bearing.target).magnitude().value();
            choice->isInBand = bearing.band.contains(clearance);
            (choice->isInBand ? in : out).push_back(*choice);
        }
    }
}

} // namespace

std::vector<int> ShellFamily::stock() const {
    std::vector<int> counts;
    for (const ShellClass& c : classes) {
        counts.push_back(static_cast<int>(c.ids.size()));
    }
    return counts;
}

std::size_t ShellFamily::mostPairs() const {
    std::map<ShellHalf, std::size_t> count;
    for (const ShellClass& c : classes) {
        count[c.half] += c.ids.size();
    }
    const std::size_t either = count[ShellHalf::either];
    const std::size_t upper = count[ShellHalf::upper];
    const std::size_t lower = count[ShellHalf::lower];
    return std::min({upper + either, lower + either, (upper + lower + either) / 2});
}

std::vector<ShellFamily> familiesOf(const std::vector<BearingToFit>& bearings, const std::vector<ShelfShell>& shelf) {
    std::map<std::string, ShellFamily> families;
    for (const BearingToFit& bearing : bearings) {
        families[bearing.family].bearings.push_back(&bearing);
    }
    std::map<std::string, std::map<std::pair<Length, ShellHalf>, std::vector<std::string>>> like;
    for (const ShelfShell& shell : shelf) {
        like[shell.family][{shell.thickness, shell.half}].push_back(shell.id);
    }
    std::vector<ShellFamily> list;
    for (auto& [name, family] : families) {
        std::ranges::sort(family.bearings, {}, [](const BearingToFit* b) { return b->id; });
        for (auto& [kind, ids] : like[name]) {
            std::ranges::sort(ids);
            family.classes.push_back({kind.first, kind.second, std::move(ids)});
        }
        for (const BearingToFit* bearing : family.bearings) {
            addChoices(family, *bearing);
        }
        list.push_back(std::move(family));
    }
    return list;
}

std::int64_t spreadOf(const std::vector<ShellChoice>& chosen) {
    std::optional<std::int64_t> smallest;
    std::optional<std::int64_t> largest;
    for (const ShellChoice& c : chosen) {
        if (c.hasShells()) {
            smallest = std::min(smallest.value_or(c.clearance), c.clearance);
            largest = std::max(largest.value_or(c.clearance), c.clearance);
        }
    }
    return smallest ? *largest - *smallest : 0;
}

} // namespace caprail
