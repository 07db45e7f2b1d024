// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <assessment/change.h>
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
    bool isLoose = false;                      ///< loosened since
    std::int64_t timesTight = 0;               ///< how often this piece was brought to its full value in this build
    std::vector<Seen<ClampChecked>> clamps = {}; ///< what its clamp was found to be
};

/// Where a fastener group is kept: setting one with the same key restates it.
struct GroupKey {
    FastenerKind kind = FastenerKind::mainCap;
    std::optional<Ring> ring = {};
    std::string name = {}; ///< of a group of places; empty: the kind's, or the ring's
    friend auto operator<=>(const GroupKey&, const GroupKey&) = default;
};
GroupKey keyOf(const FastenerGroupSet&);
/// "group:main", "group:main/inner", "group:main=rear cap": how a group's values are named in lists.
std::string codeOf(const GroupKey&);

struct RoundFact {
    Seen<RoundBegun> begun;
    std::map<FastenerId, Seen<RoundOutcome>> outcomes;
    Change voidedBy; ///< entry 0: nothing that it rests on changed after it began
    [[nodiscard]] bool anyMoved() const;
    [[nodiscard]] std::int64_t lastEntry() const;
};

/// The current gap readings of one position in nanometres, sorted: kept while entries are folded, so that one more
/// reading does not sort all before it again.
struct CurrentGaps {
    std::int64_t invalidatedBy = 0; ///< the entry up to which readings do not count
    std::vector<std::int64_t> sorted;
};

/// All that was ever said of one instrument, in order.
struct InstrumentFact {
    std::vector<Seen<InstrumentAdded>> statements; ///< one at least
    /// As it is known now.
    [[nodiscard]] const InstrumentAdded& latest() const { return statements.back().what; }
    /// As it was known when an entry was made: a later statement does not count for it, unless it says what it corrects.
    /// Null: nothing was known of it then.
    [[nodiscard]] const InstrumentAdded* inForce(std::int64_t entry) const;
};

struct FeelStudyFact {
    Seen<FeelStudyBegun> begun;
    std::vector<Seen<FeelAnswer>> answers;
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

using FitId = std::pair<std::string, std::int64_t>; ///< band name and which one
using TrialId = std::pair<TrialItem, std::int64_t>; ///< item and throw (0: none)

/// One place of one of the shop's own checks.
struct OwnPlace {
    std::string check;
    std::int64_t place = 1;
    friend auto operator<=>(const OwnPlace&, const OwnPlace&) = default;
};

/// What was decided about the engine, and the shop's things: it stays when a new build begins.
struct KeptFacts {
    std::optional<Seen<EngineDescribed>> engine;
    std::optional<EngineLayout> layout;
    std::int64_t layoutEntry = 0;
    std::map<std::string, BandFact, std::less<>> bands;
    RulesSet rules;
    std::int64_t rulesEntry = 0;
    std::map<GroupKey, Seen<FastenerGroupSet>> groups;

    std::map<std::string, PersonAdded, std::less<>> people;
    std::map<std::string, InstrumentFact, std::less<>> instruments;
    std::map<std::string, std::int64_t, std::less<>> wrenchPulls; ///< pulls in this record, by instrument
    std::map<std::int64_t, FeelStudyFact> feelStudies;            ///< by number
    std::vector<Seen<OwnCheckSet>> ownChecks; ///< in the order in which they were first set; withdrawn ones too

    std::map<std::string, std::vector<Seen<ShellMeasured>>, std::less<>> shells;
    std::map<std::string, ShimFact, std::less<>> shims; ///< a new build finds them all out of their stacks

    std::vector<Seen<NoteAdded>> notes;
    std::vector<Seen<AttachmentAdded>> attachments;
    std::vector<Seen<PartEntered>> parts; ///< in the order in which they were first entered
    std::map<std::string, std::vector<Seen<ZeroChecked>>, std::less<>> zeroChecks; ///< by instrument
    /// Whose figure a value is, by its code (unconfirmed.h); one that was changed since is not among them.
    std::map<std::string, Seen<ValueConfirmed>, std::less<>> confirmed;
    std::vector<Seen<BroughtIn>> broughtIn;

    std::int64_t build = 1;
    std::int64_t buildEntry = 0; ///< the entry that began this build; 0: the first
    std::int64_t lastEntry = 0;

