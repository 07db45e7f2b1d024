// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// What changed, what changed it, and what was changed after something had been judged by it: all of it as types. The
/// sentence is made where it is shown, in the units and the language of that moment.
#include <compare>
#include <engine/place.h>
#include <ledger/entries.h>
#include <optional>
#include <string>
#include <units/band.h>
#include <base/date.h>
#include <units/format.h>
#include <variant>

namespace caprail {

/// The things that change and that checks rest on. What each is about is the subject of its key.
enum class Topic {
    capMovement,   ///< a main fastener of this cap was tightened, loosened, or moved in a verify round (journal)
    roundMovement, ///< a fastener of this bearing moved in a verify round: it had not the clamp that it should (journal)
    crankLaid,     ///< the crank was lifted out, or laid in again (nothing)
    nutAndWasher,  ///< (position)
    panRail,       ///< (nothing)
    gap,           ///< the accepted gap took another value (position)
    shimThickness, ///< the measured thickness of a shim (name)
    band,          ///< a band was set to other values (name)
    stackAsBuilt,  ///< which shims lie at a position (position)
    girdleWay,     ///< which way round and up the girdle goes (nothing)
    torque,        ///< the torque of this bearing's fasteners is another value than before (journal)
    shells,        ///< (journal)
    crank,         ///< (nothing)
    pan,
    gasket,
    plate,
    pickup,
    groupValue, ///< what is specified for a fastener (fastener)
    layout,     ///< the plan coordinates of the places (nothing)
    throwRoom,  ///< room was made, or looked at again, at a throw (nothing)
    ownCheck,   ///< what is asked by one of the shop's own checks (name)
};

/// What changes when a part is exchanged or worked on.
Topic topicOf(Part);
/// The part that a term of the pickup depth is measured on: another one makes its readings fall.
Part partOf(PickupTerm);

/// What a topic is about: nothing, a place, a bearing, a fastener, or something known by name (a shim, a band).
using About = std::variant<std::monostate, Position, JournalId, FastenerId, std::string>;

struct TopicKey {
    Topic topic = Topic::crank;
    About about;
    friend auto operator<=>(const TopicKey&, const TopicKey&) = default;
};

// --- Causes: one struct for each way in which something changes -------------------------------------------------

struct LayoutSetAnew {};
struct BandSetTo {
    std::string band;
    Band to;
};
struct GroupSetAnew {
    FastenerKind group = FastenerKind::mainCap;
};
struct OtherShells {
    JournalId journal;
};
struct OtherPart {
    Part part = Part::crank;
    std::string place, what; ///< as entered; may be empty
};
struct Tightened {
    FastenerId fastener;
    bool isToAnotherValue = false;
};
struct Loosened {
    FastenerId fastener;
};
struct MovedInRound {
    FastenerId fastener;
    std::optional<Angle> angle;
    std::int64_t round = 1;
};
struct WasherWorkedOn {
    Position position;
    WasherWork work = WasherWork::turned;
};
struct CrankMoved {
    bool isIn = true; ///< laid in again; false: lifted out
};
struct GapReadAgain {
    Position position;
};
struct ShimRead {
    std::string shim;
};
struct StackBuiltAnew {
    Position position;
};
struct StackTakenApart {
    Position position;
};
struct StackWasOn { ///< when a verify round began
    Position position;
};
struct StackLaidOn { ///< before a verify round was complete
    Position position;
};
struct GirdleTurnedRound {};
struct GirdleTriedAfter {}; ///< a round began
struct ThrowAnsweredAgain {
    std::int64_t throwNumber = 1;
};
struct OwnCheckSetAnew {
    std::string check;
};

using Cause = std::variant<std::monostate, LayoutSetAnew, BandSetTo, GroupSetAnew, OtherShells, OtherPart, Tightened,
                           Loosened, MovedInRound, CrankMoved, GapReadAgain, ShimRead, StackBuiltAnew, StackTakenApart,
                           StackWasOn, StackLaidOn, GirdleTurnedRound, GirdleTriedAfter, WasherWorkedOn,
                           ThrowAnsweredAgain, OwnCheckSetAnew>;
/// "main 3 right moved 4.0° in verify round 1"; nothing for no cause.
std::string describe(const Cause&, const Units&);

/// What changed a topic last.
struct Change {
    std::int64_t entry = 0; ///< 0: it never changed
    Cause cause;
};
/// "Entry 334: main 4 right moved 3.0° in verify round 2."
std::string describe(const Change&, const Units&);

// --- Deviations: what was changed after something had been judged by it ----------------------------------------

struct InstrumentCorrected {
    std::string instrument, why;
};
struct BandChanged {
    std::string band;
    Band from, to;
    bool isWider = false;          ///< it admits something that it did not
    std::int64_t afterReading = 0; ///< the newest reading that the band judges
    std::string why;
};
struct RulesChanged { ///< how verdicts are made: decision, coverage, passes, repeat limit, minimums
    std::int64_t afterReading = 0;
    Rare<RulesSet> from = {}, to = {};
};
struct AcceptedAgain {
    std::string check, why;
};
/// A value outside what was plausible, insisted on.
struct InsistedOn {
    std::string kind; ///< of the entry
};
struct GroupChanged { ///< what is asked of fasteners that were brought to something else
    Rare<FastenerGroupSet> from, to;
    std::int64_t after = 0; ///< the newest entry that brought one of them to its value
};
struct OwnCheckChanged {
    std::string words, why;
    std::int64_t after = 0; ///< its newest answer
};
struct PartReplaced { ///< or worked on, after something had been measured with it
    Part part = Part::crank;
    std::string place, what;
    std::int64_t after = 0;
};
struct WasherChanged {
    Position position;
    WasherWork work = WasherWork::turned;
    std::string why;
    std::int64_t after = 0;
};
struct ShellsExchanged {
    JournalId journal;
    std::string why;
    std::int64_t after = 0;
};
struct FastenerLetOff { ///< after a gap was read at its cap, or it had its outcome in a verify round
    FastenerId fastener;
    std::string why;
    std::int64_t after = 0;
};
struct FoundMoved { ///< in a verify round: it had not the clamp that was taken for granted
    FastenerId fastener;
    std::optional<Angle> angle;
    std::int64_t round = 1;
};
struct CameFromOutside {
    std::string fileName;
    std::int64_t count = 0;
};
/// An outcome, or what it was judged by, that was withdrawn; and what stands there now. (Made by work/deviations.h: an
/// entry that was struck leaves no trace in the facts.)
struct OutcomeStruck {
    std::string said;          ///< of the struck entry, in the units and the language of that moment
    std::string why;
    std::int64_t entry = 0;    ///< the struck one
    std::string by;            ///< who had made it
    bool wasMoved = false;     ///< it said that a fastener moved
    bool isReading = false;    ///< it was a measured value
    std::int64_t again = 0;    ///< the entry that answers the same again; 0: none does
    std::string againSaid = {}, againBy = {};
    std::int64_t minutes = 0; ///< from the struck entry to that
};

using DeviationKind =
    std::variant<InstrumentCorrected, BandChanged, RulesChanged, AcceptedAgain, InsistedOn, GroupChanged, OwnCheckChanged,
                 PartReplaced, WasherChanged, ShellsExchanged, FastenerLetOff, FoundMoved, CameFromOutside, OutcomeStruck>;
struct Deviation {
    std::int64_t entry = 0;
    UtcTime time;
    std::string person;
    DeviationKind what;
};
/// "The band “residual” was set from −0.0005 to 0.0005 in to −0.0010 to 0.0010 in after the reading of entry 81."
std::string describe(const DeviationKind&, const Units&);

} // namespace caprail
