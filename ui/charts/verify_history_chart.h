// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <charts/chart.h> // first: moc 6.4 cannot read the standard library's concepts before a Qt header

#include <assessment/facts.h>
#include <functional>

namespace caprail {

/// One outcome of one verify round, as a filter sees it.
struct RoundPoint {
    std::int64_t round = 0;
    const Seen<RoundOutcome>* outcome = nullptr; ///< never null when a filter is asked
};
using RoundFilter = std::function<bool(const RoundPoint&)>;

/// Draws movement in degrees by round: held is a dot on zero, moved stands at its angle; within a round the fasteners
/// lie side by side in their order. Main caps left, main caps right and rods have shapes of their own; the fastener
/// `followed` (a code, or empty) is joined by a line. No filter: all.
ChartText fillVerifyHistoryChart(QCustomPlot& plot, const Facts& facts, const Units& units, const Look& look,
                                 const RoundFilter& filter = {}, const QString& followed = {});

/// The same as vectors on paper, in sizes about the painter's font.
void drawVerifyHistoryChart(QPainter& painter, const QRectF& area, const Facts& facts, const Units& units,
                            const Look& look, const RoundFilter& filter = {});

/// Can be dragged and zoomed along the rounds with the mouse; begins with the last thirty.
class VerifyHistoryChart : public Chart {
    Q_OBJECT
public:
    explicit VerifyHistoryChart(QWidget* parent = nullptr);
    /// Keeps a copy of the rounds, so that a filter can be set later.
    void setData(const Facts& facts, const Units& units, const Look& look);
    void setFilter(RoundFilter filter);
    void follow(const QString& fastener);

private:
    void fillAnew();
    Facts m_rounds; ///< only its rounds are filled
    Units m_units;
    std::optional<Look> m_dataLook;
    RoundFilter m_filter;
    QString m_followed;
};

} // namespace caprail
