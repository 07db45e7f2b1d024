// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/bearings/shelf.h>

#include <algorithm>
#include <ledger/band_names.h>
#include <measure/statistics.h>
#include <stations/bearings/places.h>
#include <stations/common/station_text.h>
#include <base/say.h>

namespace caprail {

namespace {

ShellSide sideOf(ShellHalf half) {
    return half == ShellHalf::upper   ? ShellSide::upper
           : half == ShellHalf::lower ? ShellSide::lower
                                      : ShellSide::either;
}

std::optional<Length> meanOf(const std::vector<Length>& values) {
    return values.empty() ? std::nullopt : std::optional(Length(toNearest(summarise(values).mean)));
}

bool stands(const Check* check, std::int64_t entry) {
    return check == nullptr || std::ranges::find(check->restsOn, entry) != check->restsOn.end();
}

std::optional<Length> housingOf(const Facts& facts, JournalId journal, const Check* check) {
    const auto at = facts.bores.find(journal);
    if (at == facts.bores.end()) {
        return {};
    }
    std::vector<Length> housings, bores;
    for (const auto& reading : at->second) {
        if (stands(check, reading.entry)) {
            if (reading.what.method == BoreMethod::housing) {
                housings.push_back(reading.what.value.value);
            } else if (reading.what.method == BoreMethod::boreWithShells) {
                bores.push_back(reading.what.value.value);
            }
        }
    }
    if (!housings.empty()) {
        return meanOf(housings);
    }
    const auto fitted = facts.shellsFitted.find(journal);
    const auto bore = meanOf(bores);
    if (!bore || fitted == facts.shellsFitted.end()) {
        return {};
    }
    const auto upper = shellThickness(facts, fitted->second.what.upper);
    const auto lower = shellThickness(facts, fitted->second.what.lower);
    return upper && lower ? std::optional(*bore + *upper + *lower) : std::nullopt;
}

std::optional<Length> verticalJournalOf(const Facts& facts, JournalId journal, const Check* check) {
    std::vector<Length> values;
    if (const auto at = facts.journals.find(journal); at != facts.journals.end()) {
        for (const auto& reading : at->second) {
            if (reading.what.direction == 1 && stands(check, reading.entry)) {
                values.push_back(reading.what.diameter.value);
            }
        }
    }
    return meanOf(values);
}

std::string familyOf(JournalKind kind) {
    return std::string(word(kind));
}

} // namespace

std::optional<Length> shellThickness(const Facts& facts, const std::string& shell) {
    const auto at = facts.shells.find(shell);
    if (at == facts.shells.end()) {
        return {};
    }
    std::vector<Length> measured;
    std::optional<Length> marked;
    for (const auto& reading : at->second) {
        if (reading.what.isMarked) {
            marked = reading.what.thickness.value;
        } else {
            measured.push_back(reading.what.thickness.value);
        }
    }
    return measured.empty() ? marked : meanOf(measured);
}

std::optional<JournalId> whereFitted(const Facts& facts, const std::string& shell) {
    for (const auto& [journal, fitted] : facts.shellsFitted) {
        if (fitted.what.upper == shell || fitted.what.lower == shell) {
            return journal;
        }
    }
    return {};
}

ShellRequest shellRequestFor(const Facts& facts, const Assessment& assessment) {
    ShellRequest request;
    for (const auto& [name, readings] : facts.shells) {
        if (const auto thickness = shellThickness(facts, name)) {
            const ShellMeasured& what = readings.back().what;
            request.shelf.push_back({name, *thickness, sideOf(what.half), familyOf(what.fits)});
        }
    }
    if (!facts.layout) {
        return request;
    }
    auto journals = facts.layout->mainJournals();
    const auto rods = facts.layout->rodJournals();
    journals.insert(journals.end(), rods.begin(), rods.end());
    for (const JournalId journal : journals) {
        const bool isMain = journal.kind == JournalKind::main;
        const BandFact* band = facts.bandNamed(isMain ? bands::mainClearance : bands::rodClearance);
        const Check* check = clearanceCheckOf(assessment, journal);
        const auto housing = housingOf(facts, journal, check);
        const auto diameter = verticalJournalOf(facts, journal, check);
        if (band == nullptr || !housing || !diameter) {
            request.leftOut << QStringLiteral("%1: %2").arg(
                qtText(describe(journal)), band == nullptr ? QStringLiteral("its band is not set")
                                           : !diameter     ? QStringLiteral("its journal is not measured")
                                                           : QStringLiteral("its housing is not measured"));
            continue;
        }
        request.bearings.push_back({code(journal), *housing, *diameter, band->band,
                                    band->target.value_or(band->band.middle()), familyOf(journal.kind)});
    }
    return request;
}

Result<std::vector<ShellsFitted>> fittingsFor(const Facts& facts, const ShellSelection& selection) {
    std::map<std::string, JournalId> lies; // shell → bearing, as the entries go by
    for (const auto& [journal, fitted] : facts.shellsFitted) {
        lies[fitted.what.upper] = journal;
        lies[fitted.what.lower] = journal;
    }
    std::vector<ShellsFitted> waiting;
    for (const ShellPair& pair : selection.pairs) {
        const auto journal = parseJournal(pair.bearing);
        if (!pair.isFitted || !journal) {
            continue;
        }
        const auto now = facts.shellsFitted.find(*journal);
        const bool isSame = now != facts.shellsFitted.end() && now->second.what.upper == pair.upper &&
                            now->second.what.lower == pair.lower;
        if (!isSame) {
            waiting.push_back({*journal, pair.upper, pair.lower});
        }
    }
    std::vector<ShellsFitted> order;
    while (!waiting.empty()) {
        const auto isFree = [&](const std::string& shell, JournalId journal) {
            const auto at = lies.find(shell);
            return at == lies.end() || at->second == journal;
        };
        const auto next = std::ranges::find_if(
            waiting, [&](const ShellsFitted& f) { return isFree(f.upper, f.journal) && isFree(f.lower, f.journal); });
        if (next == waiting.end()) {
            const ShellsFitted& stuck = waiting.front();
            const std::string& shell = isFree(stuck.upper, stuck.journal) ? stuck.lower : stuck.upper;
            return refuse(Core::say("Shell %1 is wanted in %2 but lies in %3, which waits for shells in its turn: "
                                    "enter two free shells for %4 first.",
                                    shell, describe(stuck.journal), describe(lies[shell]), describe(lies[shell])));
        }
        std::erase_if(lies, [&](const auto& l) { return l.second == next->journal; });
        lies[next->upper] = next->journal;
        lies[next->lower] = next->journal;
        order.push_back(*next);
        waiting.erase(next);
    }
    return order;
}

} // namespace caprail
