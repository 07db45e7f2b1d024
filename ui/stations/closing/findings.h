// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>
#include <session/record_session.h>
#include <tables/table.h>

class QLineEdit;
class QPushButton;

namespace caprail {

struct FindingRow;

/// Findings and notes: open ones first. A finding is opened with a place and a text, and settled with what was done
/// about it; a note only says something.
class ClosingFindings : public QWidget {
    Q_OBJECT
public:
    explicit ClosingFindings(RecordSession& session, QWidget* parent = nullptr);
    void refresh();
    /// Selects a finding by name; with an empty name, the first open one. Puts the keyboard on what was done.
    void selectFinding(const QString& name);

private:
    void openFinding();
    void settle();
    void addNote();
    /// The name of the selected finding that is still open; empty: none is.
    [[nodiscard]] std::string selectedFinding() const;
    void offer();
    RecordSession& m_session;
    List<FindingRow, std::int64_t>* m_list;
    QLineEdit* m_done;
    QPushButton* m_settle;
    QLineEdit* m_place;
    QLineEdit* m_text;
};

} // namespace caprail
