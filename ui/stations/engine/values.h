// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <stations/common/entry_form.h>
#include <tables/table.h>
#include <assessment/unconfirmed.h>

namespace caprail {

/// Every band, rule and specification in force, and whose figure each is. The defaults of a template are nobody's until
/// somebody says so here: the person walks down the list, one Enter a value.
class EngineValues : public QWidget {
    Q_OBJECT
public:
    explicit EngineValues(RecordSession& session, QWidget* parent = nullptr);
    void refresh();
    /// Selects the first value that nobody confirmed, with the keyboard on whose figure it is.
    void selectOpen();

private:
    void showValue();
    RecordSession& m_session;
    Label* m_line;
    Table<ValueStanding, std::string>* m_table;
    FormFor<ValueConfirmed>* m_form;
};

} // namespace caprail
