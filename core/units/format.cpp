// SPDX-License-Identifier: GPL-3.0-or-later
#include <units/format.h>

#include <base/say.h>

#include <array>
#include <cmath>
#include <cstdio>

namespace caprail {

namespace {

constexpr const char* minusSign = "\u2212";

/// `units` whole steps of 10^-decimals, written exactly (no binary fraction on the way).
std::string fixedPoint(std::int64_t steps, int decimals, char mark) {
    const bool negative = steps < 0;
    std::string digits = std::to_string(negative ? -steps : steps);
    if (static_cast<int>(digits.size()) <= decimals) {
        digits.insert(0, static_cast<std::size_t>(decimals + 1) - digits.size(), '0');
    }
    if (decimals > 0) {
        digits.insert(digits.size() - static_cast<std::size_t>(decimals), 1, mark);
    }
    return (negative && steps != 0 ? minusSign : "") + digits;
}

/// a / b rounded half away from zero.
std::int64_t divideRounded(std::int64_t a, std::int64_t b) {
    const std::int64_t half = b / 2;
    return a < 0 ? -((-a + half) / b) : (a + half) / b;
}

std::int64_t displaySteps(Length l, LengthUnit unit) {
    return unit == LengthUnit::inch ? divideRounded(l.value(), 2'540) : divideRounded(l.value(), 1'000);
}

/// The last digit of `formatFine` in nanometres.
std::int64_t fineStep(const Units& units) { return units.length == LengthUnit::inch ? 254 : 100; }

int displayDecimals(LengthUnit unit) { return unit == LengthUnit::inch ? 4 : 3; }

} // namespace

const char* symbol(LengthUnit unit) { return unit == LengthUnit::inch ? "in" : "mm"; }

const char* symbol(TorqueUnit unit) {
    switch (unit) {
    case TorqueUnit::poundFoot:
        return "lbf·ft";
    case TorqueUnit::poundInch:
        return "lbf·in";
    case TorqueUnit::newtonMetre:
        break;
    }
    return "N·m";
}

std::string formatNumber(double x, int decimals, char decimalMark) {
    const double scale = std::pow(10.0, decimals);
    if (std::isfinite(x) && std::abs(x * scale) < 9e15) {
        return fixedPoint(std::llround(x * scale), decimals, decimalMark);
    }
    std::array<char, 64> text{};
    std::snprintf(text.data(), text.size(), "%g", x);
    return text.data();
}

std::string format(Length l, LengthUnit unit, char decimalMark) {
    return fixedPoint(displaySteps(l, unit), displayDecimals(unit), decimalMark) + " " + symbol(unit);
}

std::string format(Length l, const Units& units) { return format(l, units.length, units.decimalMark); }

std::string formatBare(Length l, const Units& units) {
    return fixedPoint(displaySteps(l, units.length), displayDecimals(units.length), units.decimalMark);
}

std::string formatSigned(Length l, const Units& units) {
    return (displaySteps(l, units.length) > 0 ? "+" : "") + format(l, units);
}

std::string formatShort(Length l, const Units& units) {
    const bool inch = units.length == LengthUnit::inch;
    std::string text = inch ? fixedPoint(divideRounded(l.value(), 2'540), 1, units.decimalMark)
                            : fixedPoint(divideRounded(l.value(), 1'000), 3, units.decimalMark);
    while (text.back() == '0') {
        text.pop_back();
    }
    if (text.back() == units.decimalMark) {
        text.pop_back();
    }
    return text;
}

std::string formatSpread(double nanometres, const Units& units) {
    return units.length == LengthUnit::inch ? formatNumber(nanometres / 25'400'000.0, 5, units.decimalMark) + " in"
                                            : formatNumber(nanometres / 1'000'000.0, 4, units.decimalMark) + " mm";
}

std::string formatExact(Length l, const Units& units, int atLeastMore) {
    constexpr Length longest = millimetres(50'000);
    constexpr int mostDecimals = 8; // of an inch: steps of a quarter of a nanometre
    const std::int64_t unit = units.length == LengthUnit::inch ? nanometresPerInch : 1'000'000;
    int decimals = 0;
    std::int64_t scale = 1;
    const auto steps = [&] { return divideRounded(l.value() * scale, unit); };
    const auto isExact = [&] { return divideRounded(steps() * unit, scale) == l.value(); };
    if (l.magnitude() > longest) {
        return format(l, units); // of no engine
    }
    for (; decimals < displayDecimals(units.length) + atLeastMore; ++decimals) {
        scale *= 10;
    }
    for (; decimals < mostDecimals && !isExact(); ++decimals) {
        scale *= 10;
    }
    return fixedPoint(steps(), decimals, units.decimalMark) + " " + symbol(units.length);
}

std::string formatFineBare(Length l, const Units& units) {
    return units.length == LengthUnit::inch ? fixedPoint(divideRounded(l.value(), fineStep(units)), 5, units.decimalMark)
                                            : fixedPoint(divideRounded(l.value(), fineStep(units)), 4, units.decimalMark);
}

std::string formatFine(Length l, const Units& units) { return formatFineBare(l, units) + " " + symbol(units.length); }

std::string formatFineDown(Length l, const Units& units) {
    return formatFine(Length(l.value() / fineStep(units) * fineStep(units)), units);
}

std::string formatFineSigned(Length l, const Units& units) {
    return (divideRounded(l.value(), fineStep(units)) > 0 ? "+" : "") + formatFine(l, units);
}

std::string formatUncertaintyBare(double nanometres, const Units& units) {
    const auto step = static_cast<double>(fineStep(units));
    // The last bits of a product of doubles are no reason for one more step.
    return formatFineBare(Length(static_cast<std::int64_t>(std::ceil(nanometres / step - 1e-9)) * fineStep(units)),
                          units);
}

std::string formatUncertainty(double nanometres, const Units& units) {
    return formatUncertaintyBare(nanometres, units) + " " + symbol(units.length);
}

Length asPrinted(Length l, const Units& units) {
    return Length(divideRounded(l.value(), fineStep(units)) * fineStep(units));
}

std::string format(Band band, const Units& units) {
    return Core::say("%1 to %2", formatBare(band.lo(), units), format(band.hi(), units));
}

std::string format(Torque t, const Units& units) {
    const double value = units.torque == TorqueUnit::poundFoot   ? inPoundFeet(t)
                         : units.torque == TorqueUnit::poundInch ? inPoundInches(t)
                                                                 : inNewtonMetres(t);
    return formatNumber(value, 1, units.decimalMark) + " " + symbol(units.torque);
}

std::string format(Force f, const Units& units) {
    if (units.length == LengthUnit::inch) {
        return formatNumber(inPoundsForce(f), 0, units.decimalMark) + " lbf";
    }
    return f.magnitude() < newtons(1'000) ? formatNumber(inNewtons(f), 0, units.decimalMark) + " N"
                                          : formatNumber(inKilonewtons(f), 1, units.decimalMark) + " kN";
}

std::string formatUp(Force f, const Units& units) {
    constexpr double held = 0.6e-3; // a force is held to half a millinewton: that is no reason for one more pound
    const double step = units.length == LengthUnit::inch ? newtonsPerPoundForce : f < newtons(1'000) ? 1 : 100;
    return format(newtons(std::ceil((inNewtons(f) - held) / step) * step), units);
}

std::string format(Stress s, const Units& units, int decimalsOfMegapascal) {
    return units.length == LengthUnit::inch
               ? formatNumber(inPsi(s), 0, units.decimalMark) + " psi"
               : formatNumber(inMegapascals(s), decimalsOfMegapascal, units.decimalMark) + " MPa";
}

std::string format(Stiffness s, const Units& units) {
    const bool isInch = units.length == LengthUnit::inch;
    const double rate = isInch ? inPoundsPerThou(s) : inNewtonsPerMillimetre(s) / 1'000.0;
    return formatNumber(rate, std::abs(rate) < 1'000 ? 1 : 0, units.decimalMark) + (isInch ? " lbf/thou" : " kN/mm");
}

std::string formatFilm(Length l, const Units& units) {
    return units.length == LengthUnit::inch ? formatNumber(inInches(l) * 1'000.0, 3, units.decimalMark) + " thou"
                                            : formatNumber(inMillimetres(l) * 1'000.0, 1, units.decimalMark) + " µm";
}

std::string formatPercent(double share, const Units& units, int decimals) {
    return formatNumber(share * 100.0, decimals, units.decimalMark) + " %";
}

std::string format(Angle a, const Units& units) { return formatNumber(inDegrees(a), 1, units.decimalMark) + "°"; }

std::string format(Temperature t, const Units& units) {
    return formatNumber(inCelsius(t), 1, units.decimalMark) + " °C";
}

} // namespace caprail
