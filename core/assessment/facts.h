// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <ledger/ledger.h>
#include <map>
#include <set>
#include <span>
#include <units/band.h>

namespace caprail {

/// An entry's struct with who made it, when, and its number.
template <class T> struct Seen {
    std::int64_t entry = 0;
    UtcTime time;
    std::string person;
    T what;
};

/// The things that change and that checks rest on. What each is about is the subject of its key.
enum class Topic {
    capMovement,   ///< a main fastener of this cap was tightened, loosened, or moved in a verify round (cap)
    nutAndWasher,  ///< (position)
    panRail,       ///< (nothing)
    gap,           ///< the accepted gap took another value (position)
    shimThickness, ///< the measured thickness of a shim (shim)
    band,          ///< a band was set to other values (band name)
    stackAsBuilt,  ///< which shims lie at a position (position)
    girdleWay,     ///< which way round and up the girdle goes (nothing)
    capTorque,     ///< the torque of this cap is another value than before (cap)
    rodTorque,     ///< the torque of this rod is another value than before (rod)
    shells,        ///< (journal)
    crank,         ///< (nothing)
    pan,
    gasket,
    plate,
    pickup,
    groupValue, ///< what is specified for a fastener group (group)
    layout,     ///< the plan coordinates of the places (nothing)
};

/// What changes when a part is exchanged or worked on.
Topic topicOf(Part);
/// The part that a term of the pickup depth is measured on: another one makes its readings fall.
Part partOf(PickupTerm);

struct TopicKey {
    Topic topic = Topic::crank;
    std::string about; ///< a code: "3R", "3", "main-3", "S014", or empty
    friend auto operator<=>(const TopicKey&, const TopicKey&) = default;
};

/// What changed a topic last: the entry, and a phrase for it ("main 3 right moved 4.0° in verify round 1").
struct Change {
    std::int64_t entry = 0; ///< 0: it never changed
    std::string what;
    friend bool operator==(const Change&, const Change&) = default;
};

struct BandFact {
    Band band;
    std::optional<Length> target;
    std::string source;
    std::int64_t entry = 0;
};

struct ShimFact {
    Seen<ShimAdded> added;
    std::vector<Seen<ShimMeasured>> readings;
    bool isSetAside = false;
    std::string whyAside;
    std::optional<Position> inStackAt;
    /// Mean of the micrometer readings, rounded to the nanometre; none while unmeasured.
    [[nodiscard]] std::optional<Length> measured() const;
    /// Measured where there is a measurement, else marked.
    [[nodiscard]] Length thickness() const { return measured().value_or(added.what.marked.value); }
    /// Measured minus marked; none while unmeasured.
    [[nodiscard]] std::optional<Length> offMarking() const;
    /// Off its marking by more than the kit's tolerance: in the wrong bag, burred or dirty. Not while unmeasured.
    [[nodiscard]] bool isOffMarking(const RulesSet& rules) const;
};

struct StackFact {
    std::int64_t entry = 0; ///< the entry that built it
    std::vector<std::string> shims;
    bool isOn = true;
};

/// The last that is known of one fastener outside verify rounds.
struct FastenerFact {
    std::optional<Seen<FastenerTightened>> tightened;
    bool isLoose = false; ///< loosened since
};

struct RoundFact {
    Seen<RoundBegun> begun;
    std::map<FastenerId, Seen<RoundOutcome>> outcomes;
    Change voidedBy; ///< entry 0: nothing that it rests on changed after it began
    [[nodiscard]] bool anyMoved() const;
    [[nodiscard]] std::int64_t lastEntry() const;
};

/// The standing gap readings of one position in nanometres, sorted: kept while entries are folded, so that one more
/// reading does not sort all before it again.
struct StandingGaps {
    std::int64_t felledBy = 0; ///< the entry up to which readings do not count
    std::vector<std::int64_t> sorted;
};

struct FindingFact {
    Seen<FindingOpened> opened;
    std::optional<Seen<FindingSettled>> settled;
};

/// A closing step, or the sign-off, that was not allowed when it was made: it counts for nothing.
struct NeverValid {
    std::int64_t entry = 0;
    UtcTime time;
    std::string person;
    std::optional<ClosingStep> step; ///< none: the sign-off
    std::string why;                 ///< a sentence
};

using FitPlace = std::pair<std::string, std::int64_t>; ///< band name and which one
using TrialPlace = std::pair<TrialItem, std::int64_t>; ///< item and throw (0: none)

/// The present state of one record: what its live entries say, folded in order. Struck entries leave no trace here.
/// Everything is a plain value; what is made of it is in assessment.h.
struct Facts {
    std::optional<Seen<EngineDescribed>> engine;
    std::optional<EngineLayout> layout;
    std::int64_t layoutEntry = 0;
    std::map<std::string, BandFact, std::less<>> bands;
    RulesSet rules;
    std::int64_t rulesEntry = 0;
    std::map<std::pair<FastenerKind, std::optional<Ring>>, Seen<FastenerGroupSet>> groups;