    GirdleShape girdleShape{};              ///< of the girdle's plate, as far as somebody gave it
    std::optional<GirdlePlate> girdlePlate; ///< once its thickness and its metal are known
};

/// What was measured and done in this build: it begins empty with each.
struct BuildFacts {
    std::map<JournalId, std::vector<Seen<JournalReading>>> journals;
    std::map<JournalId, std::vector<Seen<BoreReading>>> bores;
    std::map<JournalId, Seen<ShellsFitted>> shellsFitted;
    std::map<FitId, std::vector<Seen<FitReading>>> fits;
    std::optional<Seen<CrankLaidIn>> crank; ///< the last that was said of it

    std::map<FastenerId, FastenerFact> fasteners;
    std::vector<RoundFact> rounds;

    std::map<Position, std::vector<Seen<GapReading>>> gaps;
    std::map<Position, CurrentGaps> sortedGaps; ///< of `gaps`, as of the last reading there
    std::map<Position, std::vector<std::string>> pins;
    std::map<Position, StackFact> stacks;
    std::map<Position, Seen<RecheckMade>> rechecks;

    std::optional<Seen<GirdleWaySet>> girdleWay;
    std::map<TrialId, Seen<TrialFitResult>> trialFits;
    std::map<PickupTerm, std::vector<Seen<PickupReading>>> pickup;
    std::set<std::int64_t> triedLoose; ///< entries of the trial fit made while a girdle nut was not at torque
    std::map<TurningStage, Seen<TurningTorqueRead>> turning;
    std::int64_t girdleLifted = 0; ///< the newest entry that was made with the girdle off its stacks
    std::map<OwnPlace, std::vector<Seen<OwnCheckAnswered>>> ownAnswers;

    std::map<std::string, FindingFact, std::less<>> findings;

    std::map<ClosingStep, Seen<ClosingStepDone>> closing;
    std::optional<Seen<SignedOff>> signedOff;
    std::vector<NeverValid> neverValid; ///< found by `fold`: an import, or another program, went past a gate

    std::map<std::string, std::int64_t, std::less<>> judgedAgain; ///< check code → entry
    std::map<TopicKey, Change> changes;
    std::vector<Deviation> deviations; ///< in the order in which they were made
};

/// The present state of one record: what its live entries say, folded in order. Struck entries leave no trace here.
/// Everything is a plain value; what is made of it is in assessment.h. It has no members of its own, so that each is
/// either kept over builds or not: there is no third, and nothing to copy by hand.
struct Facts : KeptFacts, BuildFacts {
    [[nodiscard]] Change changeOf(Topic topic, const About& about = {}) const;
    [[nodiscard]] const BandFact* bandNamed(std::string_view name) const;
    /// The group that specifies this fastener (one that lists its place, the newest of several; then its ring's; then that
    /// of its kind); null: none was set.
    [[nodiscard]] const Seen<FastenerGroupSet>* groupOf(FastenerId) const;
    [[nodiscard]] bool isCrankIn() const { return crank && crank->what.isIn; }
    /// What was known of an instrument when an entry was made; null: nothing, or it is not named.
    [[nodiscard]] const InstrumentAdded* instrumentAt(const std::string& name, std::int64_t entry) const;
    [[nodiscard]] bool isClosed() const { return signedOff.has_value(); }
    /// Null: no such check was ever set.
    [[nodiscard]] const Seen<OwnCheckSet>* ownCheckNamed(std::string_view name) const;
    /// Positions whose stack lies on the cap now.
    [[nodiscard]] std::vector<Position> stacksOn() const;
    /// Gap readings that still stand: those made after the last thing that moved or changed the position.
    [[nodiscard]] std::span<const Seen<GapReading>> currentGaps(Position) const;
    /// The last thing that made the gap readings of a position fall.
    [[nodiscard]] Change gapInvalidatedBy(Position) const;
};

static_assert(sizeof(Facts) == sizeof(KeptFacts) + sizeof(BuildFacts), "a member of Facts belongs to one of its bases");

/// Adds one live entry. `Struck` entries are not for here: striking means folding again without the struck entry.
void apply(Facts&, const Entry&);
/// All live entries in order. Closing steps and sign-offs count only when they were allowed when they were made
/// (ledger_fold.h).
Facts fold(const Ledger&);

} // namespace caprail
