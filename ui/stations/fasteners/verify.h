// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <stations/fasteners/page.h>
#include <tables/table.h>
#include <text/label.h>

class QProgressBar;
class QPushButton;

namespace caprail {

class EntryField;
class InstrumentBox;
class PlaceHeading;
struct MovedRow;

/// The verify round: with the stacks off, every main-cap and rod fastener in sequence at full torque. H or Enter: it
/// held; an angle and Enter: it moved. A round can be left and gone on with at any time. What moved shows at once where
/// the gap now lies and what became stale.
class FastenersVerify : public FastenersPage {
    Q_OBJECT
public:
    explicit FastenersVerify(RecordSession& session, QWidget* parent = nullptr);
    void refresh(FastenerId selected) override;
    void focusField() override;
    void type(const QString& text) override;
    [[nodiscard]] std::vector<FastenerId> order() const override;
    [[nodiscard]] EntryField* field() const { return m_field; }
    [[nodiscard]] QString progressText() const;
    /// Where the round goes on; nothing when none is under way.
    [[nodiscard]] std::optional<FastenerId> next() const;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void build();
    void showRound();
    void showMoved();
    void begin();
    void takeStacksOff();
    void held();
    [[nodiscard]] Result<RoundOutcome> read(const QString& text) const;
    Result<void> store(const RoundOutcome& outcome);
    FastenerId m_fastener;
    PlaceHeading* m_heading;
    EntryField* m_field;
    InstrumentBox* m_instrument;
    Label* m_remark;
    QProgressBar* m_progress;
    Label* m_state;
    QPushButton* m_stacks;
    QPushButton* m_begin;
    QPushButton* m_held;
    List<MovedRow, FastenerId>* m_moved;
};

} // namespace caprail
