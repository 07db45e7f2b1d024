// SPDX-License-Identifier: GPL-3.0-or-later
#include <charts/spread_chart.h>

#include <QCoreApplication>
#include <charts/chart_drawing.h>
#include <cmath>
#include <limits>

namespace caprail {

namespace {

class SpreadChartText {
    Q_DECLARE_TR_FUNCTIONS(SpreadChartText)
};

constexpr double sideStep = 0.24; ///< left and right of a cap stand so far from its middle
/// Of more readings of one position the last are drawn: no eye tells more of them apart.
constexpr std::size_t mostPoints = 60;
constexpr double passStep = 0.11; ///< readings of one position stand side by side, in their order

double middleOf(Position p) {
    return p.cap + (p.side == Side::left ? -sideStep : sideStep);
}

class SpreadFiller {
public:
    SpreadFiller(QCustomPlot& plot, const Assessment& assessment, const Units& units, const Look& look)
        : m_plot(plot), m_assessment(assessment), m_units(units), m_look(look) {}

    ChartText fill() {
        beginChart(m_plot, m_look);
        m_text.name = SpreadChartText::tr("Gap survey");
        for (const auto& [position, gap] : m_assessment.gaps) {
            if (!gap.current.empty() || !gap.outdated.empty()) {
                readingsOf(position, gap);
            }
        }
        if (m_text.points.empty()) {
            sayNothingYet(m_plot, SpreadChartText::tr("Every gap that is read appears here."), m_look);
            m_text.description = SpreadChartText::tr("No gap has been read yet.");
            return std::move(m_text);
        }
        makeGraphs();
        makeAxes();
        makeSpread();
        describeAll();
        return std::move(m_text);
    }

private:
    struct Cloud {
        QVector<double> x, y;
    };

    void readingsOf(Position position, const GapResult& gap) {
        const auto all = gap.current.size() + gap.outdated.size();
        const auto count = std::min(all, mostPoints);
        std::size_t skipped = all - count;
        m_isThinned = m_isThinned || skipped > 0;
        const double step = std::min(passStep, 0.36 / static_cast<double>(count));
        double x = middleOf(position) - step * (static_cast<double>(count) - 1) / 2;
        const auto add = [&](const Seen<GapReading>& reading, bool isCurrent) {
            (isCurrent ? m_current : m_outdated) += 1;
            if (skipped > 0) {
                --skipped;
                return;
            }
            const double y = shown(reading.what.value(), m_units);
            Cloud& cloud = m_clouds[position.side == Side::right ? 1 : 0][isCurrent ? 1 : 0];
            cloud.x.push_back(x);
            cloud.y.push_back(y);
            QString words = textOf(describe(position)) + QStringLiteral(": ") +
                            textOf(format(reading.what.value(), m_units)) + QStringLiteral(", ") +
                            SpreadChartText::tr("pass %1").arg(reading.what.pass);
            if (!isCurrent) {
                words += QStringLiteral(", ") + SpreadChartText::tr("no longer counts");
            }
            words += QStringLiteral("\n") + whoWithWhatWhen(reading.person, reading.what.instrument, reading.time);
            m_text.points.push_back({{x, y}, textOf(code(position)), words, reading.entry});
            x += step;
        };
        // Outdated readings are the older ones: left of those that stand.
        for (const auto& reading : gap.outdated) {
            add(reading, false);
        }
        for (const auto& reading : gap.current) {
            add(reading, true);
        }
        m_caps.insert(position.cap);
    }

    void makeGraphs() {
        const double size = 0.52 * lineHeight(m_plot);
        QVector<double> x;
        QVector<double> y;
        for (const auto& [position, gap] : m_assessment.gaps) {
            if (gap.accepted) {
                const double level = shown(*gap.accepted, m_units);
                const double at = middleOf(position);
                // A break between the bars: a graph draws no line to a value that is not a number.
                x << at - 0.2 << at + 0.2 << at + 0.201;
                y << level << level << std::numeric_limits<double>::quiet_NaN();
            }
        }
        QCPGraph* accepted = m_plot.addGraph();
        accepted->setPen(QPen(m_look.ink, 0.16 * lineHeight(m_plot), Qt::SolidLine, Qt::FlatCap));
        accepted->setName(SpreadChartText::tr("accepted gap"));
        accepted->setData(x, y);
        bool isOutdatedNamed = false;
        for (const Side side : {Side::left, Side::right}) {
            const auto& clouds = m_clouds[side == Side::right ? 1 : 0];
            const QColor colour = side == Side::left ? m_look.ink : m_look.accent;
            QCPGraph* current =
                markers(m_plot, sideMarker(side, true, colour, size),
                        side == Side::left ? SpreadChartText::tr("left") : SpreadChartText::tr("right"));
            current->setData(clouds[1].x, clouds[1].y);
            QCPGraph* outdated =
                markers(m_plot, sideMarker(side, false, colour, size), SpreadChartText::tr("no longer counts"));
            outdated->setData(clouds[0].x, clouds[0].y);
            // Hollow says the same on either side: it stands in the legend once.
            if (clouds[0].x.isEmpty() || isOutdatedNamed) {
                outdated->removeFromLegend();
            }
            isOutdatedNamed = isOutdatedNamed || !clouds[0].x.isEmpty();
        }
    }

