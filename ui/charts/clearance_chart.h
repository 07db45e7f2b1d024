// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <charts/chart.h> // first: moc 6.4 cannot read the standard library's concepts before a Qt header

#include <assessment/assessment.h>

namespace caprail {

/// Draws the bearing clearances into an empty plot: per journal the clearance, a whisker from the smallest to the
/// largest and a bar of its expanded uncertainty; behind them the band of the mains and of the rods and its target.
ChartText fillClearanceChart(QCustomPlot& plot, const Facts& facts, const Assessment& assessment, const Units& units,
                             const Look& look);

/// The same as vectors on paper, in sizes about the painter's font.
void drawClearanceChart(QPainter& painter, const QRectF& area, const Facts& facts, const Assessment& assessment,
                        const Units& units, const Look& look);

class ClearanceChart : public Chart {
    Q_OBJECT
public:
    explicit ClearanceChart(QWidget* parent = nullptr);
    void setData(const Facts& facts, const Assessment& assessment, const Units& units, const Look& look);
};

} // namespace caprail
