// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <string>
#include <units/angle.h>
#include <units/band.h>
#include <units/force.h>
#include <units/length.h>
#include <units/torque.h>

namespace caprail {

enum class LengthUnit { inch, millimetre };
enum class TorqueUnit { poundFoot, poundInch, newtonMetre };

/// How quantities are shown: the user's choice, one object for screen, sheet and command line.
struct Units {
    LengthUnit length = LengthUnit::inch;
    TorqueUnit torque = TorqueUnit::poundFoot;
    char decimalMark = '.'; ///< '.' or ','
    friend bool operator==(const Units&, const Units&) = default;
};

/// The one place that writes a quantity. Numbers are rounded half away from zero; the unit is always given.
/// Lengths: "0.0575 in" (four decimals) or "1.461 mm" (three).
std::string format(Length, LengthUnit, char decimalMark = '.');
std::string format(Length, const Units&);
/// As above without the unit, for tables whose head names it.
std::string formatBare(Length, const Units&);
/// With its sign always: "+0.0005 in", "−0.0005 in" (U+2212), "0.0000 in" for zero.
std::string formatSigned(Length, const Units&);
/// As the assembler writes it beside the stud: thousandths without trailing zeros ("57.5", "−0.5"), or millimetres ("1.46").
std::string formatShort(Length, const Units&);
/// A standard deviation or uncertainty in nanometres, one digit finer than a length: "0.00012 in", "0.0031 mm".
std::string formatSpread(double nanometres, const Units&);
/// One digit finer than `format`, for what is worked out or judged: "0.05305 in", "1.3475 mm".
std::string formatFine(Length, const Units&);
/// To as many digits as read back as the same nanometre, and at least to so many more than `format` has: a limit of
/// error is never rounded.
std::string formatExact(Length, const Units&, int atLeastMore = 0);
std::string formatFineBare(Length, const Units&);
/// Rounded towards nothing: a band that is promised to do is never written wider than it is.
std::string formatFineDown(Length, const Units&);
/// "+0.00005 in", "−0.00005 in"
std::string formatFineSigned(Length, const Units&);
/// An expanded uncertainty in nanometres, to the digit of `formatFine` and rounded up (JCGM 100:2008, 7.2.6), so that it
/// is never printed smaller than it is: "0.00024 in".
std::string formatUncertainty(double nanometres, const Units&);
std::string formatUncertaintyBare(double nanometres, const Units&);
/// The length that `formatFine` prints, so that printed numbers add up: a difference is worked out from what its two
/// terms are printed as.
Length asPrinted(Length, const Units&);
std::string format(Band, const Units&);
/// "75.0 lbf·ft", "101.7 N·m"
std::string format(Torque, const Units&);
/// "10 500 lbf"; "46.7 kN", below one of it "850 N": after the length unit's system.
std::string format(Force, const Units&);
/// To the same digit and rounded up, so that it is never written smaller than it is: an expanded uncertainty, or the
/// most that something can cost.
std::string formatUp(Force, const Units&);
/// "120000 psi" or "830 MPa", likewise; with so many decimals of a megapascal: "8.8 MPa".
std::string format(Stress, const Units&, int decimalsOfMegapascal = 0);
/// "98.3 lbf/thou" or "17.2 kN/mm", likewise; from a thousand on in whole ones.
std::string format(Stiffness, const Units&);
/// An oil film, which is finer than any length that is measured: "0.083 thou" or "2.1 µm", likewise.
std::string formatFilm(Length, const Units&);
/// A share: "75 %".
std::string formatPercent(double share, const Units&, int decimals = 0);
/// "3.5°"
std::string format(Angle, const Units&);
/// "21.0 °C"
std::string format(Temperature, const Units&);

/// Whether it is written as nothing. What so small a difference does must not be told by its figure: "0 lbf less" says
/// that there is one, and that there is none.
template <class Quantity> bool isWrittenAsNothing(Quantity quantity, const Units& units) {
    return format(quantity.magnitude(), units) == format(Quantity(), units);
}

/// A plain number with the given count of decimals and decimal mark; "-0.00" is written "0.00".
std::string formatNumber(double, int decimals, char decimalMark = '.');

/// "in" or "mm"
const char* symbol(LengthUnit);
/// "lbf·ft", "lbf·in", "N·m"
const char* symbol(TorqueUnit);

} // namespace caprail
