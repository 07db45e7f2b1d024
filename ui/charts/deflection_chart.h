// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <charts/chart.h> // first: moc 6.4 cannot read the standard library's concepts before a Qt header

#include <engine/layout.h>
#include <work/block_load.h>

namespace caprail {

/// Draws how the girdle's plate lies into an empty plot, as seen with the pan rail up: a map of its height over the
/// rail in colours from blue (into the block) over none to orange (towards the pan), which people of any colour vision
/// tell apart, with contour lines that carry their height, the nuts, and windows left bare. `load` must know its
/// residuals.
ChartText fillDeflectionChart(QCustomPlot& plot, const GirdleModel& model, const EngineLayout& layout,
                              const BlockLoad& load, Rail rail, const Units& units, const Look& look);
/// The same on paper.
void drawDeflectionChart(QPainter& painter, const QRectF& area, const GirdleModel& model, const EngineLayout& layout,
                         const BlockLoad& load, Rail rail, const Units& units, const Look& look);

class DeflectionChart : public Chart {
    Q_OBJECT
public:
    explicit DeflectionChart(QWidget* parent = nullptr);
    void setData(const GirdleModel& model, const EngineLayout& layout, const BlockLoad& load, Rail rail,
                 const Units& units, const Look& look);
    void setNothing(const QString& why, const Look& look);
};

} // namespace caprail
