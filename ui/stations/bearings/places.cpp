// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/bearings/places.h>

#include <QCoreApplication>
#include <algorithm>
#include <ledger/band_names.h>
#include <stations/common/station_text.h>

namespace caprail {

namespace {

struct PlacesText {
    Q_DECLARE_TR_FUNCTIONS(BearingsStation)
};

QString stationName(std::int64_t station, std::int64_t stations) {
    const QString number = PlacesText::tr("station %1").arg(station);
    return station == 1          ? PlacesText::tr("%1 (front)").arg(number)
           : station == stations ? PlacesText::tr("%1 (rear)").arg(number)
                                 : number;
}

QString directionName(std::int64_t direction) {
    return direction == 1   ? PlacesText::tr("vertical")
           : direction == 2 ? PlacesText::tr("horizontal")
                            : PlacesText::tr("direction %1").arg(direction);
}

template <class T, class Fits>
std::optional<Entered<Length>> lastCurrent(const std::map<JournalId, std::vector<Seen<T>>>& all, JournalId journal,
                                           const Check* check, Entered<Length> T::*value, Fits fits) {
    const auto at = all.find(journal);
    if (at == all.end()) {
        return {};
    }
    for (auto reading = at->second.rbegin(); reading != at->second.rend(); ++reading) {
        const bool stands =
            check == nullptr || std::ranges::find(check->restsOn, reading->entry) != check->restsOn.end();
        if (stands && fits(reading->what)) {
            return reading->what.*value;
        }
    }
    return {};
}

std::vector<TableCell> row(const QString& name, const QString& value) {
    return {{name + QStringLiteral("\u00a0\u00a0")}, {value, true, true}};
}

} // namespace

std::vector<BearingSlot> bearingSlots(const Facts& facts, BearingsMode mode, SlotCounts counts) {
    std::vector<BearingSlot> list;
    if (!facts.layout || !isPass(mode)) {
        return list;
    }
    auto journals = facts.layout->mainJournals();
    const auto rods = facts.layout->rodJournals();
    journals.insert(journals.end(), rods.begin(), rods.end());
    const std::int64_t stations = mode == BearingsMode::strip ? 1 : counts.stations;
    const std::int64_t directions = mode == BearingsMode::journals ? counts.directions : 1;
    for (const JournalId journal : journals) {
        for (std::int64_t station = 1; station <= stations; ++station) {
            for (std::int64_t direction = 1; direction <= directions; ++direction) {
                list.push_back({journal, station, direction});
            }
        }
    }
    return list;
}

const Check* clearanceCheckOf(const Assessment& assessment, JournalId journal) {
    const CheckKind kind = journal.kind == JournalKind::main ? CheckKind::mainClearance : CheckKind::rodClearance;
    return assessment.find(std::string(word(kind)) + ":" + code(journal));
}

BoreMethod methodOf(BearingsMode mode) {
    return mode == BearingsMode::housings ? BoreMethod::housing
           : mode == BearingsMode::strip  ? BoreMethod::strip
                                          : BoreMethod::boreWithShells;
}

std::optional<Entered<Length>> currentAt(const Facts& facts, const Assessment& assessment, BearingsMode mode,
                                         const BearingSlot& slot) {
    const Check* check = clearanceCheckOf(assessment, slot.journal);
    if (mode == BearingsMode::journals) {
        return lastCurrent(
            facts.journals, slot.journal, check, &JournalReading::diameter,
            [&](const JournalReading& r) { return r.station == slot.station && r.direction == slot.direction; });
    }
    return lastCurrent(facts.bores, slot.journal, check, &BoreReading::value,
                       [&](const BoreReading& r) { return r.station == slot.station && r.method == methodOf(mode); });
}

std::optional<BearingSlot> nextOpenSlot(const Facts& facts, const Assessment& assessment, BearingsMode mode,
                                        const std::vector<BearingSlot>& order, const BearingSlot& here) {
    const auto start = std::ranges::find(order, here);
    const auto isOpen = [&](const BearingSlot& slot) { return !currentAt(facts, assessment, mode, slot); };
    const auto after = std::find_if(start, order.end(), isOpen);
    if (after != order.end()) {
        return *after;
    }
    const auto before = std::find_if(order.begin(), start, isOpen);
    return before == start ? std::nullopt : std::optional(*before);
}

QString noBandSentence() {
    return PlacesText::tr("Its band is not set: set it at the engine station, under Bands.");
}

QString slotName(BearingsMode mode, const BearingSlot& slot, SlotCounts counts) {
    if (mode == BearingsMode::strip) {
        return PlacesText::tr("gauging strip");
    }
    const QString along = stationName(slot.station, counts.stations);
    return mode == BearingsMode::journals ? along + QStringLiteral(", ") + directionName(slot.direction) : along;
}

QString bearingLine(const Entry& entry, const Units& units) {
    const auto with = [](const std::string& instrument) {
        return instrument.empty() ? QString() : QStringLiteral(" · ") + qtText(instrument);
    };
    if (const auto* journal = entry.body.as<JournalReading>()) {
        return QStringLiteral("%1, %2: %3")
                   .arg(journal->station)
                   .arg(directionName(journal->direction), qtText(format(journal->diameter.value, units))) +
               with(journal->instrument);
    }
    if (const auto* bore = entry.body.as<BoreReading>()) {
        return QStringLiteral("%1, %2: %3")
                   .arg(bore->station)
                   .arg(qtShown(bore->method), qtText(format(bore->value.value, units))) +
               with(bore->instrument);
    }
    const auto* shells = entry.body.as<ShellsFitted>();
    return shells == nullptr ? QString()
                             : PlacesText::tr("shells %1 and %2").arg(qtText(shells->upper), qtText(shells->lower));
}

std::vector<std::vector<TableCell>> slotTable(const RecordSession& session, BearingsMode mode, const BearingSlot& asked,
                                              SlotCounts counts) {
    const bool isJournal = mode == BearingsMode::journals;
    const std::int64_t directions = isJournal ? counts.directions : 1;
    std::vector<TableCell> heads{{}};
    for (std::int64_t direction = 1; isJournal && direction <= directions; ++direction) {
        heads.push_back({directionName(direction), true, false, true});
    }
    std::vector<std::vector<TableCell>> table{heads};
    const std::int64_t stations = mode == BearingsMode::strip ? 1 : counts.stations;
    for (std::int64_t station = 1; station <= stations; ++station) {
        std::vector<TableCell> cells{
            {mode == BearingsMode::strip ? PlacesText::tr("strip") : stationName(station, counts.stations)}};
        for (std::int64_t direction = 1; direction <= directions; ++direction) {
            const BearingSlot slot{asked.journal, station, direction};
            const auto value = currentAt(session.facts(), session.assessment(), mode, slot);
            const QString text = value ? qtText(format(value->value, session.units())) : QStringLiteral("·");
            const bool isAsked = slot == asked;
            cells.push_back({(isAsked ? QStringLiteral("▸ ") : QString()) + text, true, isAsked, true});
        }
        table.push_back(std::move(cells));
    }
    return table;
}

std::vector<std::vector<TableCell>> clearanceTable(const RecordSession& session, JournalId journal) {
    const auto at = session.assessment().clearances.find(journal);
    if (at == session.assessment().clearances.end()) {
        return {};
    }
    const ClearanceResult& result = at->second;
    const Units& units = session.units();
    std::vector<std::vector<TableCell>> table;
    const auto text = [&](Length value) { return qtText(format(value, units)); };
    if (result.journalMean) {
        table.push_back(row(PlacesText::tr("Journal, mean"), text(*result.journalMean)));
        table.push_back(row(PlacesText::tr("Taper · out-of-round"),
                            text(result.taper) + QStringLiteral(" · ") + text(result.outOfRound)));
    }
    if (result.clearance) {
        table.push_back(row(PlacesText::tr("Smallest · largest"),
                            qtText(formatFine(*result.smallest, units)) + QStringLiteral(" · ") +
                                qtText(formatFine(*result.largest, units))));
        table.push_back(row(PlacesText::tr("Uncertainty"), qtText(describe(result.uncertainty(), units))));
    }
    const BandFact* band =
        session.facts().bandNamed(journal.kind == JournalKind::main ? bands::mainClearance : bands::rodClearance);
    if (band != nullptr) {
        table.push_back(row(PlacesText::tr("Band"), qtText(format(band->band, units))));
    }
    return table;
}

PlanContent bearingsContent(const RecordSession& session, BearingsMode mode, SlotCounts counts) {
    const Facts& facts = session.facts();
    const Assessment& assessment = session.assessment();
    PlanContent content = planContent(facts);
    if (mode == BearingsMode::fits) {
        content.layers = PlanLayer::throws;
        for (int number = 1; number <= content.layout.throws(); ++number) {
            PlanMark mark;
            mark.place = QStringLiteral("throw-%1").arg(number);
            const FitId place{std::string(bands::rodSideClearance), number};
            const Check* check = assessment.find("fit:" + place.first + ":" + std::to_string(number));
            mark.state = check == nullptr ? CheckState::notDone : check->state;
            const auto at = facts.fits.find(place);
            if (at != facts.fits.end()) {
                const Length read = at->second.back().what.value.value;
                mark.figure = qtText(formatShort(read, session.units()));
                mark.spoken = PlacesText::tr("side clearance %1").arg(qtText(format(read, session.units())));
            }
            content.marks.push_back(std::move(mark));
        }
        return content;
    }
    content.layers = PlanLayer::mainJournals | PlanLayer::rodJournals;
    const auto everySlot = bearingSlots(facts, isPass(mode) ? mode : BearingsMode::journals, counts);
    auto journals = content.layout.mainJournals();
    const auto rods = content.layout.rodJournals();
    journals.insert(journals.end(), rods.begin(), rods.end());
    for (const JournalId journal : journals) {
        PlanMark mark;
        mark.place = qtText(code(journal));
        const Check* check = clearanceCheckOf(assessment, journal);
        mark.state = check == nullptr ? CheckState::notDone : check->state;
        const auto at = assessment.clearances.find(journal);
        if (at != assessment.clearances.end() && at->second.clearance) {
            mark.figure = qtText(formatShort(*at->second.clearance, session.units()));
            mark.spoken = PlacesText::tr("clearance %1").arg(qtText(format(*at->second.clearance, session.units())));
        }
        if (isPass(mode)) {
            std::size_t wanted = 0, done = 0;
            std::int64_t sum = 0;
            for (const BearingSlot& slot : everySlot) {
                if (slot.journal == journal) {
                    ++wanted;
                    if (const auto read = currentAt(facts, assessment, mode, slot)) {
                        ++done;
                        sum += read->value.value();
                    }
                }
            }
            if (done > 0 && mark.figure.isEmpty()) {
                // Until there is a clearance to show: what was read, so that it is seen what is done.
                const Length mean(toNearest(static_cast<double>(sum) / static_cast<double>(done)));
                mark.figure = qtText(formatBare(mean, session.units()));
                mark.spoken = PlacesText::tr("read, mean %1").arg(qtText(format(mean, session.units())));
            }
            mark.note = done == 0 || done == wanted ? QString() : QStringLiteral("%1/%2").arg(done).arg(wanted);
        }
        content.marks.push_back(std::move(mark));
        content.order << qtText(code(journal));
    }
    return content;
}

} // namespace caprail
