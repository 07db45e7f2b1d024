// SPDX-License-Identifier: GPL-3.0-or-later
#include <charts/clearance_chart.h>

#include <QCoreApplication>
#include <charts/chart_drawing.h>
#include <ledger/band_names.h>
#include <measure/verdict.h>

namespace caprail {

namespace {

class ClearanceChartText {
    Q_DECLARE_TR_FUNCTIONS(ClearanceChartText)
};

class ClearanceFiller {
public:
    ClearanceFiller(QCustomPlot& plot, const Facts& facts, const Assessment& assessment, const Units& units,
                    const Look& look)
        : m_plot(plot), m_facts(facts), m_assessment(assessment), m_units(units), m_look(look) {}

    ChartText fill() {
        beginChart(m_plot, m_look);
        m_text.name = ClearanceChartText::tr("Bearing clearances");
        placeAll();
        if (m_text.points.empty()) {
            sayNothingYet(m_plot,
                          ClearanceChartText::tr("A bearing appears here once its journal and its bore are measured."),
                          m_look);
            m_text.description = ClearanceChartText::tr("No clearance is known yet.");
            return std::move(m_text);
        }
        bandOf(JournalKind::main, bands::mainClearance);
        bandOf(JournalKind::rod, bands::rodClearance);
        makeGraphs();
        makeAxes();
        return std::move(m_text);
    }

private:
    struct Bar {
        double x = 0;
        const ClearanceResult* result = nullptr;
        CheckState state = CheckState::notDone;
    };

    void placeAll() {
        double x = 0;
        std::size_t good = 0;
        for (const auto& [journal, result] : m_assessment.clearances) {
            x += m_labels.isEmpty() || (journal.kind == JournalKind::rod && m_last.kind == JournalKind::main) ? 1.5 : 1;
            m_last = journal;
            m_labels.insert(x, textOf(code(journal))
                                   .replace(QStringLiteral("main-"), ClearanceChartText::tr("M"))
                                   .replace(QStringLiteral("rod-"), ClearanceChartText::tr("R")));
            auto& range = journal.kind == JournalKind::main ? m_mains : m_rods;
            range = range ? QCPRange(range->lower, x) : QCPRange(x, x);
            if (!result.clearance) {
                continue;
            }
            const std::string kind = journal.kind == JournalKind::main ? "main-clearance:" : "rod-clearance:";
            const Check* check = m_assessment.find(kind + code(journal));
            const CheckState state = check == nullptr ? CheckState::notDone : check->state;
            good += state == CheckState::good ? 1U : 0U;
            m_bars.push_back({x, &result, state});
            m_text.points.push_back(
                {{x, shown(*result.clearance, m_units)}, textOf(code(journal)), wordsOf(journal, result, state), 0});
        }
        m_text.description = ClearanceChartText::tr("Clearance of %1 of %2 bearings is known; %3 are good.")
                                 .arg(m_bars.size())
                                 .arg(m_labels.size())
                                 .arg(good);
        for (const ChartPoint& point : m_text.points) {
            m_text.description += QStringLiteral(" ") + point.words.section(QChar('\n'), 0, 0) + QStringLiteral(".");
        }
    }

    [[nodiscard]] QString wordsOf(JournalId journal, const ClearanceResult& result, CheckState state) const {
        QString words = textOf(describe(journal)) + QStringLiteral(": ") + textOf(format(*result.clearance, m_units)) +
                        QStringLiteral(" ") + textOf(caprail::describe(result.uncertainty(), m_units)) +
                        QStringLiteral(", ") + stateWord(state);
        if (result.smallest && result.largest) {
            words += QStringLiteral("\n") +
                     ClearanceChartText::tr("from %1 to %2")
                         .arg(textOf(format(*result.smallest, m_units)), textOf(format(*result.largest, m_units)));
        }
        return words;
    }

