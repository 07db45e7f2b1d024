// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QFrame>
#include <session/record_session.h>
#include <text/label.h>

class QPushButton;
class QStackedLayout;

namespace caprail {

/// Always in sight: whose engine this is, the one next thing to do with the way there, and each gate with what holds
/// it, every reason a jump to its place. In the place of the words, while there is one, the sentence that says why an entry
/// was not taken: nothing below moves under the mouse. It goes when something succeeds or another place is looked at.
class NextBar : public QFrame {
    Q_OBJECT
public:
    explicit NextBar(RecordSession& session, QWidget* parent = nullptr);
    void refresh();
    void showRefusal(const QString& sentence);
    /// Something to know, that is no fault.
    void showHint(const QString& sentence);
    void clearRefusal();

private:
    void refreshGate(QPushButton* button, GateKind kind);
    RecordSession& m_session;
    Label* m_engine;
    Label* m_next;
    QPushButton* m_go;
    QPushButton* m_trialFit;
    QPushButton* m_closing;
    QStackedLayout* m_words; ///< who and what is next, or the refusal
    Label* m_refusal;
};

} // namespace caprail
