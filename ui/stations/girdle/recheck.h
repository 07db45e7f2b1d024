// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <stations/girdle/page.h>
#include <text/label.h>

class QPushButton;

namespace caprail {

class ChecksView;
class EntriesTable;
class InstrumentBox;
class PlaceHeading;

/// The recheck: the straightedge laid on each built stack. R, D or L says how it feels there, and goes on to the next
/// stack that needs it.
class GirdleRecheck : public GirdlePage {
    Q_OBJECT
public:
    explicit GirdleRecheck(RecordSession& session, QWidget* parent = nullptr);
    void refresh(Position selected) override;
    void focusField() override;
    bool type(const QString& text) override;

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void build();
    void store(Feel feel);
    [[nodiscard]] Position next() const;
    Position m_position;
    PlaceHeading* m_heading;
    Label* m_expected;
    Label* m_flushness;
    InstrumentBox* m_instrument;
    std::vector<QPushButton*> m_buttons;
    EntriesTable* m_entries;
    ChecksView* m_checks;
};

} // namespace caprail
