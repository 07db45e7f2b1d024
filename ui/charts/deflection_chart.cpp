// SPDX-License-Identifier: GPL-3.0-or-later
#include <charts/deflection_chart.h>

#include <QCoreApplication>
#include <algorithm>
#include <charts/chart_drawing.h>
#include <charts/contours.h>
#include <cmath>
#include <limits>
#include <optional>

namespace caprail {

namespace {

class DeflectionChartText {
    Q_DECLARE_TR_FUNCTIONS(DeflectionChartText)
};

constexpr int columnsOfMap = 181;
constexpr int rowsOfMap = 71;

/// The two lines between which a coordinate lies, and how far it is from the first, 0 … 1.
std::pair<std::size_t, double> between(const std::vector<double>& lines, double at) {
    const auto above = std::upper_bound(lines.begin() + 1, lines.end() - 1, at);
    const auto i = static_cast<std::size_t>(above - lines.begin()) - 1;
    return {i, std::clamp((at - lines[i]) / (lines[i + 1] - lines[i]), 0.0, 1.0)};
}

/// The map on evenly spaced lines, heights and lengths as they are shown; in between, straight.
EvenField evenly(const DeflectionMap& map, const Units& units) {
    const auto length = [&](double millimetre) { return shownNanometres(millimetre * 1e6, units); };
    std::vector<std::pair<std::size_t, double>> along;
    for (int column = 0; column < columnsOfMap; ++column) {
        along.push_back(between(map.x, map.x.front() + (map.x.back() - map.x.front()) * column / (columnsOfMap - 1)));
    }
    EvenField field{length(map.x.front()),
                    length(map.x.back()),
                    length(map.y.front()),
                    length(map.y.back()),
                    columnsOfMap,
                    rowsOfMap,
                    {}};
    for (int row = 0; row < rowsOfMap; ++row) {
        const double y = map.y.front() + (map.y.back() - map.y.front()) * row / (rowsOfMap - 1);
        const std::pair<std::size_t, double> across = between(map.y, y);
        for (const std::pair<std::size_t, double>& here : along) {
            const auto at = [&](std::size_t di, std::size_t dj) {
                return map.height[(across.first + dj) * map.x.size() + here.first + di];
            };
            const double s = here.second;
            const double t = across.second;
            field.values.push_back(
                length((1 - t) * ((1 - s) * at(0, 0) + s * at(1, 0)) + t * ((1 - s) * at(0, 1) + s * at(1, 1))));
        }
    }
    return field;
}

class DeflectionFiller {
public:
    DeflectionFiller(QCustomPlot& plot, const GirdleModel& model, const EngineLayout& layout, const BlockLoad& load,
                     Rail rail, const Units& units, const Look& look)
        : m_plot(plot), m_model(model), m_layout(layout), m_load(load), m_rail(rail), m_units(units), m_look(look) {}

    ChartText fill() {
        beginChart(m_plot, m_look);
        m_text.name = DeflectionChartText::tr("How the girdle lies");
        std::vector<Length> residuals;
        for (const PlaceResidual& at : m_load.places) {
            residuals.push_back(at.residual);
        }
        const EvenField field = evenly(m_model.deflections(residuals, m_rail), m_units);
        findRange(field);
        paintMap(field);
        paintContours(field);
        paintNuts();
        makeAxes(field);
        m_text.description =
            DeflectionChartText::tr("The girdle's height over the pan rail with its nuts at torque: from "
                                    "%1 to %2, negative into the block.")
                .arg(textOf(format(lengthOf(m_least), m_units)), textOf(format(lengthOf(m_most), m_units)));
        return std::move(m_text);
    }

private:
    [[nodiscard]] Length lengthOf(double shownLength) const {
        return m_units.length == LengthUnit::inch ? inches(shownLength) : millimetres(shownLength);
    }

    void findRange(const EvenField& field) {
        m_least = std::numeric_limits<double>::max();
        m_most = std::numeric_limits<double>::lowest();
        for (const double v : field.values) {
            if (!std::isnan(v)) {
                m_least = std::min(m_least, v);
                m_most = std::max(m_most, v);
            }
        }
    }

