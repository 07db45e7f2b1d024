// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>
#include <map>
#include <session/record_session.h>
#include <text/label.h>

class QLineEdit;
class QPushButton;
class QSpinBox;

namespace caprail {

class OpenTime;

/// The closing steps in their order, each ticked by the person who did it, the sealant's open time running meanwhile,
/// and at the end the sign-off; after it, the way to a new build. Only the next step can be ticked, and only while the
/// gate is open.
class ClosingSteps : public QWidget {
    Q_OBJECT
public:
    explicit ClosingSteps(RecordSession& session, QWidget* parent = nullptr);
    void refresh();
    /// Puts the keyboard on what can be done next.
    void focusNext();
    /// The button that ticks a step, for keyboards and tests.
    [[nodiscard]] QPushButton* button(ClosingStep step) const { return m_rows.at(step).button; }

private:
    struct Row {
        Label* sign;
        Label* text;
        QPushButton* button;
    };
    void build();
    void tick(ClosingStep step);
    void signOff();
    void beginBuild();
    void refreshRow(ClosingStep step, const Row& row);
    RecordSession& m_session;
    std::map<ClosingStep, Row> m_rows;
    QSpinBox* m_minutes;
    OpenTime* m_openTime;
    QLineEdit* m_statement;
    QPushButton* m_sign;
    Label* m_signed;
    QPushButton* m_build;
};

} // namespace caprail
