// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <charts/chart.h> // first: moc 6.4 cannot read the standard library's concepts before a Qt header

#include <assessment/assessment.h>

namespace caprail {

/// Draws the gap survey into an empty plot: every reading (current filled, outdated hollow), the accepted gap as a bar,
/// left and right side by side at each cap in different shapes, and the survey's spread between two lines.
/// Lengths along the upright axis are in the units given.
ChartText fillSpreadChart(QCustomPlot& plot, const Assessment& assessment, const Units& units, const Look& look);

/// The same as vectors on paper, in sizes about the painter's font.
void drawSpreadChart(QPainter& painter, const QRectF& area, const Assessment& assessment, const Units& units,
                     const Look& look);

/// Whether some position has more readings than are drawn of one, so that whoever shows the chart says so.
bool isSpreadChartThinned(const Assessment& assessment);

class SpreadChart : public Chart {
    Q_OBJECT
public:
    explicit SpreadChart(QWidget* parent = nullptr);
    void setData(const Assessment& assessment, const Units& units, const Look& look);
};

} // namespace caprail
