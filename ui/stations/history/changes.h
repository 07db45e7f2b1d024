// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <session/record_session.h>
#include <tables/table.h>
#include <text/label.h>
#include <work/deviations.h>

namespace caprail {

struct ChangeRow;

/// What was changed after something had been judged by it, as the sheet will tell the customer, and how long the work took.
class HistoryChanges : public QWidget {
    Q_OBJECT
public:
    explicit HistoryChanges(RecordSession& session, QWidget* parent = nullptr);
    void refresh();

signals:
    void entryChosen(qint64 entry);

private:
    RecordSession& m_session;
    Label* m_line;
    Table<ChangeRow, std::int64_t>* m_table;
    Label* m_work;
};

} // namespace caprail
