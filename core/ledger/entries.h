// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// Every kind of entry of a build record. A kind is one plain struct that describes itself once: `kind` (its name in
/// files), `title` (how history lines begin) and `fields()` (names and members). The table, the JSON form, the seal,
/// the CSV columns and the history line are all made from that one description (kinds.h). A new kind is one struct here
/// and its name in `Body` at the end.
#include <base/one_of.h>
#include <engine/layout.h>
#include <ledger/entry_words.h>
#include <ledger/field.h>
#include <load/girdle_plate.h>
#include <tuple>

namespace caprail {

// --- The engine and what is asked of it ------------------------------------------------------------------------

struct EngineDescribed {
    std::string shop, customer, engine, serial, note;
    Rare<std::string> address = {}, telephone = {}; ///< of the shop: whom the customer writes to and calls
    static constexpr std::string_view kind = "engine_described", title = Core::mark("Engine described");
    static constexpr auto fields() {
        using S = EngineDescribed;
        return std::make_tuple(field("shop", &S::shop), field("customer", &S::customer), field("engine", &S::engine),
                               field("serial", &S::serial), field("note", &S::note), field("address", &S::address),
                               field("telephone", &S::telephone));
    }
};

struct LayoutSet : LayoutDescription {
    std::string source;
    /// The girdle's plate, as far as somebody gave it: what it weighs on the block is worked out from it.
    Rare<Length> plateThickness = {};
    Rare<PlateMetal> plateMetal = {};
    Rare<std::int64_t> plateModulus = {};             ///< Young's modulus, MPa, where the metal is another
    Rare<std::int64_t> platePoisson = {};             ///< Poisson's ratio in thousandths, likewise
    Rare<Length> windowAlong = {}, windowAcross = {}; ///< over each bay; none: as drawn, 0: no windows
    Rare<Length> plateOverhang = {};                  ///< beyond the first and the last tied cap
    static constexpr std::string_view kind = "layout_set", title = Core::mark("Layout set");
    static constexpr auto fields() {
        using S = LayoutSet;
        return std::make_tuple(field("caps", &S::caps), field("fasteners_per_cap", &S::fastenersPerCap),
                               field("girdle_ring", &S::girdleRing), field("tied_first", &S::tiedFirst),
                               field("tied_last", &S::tiedLast), field("rods", &S::rods), field("throws", &S::throws),
                               field("cap_spacing", &S::capSpacing), field("stud_span", &S::studSpan),
                               field("outer_stud_span", &S::outerStudSpan), field("rail_span", &S::railSpan),
                               field("pickup_cap", &S::pickupCap), field("pickup_side", &S::pickupSide),
                               field("dipstick_cap", &S::dipstickCap), field("dipstick_side", &S::dipstickSide),
                               field("source", &S::source), field("plate_thickness", &S::plateThickness),
                               field("plate_metal", &S::plateMetal), field("plate_modulus", &S::plateModulus),
                               field("plate_poisson", &S::platePoisson), field("window_along", &S::windowAlong),
                               field("window_across", &S::windowAcross), field("plate_overhang", &S::plateOverhang));
    }
};

/// A band that something is judged by. `band` is one of the names of band_names.h, or the shop's own name for a fit.
struct BandSet {
    std::string band;
    Entered<Length> lo, hi;
    Rare<Entered<Length>> target;
    std::string source; ///< who says so: a person, a document, "common practice"
    Rare<std::string> why = {}; ///< it was changed; required once something was judged by it
    static constexpr std::string_view kind = "band_set", title = Core::mark("Band set");
    static constexpr auto fields() {
        using S = BandSet;
        return std::make_tuple(field("band", &S::band), field("lo", &S::lo), field("hi", &S::hi),
                               field("target", &S::target), field("source", &S::source), field("why", &S::why));
    }
};

/// How this record judges: one entry restates all of it.
struct RulesSet {
    DecisionRule decision = DecisionRule::guarded;
    Coverage coverage = Coverage::student;
    Length repeatLimit = thou(1.0); ///< two readings of one gap differ by no more (common practice)
    std::int64_t minimumPasses = 2;
    Length kitTolerance = tenths(5); ///< measured against marked thickness of a shim (common practice)
    std::int64_t largestStack = 5;   ///< shims in one stack; 0: no limit
    Objective objective = Objective::smallestResidual;
    std::int64_t torqueScatterPercent = 30; ///< of preload at a given torque (common practice)
    Length counterweightMinimum = thou(60);
    std::string source;
    /// Half-width of what two parts may differ by in temperature when they are measured; none: 5 °F.
    std::optional<Temperature> temperatureSpread = {};
    /// A verify round is made by somebody who tightened none of its fasteners; none: no.
    std::optional<bool> secondPersonVerifies = {};
    /// The sign-off is made by somebody who did none of the closing steps; none: no.
    std::optional<bool> secondPersonSigns = {};
    std::optional<Length> pickupTubeMinimum = {}; ///< of the pickup tube to nuts and studs; none: 0.100 in
    std::optional<Length> dipstickMinimum = {};   ///< around the dipstick; none: 0.060 in
    std::optional<Torque> turningRise = {};       ///< largest rise of the turning torque; none: 2 lbf·ft
    Rare<std::string> why = {}; ///< they were changed; required once something was judged by them
    static constexpr std::string_view kind = "rules_set", title = Core::mark("Rules set");
    static constexpr auto fields() {
        using S = RulesSet;
        return std::make_tuple(field("decision", &S::decision), field("coverage", &S::coverage),
                               field("repeat_limit", &S::repeatLimit), field("minimum_passes", &S::minimumPasses),
                               field("kit_tolerance", &S::kitTolerance), field("largest_stack", &S::largestStack),
                               field("objective", &S::objective),
                               field("torque_scatter_percent", &S::torqueScatterPercent),
                               field("counterweight_minimum", &S::counterweightMinimum), field("source", &S::source),
                               field("temperature_spread", &S::temperatureSpread),
                               field("second_person_verifies", &S::secondPersonVerifies),
                               field("second_person_signs", &S::secondPersonSigns),
                               field("pickup_tube_minimum", &S::pickupTubeMinimum),
                               field("dipstick_minimum", &S::dipstickMinimum), field("turning_rise", &S::turningRise),
                               field("why", &S::why));
    }
};

/// A check of the shop's own, in its own words. Setting one of the same name again restates it; none of its places: it
/// is asked no more.
struct OwnCheckSet {
    std::string ownCheck; ///< its name, without spaces: "windage-tray"
    std::string words;    ///< what is looked at: "windage tray clear of every throw"
    OwnCheckSort sort = OwnCheckSort::yesNo;
    OwnCheckHolds holds = OwnCheckHolds::closing;
    std::optional<ClosingStep> step = {}; ///< the closing step that it holds
    std::int64_t places = 1;              ///< 0: withdrawn
    Rare<Entered<Length>> lo = {}, hi = {}; ///< of a measured one
    std::string source;
    Rare<std::string> why = {}; ///< it was changed; required once it was answered
    static constexpr std::string_view kind = "own_check_set", title = Core::mark("Own check set");
    static constexpr auto fields() {
        using S = OwnCheckSet;
        return std::make_tuple(field("own_check", &S::ownCheck), field("words", &S::words), field("sort", &S::sort),
                               field("holds", &S::holds), field("step", &S::step), field("places", &S::places),
                               field("lo", &S::lo), field("hi", &S::hi), field("source", &S::source),
                               field("why", &S::why));
    }
};

/// A set of places with one specification: all fasteners of a kind, those of one ring, or, under a name of its own, the
/// places that it lists, which then no wider group speaks for. Setting it again restates it; with no place left in its
/// list it is dissolved, and its places fall back to the wider group.
struct FastenerGroupSet {
    FastenerKind group = FastenerKind::mainCap;
    std::optional<Ring> ring; ///< main caps of four fasteners may have one group per ring
    std::int64_t count = 0;
    std::string thread; ///< "7/16-20", "M10x1.5"
    std::string grade;  ///< grade or material
    std::string lubricant;
    TighteningMethod method = TighteningMethod::torque;
    Rare<Entered<Torque>> torque;
    Rare<Entered<Angle>> angle;
    Rare<Entered<Length>> stretch;
    std::int64_t steps = 3;
    NameList sequence; ///< fastener codes in the order of tightening; empty: from the centre outwards
    std::string source;
    Rare<std::string> name = {};       ///< of a group of places: "rear cap"
    Rare<NameList> places = {};        ///< fastener codes; none: all of the kind, or of its ring
    std::optional<FastenerPiece> piece = {};    ///< none: studs with nuts at main caps and girdle, bolts elsewhere
    std::optional<VerifyMethod> verifiedBy = {}; ///< none: by torque, by length when stretched, else by witness mark
    std::optional<bool> isSingleUse = {};       ///< not tightened twice; none: only what is tightened to yield
    Rare<Entered<Length>> stretchTolerance = {}; ///< of the length when it is read; none: 0.0003 in
    Rare<Entered<Length>> grip = {};         ///< clamped length, from under the nut to where the thread holds
    Rare<Entered<Length>> shank = {};        ///< diameter without thread; none: the nominal one
    Rare<Entered<Length>> threadInGrip = {}; ///< threaded part of the grip; none: one diameter
    Rare<std::string> clamped = {};          ///< what it clamps: "cast iron", "steel"
    Rare<std::string> why = {}; ///< it was changed; required once a fastener was brought to it
    static constexpr std::string_view kind = "fastener_group_set", title = Core::mark("Fastener group set");
    static constexpr auto fields() {
        using S = FastenerGroupSet;
        return std::make_tuple(field("fastener_group", &S::group), field("ring", &S::ring), field("count", &S::count),
                               field("thread", &S::thread), field("grade", &S::grade),
                               field("lubricant", &S::lubricant), field("method", &S::method),
                               field("torque", &S::torque), field("angle", &S::angle), field("stretch", &S::stretch),
                               field("steps", &S::steps), field("tightening_order", &S::sequence),
                               field("source", &S::source), field("group_name", &S::name), field("places", &S::places),
                               field("piece", &S::piece), field("verified_by", &S::verifiedBy),
                               field("is_single_use", &S::isSingleUse),
                               field("stretch_tolerance", &S::stretchTolerance), field("grip", &S::grip),
                               field("shank", &S::shank), field("thread_in_grip", &S::threadInGrip),
                               field("clamped", &S::clamped), field("why", &S::why));
    }
};

// --- People and instruments ------------------------------------------------------------------------------------

struct PersonAdded {
    std::string name, role;
    static constexpr std::string_view kind = "person_added", title = Core::mark("Person added");
    static constexpr auto fields() {
        using S = PersonAdded;
        return std::make_tuple(field("name", &S::name), field("role", &S::role));
    }
};

/// An instrument; adding one of the same name again restates it (a new calibration). A restatement judges the readings
/// made after it; one that says what it corrects judges those made before as well.
struct InstrumentAdded {
    std::string instrument; ///< its name in this record, without spaces: "MIC-1"
    InstrumentType type = InstrumentType::micrometer;
    std::string maker, serial;
    Rare<Entered<Length>> limitOfError;                  ///< half-width, for length instruments
    Rare<Entered<Torque>> smallestTorque, largestTorque; ///< for wrenches
    Rare<Date> calibrated, due;
    Rare<std::int64_t> dueCycles, cycles; ///< pulls allowed between calibrations; pulls before this record
    Rare<Entered<Length>> step = {};      ///< smallest step that it is read to; of leaves, between two sums
    Rare<std::string> setWith = {};  ///< the micrometer that a bore gauge is set in before each use
    Rare<std::string> corrects = {}; ///< which error of the earlier statements, and why it is one
    static constexpr std::string_view kind = "instrument_added", title = Core::mark("Instrument added");
    static constexpr auto fields() {
        using S = InstrumentAdded;
        return std::make_tuple(field("instrument", &S::instrument), field("type", &S::type), field("maker", &S::maker),
                               field("serial", &S::serial), field("limit_of_error", &S::limitOfError),
                               field("smallest_torque", &S::smallestTorque), field("largest_torque", &S::largestTorque),
                               field("calibrated", &S::calibrated), field("due", &S::due),
                               field("due_cycles", &S::dueCycles), field("cycles", &S::cycles), field("step", &S::step),
                               field("set_with", &S::setWith), field("corrects", &S::corrects));
    }
};

// --- Bearings and fits -----------------------------------------------------------------------------------------

struct JournalReading {
    JournalId journal;
    std::int64_t station = 1;   ///< along the journal, 1 at the front
    std::int64_t direction = 1; ///< around it: 1 vertical (square to the parting line), 2 horizontal
    Entered<Length> diameter;
    std::string instrument;
    Rare<Entered<Temperature>> partTemperature = {}; ///< of the part, by a thermometer
    static constexpr std::string_view kind = "journal_reading", title = Core::mark("Journal measured");
    static constexpr auto fields() {
        using S = JournalReading;
        return std::make_tuple(field("journal", &S::journal), field("station", &S::station),
                               field("direction", &S::direction), field("diameter", &S::diameter),
                               field("instrument", &S::instrument),
                               field("part_temperature", &S::partTemperature));
    }
};

/// The bore with shells in and the cap at full torque, the bare housing, or the clearance by gauging strip.
struct BoreReading {
    JournalId journal;
    BoreMethod method = BoreMethod::boreWithShells;
    std::int64_t station = 1;
    Entered<Length> value; ///< a diameter, or a clearance when by strip
    std::string instrument;
    Rare<Entered<Temperature>> partTemperature = {}; ///< of the part, by a thermometer
    static constexpr std::string_view kind = "bore_reading", title = Core::mark("Bore measured");
    static constexpr auto fields() {
        using S = BoreReading;
        return std::make_tuple(field("journal", &S::journal), field("method", &S::method),
                               field("station", &S::station), field("value", &S::value),
                               field("instrument", &S::instrument),
                               field("part_temperature", &S::partTemperature));
    }
};

/// A half shell on the shelf or in the engine, with its thickness at the crown.
struct ShellMeasured {
    std::string shell; ///< its name, without spaces
    JournalKind fits = JournalKind::main;
    ShellHalf half = ShellHalf::either;
    Entered<Length> thickness;
    bool isMarked = false; ///< the marked thickness; false: measured
    std::string instrument;
    Rare<Entered<Temperature>> partTemperature = {}; ///< of the part, by a thermometer
    static constexpr std::string_view kind = "shell_measured", title = Core::mark("Shell thickness");
    static constexpr auto fields() {
        using S = ShellMeasured;
        return std::make_tuple(field("shell", &S::shell), field("fits", &S::fits), field("half", &S::half),
                               field("thickness", &S::thickness), field("is_marked", &S::isMarked),
                               field("instrument", &S::instrument),
                               field("part_temperature", &S::partTemperature));
    }
};

/// Which two shells lie in a bearing.
struct ShellsFitted {
    JournalId journal;
    std::string upper, lower;
    Rare<std::string> why = {}; ///< others than before; required once the bearing was measured with those
    static constexpr std::string_view kind = "shells_fitted", title = Core::mark("Shells fitted");
    static constexpr auto fields() {
        using S = ShellsFitted;
        return std::make_tuple(field("journal", &S::journal), field("upper", &S::upper), field("lower", &S::lower),
                               field("why", &S::why));
    }
};

/// Crank end play, rod side clearance, and any further banded reading that the shop adds.
struct FitReading {
    std::string fit;        ///< the band's name
    std::int64_t place = 1; ///< which one: the throw for rod side clearance, the cylinder for a ring gap, else 1
    Entered<Length> value;
    std::string instrument;
    Rare<Entered<Temperature>> partTemperature = {}; ///< of the part, by a thermometer
    static constexpr std::string_view kind = "fit_reading", title = Core::mark("Fit measured");
    static constexpr auto fields() {
        using S = FitReading;
        return std::make_tuple(field("fit", &S::fit), field("place", &S::place), field("value", &S::value),
                               field("instrument", &S::instrument),
                               field("part_temperature", &S::partTemperature));
    }
};

/// The crank is laid in and its caps are at torque; or it is lifted out again. Bores and journals are read before,
/// gaps and all else after.
struct CrankLaidIn {
    bool isIn = true; ///< false: lifted out
    std::string note;
    static constexpr std::string_view kind = "crank_laid_in", title = Core::mark("Crank laid in");
    static constexpr auto fields() {
        using S = CrankLaidIn;
        return std::make_tuple(field("is_in", &S::isIn), field("note", &S::note));
    }
};

/// A part was changed or worked on, so that what was measured with the earlier one no longer stands.
struct PartChanged {
    Part part = Part::crank;
    std::string place; ///< a position code for a nut and washer, a journal code for shells, else empty
    std::string what;
    static constexpr std::string_view kind = "part_changed", title = Core::mark("Part changed");
    static constexpr auto fields() {
        using S = PartChanged;
        return std::make_tuple(field("part", &S::part), field("place", &S::place), field("what", &S::what));
    }
};

// --- Fasteners and verify rounds -------------------------------------------------------------------------------

/// A fastener brought to its specified value outside a verify round.
struct FastenerTightened {
    FastenerId fastener;
    Rare<Entered<Torque>> torque;
    Rare<Entered<Angle>> angle;
    Rare<Entered<Length>> stretch;
    std::string instrument;
    std::optional<bool> isNew = {}; ///< a fastener that was never tightened before; none: not said
    static constexpr std::string_view kind = "fastener_tightened", title = Core::mark("Fastener tightened");
    static constexpr auto fields() {
        using S = FastenerTightened;
        return std::make_tuple(field("fastener", &S::fastener), field("torque", &S::torque), field("angle", &S::angle),
                               field("stretch", &S::stretch), field("instrument", &S::instrument),
                               field("is_new", &S::isNew));
    }
};

struct FastenerLoosened {
    FastenerId fastener;
    std::string why;
    static constexpr std::string_view kind = "fastener_loosened", title = Core::mark("Fastener loosened");
    static constexpr auto fields() {
        using S = FastenerLoosened;
        return std::make_tuple(field("fastener", &S::fastener), field("why", &S::why));
    }
};

/// The torque that turned one fastener on a little further, and the one that turned it back: what it clamps with, free of
/// friction. It was loosened by that, and must be tightened again.
struct ClampChecked {
    FastenerId fastener;
    Entered<Torque> on, off;
    std::string instrument;
    static constexpr std::string_view kind = "clamp_checked", title = Core::mark("Clamp checked");
    static constexpr auto fields() {
        using S = ClampChecked;
        return std::make_tuple(field("fastener", &S::fastener), field("torque_on", &S::on), field("torque_off", &S::off),
                               field("instrument", &S::instrument));
    }
};

struct RoundBegun {
    std::int64_t round = 1;
    std::string instrument;
    static constexpr std::string_view kind = "round_begun", title = Core::mark("Verify round begun");
    static constexpr auto fields() {
        using S = RoundBegun;
        return std::make_tuple(field("round", &S::round), field("instrument", &S::instrument));
    }
};

/// One fastener in a round: pulled to its torque again, or, where its group is verified so, its stretch read or its
/// witness mark looked at.
struct RoundOutcome {
    std::int64_t round = 1;
    FastenerId fastener;
    Outcome outcome = Outcome::held;
    Rare<Entered<Angle>> angle; ///< that a moved one turned
    Rare<Entered<Torque>> torque;
    std::string instrument;
    std::optional<VerifyMethod> by = {};         ///< none: by torque
    Rare<Entered<Length>> stretch = {};     ///< as read, when by length
    static constexpr std::string_view kind = "round_outcome", title = Core::mark("Verified");
    static constexpr auto fields() {
        using S = RoundOutcome;
        return std::make_tuple(field("round", &S::round), field("fastener", &S::fastener),
                               field("outcome", &S::outcome), field("angle", &S::angle), field("torque", &S::torque),
                               field("instrument", &S::instrument), field("verified_by", &S::by),
                               field("stretch", &S::stretch));
    }
};

/// The washer of a place was turned, turned over or dressed: its gap is read again.
struct WasherWorked {
    Position position;
    WasherWork work = WasherWork::turned;
    std::string note;
    static constexpr std::string_view kind = "washer_worked", title = Core::mark("Washer");
    static constexpr auto fields() {
        using S = WasherWorked;
        return std::make_tuple(field("position", &S::position), field("work", &S::work), field("note", &S::note));
    }
};

// --- Gaps, shims and stacks ------------------------------------------------------------------------------------

/// What goes into the gap, and, when it was tried, what does not: the gap then lies between the two.
struct GapReading {
    Position position;
    std::int64_t pass = 1;
    Entered<Length> gap; ///< that goes
    std::string instrument;
    Rare<Entered<Length>> doesNotGo = {}; ///< more than `gap`
    Rare<std::string> straightedge = {};  ///< that lay across the rails; none: not known
    /// What the reading says: the middle between what goes and what does not, or what goes.
    [[nodiscard]] Length value() const {
        return doesNotGo ? Length((gap.value.value() + doesNotGo->value.value()) / 2) : gap.value;
    }
    static constexpr std::string_view kind = "gap_reading", title = Core::mark("Gap read");
    static constexpr auto fields() {
        using S = GapReading;
        return std::make_tuple(field("position", &S::position), field("pass", &S::pass), field("gap", &S::gap),
                               field("instrument", &S::instrument), field("does_not_go", &S::doesNotGo),
                               field("straightedge", &S::straightedge));
    }
};

struct ShimAdded {
    std::string shim; ///< its name, without spaces
    Entered<Length> marked;
    std::string bag;
    static constexpr std::string_view kind = "shim_added", title = Core::mark("Shim added");
    static constexpr auto fields() {
        using S = ShimAdded;
        return std::make_tuple(field("shim", &S::shim), field("marked", &S::marked), field("bag", &S::bag));
    }
};

struct ShimMeasured {
    std::string shim;
    Entered<Length> thickness;
    std::string instrument;
    Rare<Entered<Temperature>> partTemperature = {}; ///< of the part, by a thermometer
    static constexpr std::string_view kind = "shim_measured", title = Core::mark("Shim measured");
    static constexpr auto fields() {
        using S = ShimMeasured;
        return std::make_tuple(field("shim", &S::shim), field("thickness", &S::thickness),
                               field("instrument", &S::instrument),
                               field("part_temperature", &S::partTemperature));
    }
};

struct ShimSetAside {
    std::string shim;
    bool isAside = true; ///< false: taken back into the kit
    std::string why;
    static constexpr std::string_view kind = "shim_set_aside", title = Core::mark("Shim set aside");
    static constexpr auto fields() {
        using S = ShimSetAside;
        return std::make_tuple(field("shim", &S::shim), field("is_aside", &S::isAside), field("why", &S::why));
    }
};

/// The assembler fixes the stack at a position before planning the rest; no shims: the pin is taken away.
struct StackPinned {
    Position position;
    bool isPinned = true;
    NameList shims;
    static constexpr std::string_view kind = "stack_pinned", title = Core::mark("Stack pinned");
    static constexpr auto fields() {
        using S = StackPinned;
        return std::make_tuple(field("position", &S::position), field("is_pinned", &S::isPinned),
                               field("shims", &S::shims));
    }
};

/// A stack put together at a position and laid on; it replaces the one before. No shims: the position needs none.
struct StackBuilt {
    Position position;
    NameList shims;
    static constexpr std::string_view kind = "stack_built", title = Core::mark("Stack built");
    static constexpr auto fields() {
        using S = StackBuilt;
        return std::make_tuple(field("position", &S::position), field("shims", &S::shims));
    }
};

/// A built stack is lifted off and kept together by its label, put back on, or taken apart.
struct StackMoved {
    Position position;
    StackMove move = StackMove::takenOff;
    static constexpr std::string_view kind = "stack_moved", title = Core::mark("Stack");
    static constexpr auto fields() {
        using S = StackMoved;
        return std::make_tuple(field("position", &S::position), field("move", &S::move));
    }
};

/// The straightedge on the stack as built; and, bracketed, on the same stack with shims exchanged for thicker ones, by
/// which it should rock, and for thinner ones, by which it should be loose. The residual then lies between.
struct RecheckMade {
    Position position;
    Feel feel = Feel::drags;
    std::string instrument;
    Rare<NameList> thickerOut = {}, thickerIn = {}; ///< shims of the stack left out, and laid in instead
    std::optional<Feel> thickerFelt = {};
    Rare<NameList> thinnerOut = {}, thinnerIn = {};
    std::optional<Feel> thinnerFelt = {};
    static constexpr std::string_view kind = "recheck_made", title = Core::mark("Recheck");
    static constexpr auto fields() {
        using S = RecheckMade;
        return std::make_tuple(field("position", &S::position), field("feel", &S::feel),
                               field("instrument", &S::instrument), field("thicker_out", &S::thickerOut),
                               field("thicker_in", &S::thickerIn), field("thicker_felt", &S::thickerFelt),
                               field("thinner_out", &S::thinnerOut), field("thinner_in", &S::thinnerIn),
                               field("thinner_felt", &S::thinnerFelt));
    }
};

/// A person looks at a check that arithmetic alone made stale (a band changed, a shim measured anew) and lets the
/// values stand against what is in force now. It cannot refresh what a movement or another part made stale.
struct JudgedAgain {
    std::string check; ///< the check's code, as `caprail show` prints it
    std::string why;
    static constexpr std::string_view kind = "judged_again", title = Core::mark("Accepted again");
    static constexpr auto fields() {
        using S = JudgedAgain;
        return std::make_tuple(field("check", &S::check), field("why", &S::why));
    }
};

// --- The feel, tried like an instrument ------------------------------------------------------------------------

/// A study of how well one person feels a step under one straightedge; its answers follow.
struct FeelStudyBegun {
    std::int64_t study = 1;
    std::string whose;        ///< the person whose feel is tried
    std::string straightedge; ///< by its name in this record
    std::string setUp;        ///< the flat, the rests, how the shims are laid
    static constexpr std::string_view kind = "feel_study_begun", title = Core::mark("Study of the feel begun");
    static constexpr auto fields() {
        using S = FeelStudyBegun;
        return std::make_tuple(field("study", &S::study), field("whose", &S::whose),
                               field("straightedge", &S::straightedge), field("set_up", &S::setUp));
    }
};

/// One step of known height, and what was felt without knowing it.
struct FeelAnswer {
    std::int64_t study = 1;
    Entered<Length> height; ///< above the rests: positive is proud, negative low
    NameList shims;         ///< that made it; may be empty
    Feel felt = Feel::drags;
    static constexpr std::string_view kind = "feel_answer", title = Core::mark("Felt");
    static constexpr auto fields() {
        using S = FeelAnswer;
        return std::make_tuple(field("study", &S::study), field("height", &S::height), field("shims", &S::shims),
                               field("felt", &S::felt));
    }
};

// --- Trial fit and pickup --------------------------------------------------------------------------------------

struct GirdleWaySet {
    GirdleFace faceUp = GirdleFace::stamped;
    EngineEnd cutoutTowards = EngineEnd::rear;
    Side cutoutSide = Side::right;
    static constexpr std::string_view kind = "girdle_way_set", title = Core::mark("Girdle orientation");
    static constexpr auto fields() {
        using S = GirdleWaySet;
        return std::make_tuple(field("face_up", &S::faceUp), field("cutout_towards", &S::cutoutTowards),
                               field("cutout_side", &S::cutoutSide));
    }
};

struct TrialFitResult {
    TrialItem item = TrialItem::dipstick;
    std::int64_t throwNumber = 0; ///< for counterweights and rod bolts, else 0
    TrialResult result = TrialResult::pass;
    Rare<Entered<Length>> clearance;
    std::string note;
    static constexpr std::string_view kind = "trial_fit_result", title = Core::mark("Trial fit");
    static constexpr auto fields() {
        using S = TrialFitResult;
        return std::make_tuple(field("item", &S::item), field("throw_number", &S::throwNumber),
                               field("result", &S::result), field("clearance", &S::clearance), field("note", &S::note));
    }
};

struct PickupReading {
    PickupTerm term = PickupTerm::panDepth;
    Entered<Length> value;
    std::string instrument;
    Rare<Entered<Temperature>> partTemperature = {}; ///< of the part, by a thermometer
    static constexpr std::string_view kind = "pickup_reading", title = Core::mark("Pickup term measured");
    static constexpr auto fields() {
        using S = PickupReading;
        return std::make_tuple(field("term", &S::term), field("value", &S::value), field("instrument", &S::instrument),
                               field("part_temperature", &S::partTemperature));
    }
};

/// How hard the crank turns, at the crank bolt: what it takes to start it, and to keep it turning.
struct TurningTorqueRead {
    TurningStage stage = TurningStage::beforeGirdle;
    Entered<Torque> breakaway, running;
    std::string instrument;
    static constexpr std::string_view kind = "turning_torque_read", title = Core::mark("Turning torque");
    static constexpr auto fields() {
        using S = TurningTorqueRead;
        return std::make_tuple(field("stage", &S::stage), field("breakaway", &S::breakaway),
                               field("running", &S::running), field("instrument", &S::instrument));
    }
};

/// An answer to one of the shop's own checks at one of its places: yes or no, a value, or a photo of this record.
struct OwnCheckAnswered {
    std::string ownCheck;
    std::int64_t place = 1;
    std::optional<YesNo> answer = {};
    Rare<Entered<Length>> value = {};
    std::string instrument;
    Rare<std::string> photo = {}; ///< the hash of its attachment
    std::string note;
    static constexpr std::string_view kind = "own_check_answered", title = Core::mark("Own check");
    static constexpr auto fields() {
        using S = OwnCheckAnswered;
        return std::make_tuple(field("own_check", &S::ownCheck), field("place", &S::place),
                               field("answer", &S::answer), field("value", &S::value),
                               field("instrument", &S::instrument), field("photo", &S::photo), field("note", &S::note));
    }
};

// --- Findings, notes and photos --------------------------------------------------------------------------------

struct FindingOpened {
    std::string finding; ///< its number in this record: "F1"
    std::string place;   ///< a position, journal, fastener or part; may be empty
    std::string text;
    static constexpr std::string_view kind = "finding_opened", title = Core::mark("Finding opened");
    static constexpr auto fields() {
        using S = FindingOpened;
        return std::make_tuple(field("finding", &S::finding), field("place", &S::place), field("text", &S::text));
    }
};

struct FindingSettled {
    std::string finding, done;
    static constexpr std::string_view kind = "finding_settled", title = Core::mark("Finding settled");
    static constexpr auto fields() {
        using S = FindingSettled;
        return std::make_tuple(field("finding", &S::finding), field("done", &S::done));
    }
};

struct NoteAdded {
    std::string place, text;
    static constexpr std::string_view kind = "note_added", title = Core::mark("Note");
    static constexpr auto fields() {
        using S = NoteAdded;
        return std::make_tuple(field("place", &S::place), field("text", &S::text));
    }
};

/// What is known of an attachment. The bytes lie in the file under this hash.
struct AttachmentAdded {
    std::string place, fileName, mediaType, caption;
    std::string sha256;         ///< of the bytes kept, 64 hexadecimal digits
    std::string originalSha256; ///< of the file that was added, before it was scaled
    std::int64_t size = 0;      ///< of the bytes kept
    /// When the photo was taken, by its camera's clock, where the file that was added said so.
    Rare<ClockTime> taken = {};
    static constexpr std::string_view kind = "attachment_added", title = Core::mark("Photo or file added");
    static constexpr auto fields() {
        using S = AttachmentAdded;
        return std::make_tuple(field("place", &S::place), field("file_name", &S::fileName),
                               field("media_type", &S::mediaType), field("caption", &S::caption),
                               field("sha256", &S::sha256), field("original_sha256", &S::originalSha256),
                               field("size_bytes", &S::size), field("taken", &S::taken));
    }
};

// --- Closing ---------------------------------------------------------------------------------------------------

struct ClosingStepDone {
    ClosingStep step = ClosingStep::stacksRefitted;
    std::optional<std::int64_t> openMinutes; ///< of the sealant, as printed on its tube; with the bead
    std::string note;
    Rare<std::string> product = {}, lot = {}; ///< of the sealant, with the bead
    /// Shims as counted by hand, when they are counted back: in the stacks, set aside, left over.
    Rare<std::int64_t> fitted = {}, aside = {}, leftOver = {};
    static constexpr std::string_view kind = "closing_step_done", title = Core::mark("Closing step done");
    static constexpr auto fields() {
        using S = ClosingStepDone;
        return std::make_tuple(field("step", &S::step), field("open_minutes", &S::openMinutes),
                               field("note", &S::note), field("product", &S::product), field("lot", &S::lot),
                               field("fitted", &S::fitted), field("aside", &S::aside),
                               field("left_over", &S::leftOver));
    }
};

struct SignedOff {
    std::string statement;
    static constexpr std::string_view kind = "signed_off", title = Core::mark("Signed off");
    static constexpr auto fields() { return std::make_tuple(field("statement", &SignedOff::statement)); }
};

/// A closed record is opened for a new build of the same engine; the earlier build is kept.
struct BuildBegun {
    std::int64_t build = 2;
    std::string why;
    static constexpr std::string_view kind = "build_begun", title = Core::mark("New build begun");
    static constexpr auto fields() {
        using S = BuildBegun;
        return std::make_tuple(field("build", &S::build), field("why", &S::why));
    }
};

/// An earlier entry is withdrawn, with a reason; it stays readable, struck through.
struct Struck {
    std::int64_t entry = 0;
    std::string why;
    static constexpr std::string_view kind = "struck", title = Core::mark("Struck");
    static constexpr auto fields() {
        using S = Struck;
        return std::make_tuple(field("entry", &S::entry), field("why", &S::why));
    }
};

/// This record was made from what could be read of another file: stored by the salvage alone, and never taken back. A
/// list too long for one entry goes on in the next of this kind.
struct Salvaged {
    std::string fileName;  ///< of the file that it was made from
    std::int64_t size = 0; ///< of that file, bytes
    std::string sha256;    ///< of that file, 64 hexadecimal digits
    std::string lastSeal;  ///< short form of the last seal that could be read in it; empty: none
    NameList unsealed,
        lost; ///< "4", "7-12": numbers, in that file, of entries kept though their seal did not fit; lost
    static constexpr std::string_view kind = "salvaged", title = Core::mark("Salvaged");
    static constexpr auto fields() {
        using S = Salvaged;
        return std::make_tuple(field("file_name", &S::fileName), field("size_bytes", &S::size),
                               field("sha256", &S::sha256), field("last_seal", &S::lastSeal),
                               field("unsealed", &S::unsealed), field("lost", &S::lost));
    }
};

// --- Parts, zero checks, whose figures these are, and what came in from outside ----------------------------------

/// What a part is, so that it can be found again. Entering one of the same sort, description and place again restates it.
struct PartEntered {
    PartSort sort = PartSort::block;
    std::string what;  ///< which one, where there are several: "assembly oil"; may be empty
    std::string place; ///< where it is fitted: a position, bearing or fastener code, or empty
    std::string maker, number, lot;
    Rare<std::string> serial = {};
    Rare<std::string> stamped = {};            ///< casting or stamped number
    std::optional<bool> isNew = {};            ///< none: not said
    Rare<std::int64_t> timesTightened = {};    ///< of used fasteners, before this build
    Rare<std::string> machined = {}, machinedBy = {}; ///< what was done to it, and who did it
    Rare<Date> machinedOn = {};
    Rare<std::string> photo = {}; ///< the hash of its attachment
    Rare<std::string> note = {};
    static constexpr std::string_view kind = "part", title = Core::mark("Part entered");
    static constexpr auto fields() {
        using S = PartEntered;
        return std::make_tuple(field("sort", &S::sort), field("what", &S::what), field("place", &S::place),
                               field("maker", &S::maker), field("part_number", &S::number),
                               field("serial", &S::serial), field("lot", &S::lot), field("stamped", &S::stamped),
                               field("is_new", &S::isNew), field("times_tightened", &S::timesTightened),
                               field("machined", &S::machined), field("machined_by", &S::machinedBy),
                               field("machined_on", &S::machinedOn), field("photo", &S::photo),
                               field("note", &S::note));
    }
};

/// An instrument tried on its standard: what the standard is, and what the instrument read on it.
struct ZeroChecked {
    std::string instrument;
    std::string standard;       ///< "1 in setting rod, no. 4"
    Entered<Length> nominal;    ///< what the standard is; 0 for closed anvils or a flat
    Entered<Length> reading;
    Rare<Entered<Temperature>> temperature = {};
    static constexpr std::string_view kind = "zero_checked", title = Core::mark("Zero checked");
    static constexpr auto fields() {
        using S = ZeroChecked;
        return std::make_tuple(field("instrument", &S::instrument), field("standard", &S::standard),
                               field("nominal", &S::nominal), field("reading", &S::reading),
                               field("temperature", &S::temperature));
    }
};

/// A person says whose figure a value is that nobody had spoken for: a default of a template, or of the program.
struct ValueConfirmed {
    std::string value;  ///< its code, as `caprail show` lists it: "band:residual", "rule:repeat_limit"
    std::string source; ///< whose figure it is: "kit maker's sheet 12"
    static constexpr std::string_view kind = "value_confirmed", title = Core::mark("Value confirmed");
    static constexpr auto fields() {
        using S = ValueConfirmed;
        return std::make_tuple(field("value", &S::value), field("source", &S::source));
    }
};

/// The entries after this one came in from a text without seals: made by the import alone, and never taken back. Their
/// persons and times are what the text says; no clock and no seal of this program stands behind them.
struct BroughtIn {
    std::string fileName; ///< of the text; empty: it came through a pipe
    std::int64_t count = 1;
    std::string sha256; ///< of its lines without a seal, each with a line feed; 64 hexadecimal digits
    Rare<Date> date = {};    ///< on which it was brought in; none: nobody said
    static constexpr std::string_view kind = "brought_in", title = Core::mark("Brought in without seals");
    static constexpr auto fields() {
        using S = BroughtIn;
        return std::make_tuple(field("file_name", &S::fileName), field("count", &S::count),
                               field("sha256", &S::sha256), field("date", &S::date));
    }
};

/// Whoever has a secret key says that the ledger up to an entry is theirs: a signature (Ed25519) over the seal of that
/// entry. It is never taken back.
struct SealSigned {
    std::int64_t signedEntry = 0; ///< whose seal is signed
    std::string signedSeal;       ///< of that entry, 64 hexadecimal digits
    std::string keyName;          ///< whose key it is, as its owner named it
    std::string publicKey;        ///< 64 hexadecimal digits
    Rare<Date> validFrom, validUntil; ///< of the key
    std::string signature;        ///< 128 hexadecimal digits, over `signedStatement` (signing/signing_key.h)
    static constexpr std::string_view kind = "signature", title = Core::mark("Signed");
    static constexpr auto fields() {
        using S = SealSigned;
        return std::make_tuple(field("signed_entry", &S::signedEntry), field("signed_seal", &S::signedSeal),
                               field("key_name", &S::keyName), field("public_key", &S::publicKey),
                               field("valid_from", &S::validFrom), field("valid_until", &S::validUntil),
                               field("signature", &S::signature));
    }
};

/// The room that an entry has for its kind. Readings and outcomes, of which a record holds most, find room in it.
constexpr std::size_t roomOfBody = 128;

using Body =
    OneOf<roomOfBody, EngineDescribed, LayoutSet, BandSet, RulesSet, FastenerGroupSet, PersonAdded, InstrumentAdded,
          JournalReading, BoreReading, ShellMeasured, ShellsFitted, FitReading, PartChanged, FastenerTightened,
          FastenerLoosened, RoundBegun, RoundOutcome, GapReading, ShimAdded, ShimMeasured, ShimSetAside, StackPinned,
          StackBuilt, StackMoved, RecheckMade, JudgedAgain, GirdleWaySet, TrialFitResult, PickupReading, FindingOpened,
          FindingSettled, NoteAdded, AttachmentAdded, ClosingStepDone, SignedOff, BuildBegun, Struck, Salvaged,
          CrankLaidIn, FeelStudyBegun, FeelAnswer, ClampChecked, WasherWorked, TurningTorqueRead, OwnCheckSet,
          OwnCheckAnswered, PartEntered, ZeroChecked, ValueConfirmed, BroughtIn, SealSigned>;

/// Whether an entry is of one of these kinds.
template <class... Kinds> bool isAnyOf(const Body& body) {
    return (body.is<Kinds>() || ...);
}

} // namespace caprail