    std::map<std::string, PersonAdded, std::less<>> people;
    std::map<std::string, Seen<InstrumentAdded>, std::less<>> instruments;
    std::map<std::string, std::int64_t, std::less<>> wrenchPulls; ///< pulls in this record, by instrument

    std::map<JournalId, std::vector<Seen<JournalReading>>> journals;
    std::map<JournalId, std::vector<Seen<BoreReading>>> bores;
    std::map<std::string, std::vector<Seen<ShellMeasured>>, std::less<>> shells;
    std::map<JournalId, Seen<ShellsFitted>> shellsFitted;
    std::map<FitPlace, std::vector<Seen<FitReading>>> fits;

    std::map<FastenerId, FastenerFact> fasteners;
    std::vector<RoundFact> rounds;

    std::map<Position, std::vector<Seen<GapReading>>> gaps;
    std::map<Position, StandingGaps> sortedGaps; ///< of `gaps`, as of the last reading there
    std::map<std::string, ShimFact, std::less<>> shims;
    std::map<Position, std::vector<std::string>> pins;
    std::map<Position, StackFact> stacks;
    std::map<Position, Seen<RecheckMade>> rechecks;

    std::optional<Seen<GirdleWaySet>> girdleWay;
    std::map<TrialPlace, Seen<TrialFitResult>> trialFits;
    std::map<PickupTerm, std::vector<Seen<PickupReading>>> pickup;

    std::map<std::string, FindingFact, std::less<>> findings;
    std::vector<Seen<NoteAdded>> notes;
    std::vector<Seen<AttachmentAdded>> attachments;

    std::map<ClosingStep, Seen<ClosingStepDone>> closing;
    std::optional<Seen<SignedOff>> signedOff;
    std::vector<NeverValid> neverValid; ///< found by `fold`: an import, or another program, went past a gate

    std::map<std::string, std::int64_t, std::less<>> judgedAgain; ///< check code → entry
    std::map<TopicKey, Change> changes;

    std::int64_t build = 1;
    std::int64_t buildEntry = 0; ///< the entry that began this build; 0: the first
    std::int64_t lastEntry = 0;

    [[nodiscard]] Change changeOf(Topic topic, const std::string& about = {}) const;
    [[nodiscard]] const BandFact* bandNamed(std::string_view name) const;
    /// The group that specifies this fastener (a ring's own group before the common one); null: none was set.
    [[nodiscard]] const Seen<FastenerGroupSet>* groupOf(FastenerId) const;
    [[nodiscard]] bool isClosed() const { return signedOff.has_value(); }
    /// Positions whose stack lies on the cap now.
    [[nodiscard]] std::vector<Position> stacksOn() const;
    /// Gap readings that still stand: those made after the last thing that moved or changed the position.
    [[nodiscard]] std::span<const Seen<GapReading>> standingGaps(Position) const;
    /// The last thing that made the gap readings of a position fall.
    [[nodiscard]] Change gapFelledBy(Position) const;
};

/// Adds one live entry. `Struck` entries are not for here: striking means folding again without the struck entry.
void apply(Facts&, const Entry&);
/// All live entries in order. Closing steps and sign-offs count only when they were allowed when they were made
/// (ledger_fold.h).
Facts fold(const Ledger&);

} // namespace caprail
