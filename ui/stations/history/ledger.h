// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>
#include <optional>
#include <session/record_session.h>
#include <set>
#include <text/label.h>

class QComboBox;
class QLineEdit;

namespace caprail {

class EntriesTable;

/// Every entry of the record, newest first: search, filters by kind, person and struck, and striking.
class HistoryLedger : public QWidget {
    Q_OBJECT
public:
    explicit HistoryLedger(RecordSession& session, QWidget* parent = nullptr);
    void refresh();
    void focusSearch();
    /// Takes the filters away where they hide it, and selects it.
    void showEntry(qint64 sequence);
    /// The rows in sight as a table for a spreadsheet (RFC 4180, UTF-8).
    [[nodiscard]] QByteArray csv() const;

private:
    void filterAnew();
    void showCount();
    void refreshChoices();
    [[nodiscard]] bool isShown(const Entry& entry) const;
    [[nodiscard]] const QString& lineOf(const Entry& entry) const;
    void exportCsv();
    RecordSession& m_session;
    QLineEdit* m_search;
    QComboBox* m_kind;
    QComboBox* m_person;
    QComboBox* m_state;
    Label* m_count;
    EntriesTable* m_table;
    QString m_wanted; ///< what is searched for, lower case
    std::optional<std::size_t> m_wantedKind;
    std::string m_wantedPerson; ///< empty: everybody
    int m_wantedState = 0;
    qint64 m_choicesOf = 0; ///< entries whose kinds and persons the choices hold
    std::set<std::size_t> m_kinds;
    std::set<std::string> m_people;
    mutable std::vector<QString> m_lines; ///< lower-case history lines, made when first needed
    mutable Units m_linesIn;
};

} // namespace caprail
