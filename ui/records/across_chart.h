// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <charts/chart.h> // first: moc 6.4 cannot read the standard library's concepts before a Qt header

#include <shop/across.h>

namespace caprail {

/// Draws one banded quantity over many records: per place every value as a mark of its state, from the smallest to the
/// largest a line, the median a bar. Counts and ranges; nothing is fitted to them.
ChartText fillAcrossChart(QCustomPlot& plot, const std::vector<AcrossValue>& values, const QString& quantity,
                          const Units& units, const Look& look);

class AcrossChart : public Chart {
    Q_OBJECT
public:
    explicit AcrossChart(QWidget* parent = nullptr) : Chart(parent) {}
    /// `values` as `valuesOf` gives them.
    void setData(const std::vector<AcrossValue>& values, const QString& quantity, const Units& units, const Look& look);
};

} // namespace caprail
