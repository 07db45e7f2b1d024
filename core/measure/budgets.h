// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// The uncertainty budgets of the things that the shop measures, each built from what was measured, how often, and with
/// which instruments (JCGM 100:2008; the terms are those of the job: common practice, no source).
#include <measure/statistics.h>
#include <measure/uncertainty.h>

namespace caprail {

/// One measured quantity that goes into a result.
struct MeasuredTerm {
    std::string name;                    ///< as it reads in the table: "shim S14", "journal", "pan depth"
    std::string instrument;              ///< its name; empty: not known
    std::size_t readings = 1;            ///< 1 or more, whose mean or median is used
    std::optional<Pooled> repeatability; ///< of one reading; none: not known yet
    Length limitOfError;                 ///< half-width; anew for each quantity. Zero: not known
    /// Half-width of the error of the instrument's zero: the same error in all that this instrument measured, hence
    /// fully correlated. Zero: there is none.
    Length zeroError;
    double sensitivity = 1; ///< +1 where the quantity is added, −1 where it is taken away
};

/// One type A term s/√n per quantity whose repeatability is known, one rectangular term for the instrument's limit of
/// error, one correlated term per quantity for its zero. What is not known is listed in `missing`.
/// Refuses no quantity at all, a quantity without a reading, and limits below zero.
Result<UncertaintyBudget> budgetFor(std::span<const MeasuredTerm> quantities);

/// A gap read with feeler leaves under a straightedge.
struct GapMeasurement {
    std::size_t readings = 0;            ///< that stand at this position
    std::optional<Pooled> repeatability; ///< over the survey
    std::size_t leaves = 1;              ///< in the slot, for a typical reading
    Length feelerLimit;                  ///< half-width per leaf; zero: not known
    Length straightedgeLimit;            ///< flatness, half-width; zero: not known
    Length micrometerLimit; ///< where leaves were measured rather than taken as marked; zero: they were not
};
/// Refuses no readings, no leaves, limits below zero.
Result<UncertaintyBudget> gapBudget(const GapMeasurement&);

/// A stack: one micrometer term per shim, and the micrometer's zero fully correlated over them. Empty: a budget without
/// terms (a position that needs no shim).
Result<UncertaintyBudget> stackBudget(std::span<const MeasuredTerm> shims);

/// A residual = gap − stack.
UncertaintyBudget residualBudget(const UncertaintyBudget& gap, const UncertaintyBudget& stack);

/// A bearing clearance = bore − journal, or housing − both shells − journal. Sensitivities are set here.
/// A bore gauge that was set in the same micrometer as the journal was measured with has the same zero error: give both
/// terms that micrometer's name and zero error, and it drops out.
Result<UncertaintyBudget> clearanceBudget(MeasuredTerm bore, MeasuredTerm journal,
                                          std::vector<MeasuredTerm> shells = {});

/// Clearance under the pickup = pan depth + gasket + plate − pickup depth. `plate` is left out where none lies between.
Result<UncertaintyBudget> pickupBudget(MeasuredTerm panDepth, MeasuredTerm gasket, std::optional<MeasuredTerm> plate,
                                       MeasuredTerm pickupDepth);

} // namespace caprail
