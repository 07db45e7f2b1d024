// SPDX-License-Identifier: GPL-3.0-or-later
#include <charts/feel_chart.h>

#include <QCoreApplication>
#include <charts/chart_drawing.h>
#include <cmath>
#include <session/filled.h>

namespace caprail {

namespace {

class FeelChartText {
    Q_DECLARE_TR_FUNCTIONS(FeelChartText)
};

/// Φ(z) in percent.
double percentOf(double z) {
    return 50 * std::erfc(-z / std::sqrt(2.0));
}

class FeelFiller {
public:
    FeelFiller(QCustomPlot& plot, const FeelConclusion& conclusion, const Units& units, const Look& look)
        : m_plot(plot), m_conclusion(conclusion), m_units(units), m_look(look) {}

    ChartText fill() {
        beginChart(m_plot, m_look);
        m_text.name = FeelChartText::tr("The feel, by the height of the step");
        if (m_conclusion.answers == 0) {
            sayNothingYet(m_plot, FeelChartText::tr("Every answer appears here."), m_look);
            m_text.description = FeelChartText::tr("No step has been felt yet.");
            return std::move(m_text);
        }
        findRange();
        answersOf(m_conclusion.rocks, 1, FeelChartText::tr("rocks"), QCPScatterStyle::ssTriangle, m_look.accent);
        answersOf(m_conclusion.loose, -1, FeelChartText::tr("loose"), QCPScatterStyle::ssTriangleInverted, m_look.ink);
        curveOf(m_conclusion.rocksFit, 1, m_look.accent, Qt::SolidLine);
        curveOf(m_conclusion.looseFit, -1, m_look.ink, Qt::DashLine);
        makeAxes();
        makeLimits();
        describeAll();
        return std::move(m_text);
    }

private:
    void findRange() {
        double most = 1270; // half a tenth, so that one height alone has an axis
        for (const Response& r : m_conclusion.rocks) {
            most = std::max(most, std::abs(r.dose));
        }
        if (m_conclusion.delta) {
            most = std::max(most, static_cast<double>(m_conclusion.delta->value()));
        }
        m_most = 1.12 * most;
    }

    void answersOf(const std::vector<Response>& responses, int sign, const QString& answer,
                   QCPScatterStyle::ScatterShape shape, const QColor& colour) {
        QVector<double> x;
        QVector<double> y;
        for (const Response& r : responses) {
            if (r.trials == 0) {
                continue;
            }
            const double height = sign * r.dose;
            const double share = 100.0 * static_cast<double>(r.successes) / static_cast<double>(r.trials);
            x << shownNanometres(height, m_units);
            y << share;
            const QString step = textOf(formatFineSigned(Length(toNearest(height)), m_units));
            m_text.points.push_back({{x.back(), share},
                                     {},
                                     filled(FeelChartText::tr("%1: %2 in %3 of %4 answers"), step, answer, r.successes,
                                            r.trials),
                                     0});
        }
        QCPScatterStyle style(shape, QPen(colour, 1.2), QBrush(colour), 0.6 * lineHeight(m_plot));
        markers(m_plot, style, answer)->setData(x, y);
    }

    void curveOf(const std::optional<ProbitFit>& fit, int sign, const QColor& colour, Qt::PenStyle style) {
        if (!fit) {
            return;
        }
        constexpr int pieces = 160;
        QVector<double> x;
        QVector<double> y;
        for (int i = 0; i <= pieces; ++i) {
            const double height = m_most * (2.0 * i / pieces - 1);
            x << shownNanometres(height, m_units);
            y << percentOf(fit->intercept + fit->slope * sign * height);
        }
        QCPGraph* curve = m_plot.addGraph();
        curve->setPen(QPen(colour, 0.1 * lineHeight(m_plot), style));
        curve->setData(x, y);
        curve->removeFromLegend();
    }

    void makeAxes() {
        m_plot.xAxis->setRange(-shownNanometres(m_most, m_units), shownNanometres(m_most, m_units));
        m_plot.xAxis->setTicker(numberTicker(m_units.decimalMark));
        m_plot.xAxis->setLabel(axisName(FeelChartText::tr("height of the step above the rests"), m_units));
        m_plot.yAxis->setRange(-6, 122);
        m_plot.yAxis->setTicker(percentTicker());
        m_plot.yAxis->setLabel(FeelChartText::tr("answers, %"));
    }

    static QSharedPointer<QCPAxisTicker> percentTicker() {
        auto ticker = QSharedPointer<QCPAxisTickerText>::create();
        for (int percent = 0; percent <= 100; percent += 25) {
            ticker->addTick(percent, QString::number(percent));
        }
        return ticker;
    }

    void makeLimits() {
        if (!m_conclusion.delta) {
            return;
        }
        const double delta = shown(*m_conclusion.delta, m_units);
        for (const double at : {-delta, delta}) {
            lineBetween(m_plot, {at, -6}, {at, 104}, QPen(m_look.good, 1, Qt::DashLine));
        }
        textAt(m_plot, {delta, 104},
               QStringLiteral("δ ") +
                   textOf(formatUncertainty(static_cast<double>(m_conclusion.delta->value()), m_units)),
               Qt::AlignRight | Qt::AlignBottom, m_look.ink);
    }

    void describeAll() {
        m_text.description =
            filled(FeelChartText::tr("%1 answers at %2 heights."), m_conclusion.answers, m_conclusion.rocks.size());
        if (m_conclusion.delta) {
            m_text.description +=
                QLatin1Char(' ') +
                filled(FeelChartText::tr("A step of %1 is felt rightly 95 times of 100, at the unfavourable end of its "
                                         "confidence."),
                       textOf(formatUncertainty(static_cast<double>(m_conclusion.delta->value()), m_units)));
        } else {
            m_text.description += QLatin1Char(' ') + textOf(m_conclusion.missing);
        }
    }

    QCustomPlot& m_plot;
    const FeelConclusion& m_conclusion;
    const Units& m_units;
    const Look& m_look;
    ChartText m_text;
    double m_most = 0; ///< the axis goes so far either way, nanometres
};

} // namespace

ChartText fillFeelChart(QCustomPlot& plot, const FeelConclusion& conclusion, const Units& units, const Look& look) {
    return FeelFiller(plot, conclusion, units, look).fill();
}

FeelChart::FeelChart(QWidget* parent) : Chart(parent) {}

void FeelChart::setData(const FeelConclusion& conclusion, const Units& units, const Look& look) {
    take(fillFeelChart(*this, conclusion, units, look), look);
}

} // namespace caprail
