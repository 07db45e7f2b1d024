// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <charts/feel_chart.h> // first: moc 6.4 cannot read the standard library's concepts before a Qt header

#include <QWidget>
#include <assessment/feel_study.h>
#include <session/record_session.h>
#include <tables/table.h>
#include <text/label.h>
#include <work/recheck_guide.h>

namespace caprail {

/// What a study of a feel comes to: the answers as a plot with the fitted curves, δ in a sentence, and whose feel stands
/// with which straightedge until when.
class FeelResults : public QWidget {
    Q_OBJECT
public:
    explicit FeelResults(RecordSession& session, QWidget* parent = nullptr);
    /// `underWay`: the study that is being answered; null: what stands is shown.
    void show(const WhoFeels& who, const FeelStudyFact* underWay);
    [[nodiscard]] QString conclusion() const { return m_conclusion->text(); }
    [[nodiscard]] FeelChart* chart() const { return m_chart; }

private:
    void showStandings();
    RecordSession& m_session;
    FeelChart* m_chart;
    Label* m_conclusion;
    using Who = std::pair<std::string, std::string>; ///< person and straightedge
    Table<FeelStanding, Who>* m_standings;
};

} // namespace caprail
