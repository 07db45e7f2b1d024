// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// The makers of checks, one per kind of work, in the order in which a job is done. Private to this folder: the way in
/// is assess().
#include <assessment/assessment.h>
#include <assessment/budget_of.h>

namespace caprail {

/// What every maker needs, and where it puts its checks.
struct Assessing {
    const Facts& facts;
    const Units& units;
    Assessment& out;
    const Scatters& scatters;

    /// Adds a check that is not done yet; `subjectCode` is the second half of its code (empty: none).
    Check& add(CheckKind kind, Subject subject, const std::string& subjectCode, std::string title,
               Destination destination) const;
    /// Band of this name, or null.
    [[nodiscard]] const BandFact* band(std::string_view name) const { return facts.bandNamed(name); }
    /// Holds a value with what its budget comes to against a band, by the record's rules, and notes it in the check.
    const Judged& judge(Check&, std::string name, Length value, const UncertaintyBudget&, const Band&) const;
    /// The same for an uncertainty that was worked out another way; then what would do is not known.
    /// `as`: by another rule than the record's.
    const Judged& judge(Check&, std::string name, Length value, const Uncertainty&, const Band&,
                        std::optional<DecisionRule> as = {}) const;
    /// Gives the check the worst of the states of what was judged; what is missing, or what would do, as its remedy.
    /// `whenOut` and `whenTooClose` are the remedies for these.
    void settle(Check&, const std::string& whenOut, const std::string& whenTooClose) const;
    /// "0.00240 in ± 0.00012 in, band 0.0020 to 0.0027 in"
    [[nodiscard]] std::string against(const Judged&) const;
    /// The decision rule and the coverage of this record.
    [[nodiscard]] DecisionRule rule() const;
};

/// Notes the entry as one that the check was made from.
void rest(Check& check, std::int64_t entry);

void bearingChecks(const Assessing&);
void formChecks(const Assessing&);
void fitChecks(const Assessing&);
void fastenerChecks(const Assessing&);
void gapChecks(const Assessing&);
void stackChecks(const Assessing&);
void recheckChecks(const Assessing&);
void flushnessCheck(const Assessing&);
void trialFitChecks(const Assessing&);
void pickupCheck(const Assessing&);
void verifyRoundCheck(const Assessing&);
void findingsCheck(const Assessing&);
void turningChecks(const Assessing&);
void ownChecks(const Assessing&);

/// All of them, in the order in which their checks are listed: that of the work.
inline constexpr void (*checkMakers[])(const Assessing&) = {
    bearingChecks, formChecks,     fitChecks,      fastenerChecks, gapChecks,        stackChecks,
    recheckChecks, flushnessCheck, turningChecks,  trialFitChecks, pickupCheck,      verifyRoundCheck,
    findingsCheck, ownChecks};

void makeGates(const Assessing&);
void makeNextStep(const Assessing&);

} // namespace caprail
