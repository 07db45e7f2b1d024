// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <charts/chart.h> // first: moc 6.4 cannot read the standard library's concepts before a Qt header

#include <work/warm_look.h>

namespace caprail {

/// Draws the least oil film over the clearance, a curve for each kind of journal, with the bearings of the record on
/// theirs: where a curve is flat a little more or less clearance costs nothing. Bearings whose film warm is not known
/// are left out; one at least must be known.
ChartText fillFilmChart(QCustomPlot& plot, const std::vector<BearingFilm>& films, const Units& units, const Look& look);

class FilmChart : public Chart {
    Q_OBJECT
public:
    explicit FilmChart(QWidget* parent = nullptr);
    void setData(const std::vector<BearingFilm>& films, const Units& units, const Look& look);
    void setNothing(const QString& why, const Look& look);
};

} // namespace caprail
