// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>
#include <session/record_session.h>

class QLineEdit;
class QListWidget;
class QPushButton;

namespace caprail {

/// Findings and notes: open ones first. A finding is opened with a place and a text, and settled with what was done
/// about it; a note only says something.
class ClosingFindings : public QWidget {
    Q_OBJECT
public:
    explicit ClosingFindings(RecordSession& session, QWidget* parent = nullptr);
    void refresh();
    /// Selects a finding by name; with an empty name, the first open one. Puts the keyboard on what was done.
    void selectFinding(const QString& name);
    [[nodiscard]] QLineEdit* placeEdit() const { return m_place; }
    [[nodiscard]] QLineEdit* textEdit() const { return m_text; }
    [[nodiscard]] QLineEdit* doneEdit() const { return m_done; }
    [[nodiscard]] QListWidget* list() const { return m_list; }

private:
    void openFinding();
    void settle();
    void addNote();
    [[nodiscard]] QString selectedFinding() const;
    void addRow(const QString& name, const FindingFact& finding);
    RecordSession& m_session;
    QListWidget* m_list;
    QLineEdit* m_done;
    QPushButton* m_settle;
    QLineEdit* m_place;
    QLineEdit* m_text;
};

} // namespace caprail
