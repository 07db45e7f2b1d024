// SPDX-License-Identifier: GPL-3.0-or-later
#include <records/across_chart.h>

#include <QCoreApplication>
#include <charts/chart_drawing.h>
#include <limits>
#include <measure/verdict.h>
#include <session/filled.h>

namespace caprail {

namespace {

class AcrossText {
    Q_DECLARE_TR_FUNCTIONS(AcrossText)
};

/// Values of one place stand side by side in their order, so that equal ones do not hide each other.
double offsetOf(std::size_t index, std::size_t count) {
    constexpr double room = 0.5;
    return count < 2 ? 0 : -room / 2 + room * static_cast<double>(index) / static_cast<double>(count - 1);
}

} // namespace

ChartText fillAcrossChart(QCustomPlot& plot, const AcrossPicture& picture, const QString& quantity, const Units& units,
                          const Look& look) {
    const std::vector<AcrossSpread>& spreads = picture.spreads.places;
    const std::vector<AcrossValue>& values = picture.values;
    const std::optional<Band>& band = picture.spreads.band;
    beginChart(plot, look);
    ChartText result;
    result.name = quantity;
    if (spreads.empty()) {
        sayNothingYet(plot,
                      picture.isAnswered ? AcrossText::tr("No record that is chosen holds such a value.")
                                         : AcrossText::tr("The values are not here yet."),
                      look);
        result.description = AcrossText::tr("No values.");
        return result;
    }
    const double size = 0.5 * lineHeight(plot);
    std::map<CheckState, QCPGraph*> graphs;
    const auto graphFor = [&](CheckState state) {
        QCPGraph*& graph = graphs[state];
        if (graph == nullptr) {
            graph = markers(plot, stateMarker(state, look, size), stateWord(state));
        }
        return graph;
    };
    const auto ticks = QSharedPointer<QCPAxisTickerText>::create();
    double lowest = std::numeric_limits<double>::max();
    double highest = std::numeric_limits<double>::lowest();
    if (band) { // first, so that no value lies under it
        lowest = shown(band->lo(), units);
        highest = shown(band->hi(), units);
        drawBand(plot, *band, 0.4, static_cast<double>(spreads.size()) + 0.6, units, look);
    }
    std::size_t at = 0;
    for (std::size_t place = 0; place < spreads.size(); ++place) {
        const AcrossSpread& spread = spreads[place];
        const auto x = static_cast<double>(place + 1);
        ticks->addTick(x, spread.place.empty() ? AcrossText::tr("engine") : textOf(spread.place));
        const double median = shown(spread.median, units);
        lowest = std::min(lowest, shown(spread.smallest, units));
        highest = std::max(highest, shown(spread.largest, units));
        if (spread.count > 1) { // one value has no spread and no median
            lineBetween(plot, {x - 0.36, shown(spread.smallest, units)}, {x - 0.36, shown(spread.largest, units)},
                        QPen(look.quiet, 1.5));
            lineBetween(plot, {x - 0.42, median}, {x + 0.36, median}, QPen(look.ink, 2));
        }
        const auto count = static_cast<std::size_t>(spread.count);
        for (std::size_t i = 0; i < count && at < values.size(); ++i, ++at) {
            const AcrossValue& value = values[at];
            const QPointF point(x + offsetOf(i, count), shown(value.value, units));
            graphFor(value.state)->addData(point.x(), point.y());
            result.points.push_back(
                {point, textOf(value.place),
                 filled(AcrossText::tr("%1: %2, %3, build %4, %5"), textOf(value.label), textOf(value.place),
                        textOf(format(value.value, units)), value.build, stateWord(value.state)),
                 0});
        }
    }
    plot.xAxis->setTicker(ticks);
    plot.xAxis->setTickLabelRotation(spreads.size() > 12 ? 60 : 0);
    plot.xAxis->setRange(0.4, static_cast<double>(spreads.size()) + 0.6);
    plot.yAxis->setTicker(numberTicker(units.decimalMark));
    plot.yAxis->setLabel(axisName(quantity, units));
    const double room = std::max(highest - lowest, shown(thou(0.2), units));
    plot.yAxis->setRange(lowest - 0.1 * room, highest + 0.25 * room);
    plot.legend->setVisible(!values.empty());
    if (band) {
        textAt(plot, {0.45, shown(band->hi(), units)}, textOf(describeLimits(*band, units)),
               Qt::AlignLeft | Qt::AlignBottom, look.quiet);
    }
    if (values.empty()) {
        textAt(plot, {0.45, lowest - 0.05 * room},
               AcrossText::tr("%1 values: only their ranges are drawn").arg(picture.spreads.values),
               Qt::AlignLeft | Qt::AlignBottom, look.quiet);
    }
    result.description = AcrossText::tr("%1 values at %2 places, from %3 to %4.")
                             .arg(picture.spreads.values)
                             .arg(spreads.size())
                             .arg(textOf(formatNumber(lowest, 4, units.decimalMark)),
                                  textOf(formatNumber(highest, 4, units.decimalMark)) + QLatin1Char(' ') +
                                      QLatin1String(symbol(units.length)));
    return result;
}

void AcrossChart::setData(const AcrossPicture& picture, const QString& quantity, const Units& units, const Look& look) {
    take(fillAcrossChart(*this, picture, quantity, units, look), look);
}

} // namespace caprail