    void paintMap(const EvenField& field) {
        auto* map = new QCPColorMap(m_plot.xAxis, m_plot.yAxis);
        map->removeFromLegend();
        map->data()->setSize(field.columns, field.rows);
        map->data()->setRange({field.x1, field.x2}, {field.y1, field.y2});
        for (int row = 0; row < field.rows; ++row) {
            for (int column = 0; column < field.columns; ++column) {
                map->data()->setCell(column, row, field.at(column, row));
            }
        }
        // Blue and vermilion of the palette of Okabe and Ito, over the ground.
        QCPColorGradient colours;
        colours.clearColorStops();
        colours.setColorStopAt(0, washed(QColor(0x00, 0x72, 0xb2), m_look.paper, 0.85));
        colours.setColorStopAt(0.5, m_look.paper);
        colours.setColorStopAt(1, washed(QColor(0xd5, 0x5e, 0x00), m_look.paper, 0.85));
        colours.setNanHandling(QCPColorGradient::nhNanColor);
        colours.setNanColor(washed(m_look.ink, m_look.paper, 0.12));
        map->setGradient(colours);
        const double reach =
            std::max({std::abs(m_least), std::abs(m_most), shown(tenths(5), m_units)}); // flush stays pale
        map->setDataRange({-reach, reach});
        map->setInterpolate(false);
        map->setTightBoundary(true);
    }

    /// On a line, and clear of the labels of others; none where there is no such place.
    [[nodiscard]] std::optional<QPointF> placeOfLabel(const EvenField& field, const std::vector<QLineF>& pieces) const {
        constexpr int tries = 16;
        for (int k = 0; k < tries && !pieces.empty(); ++k) {
            const auto at = static_cast<std::size_t>((2 * k + tries) % (2 * tries)) * pieces.size() / (2 * tries);
            const QPointF here = pieces[at].center();
            const bool isClear = std::ranges::none_of(m_labels, [&](const QPointF& other) {
                return std::abs(other.x() - here.x()) < 0.08 * (field.x2 - field.x1) &&
                       std::abs(other.y() - here.y()) < 0.13 * (field.y2 - field.y1);
            });
            if (isClear) {
                return here;
            }
        }
        return {};
    }

    void paintContours(const EvenField& field) {
        bool isNamed = false; // one name for all
        // What lies closer than the labels can tell apart is no contour.
        const double finest = shown(m_units.length == LengthUnit::inch ? tenths(1) : microns(1), m_units);
        for (const double level : roundLevels(m_least, m_most, 8)) {
            if (std::abs(level / finest - std::round(level / finest)) > 1e-6) {
                continue;
            }
            auto* curve = new QCPCurve(m_plot.xAxis, m_plot.yAxis);
            curve->setName(m_units.length == LengthUnit::inch ? DeflectionChartText::tr("height over the rail, thou")
                                                              : DeflectionChartText::tr("height over the rail, mm"));
            if (isNamed) {
                curve->removeFromLegend();
            }
            isNamed = true;
            const bool isFlush = std::abs(level) < 1e-9;
            curve->setPen(QPen(m_look.ink, (isFlush ? 0.11 : 0.055) * lineHeight(m_plot),
                               level < 0 && !isFlush ? Qt::DashLine : Qt::SolidLine));
            const std::vector<QLineF> pieces = contour(field, level);
            double t = 0;
            const double gap = std::numeric_limits<double>::quiet_NaN();
            for (const QLineF& piece : pieces) {
                curve->addData(t++, piece.x1(), piece.y1());
                curve->addData(t++, piece.x2(), piece.y2());
                curve->addData(t++, gap, gap);
            }
            if (const auto place = placeOfLabel(field, pieces)) {
                textAt(m_plot, *place, textOf(formatShort(lengthOf(level), m_units)), Qt::AlignCenter, m_look.ink)
                    ->setBrush(m_look.paper); // the line goes behind it
                m_labels.push_back(*place);
            }
        }
    }

