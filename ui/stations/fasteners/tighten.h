// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <stations/fasteners/page.h>
#include <text/label.h>

class QComboBox;
class QPushButton;

namespace caprail {

class EntriesTable;
class EntryField;
class InstrumentBox;
class PlaceHeading;

/// Fasteners brought to their value outside a verify round, one at a time in sequence, or a whole group as specified;
/// and loosened ones.
class FastenersTighten : public FastenersPage {
    Q_OBJECT
public:
    explicit FastenersTighten(RecordSession& session, QWidget* parent = nullptr);
    void refresh(FastenerId selected) override;
    void focusField() override;
    void type(const QString& text) override;
    [[nodiscard]] std::vector<FastenerId> order() const override;
    [[nodiscard]] EntryField* field() const { return m_field; }
    [[nodiscard]] FastenerKind kind() const;

private:
    void build();
    void askForValue();
    [[nodiscard]] Result<FastenerTightened> read(const QString& text) const;
    Result<void> store(FastenerTightened entry);
    void tightenGroup();
    void loosen();
    void goOn();
    FastenerId m_fastener;
    PlaceHeading* m_heading;
    EntryField* m_field;
    QComboBox* m_kind;
    InstrumentBox* m_instrument;
    Label* m_remark;
    QPushButton* m_group;
    QPushButton* m_loose;
    EntriesTable* m_entries;
};

} // namespace caprail
