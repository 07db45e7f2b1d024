// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>
#include <session/record_session.h>
#include <stations/girdle/diagram.h>
#include <text/label.h>

class QVBoxLayout;

namespace caprail {

class Chart;
class DeflectionChart;
class GirdleLoadPage;
class PlanView;
class SpreadChart;

/// The pan rail from above with what a mode writes beside each position, and under it the chart of that mode: how the
/// readings spread, or how the girdle lies. A chart is built when it is first shown.
class GirdleSurvey : public QWidget {
    Q_OBJECT
public:
    explicit GirdleSurvey(RecordSession& session, QWidget* parent = nullptr);
    [[nodiscard]] PlanView* plan() const { return m_plan; }
    /// `order` is that of the gap pass. `load` with the mode that shows it, refreshed before this; else null.
    void refresh(GirdleMode mode, Position selected, const std::vector<Position>& order, const GirdleLoadPage* load);

signals:
    void chosen(Position position);

private:
    void choose(const QString& place);
    void showDiagram(GirdleMode mode, Position selected, const std::vector<Position>& order,
                     const GirdleLoadPage* load);
    void showSpread(GirdleMode mode);
    void showLoad(const GirdleLoadPage& load);
    void addChart(Chart* chart);
    SpreadChart* spread();
    DeflectionChart* deflections();
    RecordSession& m_session;
    PlanView* m_plan;
    Label* m_survey;
    SpreadChart* m_spread = nullptr;
    DeflectionChart* m_deflections = nullptr; ///< in the place of the other
    QVBoxLayout* m_column;
};

} // namespace caprail
