// SPDX-License-Identifier: GPL-3.0-or-later
#include <shop/record_figures.h>

#include <QCborArray>
#include <QCborValue>
#include <assessment/specified.h>
#include <base/say.h>
#include <fasteners/wrench.h>
#include <ledger/band_names.h>
#include <ledger/qt_text.h>
#include <shop/builds.h>
#include <tuple>

namespace caprail {

namespace {

CheckState stateOf(const Assessment& assessment, const std::string& checkCode) {
    const Check* check = assessment.find(checkCode);
    return check == nullptr ? CheckState::notDone : check->state;
}

void bandedOf(const Build& build, const Assessment& a, std::vector<BandedFigure>& out) {
    const auto add = [&](std::string_view band, std::string place, Length value, CheckState state) {
        const BandFact* limits = build.facts.bandNamed(band);
        out.push_back({build.number, std::string(band), std::move(place), value, state,
                       limits == nullptr ? std::nullopt : std::optional(limits->band)});
    };
    for (const auto& [journal, result] : a.clearances) {
        if (result.clearance) { // the mean, as engines are compared; each is judged at its worst places
            const bool isMain = journal.kind == JournalKind::main;
            add(isMain ? bands::mainClearance : bands::rodClearance, code(journal), *result.clearance,
                stateOf(a, (isMain ? "main-clearance:" : "rod-clearance:") + code(journal)));
        }
    }
    for (const auto& [position, stack] : a.stacks) {
        if (stack.carriedResidual) {
            add(bands::residual, code(position), *stack.carriedResidual, stateOf(a, "stack:" + code(position)));
        }
    }
    if (a.flushness.twist) {
        add(bands::twist, "", Length(toNearest(*a.flushness.twist)), stateOf(a, "flushness"));
    }
    for (const auto& [place, fit] : a.fits) {
        const Check* check = a.find(CheckKind::fit, place);
        add(place.first, std::to_string(place.second), fit.value, check == nullptr ? CheckState::notDone : check->state);
    }
    if (a.pickup.clearance) {
        add(bands::pickupClearance, "", *a.pickup.clearance, stateOf(a, "pickup"));
    }
}

std::vector<PullFigure> pullsOf(const Ledger& ledger) {
    std::map<std::tuple<std::string, std::string, std::string>, PullFigure> counts;
    for (const Entry& entry : ledger.entries()) {
        const auto* outcome = std::get_if<RoundOutcome>(&entry.body);
        if (outcome == nullptr || ledger.isStruck(entry.sequence)) {
            continue;
        }
        auto& figure = counts[{code(outcome->fastener), outcome->instrument, entry.person}];
        ++figure.pulled;
        figure.moved += outcome->outcome == Outcome::moved ? 1 : 0;
        if (outcome->angle && outcome->outcome == Outcome::moved) {
            figure.largest = std::max(figure.largest, outcome->angle->value);
        }
    }
    std::vector<PullFigure> list;
    for (auto& [key, figure] : counts) {
        std::tie(figure.fastener, figure.wrench, figure.person) = key;
        list.push_back(std::move(figure));
    }
    return list;
}

InstrumentFigure instrumentOf(const Facts& facts, const InstrumentAdded& added) {
    InstrumentFigure figure{added.instrument,        added.serial, added.type,
                            added.calibrated,        dueOf(added), added.dueCycles,
                            added.cycles.value_or(0)};
    if (const auto pulls = facts.wrenchPulls.find(added.instrument); pulls != facts.wrenchPulls.end()) {
        figure.cycles += pulls->second;
    }
    if (added.type == InstrumentType::torqueWrench) {
        figure.dueCycles = added.dueCycles.value_or(usualCalibrationCycles);
    }
    return figure;
}

QCborValue dateValue(const std::optional<Date>& date) {
    return date ? QCborValue(static_cast<qint64>(date->days)) : QCborValue();
}
std::optional<Date> dateFrom(const QCborValue& value) {
    return value.isInteger() ? std::optional<Date>(Date{value.toInteger()}) : std::nullopt;
}
template <class E> std::optional<E> enumFrom(const QCborValue& value) {
    const auto index = value.toInteger(-1);
    return index >= 0 && index < static_cast<qint64>(allWords<E>().size()) ? std::optional<E>(static_cast<E>(index))
                                                                           : std::nullopt;
}

} // namespace

RecordFigures figuresOf(const Ledger& ledger) {
    const std::vector<Build> builds = buildsOf(ledger);
    return figuresOf(ledger, builds, builds.empty() ? Assessment() : assess(builds.back().facts));
}

RecordFigures figuresOf(const Ledger& ledger, const std::vector<Build>& builds, const Assessment& last) {
    RecordFigures figures;
    for (const Build& build : builds) {
        bandedOf(build, &build == &builds.back() ? last : assess(build.facts), figures.banded);
    }
    figures.pulls = pullsOf(ledger);
    if (!builds.empty()) {
        for (const auto& [name, instrument] : builds.back().facts.instruments) {
            figures.instruments.push_back(instrumentOf(builds.back().facts, instrument.latest()));
        }
    }
    return figures;
}

std::string toBytes(const RecordFigures& figures) {
    QCborArray banded;
    for (const auto& f : figures.banded) {
        banded.append(QCborArray{static_cast<qint64>(f.build), qtText(f.band), qtText(f.place),
                                 static_cast<qint64>(f.value.value()), static_cast<int>(f.state),
                                 f.limits ? QCborValue(static_cast<qint64>(f.limits->lo().value())) : QCborValue(),
                                 f.limits ? QCborValue(static_cast<qint64>(f.limits->hi().value())) : QCborValue()});
    }
    QCborArray pulls;
    for (const auto& f : figures.pulls) {
        pulls.append(QCborArray{qtText(f.fastener), qtText(f.wrench), qtText(f.person), static_cast<qint64>(f.pulled),
                                static_cast<qint64>(f.moved), static_cast<qint64>(f.largest.value())});
    }
    QCborArray instruments;
    for (const auto& f : figures.instruments) {
        instruments.append(QCborArray{
            qtText(f.name), qtText(f.serial), static_cast<int>(f.type), dateValue(f.calibrated), dateValue(f.due),
            f.dueCycles ? QCborValue(static_cast<qint64>(*f.dueCycles)) : QCborValue(), static_cast<qint64>(f.cycles)});
    }
    return QCborValue(QCborArray{banded, pulls, instruments}).toCbor().toStdString();
}

Result<RecordFigures> figuresFrom(std::string_view bytes) {
    const QCborValue value =
        QCborValue::fromCbor(QByteArray::fromRawData(bytes.data(), static_cast<qsizetype>(bytes.size())));
    const QCborArray parts = value.toArray();
    const auto unreadable = [] {
        return refuse(Core::say("The figures of a record in the index cannot be read: read it again."));
    };
    if (parts.size() != 3) {
        return unreadable();
    }
    RecordFigures figures;
    for (const auto& one : parts[0].toArray()) {
        const QCborArray row = one.toArray();
        const auto state = enumFrom<CheckState>(row.at(4));
        if (row.size() != 7 || !state) {
            return unreadable();
        }
        std::optional<Band> limits;
        if (row.at(5).isInteger() && row.at(6).isInteger()) {
            const auto band = Band::between(Length(row.at(5).toInteger()), Length(row.at(6).toInteger()));
            if (!band) {
                return unreadable();
            }
            limits = *band;
        }
        figures.banded.push_back({row.at(0).toInteger(), row.at(1).toString().toStdString(),
                                  row.at(2).toString().toStdString(), Length(row.at(3).toInteger()), *state, limits});
    }
    for (const auto& one : parts[1].toArray()) {
        const QCborArray row = one.toArray();
        if (row.size() != 6) {
            return unreadable();
        }
        figures.pulls.push_back({row.at(0).toString().toStdString(), row.at(1).toString().toStdString(),
                                 row.at(2).toString().toStdString(), row.at(3).toInteger(), row.at(4).toInteger(),
                                 Angle(row.at(5).toInteger())});
    }
    for (const auto& one : parts[2].toArray()) {
        const QCborArray row = one.toArray();
        const auto type = enumFrom<InstrumentType>(row.at(2));
        if (row.size() != 7 || !type) {
            return unreadable();
        }
        figures.instruments.push_back(
            {row.at(0).toString().toStdString(), row.at(1).toString().toStdString(), *type, dateFrom(row.at(3)),
             dateFrom(row.at(4)),
             row.at(5).isInteger() ? std::optional<std::int64_t>(row.at(5).toInteger()) : std::nullopt,
             row.at(6).toInteger()});
    }
    return figures;
}

} // namespace caprail
