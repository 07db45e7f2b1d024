// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// The enumerations that entries hold, each with its words as they stand in files and on screen.
#include <array>
#include <string_view>
#include <units/words.h>

namespace caprail {

enum class DecisionWord { guarded, simple };
template <> struct WordsOf<DecisionWord> {
    static constexpr std::array<Word<DecisionWord>, 2> list{
        {{DecisionWord::guarded, "guarded"}, {DecisionWord::simple, "simple"}}};
};

enum class CoverageWord { two, student };
template <> struct WordsOf<CoverageWord> {
    static constexpr std::array<Word<CoverageWord>, 2> list{
        {{CoverageWord::two, "k = 2"}, {CoverageWord::student, "Student's t"}}};
};

enum class ObjectiveWord { smallestResidual, leastTwist };
template <> struct WordsOf<ObjectiveWord> {
    static constexpr std::array<Word<ObjectiveWord>, 2> list{
        {{ObjectiveWord::smallestResidual, "smallest residual"}, {ObjectiveWord::leastTwist, "least twist"}}};
};

enum class TighteningMethod { torque, torqueAndAngle, stretch };
template <> struct WordsOf<TighteningMethod> {
    static constexpr std::array<Word<TighteningMethod>, 3> list{{{TighteningMethod::torque, "torque"},
                                                                 {TighteningMethod::torqueAndAngle, "torque and angle"},
                                                                 {TighteningMethod::stretch, "stretch"}}};
};

enum class InstrumentType {
    micrometer,
    boreGauge,
    feelerGauge,
    straightedge,
    depthGauge,
    dialIndicator,
    gaugingStrip,
    torqueWrench,
    angleGauge,
    stretchGauge,
    calliper
};
template <> struct WordsOf<InstrumentType> {
    static constexpr std::array<Word<InstrumentType>, 11> list{{{InstrumentType::micrometer, "micrometer"},
                                                                {InstrumentType::boreGauge, "bore gauge"},
                                                                {InstrumentType::feelerGauge, "feeler gauge"},
                                                                {InstrumentType::straightedge, "straightedge"},
                                                                {InstrumentType::depthGauge, "depth gauge"},
                                                                {InstrumentType::dialIndicator, "dial indicator"},
                                                                {InstrumentType::gaugingStrip, "gauging strip"},
                                                                {InstrumentType::torqueWrench, "torque wrench"},
                                                                {InstrumentType::angleGauge, "angle gauge"},
                                                                {InstrumentType::stretchGauge, "stretch gauge"},
                                                                {InstrumentType::calliper, "calliper"}}};
};

enum class BoreMethod { boreWithShells, housing, strip };
template <> struct WordsOf<BoreMethod> {
    static constexpr std::array<Word<BoreMethod>, 3> list{{{BoreMethod::boreWithShells, "bore with shells"},
                                                           {BoreMethod::housing, "housing"},
                                                           {BoreMethod::strip, "gauging strip"}}};
};

enum class ShellHalf { either, upper, lower };
template <> struct WordsOf<ShellHalf> {
    static constexpr std::array<Word<ShellHalf>, 3> list{
        {{ShellHalf::either, "either"}, {ShellHalf::upper, "upper"}, {ShellHalf::lower, "lower"}}};
};

enum class Part { nutAndWasher, panRail, shells, crank, pan, gasket, plate, pickup };
template <> struct WordsOf<Part> {
    static constexpr std::array<Word<Part>, 8> list{{{Part::nutAndWasher, "nut and washer"},
                                                     {Part::panRail, "pan rail"},
                                                     {Part::shells, "shells"},
                                                     {Part::crank, "crank"},
                                                     {Part::pan, "pan"},
                                                     {Part::gasket, "gasket"},
                                                     {Part::plate, "girdle plate"},
                                                     {Part::pickup, "pickup"}}};
};

enum class Outcome { held, moved };
template <> struct WordsOf<Outcome> {
    static constexpr std::array<Word<Outcome>, 2> list{{{Outcome::held, "held"}, {Outcome::moved, "moved"}}};
};

enum class StackMove { takenOff, putBack, takenApart };
template <> struct WordsOf<StackMove> {
    static constexpr std::array<Word<StackMove>, 3> list{
        {{StackMove::takenOff, "taken off"}, {StackMove::putBack, "put back"}, {StackMove::takenApart, "taken apart"}}};
};

/// The straightedge on a built stack: it rocks when the stack is proud, drags when it is right, is loose when low.
enum class Feel { rocks, drags, loose };
template <> struct WordsOf<Feel> {
    static constexpr std::array<Word<Feel>, 3> list{
        {{Feel::rocks, "rocks"}, {Feel::drags, "drags"}, {Feel::loose, "loose"}}};
};

enum class GirdleFace { stamped, plain };
template <> struct WordsOf<GirdleFace> {
    static constexpr std::array<Word<GirdleFace>, 2> list{
        {{GirdleFace::stamped, "stamped face"}, {GirdleFace::plain, "plain face"}}};
};

enum class EngineEnd { front, rear };
template <> struct WordsOf<EngineEnd> {
    static constexpr std::array<Word<EngineEnd>, 2> list{{{EngineEnd::front, "front"}, {EngineEnd::rear, "rear"}}};
};

enum class TrialItem { dipstick, pickupTube, counterweights, rodBolts, turnsFreely, keyway };
template <> struct WordsOf<TrialItem> {
    static constexpr std::array<Word<TrialItem>, 6> list{{{TrialItem::dipstick, "dipstick clear"},
                                                          {TrialItem::pickupTube, "pickup tube clear"},
                                                          {TrialItem::counterweights, "counterweights clear"},
                                                          {TrialItem::rodBolts, "rod bolts clear"},
                                                          {TrialItem::turnsFreely, "two turns by hand, nothing binds"},
                                                          {TrialItem::keyway, "keyway agrees at top dead centre"}}};
};
/// Whether an item is answered once per throw.
constexpr bool isPerThrow(TrialItem item) {
    return item == TrialItem::counterweights || item == TrialItem::rodBolts;
}

enum class TrialResult { pass, fail, measured };
template <> struct WordsOf<TrialResult> {
    static constexpr std::array<Word<TrialResult>, 3> list{
        {{TrialResult::pass, "pass"}, {TrialResult::fail, "fail"}, {TrialResult::measured, "measured"}}};
};

enum class PickupTerm { panDepth, gasket, plate, pickupDepth };
template <> struct WordsOf<PickupTerm> {
    static constexpr std::array<Word<PickupTerm>, 4> list{{{PickupTerm::panDepth, "pan depth"},
                                                           {PickupTerm::gasket, "compressed gasket"},
                                                           {PickupTerm::plate, "girdle plate"},
                                                           {PickupTerm::pickupDepth, "pickup below rail"}}};
};

enum class ClosingStep { stacksRefitted, beadLaid, girdleLowered, nutsTightened, panFastened };
template <> struct WordsOf<ClosingStep> {
    static constexpr std::array<Word<ClosingStep>, 5> list{
        {{ClosingStep::stacksRefitted, "stacks refitted by label"},
         {ClosingStep::beadLaid, "sealant bead laid"},
         {ClosingStep::girdleLowered, "girdle lowered"},
         {ClosingStep::nutsTightened, "nuts tightened in steps and sequence"},
         {ClosingStep::panFastened, "pan fastened"}}};
};

} // namespace caprail
