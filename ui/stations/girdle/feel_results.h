// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <charts/feel_chart.h> // first: moc 6.4 cannot read the standard library's concepts before a Qt header

#include <QWidget>
#include <session/record_session.h>
#include <text/label.h>
#include <work/recheck_guide.h>

namespace caprail {

class PlainTable;

/// What a study of a feel comes to: the answers as a plot with the fitted curves, δ in a sentence, and whose feel stands
/// with which straightedge until when.
class FeelResults : public QWidget {
    Q_OBJECT
public:
    explicit FeelResults(RecordSession& session, QWidget* parent = nullptr);
    /// `underWay`: the study that is being answered; null: what stands is shown.
    void show(const WhoFeels& who, const FeelStudyFact* underWay);
    [[nodiscard]] QString conclusion() const { return m_conclusion->text(); }
    [[nodiscard]] PlainTable* standings() const { return m_standings; }
    [[nodiscard]] FeelChart* chart() const { return m_chart; }

private:
    void showStandings();
    RecordSession& m_session;
    FeelChart* m_chart;
    Label* m_conclusion;
    PlainTable* m_standings;
};

} // namespace caprail
