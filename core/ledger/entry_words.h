// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// The enumerations that entries hold, each with its words as they stand in files and on screen. What a domain folder
/// judges by is that folder's own enumeration.
#include <array>
#include <base/words.h>
#include <bearings/shell_half.h>
#include <clearances/trial_item.h>
#include <cstdint>
#include <measure/decision.h>
#include <shims/objective.h>
#include <string_view>

namespace caprail {

enum class TighteningMethod { torque, torqueAndAngle, stretch, toYield };
template <> struct WordsOf<TighteningMethod> {
    static constexpr std::array<Word<TighteningMethod>, 4> list{
        {{TighteningMethod::torque, Core::mark("torque")},
         {TighteningMethod::torqueAndAngle, Core::mark("torque and angle")},
         {TighteningMethod::stretch, Core::mark("stretch")},
         {TighteningMethod::toYield, Core::mark("torque and angle to yield")}}};
};
/// Whether an angle belongs to what is specified.
constexpr bool hasAngle(TighteningMethod method) {
    return method == TighteningMethod::torqueAndAngle || method == TighteningMethod::toYield;
}

/// What holds at a place: drawn by shape, and said.
enum class FastenerPiece : std::uint8_t { stud, bolt };
template <> struct WordsOf<FastenerPiece> {
    static constexpr std::array<Word<FastenerPiece>, 2> list{
        {{FastenerPiece::stud, Core::mark("stud with nut")}, {FastenerPiece::bolt, Core::mark("bolt")}}};
};

/// By what a verify round tells that a fastener still holds.
enum class VerifyMethod : std::uint8_t { torque, length, witnessMark };
template <> struct WordsOf<VerifyMethod> {
    static constexpr std::array<Word<VerifyMethod>, 3> list{
        {{VerifyMethod::torque, Core::mark("torque")},
         {VerifyMethod::length, Core::mark("length")},
         {VerifyMethod::witnessMark, Core::mark("witness mark")}}};
};

/// What was done to the washer of a place, before its gap is read again.
enum class WasherWork : std::uint8_t { turned, turnedOver, dressed };
template <> struct WordsOf<WasherWork> {
    static constexpr std::array<Word<WasherWork>, 3> list{
        {{WasherWork::turned, Core::mark("turned")},
         {WasherWork::turnedOver, Core::mark("turned over")},
         {WasherWork::dressed, Core::mark("dressed")}}};
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
    static constexpr std::array<Word<InstrumentType>, 11> list{
        {{InstrumentType::micrometer, Core::mark("micrometer")},
         {InstrumentType::boreGauge, Core::mark("bore gauge")},
         {InstrumentType::feelerGauge, Core::mark("feeler gauge")},
         {InstrumentType::straightedge, Core::mark("straightedge")},
         {InstrumentType::depthGauge, Core::mark("depth gauge")},
         {InstrumentType::dialIndicator, Core::mark("dial indicator")},
         {InstrumentType::gaugingStrip, Core::mark("gauging strip")},
         {InstrumentType::torqueWrench, Core::mark("torque wrench")},
         {InstrumentType::angleGauge, Core::mark("angle gauge")},
         {InstrumentType::stretchGauge, Core::mark("stretch gauge")},
         {InstrumentType::calliper, Core::mark("calliper")}}};
};

enum class BoreMethod { boreWithShells, housing, strip };
template <> struct WordsOf<BoreMethod> {
    static constexpr std::array<Word<BoreMethod>, 3> list{{{BoreMethod::boreWithShells, Core::mark("bore with shells")},
                                                           {BoreMethod::housing, Core::mark("housing")},
                                                           {BoreMethod::strip, Core::mark("gauging strip")}}};
};

enum class Part { nutAndWasher, panRail, shells, crank, pan, gasket, plate, pickup };
template <> struct WordsOf<Part> {
    static constexpr std::array<Word<Part>, 8> list{{{Part::nutAndWasher, Core::mark("nut and washer")},
                                                     {Part::panRail, Core::mark("pan rail")},
                                                     {Part::shells, Core::mark("shells")},
                                                     {Part::crank, Core::mark("crank")},
                                                     {Part::pan, Core::mark("pan")},
                                                     {Part::gasket, Core::mark("gasket")},
                                                     {Part::plate, Core::mark("girdle plate")},
                                                     {Part::pickup, Core::mark("pickup")}}};
};

enum class Outcome { held, moved };
template <> struct WordsOf<Outcome> {
    static constexpr std::array<Word<Outcome>, 2> list{
        {{Outcome::held, Core::mark("held")}, {Outcome::moved, Core::mark("moved")}}};
};

enum class StackMove { takenOff, putBack, takenApart };
template <> struct WordsOf<StackMove> {
    static constexpr std::array<Word<StackMove>, 3> list{{{StackMove::takenOff, Core::mark("taken off")},
                                                          {StackMove::putBack, Core::mark("put back")},
                                                          {StackMove::takenApart, Core::mark("taken apart")}}};
};

/// The straightedge on a built stack: it rocks when the stack is proud, drags when it is right, is loose when low.
enum class Feel { rocks, drags, loose };
template <> struct WordsOf<Feel> {
    static constexpr std::array<Word<Feel>, 3> list{
        {{Feel::rocks, Core::mark("rocks")}, {Feel::drags, Core::mark("drags")}, {Feel::loose, Core::mark("loose")}}};
};

enum class GirdleFace { stamped, plain };
template <> struct WordsOf<GirdleFace> {
    static constexpr std::array<Word<GirdleFace>, 2> list{
        {{GirdleFace::stamped, Core::mark("stamped face")}, {GirdleFace::plain, Core::mark("plain face")}}};
};

enum class EngineEnd { front, rear };
template <> struct WordsOf<EngineEnd> {
    static constexpr std::array<Word<EngineEnd>, 2> list{
        {{EngineEnd::front, Core::mark("front")}, {EngineEnd::rear, Core::mark("rear")}}};
};

enum class PickupTerm { panDepth, gasket, plate, pickupDepth };
template <> struct WordsOf<PickupTerm> {
    static constexpr std::array<Word<PickupTerm>, 4> list{{{PickupTerm::panDepth, Core::mark("pan depth")},
                                                           {PickupTerm::gasket, Core::mark("compressed gasket")},
                                                           {PickupTerm::plate, Core::mark("girdle plate")},
                                                           {PickupTerm::pickupDepth, Core::mark("pickup below rail")}}};
};

/// In the order of the work.
enum class ClosingStep {
    shimsCounted,
    stacksRefitted,
    beadLaid,
    girdleLowered,
    nutsTightened,
    crankTurned,
    panFastened
};
template <> struct WordsOf<ClosingStep> {
    static constexpr std::array<Word<ClosingStep>, 7> list{
        {{ClosingStep::shimsCounted, Core::mark("shims counted back")},
         {ClosingStep::stacksRefitted, Core::mark("stacks refitted by label")},
         {ClosingStep::beadLaid, Core::mark("sealant bead laid")},
         {ClosingStep::girdleLowered, Core::mark("girdle lowered")},
         {ClosingStep::nutsTightened, Core::mark("nuts tightened in steps and sequence")},
         {ClosingStep::crankTurned, Core::mark("crank turned through two full turns by hand")},
         {ClosingStep::panFastened, Core::mark("pan fastened")}}};
};

/// When the turning torque of the crank is read.
enum class TurningStage { beforeGirdle, girdleAtTorque, afterPan };
template <> struct WordsOf<TurningStage> {
    static constexpr std::array<Word<TurningStage>, 3> list{
        {{TurningStage::beforeGirdle, Core::mark("before the girdle")},
         {TurningStage::girdleAtTorque, Core::mark("girdle at torque")},
         {TurningStage::afterPan, Core::mark("after the pan")}}};
};

/// The three sorts of the shop's own checks.
enum class OwnCheckSort { yesNo, measured, photo };
template <> struct WordsOf<OwnCheckSort> {
    static constexpr std::array<Word<OwnCheckSort>, 3> list{{{OwnCheckSort::yesNo, Core::mark("yes or no")},
                                                             {OwnCheckSort::measured, Core::mark("measured")},
                                                             {OwnCheckSort::photo, Core::mark("photo")}}};
};

/// What one of the shop's own checks holds until it is good.
enum class OwnCheckHolds { trialFit, closing, closingStep };
template <> struct WordsOf<OwnCheckHolds> {
    static constexpr std::array<Word<OwnCheckHolds>, 3> list{
        {{OwnCheckHolds::trialFit, Core::mark("the trial fit")},
         {OwnCheckHolds::closing, Core::mark("closing")},
         {OwnCheckHolds::closingStep, Core::mark("a closing step")}}};
};

/// What a part is, in the order in which a list names them.
enum class PartSort : std::uint8_t {
    block, crank, rods, pistons, rings, mainShells, rodShells, mainStuds, rodBolts, fasteners, girdle, shimKit, pan, pump,
    pickup, gasket, rearSeal, sealant, oil, lubricant, other
};
template <> struct WordsOf<PartSort> {
    static constexpr std::array<Word<PartSort>, 21> list{{{PartSort::block, Core::mark("block")},
                                                          {PartSort::crank, Core::mark("crank")},
                                                          {PartSort::rods, Core::mark("rods")},
                                                          {PartSort::pistons, Core::mark("pistons")},
                                                          {PartSort::rings, Core::mark("rings")},
                                                          {PartSort::mainShells, Core::mark("main shells")},
                                                          {PartSort::rodShells, Core::mark("rod shells")},
                                                          {PartSort::mainStuds, Core::mark("main studs")},
                                                          {PartSort::rodBolts, Core::mark("rod bolts")},
                                                          {PartSort::fasteners, Core::mark("other fasteners")},
                                                          {PartSort::girdle, Core::mark("girdle")},
                                                          {PartSort::shimKit, Core::mark("shim kit")},
                                                          {PartSort::pan, Core::mark("oil pan")},
                                                          {PartSort::pump, Core::mark("oil pump")},
                                                          {PartSort::pickup, Core::mark("oil pickup")},
                                                          {PartSort::gasket, Core::mark("pan gasket")},
                                                          {PartSort::rearSeal, Core::mark("rear main seal")},
                                                          {PartSort::sealant, Core::mark("sealant")},
                                                          {PartSort::oil, Core::mark("oil")},
                                                          {PartSort::lubricant, Core::mark("thread lubricant")},
                                                          {PartSort::other, Core::mark("other part")}}};
};

enum class YesNo { yes, no };
template <> struct WordsOf<YesNo> {
    static constexpr std::array<Word<YesNo>, 2> list{{{YesNo::yes, Core::mark("yes")}, {YesNo::no, Core::mark("no")}}};
};

} // namespace caprail