    void bandOf(JournalKind kind, std::string_view name) {
        const auto& range = kind == JournalKind::main ? m_mains : m_rods;
        const BandFact* band = m_facts.bandNamed(name);
        if (!range || band == nullptr) {
            return;
        }
        reach(shown(band->band.lo(), m_units));
        reach(shown(band->band.hi(), m_units));
        const double from = range->lower - 0.6;
        const double to = range->upper + 0.6;
        drawBand(m_plot, band->band, from, to, m_units, m_look);
        if (band->target) {
            const double target = shown(*band->target, m_units);
            reach(target);
            lineBetween(m_plot, {from, target}, {to, target}, QPen(m_look.good, 1, Qt::DashDotLine));
        }
        const QString label =
            kind == JournalKind::main ? ClearanceChartText::tr("mains\n%1") : ClearanceChartText::tr("rods\n%1");
        // On top of the chart, where no bearing's bars run through it; the mains' from the left, the rods' from the
        // right, so that a few bearings' label does not run over the edge.
        const bool isMain = kind == JournalKind::main;
        const double x = isMain ? from : to;
        QCPItemText* text = textAt(m_plot, {x, 0}, label.arg(textOf(describeLimits(band->band, m_units))),
                                   (isMain ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignTop, m_look.quiet);
        text->setTextAlignment(isMain ? Qt::AlignLeft : Qt::AlignRight);
        text->position->setTypeY(QCPItemPosition::ptAxisRectRatio);
        text->position->setCoords(x, 0);
    }

    QCPErrorBars* bars(QCPGraph* of, double width, double whisker, const QColor& colour, const QString& name) {
        auto* made = new QCPErrorBars(m_plot.xAxis, m_plot.yAxis);
        made->setDataPlottable(of);
        made->setErrorType(QCPErrorBars::etValueError);
        made->setPen(QPen(colour, width, Qt::SolidLine, Qt::FlatCap));
        made->setWhiskerWidth(whisker);
        made->setSymbolGap(0);
        made->setName(name);
        return made;
    }

    void makeGraphs() {
        const double line = lineHeight(m_plot);
        QVector<double> x, y, below, above, uncertainty;
        for (const Bar& bar : m_bars) {
            const double mean = shown(*bar.result->clearance, m_units);
            const double smallest = shown(bar.result->smallest.value_or(*bar.result->clearance), m_units);
            const double largest = shown(bar.result->largest.value_or(*bar.result->clearance), m_units);
            const double u = shownNanometres(bar.result->uncertainty().expanded().value_or(0), m_units);
            x << bar.x;
            y << mean;
            below << mean - smallest;
            above << largest - mean;
            uncertainty << u;
            reach(smallest);
            reach(largest);
            reach(mean - u);
            reach(mean + u);
        }
        QCPGraph* middle = m_plot.addGraph();
        middle->setLineStyle(QCPGraph::lsNone);
        middle->removeFromLegend();
        middle->setData(x, y);
        bars(middle, 1.2, 0.7 * line, m_look.ink, ClearanceChartText::tr("smallest to largest"))->setData(below, above);
        bars(middle, 0.26 * line, 0, m_look.quiet, ClearanceChartText::tr("expanded uncertainty"))
            ->setData(uncertainty, uncertainty);
        // One graph per state, so that each has its shape and stands in the legend only when it occurs.
        for (const auto& [state, text] : allWords<CheckState>()) {
            QVector<double> at, level;
            for (const Bar& bar : m_bars) {
                if (bar.state == state) {
                    at << bar.x;
                    level << shown(*bar.result->clearance, m_units);
                }
            }
            if (!at.isEmpty()) {
                markers(m_plot, stateMarker(state, m_look, 0.62 * line), stateWord(state))->setData(at, level);
            }
        }
    }

    void makeAxes() {
        const auto names = QSharedPointer<QCPAxisTickerText>::create();
        names->setTicks(m_labels);
        m_plot.xAxis->setTicker(names);
        m_plot.xAxis->setLabel(ClearanceChartText::tr("bearing: M main, R rod"));
        m_plot.xAxis->grid()->setVisible(false);
        m_plot.xAxis->setRange(m_labels.firstKey() - 1, m_labels.lastKey() + 1);
        const double room = std::max(m_hi - m_lo, shown(thou(0.5), m_units));
        m_plot.yAxis->setRange(m_lo - 0.12 * room, m_hi + 0.42 * room);
        m_plot.yAxis->setTicker(numberTicker(m_units.decimalMark));
        m_plot.yAxis->setLabel(axisName(ClearanceChartText::tr("clearance"), m_units));
    }

    void reach(double y) {
        m_lo = m_hasRange ? std::min(m_lo, y) : y;
        m_hi = m_hasRange ? std::max(m_hi, y) : y;
        m_hasRange = true;
    }

    QCustomPlot& m_plot;
    const Facts& m_facts;
    const Assessment& m_assessment;
    const Units& m_units;
    const Look& m_look;
    ChartText m_text;
    QMap<double, QString> m_labels;
    std::vector<Bar> m_bars;
    JournalId m_last;
    std::optional<QCPRange> m_mains, m_rods;
    double m_lo = 0, m_hi = 0;
    bool m_hasRange = false;
};

} // namespace

ChartText fillClearanceChart(QCustomPlot& plot, const Facts& facts, const Assessment& assessment, const Units& units,
                             const Look& look) {
    return ClearanceFiller(plot, facts, assessment, units, look).fill();
}

void drawClearanceChart(QPainter& painter, const QRectF& area, const Facts& facts, const Assessment& assessment,
                        const Units& units, const Look& look) {
    drawChart(painter, area, [&](QCustomPlot& plot) { fillClearanceChart(plot, facts, assessment, units, look); });
}

ClearanceChart::ClearanceChart(QWidget* parent) : Chart(parent) {}

void ClearanceChart::setData(const Facts& facts, const Assessment& assessment, const Units& units, const Look& look) {
    take(fillClearanceChart(*this, facts, assessment, units, look), look);
}

} // namespace caprail
