// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// The enumerations that entries hold, each with its words as they stand in files and on screen. What a domain folder
/// judges by is that folder's own enumeration.
#include <array>
#include <base/words.h>
#include <bearings/shell_half.h>
#include <clearances/trial_item.h>
#include <measure/decision.h>
#include <shims/plan/objective.h>
#include <string_view>

namespace caprail {

enum class TighteningMethod { torque, torqueAndAngle, stretch };
template <> struct WordsOf<TighteningMethod> {
    static constexpr std::array<Word<TighteningMethod>, 3> list{
        {{TighteningMethod::torque, Core::mark("torque")},
         {TighteningMethod::torqueAndAngle, Core::mark("torque and angle")},
         {TighteningMethod::stretch, Core::mark("stretch")}}};
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

enum class ClosingStep { stacksRefitted, beadLaid, girdleLowered, nutsTightened, panFastened };
template <> struct WordsOf<ClosingStep> {
    static constexpr std::array<Word<ClosingStep>, 5> list{
        {{ClosingStep::stacksRefitted, Core::mark("stacks refitted by label")},
         {ClosingStep::beadLaid, Core::mark("sealant bead laid")},
         {ClosingStep::girdleLowered, Core::mark("girdle lowered")},
         {ClosingStep::nutsTightened, Core::mark("nuts tightened in steps and sequence")},
         {ClosingStep::panFastened, Core::mark("pan fastened")}}};
};

} // namespace caprail
