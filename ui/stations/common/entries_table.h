// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QTableView>
#include <functional>
#include <session/record_session.h>

namespace caprail {

class EntriesModel;

/// Entries of the ledger, newest first, struck ones shown struck through with who struck them. Delete strikes the
/// selected ones, all with one reason, after saying what they say; Ctrl+C copies the selected rows for a spreadsheet.
class EntriesTable : public QTableView {
    Q_OBJECT
public:
    explicit EntriesTable(RecordSession& session, QWidget* parent = nullptr);
    /// Which entries are shown; they are looked through anew at each `refresh`.
    void setFilter(std::function<bool(const Entry&)> filter);
    /// A shorter last column for a narrow table whose place is known anyway; the whole line is its tooltip.
    void setLine(std::function<QString(const Entry&)> line);
    /// What stands in the table while no entry is shown.
    void setEmptyText(const QString& sentence);
    void refresh();
    void selectEntry(qint64 sequence);
    [[nodiscard]] qint64 selectedEntry() const; ///< 0: none
    /// Those that are not struck yet, newest first.
    [[nodiscard]] std::vector<qint64> selectedEntries() const;
    /// Says what the entries say, asks for one reason, and strikes them, the first of the list first: give the newest
    /// first, since an older one may be what a newer one rests on. Stops at one that cannot be struck, and says which.
    static void askAndStrike(RecordSession& session, const std::vector<qint64>& entries, QWidget* parent);

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void copySelection() const;
    RecordSession& m_session;
    EntriesModel* m_model;
    QString m_emptyText;
    qint64 m_awaited = 0; ///< the entry that was selected before, and whose row is not found yet
};

} // namespace caprail
