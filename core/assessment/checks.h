// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// The makers of checks, one per kind of work, in the order in which a job is done. Private to this folder: the way in
/// is assess().
#include <assessment/assessment.h>
#include <measure/statistics.h>

namespace caprail {

/// What every maker needs, and where it puts its checks.
struct Assessing {
    const Facts& facts;
    const Units& units;
    Assessment& out;
    std::optional<Pooled> repeatability; ///< of the survey

    /// Adds a check that is not done yet; `subjectCode` is the second half of its code (empty: none).
    Check& add(CheckKind kind, Subject subject, const std::string& subjectCode, std::string title, Place place) const;
    /// Band of this name, or null.
    [[nodiscard]] const BandFact* band(std::string_view name) const { return facts.bandNamed(name); }
    /// The verdict of a value ± U against a band, by the record's decision rule.
    [[nodiscard]] CheckState judged(Length value, double expandedUncertainty, const BandFact& band) const;
    /// "0.0024 in ± 0.00012 in, band 0.0020 to 0.0027 in"
    [[nodiscard]] std::string against(Length value, double expandedUncertainty, const BandFact& band) const;
};

/// Notes the entry as one that the check was made from.
void rest(Check& check, std::int64_t entry);

void bearingChecks(const Assessing&);
void fastenerChecks(const Assessing&);
void gapChecks(const Assessing&);
void stackChecks(const Assessing&);
void recheckChecks(const Assessing&);
void flushnessCheck(const Assessing&);
void trialFitChecks(const Assessing&);
void pickupCheck(const Assessing&);
void verifyRoundCheck(const Assessing&);
void findingsCheck(const Assessing&);

void makeGates(const Assessing&);
void makeNextStep(const Assessing&);

} // namespace caprail
