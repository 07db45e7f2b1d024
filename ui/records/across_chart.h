// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <charts/chart.h> // first: moc 6.4 cannot read the standard library's concepts before a Qt header

#include <shop/across.h>

namespace caprail {

/// A banded quantity over many records. Of very many values (`mostDrawn`) there are only the ranges.
struct AcrossPicture {
    static constexpr std::int64_t mostDrawn = 5'000;
    AcrossSpreads spreads = {};
    bool isAnswered = true;          ///< false: the database has said nothing yet
    std::vector<AcrossValue> values = {}; ///< all of them, as `Across::eachValue` gives them, or none
};

/// Draws it: per place every value as a mark of its state, from the smallest to the largest a line, the median a bar.
/// Counts and ranges; nothing is fitted to them.
ChartText fillAcrossChart(QCustomPlot& plot, const AcrossPicture& picture, const QString& quantity, const Units& units,
                          const Look& look);

class AcrossChart : public Chart {
    Q_OBJECT
public:
    explicit AcrossChart(QWidget* parent = nullptr) : Chart(parent) {}
    void setData(const AcrossPicture& picture, const QString& quantity, const Units& units, const Look& look);
};

} // namespace caprail
