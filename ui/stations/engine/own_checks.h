// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <stations/common/entry_form.h>
#include <tables/table.h>

namespace caprail {

/// The shop's own checks: yes or no, measured in a band, or a photo; each in the shop's words, with its number of places
/// and what it holds. They go with the record's template. No places withdraws one.
class EngineOwnChecks : public QWidget {
    Q_OBJECT
public:
    explicit EngineOwnChecks(RecordSession& session, QWidget* parent = nullptr);
    void refresh();
    void selectCheck(const QString& name);

private:
    [[nodiscard]] QString selectedName() const;
    void showCheck(const QString& name);
    RecordSession& m_session;
    Table<OwnCheckSet, std::string>* m_table;
    FormFor<OwnCheckSet>* m_form;
};

} // namespace caprail
