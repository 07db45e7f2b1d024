// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <assessment/check.h>
#include <assessment/closing_steps.h>
#include <assessment/gap_window.h>
#include <optional>
#include <units/format.h>

namespace caprail {

/// The gap survey at one position.
struct GapResult {
    std::vector<Seen<GapReading>> current;  ///< readings that count
    std::vector<Seen<GapReading>> outdated; ///< live readings made before the position last moved
    std::optional<Length> accepted;         ///< median of the current ones, once they agree
    std::optional<Length> last;             ///< accepted, else median of whatever stands: what the diagram shows
    double mean = 0, standardDeviation = 0; ///< of the current readings, nanometres
    Length range;
    Uncertainty uncertainty; ///< of the accepted gap
    /// After a fastener of the cap moved: the window that the new gap must lie in (from the gap accepted just before, wider
    /// by its U, or by the repeat limit where that is not known), and what is likely within it.
    std::optional<GapAfterMovement> movement;
    [[nodiscard]] std::optional<Band> window() const {
        return movement ? std::optional(movement->window) : std::nullopt;
    }
};

/// What a stack's residual is known by.
enum class ResidualBy { arithmetic, bracket, feel };

/// The stack that lies, or lay, at one position.
struct StackResult {
    std::vector<std::string> shims;
    bool isOn = false;
    Length thickness;
    std::vector<std::string> unmeasured; ///< shims without a micrometer reading
    std::vector<std::string> suspect;    ///< shims that differ from their marking by more than the kit's tolerance
    /// Gap − thickness; none while the gap is not accepted.
    std::optional<Length> residual;
    Uncertainty uncertainty; ///< of that
    /// What the verdict is carried by, and the residual by it: whichever way knows it best.
    ResidualBy carriedBy = ResidualBy::arithmetic;
    std::optional<Length> carriedResidual;
    Uncertainty carriedUncertainty;
    /// By the straightedge alone, where it knows it: the bracket, or the tried feel.
    std::optional<Length> feltResidual;
    Uncertainty feltUncertainty;
    ResidualBy feltBy = ResidualBy::bracket;
};

/// One bearing.
struct ClearanceResult {
    std::optional<Length> journalMean;                                         ///< over all directions
    std::optional<Length> journalSmallest, journalLargest;                     ///< of its places
    std::optional<Length> boreMean, boreSmallest, boreLargest;                 ///< as read, none by gauging strip
    std::vector<std::pair<std::int64_t, Length>> bores;                        ///< as read, by station
    std::optional<BoreMethod> method;                                          ///< that was used last
    std::optional<Length> clearance;         ///< mean of the stations, to be shown: never judged
    std::optional<Length> smallest, largest; ///< the worst places, which are judged
    Uncertainty uncertaintySmallest, uncertaintyLargest; ///< of these two, each of one station
    Length taper, outOfRound;
    Uncertainty uncertaintyTaper, uncertaintyOutOfRound;
    std::size_t journalReadings = 0, boreReadings = 0;
    std::optional<FastenerId> boreWaitsFor; ///< the bore is next, and this is not at torque, as it must be before
    /// The larger of both, or not known.
    [[nodiscard]] const Uncertainty& uncertainty() const {
        return !uncertaintySmallest.isKnown() || (uncertaintyLargest.isKnown() &&
                                                  *uncertaintyLargest.expanded() <= *uncertaintySmallest.expanded())
                   ? uncertaintySmallest
                   : uncertaintyLargest;
    }
};

/// A fit at one place.
struct FitResult {
    Length value; ///< mean of the readings that stand, else of those that stood last
    std::size_t readings = 0;
    bool isCurrent = false; ///< nothing that it rests on changed since
    Uncertainty uncertainty;
};

struct PickupResult {
    std::map<PickupTerm, Length> means; ///< of the terms that have current readings
    std::optional<Length> clearance;
    Uncertainty uncertainty;
};

/// Height of the plate over the bearing places at the stacks: all in nanometres, positive = loose.
struct FlushnessResult {
    bool isComplete = false;                          ///< every position has a residual
    std::optional<double> offset, pitch, roll, twist; ///< a term that cannot be told apart is left out
    Uncertainty uncertaintyTwist;
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
    Destination destination;
};

/// Everything that is worked out from a record's facts. A pure function of the ledger: no clock, no file, no setting.
struct Assessment {
    std::vector<Check> checks; ///< in the order in which a job is done
    std::vector<Gate> gates;
    NextStep next;

    std::map<Position, GapResult> gaps;
    std::map<Position, StackResult> stacks;
    std::map<JournalId, ClearanceResult> clearances;
    std::map<FitId, FitResult> fits; ///< of each fit that was read
    PickupResult pickup;
    FlushnessResult flushness;
    SurveyResult survey;
    std::vector<std::string> openFindings;
    std::map<ClosingStep, Standing> closing; ///< each closing step as it stands
    std::optional<ClosingStep> nextClosingStep;     ///< the first that is not good; none when all are
    bool isReadyToSign = false;
    std::size_t weaklyMeasured = 0; ///< checks with a verdict whose capability is below 1
    std::size_t passedByEye = 0;    ///< clearances of the trial fit that somebody called a pass and measured not

    /// Null when there is no such check.
    [[nodiscard]] const Check* find(std::string_view code) const;
    [[nodiscard]] const Check* find(CheckKind kind, const Subject& subject = {}) const;
    [[nodiscard]] const Gate& gate(GateKind) const;
    /// Checks worked on at a station that are not good.
    [[nodiscard]] std::size_t openAt(Station) const;
};

/// Folds nothing itself: give it `fold(ledger)`. `units` only chooses how sentences write quantities.
Assessment assess(const Facts&, const Units& units = {});
Assessment assess(const Ledger&, const Units& units = {});

} // namespace caprail
