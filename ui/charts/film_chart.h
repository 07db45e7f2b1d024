// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <charts/chart.h> // first: moc 6.4 cannot read the standard library's concepts before a Qt header

#include <bearings/oil_film.h>
#include <engine/place.h>

namespace caprail {

/// One bearing on the curve: its clearance warm, and the film there.
struct FilmPoint {
    JournalId journal;
    Length clearance;
    Length film;
};

/// Draws the least oil film over the clearance, all else as it is in `bearing`, with the bearings of the record on it:
/// where the curve is flat a little more or less clearance costs nothing.
ChartText fillFilmChart(QCustomPlot& plot, const RunningBearing& bearing, const std::vector<FilmPoint>& bearings,
                        const Units& units, const Look& look);

class FilmChart : public Chart {
    Q_OBJECT
public:
    explicit FilmChart(QWidget* parent = nullptr);
    void setData(const RunningBearing& bearing, const std::vector<FilmPoint>& bearings, const Units& units,
                 const Look& look);
    void setNothing(const QString& why, const Look& look);
};

} // namespace caprail
