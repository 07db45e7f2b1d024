// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <stations/common/entry_form.h>
#include <tables/table.h>

namespace caprail {

struct InstrumentRow;
struct PersonRow;

/// Who works on the engine, and with which instruments: identity, limit of error, wrench range, calibration,
/// and the zero checks of the day.
class EnginePeople : public QWidget {
    Q_OBJECT
public:
    explicit EnginePeople(RecordSession& session, QWidget* parent = nullptr);
    void refresh();
    void selectInstrument(const QString& name);
    [[nodiscard]] FormFor<PersonAdded>* personForm() const { return m_person; }
    [[nodiscard]] FormFor<ZeroChecked>* zeroForm() const { return m_zero; }

private:
    /// The selected one; an empty form where none is.
    void showInstrument();
    void showZero();
    RecordSession& m_session;
    Table<PersonRow, std::string>* m_people;
    FormFor<PersonAdded>* m_person;
    Table<InstrumentRow, std::string>* m_instruments;
    FormFor<InstrumentAdded>* m_instrument;
    FormFor<ZeroChecked>* m_zero;
};

} // namespace caprail
