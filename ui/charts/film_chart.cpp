// SPDX-License-Identifier: GPL-3.0-or-later
#include <charts/film_chart.h>

#include <QCoreApplication>
#include <algorithm>
#include <charts/chart_drawing.h>

namespace caprail {

namespace {

class FilmChartText {
    Q_DECLARE_TR_FUNCTIONS(FilmChartText)
};

constexpr int stepsOfCurve = 120;

} // namespace

ChartText fillFilmChart(QCustomPlot& plot, const RunningBearing& bearing, const std::vector<FilmPoint>& bearings,
                        const Units& units, const Look& look) {
    beginChart(plot, look);
    ChartText text;
    text.name = FilmChartText::tr("Oil film over clearance");
    Length widest = bearing.clearance;
    for (const FilmPoint& at : bearings) {
        widest = std::max(widest, at.clearance);
    }
    const double farthest = 2.2 * shown(widest, units);
    QVector<double> x;
    QVector<double> y;
    double highest = 0;
    for (int i = 1; i <= stepsOfCurve; ++i) {
        RunningBearing here = bearing;
        here.clearance = Length(widest.value() * 22 * i / (10 * stepsOfCurve));
        if (const auto film = oilFilm(here)) {
            x << shown(here.clearance, units);
            y << shown(film->least, units);
            highest = std::max(highest, y.back());
        }
    }
    QCPGraph* curve = plot.addGraph();
    curve->setName(FilmChartText::tr("least film"));
    curve->setPen(QPen(look.ink, 0.1 * lineHeight(plot)));
    curve->setData(x, y);
    QCPGraph* points = markers(plot, sideMarker(Side::right, true, look.accent, 0.7 * lineHeight(plot)),
                               FilmChartText::tr("bearings, warm"));
    for (const FilmPoint& at : bearings) {
        const QPointF here(shown(at.clearance, units), shown(at.film, units));
        points->addData(here.x(), here.y());
        highest = std::max(highest, here.y());
        text.points.push_back({here, textOf(code(at.journal)),
                               FilmChartText::tr("%1: film %2 at a clearance of %3")
                                   .arg(textOf(describe(at.journal)), textOf(formatFine(at.film, units)),
                                        textOf(formatFine(at.clearance, units))),
                               0});
    }
    plot.xAxis->setRange(0, farthest);
    plot.yAxis->setRange(0, 1.25 * highest);
    plot.xAxis->setTicker(numberTicker(units.decimalMark));
    plot.yAxis->setTicker(numberTicker(units.decimalMark));
    plot.xAxis->setLabel(axisName(FilmChartText::tr("clearance, warm"), units));
    plot.yAxis->setLabel(axisName(FilmChartText::tr("least film"), units));
    text.description =
        FilmChartText::tr("The least oil film over the clearance, with %1 bearings on the curve.").arg(bearings.size());
    return text;
}

FilmChart::FilmChart(QWidget* parent) : Chart(parent) {}

void FilmChart::setData(const RunningBearing& bearing, const std::vector<FilmPoint>& bearings, const Units& units,
                        const Look& look) {
    take(fillFilmChart(*this, bearing, bearings, units, look), look);
}

void FilmChart::setNothing(const QString& why, const Look& look) {
    beginChart(*this, look);
    sayNothingYet(*this, {}, look);
    take({{}, FilmChartText::tr("Oil film over clearance"), why, why}, look);
}

} // namespace caprail
