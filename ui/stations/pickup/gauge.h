// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <stations/pickup/section.h>

namespace caprail {

/// The clearance alone, enlarged and to scale: the pan's floor, the band above it, and where the pickup's lowest point
/// stands with its uncertainty. Part of drawPickupSection.
void drawPickupGauge(QPainter& painter, const QRectF& area, const PickupSection& section, const Look& look);

} // namespace caprail