    void makeAxes() {
        const auto caps = QSharedPointer<QCPAxisTickerText>::create();
        for (int cap = *m_caps.begin(); cap <= *m_caps.rbegin(); ++cap) {
            caps->addTick(cap, QString::number(cap));
        }
        m_plot.xAxis->setTicker(caps);
        m_plot.xAxis->setLabel(SpreadChartText::tr("main cap, front to rear"));
        m_plot.xAxis->grid()->setVisible(false);
        m_plot.xAxis->setRange(*m_caps.begin() - 0.6, *m_caps.rbegin() + 0.8);
        double lo = m_text.points.front().at.y();
        double hi = lo;
        for (const ChartPoint& point : m_text.points) {
            lo = std::min(lo, point.at.y());
            hi = std::max(hi, point.at.y());
        }
        const double least = shown(thou(4), m_units); // so that noise of a tenth does not fill the chart
        const double room = std::max(hi - lo, least);
        m_plot.yAxis->setRange((lo + hi) / 2 - 0.62 * room, (lo + hi) / 2 + 0.74 * room);
        m_plot.yAxis->setTicker(numberTicker(m_units.decimalMark));
        m_plot.yAxis->setLabel(axisName(SpreadChartText::tr("gap"), m_units));
    }

    void makeSpread() {
        const SurveyResult& survey = m_assessment.survey;
        if (!survey.spread || !survey.smallest || !survey.largest) {
            return;
        }
        const QCPRange range = m_plot.xAxis->range();
        const double lo = shown(*survey.smallest, m_units);
        const double hi = shown(*survey.largest, m_units);
        const QPen dashed(m_look.quiet, 1, Qt::DashLine);
        lineBetween(m_plot, {range.lower, lo}, {range.upper, lo}, dashed);
        lineBetween(m_plot, {range.lower, hi}, {range.upper, hi}, dashed);
        const double x = range.upper - 0.12;
        QCPItemLine* arrow = lineBetween(m_plot, {x, lo}, {x, hi}, QPen(m_look.ink, 1));
        arrow->setHead(QCPLineEnding(QCPLineEnding::esSpikeArrow, 7, 9));
        arrow->setTail(QCPLineEnding(QCPLineEnding::esSpikeArrow, 7, 9));
        textAt(m_plot, {range.upper, hi}, SpreadChartText::tr("spread %1").arg(textOf(format(*survey.spread, m_units))),
               Qt::AlignRight | Qt::AlignBottom, m_look.ink);
    }

    void describeAll() {
        const SurveyResult& survey = m_assessment.survey;
        QStringList parts{SpreadChartText::tr("%1 readings at caps %2 to %3.")
                              .arg(m_current + m_outdated)
                              .arg(*m_caps.begin())
                              .arg(*m_caps.rbegin())};
        if (m_outdated > 0) {
            parts << SpreadChartText::tr("%1 of them no longer count.").arg(m_outdated);
        }
        if (m_isThinned) {
            parts << SpreadChartText::tr("Of each position the last %1 are drawn.").arg(mostPoints);
        }
        if (survey.spread && survey.smallest && survey.largest) {
            parts << SpreadChartText::tr("Accepted gaps from %1 to %2, spread %3.")
                         .arg(textOf(format(*survey.smallest, m_units)), textOf(format(*survey.largest, m_units)),
                              textOf(format(*survey.spread, m_units)));
        } else {
            parts << SpreadChartText::tr("No gap is accepted yet.");
        }
        m_text.description = parts.join(QStringLiteral(" "));
    }

    QCustomPlot& m_plot;
    const Assessment& m_assessment;
    const Units& m_units;
    const Look& m_look;
    ChartText m_text;
    std::set<int> m_caps;
    std::array<std::array<Cloud, 2>, 2> m_clouds; ///< by side, then outdated and current
    bool m_isThinned = false;
    int m_current = 0;
    int m_outdated = 0;
};

} // namespace

ChartText fillSpreadChart(QCustomPlot& plot, const Assessment& assessment, const Units& units, const Look& look) {
    return SpreadFiller(plot, assessment, units, look).fill();
}

bool isSpreadChartThinned(const Assessment& assessment) {
    return std::ranges::any_of(assessment.gaps, [](const auto& one) {
        return one.second.current.size() + one.second.outdated.size() > mostPoints;
    });
}

void drawSpreadChart(QPainter& painter, const QRectF& area, const Assessment& assessment, const Units& units,
                     const Look& look) {
    drawChart(painter, area, [&](QCustomPlot& plot) { fillSpreadChart(plot, assessment, units, look); });
}

SpreadChart::SpreadChart(QWidget* parent) : Chart(parent) {}

void SpreadChart::setData(const Assessment& assessment, const Units& units, const Look& look) {
    take(fillSpreadChart(*this, assessment, units, look), look);
}

} // namespace caprail
