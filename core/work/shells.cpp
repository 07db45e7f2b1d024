// SPDX-License-Identifier: GPL-3.0-or-later
#include <work/shells.h>

#include <algorithm>
#include <assessment/current_readings.h>
#include <base/say.h>
#include <ledger/band_names.h>
#include <measure/statistics.h>

namespace caprail {

namespace {

std::optional<Length> meanOf(const std::vector<Length>& values) {
    return values.empty() ? std::nullopt : std::optional(Length(toNearest(summarise(values).mean)));
}

std::optional<Length> housingOf(const Facts& facts, JournalId journal) {
    std::vector<Length> housings, bores;
    for (const auto& reading : currentBores(facts, journal)) {
        if (reading.what.method == BoreMethod::housing) {
            housings.push_back(reading.what.value.value);
        } else if (reading.what.method == BoreMethod::boreWithShells) {
            bores.push_back(reading.what.value.value);
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

std::optional<Length> verticalJournalOf(const Facts& facts, JournalId journal) {
    std::vector<Length> values;
    for (const auto& reading : currentJournal(facts, journal)) {
        if (reading.what.direction == 1) {
            values.push_back(reading.what.diameter.value);
        }
    }
    return meanOf(values);
}

/// Why a bearing cannot be asked for yet.
std::string whyLeftOut(JournalId journal, const BandFact* band, const std::optional<Length>& diameter) {
    return band == nullptr ? Core::say("%1: its band is not set", describe(journal))
           : !diameter     ? Core::say("%1: its journal is not measured", describe(journal))
                           : Core::say("%1: its housing is not measured", describe(journal));
}

std::string familyOf(JournalKind kind) {
    return std::string(word(kind));
}

} // namespace

std::optional<JournalId> whereFitted(const Facts& facts, std::string_view shell) {
    for (const auto& [journal, fitted] : facts.shellsFitted) {
        if (fitted.what.upper == shell || fitted.what.lower == shell) {
            return journal;
        }
    }
    return {};
}

std::optional<WarmShells> warmShells(const Facts& facts, JournalId journal) {
    const auto fitted = facts.shellsFitted.find(journal);
    if (fitted == facts.shellsFitted.end()) {
        return {};
    }
    const auto upper = shellThickness(facts, fitted->second.what.upper);
    const auto lower = shellThickness(facts, fitted->second.what.lower);
    const auto steel = std::ranges::find_if(
        knownExpansions(), [](const MaterialExpansion& m) { return m.material.find("steel") != std::string_view::npos; });
    return upper && lower && steel != knownExpansions().end()
               ? std::optional(WarmShells{*upper + *lower, steel->coefficient})
               : std::nullopt;
}

ShellRequest shellRequestFor(const Facts& facts) {
    ShellRequest request;
    for (const auto& [name, readings] : facts.shells) {
        if (const auto thickness = shellThickness(facts, name)) {
            const ShellMeasured& what = readings.back().what;
            request.shelf.push_back({name, *thickness, what.half, familyOf(what.fits)});
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
        const auto housing = housingOf(facts, journal);
        const auto diameter = verticalJournalOf(facts, journal);
        if (band == nullptr || !housing || !diameter) {
            request.leftOut.push_back(whyLeftOut(journal, band, diameter));
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
