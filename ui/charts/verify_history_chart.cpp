// SPDX-License-Identifier: GPL-3.0-or-later
#include <charts/verify_history_chart.h>

#include <QCoreApplication>
#include <algorithm>
#include <charts/chart_drawing.h>
#include <span>

namespace caprail {

namespace {

class VerifyChartText {
    Q_DECLARE_TR_FUNCTIONS(VerifyChartText)
};

constexpr double halfRound = 0.4; ///< the fasteners of a round stand within so much of its number

/// Of more rounds the last are drawn.
constexpr std::size_t mostRounds = 100;
constexpr std::int64_t shownRounds = 30; ///< that the chart shows at first: the last

/// Main caps left, main caps right, rods.
std::size_t familyOf(FastenerId f) {
    return f.kind == FastenerKind::rod ? 2 : (f.side == Side::left ? 0 : 1);
}

class HistoryFiller {
public:
    HistoryFiller(QCustomPlot& plot, const Facts& facts, const Units& units, const Look& look,
                  const RoundFilter& filter, const QString& followed)
        : m_plot(plot), m_facts(facts), m_units(units), m_look(look), m_filter(filter), m_followed(followed) {}

    ChartText fill() {
        beginChart(m_plot, m_look);
        m_text.name = VerifyChartText::tr("Movement by verify round");
        orderFasteners();
        for (const RoundFact& round : drawn()) {
            for (const auto& [fastener, outcome] : round.outcomes) {
                add(round.begun.what.round, fastener, outcome);
            }
        }
        if (m_text.points.empty()) {
            sayNothingYet(m_plot,
                          m_facts.rounds.empty() ? VerifyChartText::tr("Every outcome of a verify round appears here.")
                                                 : VerifyChartText::tr("No outcome passes the filter."),
                          m_look);
            m_text.description = VerifyChartText::tr("No outcome to show.");
            return std::move(m_text);
        }
        makeGraphs();
        makeAxes();
        m_text.description = VerifyChartText::tr("%1 outcomes in rounds %2 to %3: %4 held, %5 moved, the farthest %6.")
                                 .arg(m_text.points.size())
                                 .arg(m_firstRound)
                                 .arg(m_lastRound)
                                 .arg(m_text.points.size() - m_moved)
                                 .arg(m_moved)
                                 .arg(textOf(format(m_farthest, m_units)));
        if (m_facts.rounds.size() > mostRounds) {
            m_text.description +=
                QLatin1Char(' ') + VerifyChartText::tr("Only the last %1 rounds are drawn.").arg(mostRounds);
        }
        return std::move(m_text);
    }

private:
    struct Cloud {
        QVector<double> x, y;
    };

    [[nodiscard]] std::span<const RoundFact> drawn() const {
        const std::span<const RoundFact> all(m_facts.rounds);
        return all.last(std::min(all.size(), mostRounds));
    }

    void orderFasteners() {
        std::map<FastenerId, double> all;
        for (const RoundFact& round : drawn()) {
            for (const auto& [fastener, outcome] : round.outcomes) {
                all[fastener] = 0;
            }
        }
        double place = 0;
        for (auto& [fastener, offset] : all) {
            const auto count = static_cast<double>(all.size());
            offset = count < 2 ? 0 : halfRound * (2 * place / (count - 1) - 1);
            place += 1;
        }
        m_offsets = std::move(all);
    }

    void add(std::int64_t round, FastenerId fastener, const Seen<RoundOutcome>& outcome) {
        if (m_filter && !m_filter({round, &outcome})) {
            return;
        }
        const bool isMoved = outcome.what.outcome == Outcome::moved;
        const Angle angle = isMoved && outcome.what.angle ? outcome.what.angle->value : Angle();
        const double x = static_cast<double>(round) + m_offsets[fastener];
        const double y = inDegrees(angle);
        Cloud& cloud = isMoved ? m_movedBy[familyOf(fastener)] : m_held;
        cloud.x.push_back(x);
        cloud.y.push_back(y);
        const QString place = textOf(code(fastener));
        if (place == m_followed) {
            m_path.x.push_back(x);
            m_path.y.push_back(y);
        }
        QString words = textOf(describe(fastener)) + QStringLiteral(", ") + VerifyChartText::tr("round %1").arg(round) +
                        QStringLiteral(": ");
        words += !isMoved ? VerifyChartText::tr("held")
                          : (outcome.what.angle ? VerifyChartText::tr("moved %1").arg(textOf(format(angle, m_units)))
                                                : VerifyChartText::tr("moved"));
        if (outcome.what.torque) {
            words += QStringLiteral("\n") + textOf(format(outcome.what.torque->value, m_units));
        }
        words += QStringLiteral("\n") + whoWithWhatWhen(outcome.person, outcome.what.instrument, outcome.time);
        m_text.points.push_back({{x, y}, place, words, outcome.entry});
        m_moved += isMoved ? 1U : 0U;
        m_farthest = std::max(m_farthest, angle.magnitude());
        m_firstRound = m_text.points.size() == 1 ? round : std::min(m_firstRound, round);
        m_lastRound = std::max(m_lastRound, round);
    }

