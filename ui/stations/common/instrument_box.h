// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QComboBox>
#include <session/record_session.h>

namespace caprail {

/// Chooses the instrument that readings are entered with: those of the record, the fitting types first, and "none".
class InstrumentBox : public QComboBox {
    Q_OBJECT
public:
    InstrumentBox(RecordSession& session, std::vector<InstrumentType> fitting, QWidget* parent = nullptr);
    /// Reads the record's instruments again; keeps the choice, or takes the first fitting one.
    void refresh();
    /// Its name in the record; empty for none.
    [[nodiscard]] std::string instrument() const;

    /// As if a person chose it; false when the record has no instrument of that name.
    bool choose(const QString& name);

private:
    RecordSession& m_session;
    std::vector<InstrumentType> m_fitting;
    bool m_isChosen = false; ///< by a person, so that it is kept even when it is "none"
};

} // namespace caprail
