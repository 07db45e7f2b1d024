// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <charts/chart.h> // first: moc 6.4 cannot read the standard library's concepts before a Qt header

#include <assessment/feel_study.h>

namespace caprail {

/// Draws the study of a feel into an empty plot: over the height of the step the share of answers that said «rocks» and
/// «loose», the fitted curves of both, and ±δ where the study is concluded.
ChartText fillFeelChart(QCustomPlot& plot, const FeelConclusion& conclusion, const Units& units, const Look& look);

class FeelChart : public Chart {
    Q_OBJECT
public:
    explicit FeelChart(QWidget* parent = nullptr);
    void setData(const FeelConclusion& conclusion, const Units& units, const Look& look);
};

} // namespace caprail