    void paintNuts() {
        const double size = 0.6 * lineHeight(m_plot);
        for (const Side side : {Side::left, Side::right}) {
            QCPGraph* nuts = markers(m_plot, sideMarker(side, true, m_look.ink, size),
                                     side == Side::left ? DeflectionChartText::tr("nuts on the left")
                                                        : DeflectionChartText::tr("nuts on the right"));
            for (std::size_t i = 0; i < m_load.places.size(); ++i) {
                const Position place = m_load.places[i].place;
                const PlanPoint point = m_layout.at(place);
                const QPointF here(shown(point.x, m_units), shown(point.y, m_units));
                if (place.side == side) {
                    nuts->addData(here.x(), here.y());
                    m_text.points.push_back({here, textOf(code(place)), wordsOf(i), 0});
                }
            }
        }
    }

    [[nodiscard]] QString wordsOf(std::size_t i) const {
        const PlaceResidual& at = m_load.places[i];
        QString words = textOf(describe(at.place)) + QStringLiteral(": ") +
                        DeflectionChartText::tr("residual %1").arg(textOf(formatSigned(at.residual, m_units)));
        const Force force = m_load.known ? m_load.known->under(m_rail).force[i] : Force();
        const Pull pull = pullOf(force, m_units);
        if (pull == Pull::none) {
            return words;
        }
        const QString size = textOf(format(force.magnitude(), m_units));
        return words + QStringLiteral(", ") +
               (pull == Pull::up ? DeflectionChartText::tr("pulls the cap up by %1").arg(size)
                                 : DeflectionChartText::tr("presses the cap down by %1").arg(size));
    }

    void makeAxes(const EvenField& field) {
        m_plot.xAxis->setRange(field.x1, field.x2);
        m_plot.yAxis->setRange(field.y1, field.y2);
        m_plot.yAxis->setRangeReversed(true); // the left side above, as on the plan
        m_plot.xAxis->grid()->setVisible(false);
        m_plot.yAxis->grid()->setVisible(false);
        m_plot.xAxis->setTicker(numberTicker(m_units.decimalMark));
        m_plot.yAxis->setTicker(numberTicker(m_units.decimalMark));
        m_plot.xAxis->setLabel(axisName(DeflectionChartText::tr("behind cap 1"), m_units));
        m_plot.yAxis->setLabel(axisName(DeflectionChartText::tr("right of the crank"), m_units));
    }

    QCustomPlot& m_plot;
    const GirdleModel& m_model;
    const EngineLayout& m_layout;
    const BlockLoad& m_load;
    Rail m_rail;
    Units m_units;
    const Look& m_look;
    ChartText m_text;
    std::vector<QPointF> m_labels; ///< where contours are labelled
    double m_least = 0, m_most = 0;
};

} // namespace

ChartText fillDeflectionChart(QCustomPlot& plot, const GirdleModel& model, const EngineLayout& layout,
                              const BlockLoad& load, Rail rail, const Units& units, const Look& look) {
    return DeflectionFiller(plot, model, layout, load, rail, units, look).fill();
}

void drawDeflectionChart(QPainter& painter, const QRectF& area, const GirdleModel& model, const EngineLayout& layout,
                         const BlockLoad& load, Rail rail, const Units& units, const Look& look) {
    drawChart(painter, area,
              [&](QCustomPlot& plot) { fillDeflectionChart(plot, model, layout, load, rail, units, look); });
}

DeflectionChart::DeflectionChart(QWidget* parent) : Chart(parent) {}

void DeflectionChart::setData(const GirdleModel& model, const EngineLayout& layout, const BlockLoad& load, Rail rail,
                              const Units& units, const Look& look) {
    take(fillDeflectionChart(*this, model, layout, load, rail, units, look), look);
}

void DeflectionChart::setNothing(const QString& why, const Look& look) {
    beginChart(*this, look);
    sayNothingYet(*this, {}, look);
    take({{}, DeflectionChartText::tr("How the girdle lies"), why, why}, look);
}

} // namespace caprail
