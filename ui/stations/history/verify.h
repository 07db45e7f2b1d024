// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>
#include <session/record_session.h>
#include <tables/table.h>
#include <text/label.h>
#include <work/rounds.h>

class QComboBox;
class QLineEdit;
class QTableView;
class QTabWidget;

namespace caprail {

class HistoryMatrix;
struct MovementRow;
class VerifyHistoryChart;

/// All verify rounds: who checked what, when, with which wrench, and did anything move. The matrix fastener × round,
/// the chart of movement, and simple tables of counts, all of what the filters let through.
class HistoryVerify : public QWidget {
    Q_OBJECT
public:
    explicit HistoryVerify(RecordSession& session, QWidget* parent = nullptr);
    void refresh();
    void focusMatrix();
    [[nodiscard]] const VisibleRounds& visible() const { return m_visible; }
    [[nodiscard]] QByteArray csv() const;

signals:
    void entryChosen(qint64 entry);

private:
    QWidget* buildFilters();
    void build();
    void refreshChoices();
    void showAnew();
    void showReview();
    void followRow();
    void print();
    [[nodiscard]] QString titleText() const;
    RecordSession& m_session;
    RoundHistory m_history;
    std::int64_t m_readTo = -1; ///< entries of the ledger that `m_history` was read from
    RoundChoice m_choice;
    VisibleRounds m_visible;
    QComboBox *m_cap, *m_person, *m_wrench, *m_outcome, *m_order;
    QLineEdit *m_from, *m_to;
    Label* m_count;
    QTableView* m_matrix;
    HistoryMatrix* m_model;
    VerifyHistoryChart* m_chart;
    QTabWidget* m_review;
    Table<MovementRow, QString>*m_places, *m_wrenches, *m_people, *m_perRound;
    Label* m_trend;
};

} // namespace caprail
