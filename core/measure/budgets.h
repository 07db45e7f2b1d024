// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// The uncertainty budgets of the things that the shop measures, each built from what was measured, how often, by whom
/// and with which instruments (JCGM 100:2008; which terms there are is the trade's: common practice, no source).
#include <measure/statistics.h>
#include <measure/uncertainty.h>

namespace caprail {

/// One measured quantity that goes into a result.
struct MeasuredTerm {
    std::string name;         ///< as it reads in the table: "shim S14", "journal", "pan depth"
    std::string instrument;   ///< its name; empty: a reading names none, so nothing is known of it
    std::size_t readings = 1; ///< 1 or more, whose mean is used; of one place
    Scatter scatter;          ///< of such readings: from repeats of one place only, never the form of the part
    std::size_t people = 1;   ///< who read it; the scatter between people is divided by these, never by passes
    std::optional<Length> limitOfError; ///< half-width; anew for each quantity. None or zero: not known
    /// Half-width of an error that is the same in all that carry the same `zeroOf`, hence fully correlated: the zero of
    /// one micrometer over a stack, or a micrometer that a bore gauge was set in. Zero: there is none.
    Length zeroError;
    std::string zeroOf; ///< whose zero; empty: the instrument's own
    bool isLimitShared = false; ///< the zero error is the whole of it: there is no limit of error besides
    Length step;        ///< of what was read: half of it is lost to rounding (F.2.2.1: 0.29 × step), however often read
    /// Half-width of what a difference in temperature makes of it: see `temperatureError`. Zero: none is counted.
    Length temperatureError;
    double sensitivity = 1; ///< +1 where the quantity is added, −1 where it is taken away
};

/// Per quantity: a type A term s/√n, where s is no less than what the step alone makes; one for the scatter between
/// people; rectangular ones for the limit of error, the step and the temperature; a correlated one for a shared zero.
/// What is not known is listed in `missing`. Refuses no quantity at all, a quantity without a reading, and lengths below
/// zero.
Result<UncertaintyBudget> budgetFor(std::span<const MeasuredTerm> quantities);

/// D · α · δT in nanometres: what two parts of size `size` differ by when they may differ by `halfWidth` in temperature,
/// at 11.5 · 10⁻⁶ 1/K (steel and cast iron, common practice).
Length temperatureError(Length size, Temperature halfWidth);
/// What two parts on one bench may differ by: 5 °F half-width (common practice, no source).
inline constexpr Temperature usualTemperatureSpread = Temperature(2'778);
/// What is left where a thermometer was held to both parts: its own error, 1 °C half-width (common practice).
inline constexpr Temperature thermometerError = Temperature(1'000);

/// A gap read with feeler leaves under a straightedge.
struct GapMeasurement {
    std::size_t readings = 0; ///< that stand at this position
    std::size_t figures = 1;  ///< different ones among them: one that only repeats another tells nothing new
    Scatter scatter;          ///< over the survey
    std::size_t people = 1;
    std::size_t leaves = 1;          ///< in one slot, of one set: their errors add up, they do not average
    std::string leafSet;             ///< its name; empty: not named
    std::optional<Length> leafLimit; ///< half-width per leaf; none or zero: not known
    std::string straightedge;        ///< empty: not known
    std::optional<Length> straightedgeLimit; ///< flatness over the span, half-width; none or zero: not known
    /// Half of what lies between what went in and what did not; or half the set's step where only one figure is known.
    Length halfWidth;
};
/// Refuses no readings, no leaves, lengths below zero.
Result<UncertaintyBudget> gapBudget(const GapMeasurement&);

/// A stack: one micrometer term per shim, and the micrometer's zero fully correlated over them. Empty: a budget without
/// terms (a position that needs no shim).
Result<UncertaintyBudget> stackBudget(std::span<const MeasuredTerm> shims);

/// A residual = gap − stack.
UncertaintyBudget residualBudget(const UncertaintyBudget& gap, const UncertaintyBudget& stack);

/// A bearing clearance = bore − journal, or housing − both shells − journal. Sensitivities are set here.
/// A bore gauge that was set in the micrometer that measured the journal shares that micrometer's error with it: give
/// both the same `zeroOf` and `zeroError`, and it drops out.
Result<UncertaintyBudget> clearanceBudget(MeasuredTerm bore, MeasuredTerm journal,
                                          std::vector<MeasuredTerm> shells = {});

/// Clearance under the pickup = pan depth + gasket + plate − pickup depth. `plate` is left out where none lies between.
Result<UncertaintyBudget> pickupBudget(MeasuredTerm panDepth, MeasuredTerm gasket, std::optional<MeasuredTerm> plate,
                                       MeasuredTerm pickupDepth);

} // namespace caprail
