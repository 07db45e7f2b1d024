// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>
#include <session/record_session.h>
#include <text/label.h>
#include <work/feel_steps.h>

class QComboBox;
class QLineEdit;
class QPushButton;

namespace caprail {

class FeelResults;
class InstrumentBox;

/// The study of a person's feel, as it is led at the bench: steps of known height between two rests, in an order that
/// nobody can guess, each answered by R, D or L; the answers as a plot with the fitted curves, what they come to, and
/// whose feel stands until when.
class GirdleFeel : public QWidget {
    Q_OBJECT
public:
    explicit GirdleFeel(RecordSession& session, QWidget* parent = nullptr);
    void refresh();
    void focusField();
    /// Chooses whose feel is tried with which straightedge.
    void choose(const QString& person, const QString& straightedge);
    [[nodiscard]] QString task() const { return m_task->text(); }
    [[nodiscard]] QPushButton* beginButton() const { return m_begin; }
    [[nodiscard]] QLineEdit* stepsField() const { return m_steps; }
    [[nodiscard]] FeelResults* results() const { return m_results; }
    /// The step that lies there; none while no study is under way.
    [[nodiscard]] const FeelStep* step() const { return m_order.empty() ? nullptr : &m_order.front(); }

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void build();
    QLayout* buildForm();
    void begin();
    void answer(Feel feel);
    void propose();
    /// Reads the steps as they are typed, or says why they cannot be read.
    void readSteps();
    /// Draws what is still to come. What lies between the rests now stays asked for until it is answered, whatever else
    /// changes meanwhile.
    void drawOrder();
    void showTask();
    /// The study that answers go to; null: none is under way.
    [[nodiscard]] const FeelStudyFact* underWay() const;
    [[nodiscard]] std::string whose() const;

    RecordSession& m_session;
    QComboBox* m_whose;
    InstrumentBox* m_straightedge;
    QLineEdit *m_setUp, *m_rests, *m_steps;
    QPushButton *m_begin, *m_propose;
    Label *m_guide, *m_task, *m_problem;
    std::vector<QPushButton*> m_buttons;
    FeelResults* m_results;
    std::vector<FeelStep> m_tried; ///< the steps as typed
    std::vector<FeelStep> m_order; ///< still to come
    QString m_drawnFor; ///< the study, its answers and the steps that the order was drawn for
};

} // namespace caprail
