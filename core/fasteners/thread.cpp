// SPDX-License-Identifier: GPL-3.0-or-later
#include <fasteners/text.h>
#include <fasteners/thread.h>
#include <fasteners/threadtables.h>
#include <base/say.h>

namespace caprail {

using fastenertext::shortNumber;

namespace {

std::string millimetreText(Length l) {
    return shortNumber(inMillimetres(l), 6);
}

/// "7/16", "15/32" or "0.43": what parseThread reads back to the same nanometre.
std::string inchNominalText(Length nominal) {
    if (const auto* size = threadtables::findInch(nominal)) {
        return std::string(size->label);
    }
    constexpr std::int64_t sixtyFourth = nanometresPerInch / 64;
    if (nominal.value() % sixtyFourth == 0) {
        std::int64_t numerator = nominal.value() / sixtyFourth;
        std::int64_t denominator = 64;
        while (numerator % 2 == 0 && denominator > 1) {
            numerator /= 2;
            denominator /= 2;
        }
        const std::int64_t whole = numerator / denominator;
        if (denominator == 1) {
            return std::to_string(whole);
        }
        return (whole > 0 ? std::to_string(whole) + " " : "") + std::to_string(numerator % denominator) + "/" +
               std::to_string(denominator);
    }
    return shortNumber(inInches(nominal), 8);
}

} // namespace

Result<Thread> Thread::inch(Length nominal, int threadsPerInch) {
    if (nominal < inches(0.05) || nominal > inches(4)) {
        return refuse(Core::say("A thread of %1 nominal diameter is outside 0.05 to 4 in: check the diameter.",
                                format(nominal, LengthUnit::inch)));
    }
    if (threadsPerInch < 1 || inches(3.0 / threadsPerInch) > nominal || inches(100.0 / threadsPerInch) < nominal) {
        return refuse(Core::say("A thread of %1 in with %2 threads per inch cannot be cut: the pitch must lie between "
                                "a hundredth and a third of the diameter.",
                                inchNominalText(nominal), threadsPerInch));
    }
    return Thread(ThreadSystem::inch, nominal, inches(1.0 / threadsPerInch), threadsPerInch);
}

Result<Thread> Thread::metric(Length nominal, Length pitch) {
    if (nominal < millimetres(1) || nominal > millimetres(100)) {
        return refuse(Core::say("A thread of %1 nominal diameter is outside 1 to 100 mm: check the diameter.",
                                format(nominal, LengthUnit::millimetre)));
    }
    if (pitch * 3 > nominal || pitch * 100 < nominal) {
        return refuse(Core::say("A thread M%1 with a pitch of %2 mm cannot be cut: the pitch must lie between a "
                                "hundredth and a third of the diameter.",
                                millimetreText(nominal), millimetreText(pitch)));
    }
    return Thread(ThreadSystem::metric, nominal, pitch, 0);
}

ThreadSeries Thread::series() const {
    if (m_system == ThreadSystem::inch) {
        const auto* size = threadtables::findInch(m_nominal);
        return size != nullptr && size->coarse == m_threadsPerInch ? ThreadSeries::coarse
               : size != nullptr && size->fine == m_threadsPerInch ? ThreadSeries::fine
                                                                   : ThreadSeries::special;
    }
    const auto* size = threadtables::findMetric(m_nominal);
    if (size == nullptr) {
        return ThreadSeries::special;
    }
    if (microns(size->coarseMicrons) == m_pitch) {
        return ThreadSeries::coarse;
    }
    for (const std::int64_t fine : size->fineMicrons) {
        if (microns(fine) == m_pitch) {
            return ThreadSeries::fine;
        }
    }
    return ThreadSeries::special;
}

Length Thread::pitchDiameter() const {
    return millimetres(inMillimetres(m_nominal) - 0.649519 * inMillimetres(m_pitch));
}

Length Thread::minorDiameter() const {
    const double factor = m_system == ThreadSystem::inch ? 1.190785 : 1.226869;
    return millimetres(inMillimetres(m_nominal) - factor * inMillimetres(m_pitch));
}

Area Thread::stressArea() const {
    if (m_system == ThreadSystem::inch) {
        const double diameter = inInches(m_nominal) - 0.9743 / m_threadsPerInch;
        return squareInches(0.7854 * diameter * diameter);
    }
    return circleArea(Length((pitchDiameter().value() + minorDiameter().value()) / 2));
}

std::string Thread::name() const {
    const std::string suffix = series() == ThreadSeries::special ? " special" : "";
    if (m_system == ThreadSystem::inch) {
        return inchNominalText(m_nominal) + "-" + std::to_string(m_threadsPerInch) + suffix;
    }
    return "M" + millimetreText(m_nominal) + "×" + millimetreText(m_pitch) + suffix;
}

} // namespace caprail
