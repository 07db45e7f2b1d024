// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// What a plan drawing of the pan rail shows: plain values, the same for the screen and for paper.
#include <QFlags>
#include <QString>
#include <QStringList>
#include <assessment/check.h>
#include <assessment/facts.h>
#include <engine/girdle_outline.h>
#include <map>
#include <optional>
#include <utility>
#include <vector>

namespace caprail {

/// What is written beside one place.
struct PlanMark {
    /// A code: position "3R", fastener "main-3R", "main-3R-outer", "rod-5L" or "girdle-2L", journal "main-3" or
    /// "rod-5", "throw-2", "pickup", "dipstick".
    QString place{};
    QString figure{}; ///< as written beside the stud: "57.5"; may be empty
    QString note{};   ///< small second line: "S014+S022", "+0.3"; may be empty
    CheckState state = CheckState::notDone;
    QString spoken{}; ///< for screen readers, between name and state: "gap 0.0575 in"; empty: the figure and the note
    friend bool operator==(const PlanMark&, const PlanMark&) = default;
};

/// The layers of the drawing. The pan rail, the caps, the studs and the crank's centre line are always drawn.
///
/// The places of the first six can be selected whether or not they carry a mark. Throws, pickup and dipstick are drawn
/// with their layer and can be selected when they carry a mark. A mark whose layer is off is not drawn.
enum class PlanLayer : unsigned {
    positions = 1U << 0U,
    mainFasteners = 1U << 1U,
    girdleNuts = 1U << 2U,
    rodFasteners = 1U << 3U,
    mainJournals = 1U << 4U,
    rodJournals = 1U << 5U,
    throws = 1U << 6U, ///< counterweights and crankpins, dashed
    pickup = 1U << 7U,
    dipstick = 1U << 8U,
    girdle = 1U << 9U,       ///< the plate's outline over the tied run
    cutout = 1U << 10U,      ///< its cutout at the pickup
    sequence = 1U << 11U,    ///< numbers of the tightening sequence at the fasteners
    flushness = 1U << 12U,   ///< heights under the plate as tints, strong where they lie out of `heightBand`
    loads = 1U << 14U,       ///< forces on the caps as arrows, up or down
    rowFasteners = 1U << 13U ///< pan rail, front and rear fasteners, as many as `PlanContent::rows` says
};
Q_DECLARE_FLAGS(PlanLayers, PlanLayer)
Q_DECLARE_OPERATORS_FOR_FLAGS(PlanLayers)

/// How the drawing lies on the screen. Not turned and not flipped, the front of the engine lies to the left and its
/// left side at the top: the pan rail as seen from the pan's side. Labels stay upright and never change.
struct PlanOrientation {
    int quarterTurns = 0;   ///< clockwise, any whole number
    bool isFlipped = false; ///< mirrored across the crank before it is turned
    friend bool operator==(const PlanOrientation&, const PlanOrientation&) = default;
};

struct PlanContent {
    EngineLayout layout;
    std::vector<PlanMark> marks{}; ///< at most one per place; of two the first counts
    PlanLayers layers =
        PlanLayer::positions | PlanLayer::girdle | PlanLayer::cutout | PlanLayer::pickup | PlanLayer::dipstick;
    std::map<QString, int> sequence{};   ///< fastener code → its number in the tightening sequence
    std::map<QString, double> heights{}; ///< position code → height under the plate in nanometres, positive = loose
    /// Heights in it, in nanometres, are marked quietly: nothing is wrong there.
    std::optional<std::pair<double, double>> heightBand{};
    QStringList order{};                 ///< places in the order of a pass; empty: front to rear, left before right
    QString selected{};                  ///< a place, or empty
    QString title{};                     ///< written above the drawing; may be empty
    /// How many pan rail, front and rear fasteners there are. Without a number the rail is drawn with a usual set of
    /// bolt holes, and front and rear with none.
    std::map<FastenerKind, int> rows{};
    /// Fastener code → what is there, where that is not usual: a stud with its nut is drawn for main caps, a bolt for rods
    /// and rows.
    std::map<QString, FastenerPiece> pieces{};
    std::map<QString, double> loads{}; ///< position code → force on the cap in newtons, positive = pulls it up
    GirdleShape shape{};               ///< of the girdle's plate, as far as somebody gave it
};

/// An empty drawing of a record's engine: its layout, and the rows of fasteners that its groups count. Needs a layout.
PlanContent planContent(const Facts& facts);

/// Where to go from a place, as seen on the screen.
enum class PlanDirection { left, right, up, down };

} // namespace caprail