    void makeGraphs() {
        const double line = lineHeight(m_plot);
        if (!m_path.x.isEmpty()) {
            QCPGraph* path = m_plot.addGraph();
            path->setPen(QPen(m_look.accent, 1.4));
            path->setName(m_followed);
            path->setData(m_path.x, m_path.y);
        }
        const QCPScatterStyle dot(QCPScatterStyle::ssCircle, QPen(m_look.quiet, 1), QBrush(m_look.quiet), 0.2 * line);
        markers(m_plot, dot, VerifyChartText::tr("held"))->setData(m_held.x, m_held.y);
        const QString names[] = {VerifyChartText::tr("moved, main left"), VerifyChartText::tr("moved, main right"),
                                 VerifyChartText::tr("moved, rod")};
        for (std::size_t family = 0; family < m_movedBy.size(); ++family) {
            if (m_movedBy.at(family).x.isEmpty()) {
                continue;
            }
            const double size = 0.62 * line;
            const QCPScatterStyle style = family == 2
                                              ? QCPScatterStyle(QCPScatterStyle::ssSquare, QPen(m_look.ink, 1.4),
                                                                QBrush(m_look.paper), 0.8 * size)
                                              : sideMarker(family == 0 ? Side::left : Side::right, true,
                                                           family == 0 ? m_look.ink : m_look.accent, size);
            markers(m_plot, style, names[family])->setData(m_movedBy.at(family).x, m_movedBy.at(family).y);
        }
    }

    void makeAxes() {
        m_plot.xAxis->setTicker(countTicker());
        m_plot.xAxis->setLabel(VerifyChartText::tr("verify round"));
        m_plot.xAxis->setRange(static_cast<double>(std::max(m_firstRound, m_lastRound - shownRounds + 1)) - 0.5,
                               static_cast<double>(m_lastRound) + 0.5);
        m_plot.xAxis->grid()->setVisible(false);
        // Between rounds a light line, so that each reads as a column.
        if (m_lastRound - m_firstRound < shownRounds) {
            for (std::int64_t round = m_firstRound; round < m_lastRound; ++round) {
                const double edge = static_cast<double>(round) + 0.5;
                auto* line = new QCPItemStraightLine(&m_plot);
                line->point1->setCoords(edge, 0);
                line->point2->setCoords(edge, 1);
                line->setPen(QPen(m_look.faint, 0.8));
            }
        }
        const double most = std::max(inDegrees(m_farthest), 2.0);
        m_plot.yAxis->setRange(-0.12 * most, 1.15 * most);
        m_plot.yAxis->setTicker(numberTicker(m_units.decimalMark));
        m_plot.yAxis->setLabel(VerifyChartText::tr("movement, degrees"));
        m_plot.yAxis->grid()->setZeroLinePen(QPen(m_look.quiet, 0.8));
    }

    QCustomPlot& m_plot;
    const Facts& m_facts;
    const Units& m_units;
    const Look& m_look;
    const RoundFilter& m_filter;
    const QString& m_followed;
    ChartText m_text;
    std::map<FastenerId, double> m_offsets;
    Cloud m_held, m_path;
    std::array<Cloud, 3> m_movedBy;
    std::size_t m_moved = 0;
    Angle m_farthest;
    std::int64_t m_firstRound = 0, m_lastRound = 0;
};

} // namespace

ChartText fillVerifyHistoryChart(QCustomPlot& plot, const Facts& facts, const Units& units, const Look& look,
                                 const RoundFilter& filter, const QString& followed) {
    return HistoryFiller(plot, facts, units, look, filter, followed).fill();
}

void drawVerifyHistoryChart(QPainter& painter, const QRectF& area, const Facts& facts, const Units& units,
                            const Look& look, const RoundFilter& filter) {
    // Paper cannot be moved: what lies outside of it need not be made.
    const std::int64_t last = facts.rounds.empty() ? 0 : facts.rounds.back().begun.what.round;
    const RoundFilter visibleRounds = [&](const RoundPoint& point) {
        return point.round > last - shownRounds && (!filter || filter(point));
    };
    drawChart(painter, area,
              [&](QCustomPlot& plot) { fillVerifyHistoryChart(plot, facts, units, look, visibleRounds, {}); });
}

VerifyHistoryChart::VerifyHistoryChart(QWidget* parent) : Chart(parent) {
    setInteractions(QCP::iRangeDrag | QCP::iRangeZoom);
    axisRect()->setRangeDrag(Qt::Horizontal);
    axisRect()->setRangeZoom(Qt::Horizontal);
}

void VerifyHistoryChart::setData(const Facts& facts, const Units& units, const Look& look) {
    // One more than is drawn, so that the chart knows of older ones.
    const auto kept = static_cast<std::ptrdiff_t>(std::min(facts.rounds.size(), mostRounds + 1));
    m_rounds.rounds.assign(facts.rounds.end() - kept, facts.rounds.end());
    m_units = units;
    m_dataLook = look;
    fillAnew();
}

void VerifyHistoryChart::setFilter(RoundFilter filter) {
    m_filter = std::move(filter);
    fillAnew();
}

void VerifyHistoryChart::follow(const QString& fastener) {
    if (fastener != m_followed) {
        m_followed = fastener;
        fillAnew();
    }
}

void VerifyHistoryChart::fillAnew() {
    if (m_dataLook) {
        take(fillVerifyHistoryChart(*this, m_rounds, m_units, *m_dataLook, m_filter, m_followed), *m_dataLook);
    }
}

} // namespace caprail
