// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <stations/fasteners/page.h>
#include <text/label.h>

class QPlainTextEdit;

namespace caprail {

class EntryField;
class InstrumentBox;
class PlaceHeading;

/// The clamp of one fastener from the torque that turns it on and the one that turns it back: the only check that
/// friction has no part in. It is loose afterwards, and says so.
class FastenersClamp : public FastenersPage {
    Q_OBJECT
public:
    explicit FastenersClamp(RecordSession& session, QWidget* parent = nullptr);
    void refresh(FastenerId selected) override;
    void focusField() override;
    void type(const QString& text) override;
    [[nodiscard]] std::vector<FastenerId> order() const override;
    [[nodiscard]] EntryField* field() const { return m_field; }

private:
    [[nodiscard]] Result<ClampChecked> read(const QString& text) const;
    FastenerId m_fastener;
    PlaceHeading* m_heading;
    InstrumentBox* m_instrument;
    EntryField* m_field;
    Label* m_caution;
    QPlainTextEdit* m_result;
};

} // namespace caprail
