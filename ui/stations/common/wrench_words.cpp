// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/common/wrench_words.h>

#include <QCoreApplication>
#include <QDateTime>
#include <QStringList>
#include <fasteners/wrench.h>
#include <session/filled.h>
#include <stations/common/station_text.h>

namespace caprail {

namespace {

struct WrenchText {
    Q_DECLARE_TR_FUNCTIONS(FastenersStation)
};

std::optional<WrenchRange> rangeOf(const InstrumentAdded& wrench) {
    if (!wrench.largestTorque) {
        return {};
    }
    std::optional<Torque> smallest;
    if (wrench.smallestTorque) {
        smallest = wrench.smallestTorque->value;
    }
    const auto range = WrenchRange::upTo(wrench.largestTorque->value, smallest);
    return range ? std::optional(*range) : std::nullopt;
}

} // namespace

Date today() {
    return dateOf({QDateTime::currentMSecsSinceEpoch()});
}

QString rangeText(const InstrumentAdded& wrench, const Units& units) {
    const auto range = rangeOf(wrench);
    return range ? qtText(formatNumber(units.torque == TorqueUnit::newtonMetre ? inNewtonMetres(range->smallest())
                                       : units.torque == TorqueUnit::poundFoot ? inPoundFeet(range->smallest())
                                                                               : inPoundInches(range->smallest()),
                                       1, units.decimalMark) +
                          " to " + format(range->largest(), units))
                 : QString();
}

QString calibrationRemark(const Facts& facts, const InstrumentAdded& instrument, Date day) {
    const bool isWrench = instrument.type == InstrumentType::torqueWrench;
    if (!instrument.calibrated) {
        if (instrument.due && *instrument.due < day) {
            return WrenchText::tr("past its due date, %1").arg(qtText(format(*instrument.due)));
        }
        return isWrench ? WrenchText::tr("no calibration on record") : QString();
    }
    if (!isWrench) { // yearly and by cycles is for wrenches; others are due when the shop says so
        return instrument.due && *instrument.due < day
                   ? WrenchText::tr("past its due date, %1").arg(qtText(format(*instrument.due)))
                   : QString();
    }
    const auto pulls = facts.wrenchPulls.find(instrument.instrument);
    const std::int64_t cycles = instrument.cycles.value_or(0) + (pulls == facts.wrenchPulls.end() ? 0 : pulls->second);
    return qtText(calibrationMark({*instrument.calibrated, instrument.due, instrument.dueCycles}, day, cycles));
}

QString whatIsNotKnown(const InstrumentAdded& instrument) {
    const bool isWrench = instrument.type == InstrumentType::torqueWrench;
    const bool hasNoLimit = !isWrench && !instrument.limitOfError;
    if (instrument.calibrated) {
        return hasNoLimit ? WrenchText::tr("no limit of error given") : QString();
    }
    return hasNoLimit ? WrenchText::tr("no calibration date and no limit of error given")
                      : WrenchText::tr("no calibration date given");
}

QString wrenchRemark(const Facts& facts, const std::string& name, std::optional<Torque> torque, Date day,
                     const Units& units) {
    const auto at = facts.instruments.find(name);
    if (name.empty() || at == facts.instruments.end()) {
        return {};
    }
    QStringList marks;
    if (const auto range = rangeOf(at->second.latest()); range && torque) {
        marks << qtText(rangeMark(*torque, *range, units));
    }
    const QString words = joined(marks << calibrationRemark(facts, at->second.latest(), day), QStringLiteral("; "));
    return words.isEmpty() ? QString() : qtText(name) + QStringLiteral(": ") + words;
}

} // namespace caprail
