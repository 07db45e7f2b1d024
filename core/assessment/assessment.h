// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <assessment/check.h>
#include <optional>
#include <units/format.h>

namespace caprail {

/// The gap survey at one position.
struct GapResult {
    std::vector<Seen<GapReading>> standing; ///< readings that count
    std::vector<Seen<GapReading>> fallen;   ///< live readings made before the position last moved
    std::optional<Length> accepted;         ///< median of the standing ones, once they agree
    std::optional<Length> last;             ///< accepted, else median of whatever stands: what the diagram shows
    double mean = 0, standardDeviation = 0; ///< of the standing readings, nanometres
    Length range;
    double expandedUncertainty = 0; ///< of the accepted gap, nanometres
    /// After a fastener of the cap moved: the window that the new gap must lie in (from the last accepted gap before).
    std::optional<Band> window;
};

/// The stack that lies, or lay, at one position.
struct StackResult {
    std::vector<std::string> shims;
    bool isOn = false;
    Length thickness;
    std::vector<std::string> unmeasured; ///< shims without a micrometer reading
    std::vector<std::string> suspect;    ///< shims that differ from their marking by more than the kit's tolerance
    std::optional<Length> residual;      ///< gap − thickness; none while the gap is not accepted
    double expandedUncertainty = 0;      ///< of the residual, nanometres
};

/// One bearing.
struct ClearanceResult {
    std::optional<Length> journalMean, boreMean;
    std::optional<Length> clearance, smallest, largest;
    Length taper, outOfRound;
    double expandedUncertainty = 0; ///< nanometres
    std::size_t journalReadings = 0, boreReadings = 0;
};

struct PickupResult {
    std::map<PickupTerm, Length> means; ///< of the terms that have standing readings
    std::optional<Length> clearance;
    double expandedUncertainty = 0; ///< nanometres
};

/// Height of the plate over the bearing places after section 7 of the job: all in nanometres, positive = loose.
struct FlushnessResult {
    bool isComplete = false;                          ///< every position has a residual
    std::optional<double> offset, pitch, roll, twist; ///< a term that cannot be told apart is left out
    std::map<Position, double> localError;
    std::string sentence;
};

struct SurveyResult {
    std::size_t positions = 0, accepted = 0;
    std::optional<Length> spread, smallest, largest;
    std::optional<double> pooledStandardDeviation; ///< nanometres
    std::int64_t nextPass = 1;                     ///< the pass that is being read
};

/// One line for the person: what to do next, and where.
struct NextStep {
    std::string sentence;
    Place place;
};

/// Everything that is worked out from a record's facts. A pure function of the ledger: no clock, no file, no setting.
struct Assessment {
    std::vector<Check> checks; ///< in the order in which a job is done
    std::vector<Gate> gates;
    NextStep next;

    std::map<Position, GapResult> gaps;
    std::map<Position, StackResult> stacks;
    std::map<JournalId, ClearanceResult> clearances;
    PickupResult pickup;
    FlushnessResult flushness;
    SurveyResult survey;
    std::vector<std::string> openFindings;
    std::optional<ClosingStep> nextClosingStep; ///< none when all are done
    bool isReadyToSign = false;

    /// Null when there is no such check.
    [[nodiscard]] const Check* find(std::string_view code) const;
    [[nodiscard]] const Gate& gate(GateKind) const;
    /// Checks worked on at a station that are not good.
    [[nodiscard]] std::size_t openAt(Station) const;
};

/// Folds nothing itself: give it `fold(ledger)`. `units` only chooses how sentences write quantities.
Assessment assess(const Facts&, const Units& units = {});
Assessment assess(const Ledger&, const Units& units = {});

} // namespace caprail
