// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QRectF>
#include <assessment/assessment.h>
#include <map>
#include <optional>
#include <session/look.h>

class QPainter;

namespace caprail {

/// What the section of the pickup's stack-up shows. Terms without a reading are drawn dashed at a usual size.
struct PickupSection {
    std::map<PickupTerm, Length> terms; ///< means of the current readings
    std::optional<Length> clearance;
    std::optional<double> expandedUncertainty; ///< of the clearance, nanometres; none: not known
    std::optional<Band> band;
    CheckState state = CheckState::notDone;
    std::optional<PickupTerm> selected; ///< drawn in the accent colour
    Units units;
};

/// The section as it stands in an assessment.
PickupSection pickupSectionOf(const Facts& facts, const Assessment& assessment, const Units& units);

/// Pan rail, girdle plate, gasket, pan and pickup in section, to one scale in height, in the installed attitude; beside
/// it the clearance alone, enlarged, against its band. For screens and paper alike: only lines, hatching and text, with
/// the painter's own device deciding the resolution.
void drawPickupSection(QPainter& painter, const QRectF& area, const PickupSection& section, const Look& look);

} // namespace caprail
