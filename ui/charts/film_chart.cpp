// SPDX-License-Identifier: GPL-3.0-or-later
#include <charts/film_chart.h>

#include <QCoreApplication>
#include <algorithm>
#include <charts/chart_drawing.h>
#include <iterator>

namespace caprail {

namespace {

class FilmChartText {
    Q_DECLARE_TR_FUNCTIONS(FilmChartText)
};

constexpr int stepsOfCurve = 120;

class FilmFiller {
public:
    FilmFiller(QCustomPlot& plot, const std::vector<BearingFilm>& films, const Units& units, const Look& look)
        : m_plot(plot), m_units(units), m_look(look) {
        std::ranges::copy_if(films, std::back_inserter(m_films),
                             [](const BearingFilm& film) { return film.warm.has_value(); });
    }

    ChartText fill() {
        beginChart(m_plot, m_look);
        m_text.name = FilmChartText::tr("Oil film over clearance");
        for (const BearingFilm& film : m_films) {
            m_widest = std::max(m_widest, film.running.clearance);
        }
        add(JournalKind::main, Side::right, Qt::SolidLine, FilmChartText::tr("least film, mains"),
            FilmChartText::tr("mains, warm"));
        add(JournalKind::rod, Side::left, Qt::DashLine, FilmChartText::tr("least film, rods"),
            FilmChartText::tr("rods, warm"));
        m_plot.xAxis->setRange(0, 2.2 * shown(m_widest, m_units));
        m_plot.yAxis->setRange(0, 1.25 * m_highest);
        m_plot.xAxis->setTicker(numberTicker(m_units.decimalMark));
        m_plot.yAxis->setTicker(numberTicker(m_units.decimalMark));
        m_plot.xAxis->setLabel(axisName(FilmChartText::tr("clearance, warm"), m_units));
        m_plot.yAxis->setLabel(axisName(FilmChartText::tr("least film"), m_units));
        m_text.description = FilmChartText::tr("The least oil film over the clearance, with %1 bearings on the curves.")
                                 .arg(m_films.size());
        return std::move(m_text);
    }

private:
    /// The curve of one kind and the bearings on it; nothing where there is none of that kind. Its journals differ by
    /// too little to be seen here: the first stands for all.
    void add(JournalKind kind, Side shape, Qt::PenStyle pen, const QString& curveName, const QString& bearingsName) {
        const auto first =
            std::ranges::find_if(m_films, [kind](const BearingFilm& film) { return film.bearing.kind == kind; });
        if (first == m_films.end()) {
            return;
        }
        addCurve(first->running, pen, curveName);
        QCPGraph* points =
            markers(m_plot, sideMarker(shape, kind == JournalKind::main, m_look.accent, 0.7 * lineHeight(m_plot)),
                    bearingsName);
        for (const BearingFilm& film : m_films) {
            if (film.bearing.kind == kind) {
                const QPointF here(shown(film.running.clearance, m_units), shown(film.warm->least, m_units));
                points->addData(here.x(), here.y());
                m_highest = std::max(m_highest, here.y());
                m_text.points.push_back(
                    {here, textOf(code(film.bearing)),
                     FilmChartText::tr("%1: film %2 at a clearance of %3")
                         .arg(textOf(describe(film.bearing)), textOf(formatFilm(film.warm->least, m_units)),
                              textOf(formatFine(film.running.clearance, m_units))),
                     0});
            }
        }
    }

    void addCurve(RunningBearing running, Qt::PenStyle pen, const QString& name) {
        QVector<double> x;
        QVector<double> y;
        for (int i = 1; i <= stepsOfCurve; ++i) {
            running.clearance = Length(m_widest.value() * 22 * i / (10 * stepsOfCurve));
            if (const auto film = oilFilm(running)) {
                x << shown(running.clearance, m_units);
                y << shown(film->least, m_units);
                m_highest = std::max(m_highest, y.back());
            }
        }
        QCPGraph* curve = m_plot.addGraph();
        curve->setName(name);
        curve->setPen(QPen(m_look.ink, 0.1 * lineHeight(m_plot), pen));
        curve->setData(x, y);
    }

    QCustomPlot& m_plot;
    std::vector<BearingFilm> m_films; ///< whose film is known
    Units m_units;
    const Look& m_look;
    ChartText m_text;
    Length m_widest;
    double m_highest = 0;
};

} // namespace

ChartText fillFilmChart(QCustomPlot& plot, const std::vector<BearingFilm>& films, const Units& units,
                        const Look& look) {
    return FilmFiller(plot, films, units, look).fill();
}

FilmChart::FilmChart(QWidget* parent) : Chart(parent) {}

void FilmChart::setData(const std::vector<BearingFilm>& films, const Units& units, const Look& look) {
    take(fillFilmChart(*this, films, units, look), look);
}

void FilmChart::setNothing(const QString& why, const Look& look) {
    beginChart(*this, look);
    sayNothingYet(*this, {}, look);
    take({{}, FilmChartText::tr("Oil film over clearance"), why, why}, look);
}

} // namespace caprail
