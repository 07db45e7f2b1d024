// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QToolButton>
#include <array>
#include <session/record_session.h>

namespace caprail {

/// What happens to stacks and parts outside the survey: all stacks off or back on, a stack taken apart, a washer turned,
/// turned over or dressed, another nut and
/// washer, work on the pan rail, a finding. One menu; what is about a place is about the selected one.
class GirdleActions : public QToolButton {
    Q_OBJECT
public:
    explicit GirdleActions(RecordSession& session, QWidget* parent = nullptr);
    void setPosition(Position position);
    void refresh();
    void takeAllOff();
    void putAllBack();

private:
    void takeApart();
    void changePart(Part part, const QString& question);
    void openFinding();
    RecordSession& m_session;
    Position m_position;
    QAction* m_takeOff;
    QAction* m_putBack;
    QAction* m_takeApart;
    std::array<QAction*, WordsOf<WasherWork>::list.size()> m_washer{};
    QAction* m_nut;
    QAction* m_finding;
};

} // namespace caprail
