// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <stations/common/station.h>
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

/// The verify round: with the stacks off, every main-cap and rod fastener in sequence, as its group is verified: at full
/// torque or by its witness mark (H: it held; an angle and Enter: it moved), or by the stretch that is read. Enter alone
/// says nothing and stores nothing. A round can be left and gone on with at any time. What moved shows at once where the
/// gap now lies and what became stale.
class FastenersVerify : public FastenersPage {
    Q_OBJECT
public:
    explicit FastenersVerify(RecordSession& session, QWidget* parent = nullptr);
    void refresh(FastenerId selected) override;
    void focusField() override;
    void type(const QString& text) override;
    /// What the button for «held» types, and its name; none where no word is taken.
    [[nodiscard]] std::vector<BenchWord> words() const;
    [[nodiscard]] std::vector<FastenerId> order() const override;
    [[nodiscard]] EntryField* field() const { return m_field; }
    [[nodiscard]] QString progressText() const;
    /// Where the round goes on; nothing when none is under way.
    [[nodiscard]] std::optional<FastenerId> next() const;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    /// How the selected fastener is verified.
    [[nodiscard]] VerifyMethod method() const;
    void build();
    void showRound();
    void askForOutcome(std::int64_t round);
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
    InstrumentBox* m_gauge; ///< by which a stretch is read
    Label* m_remark;
    QProgressBar* m_progress;
    Label* m_state;
    QPushButton* m_stacks;
    QPushButton* m_begin;
    QPushButton* m_held;
    List<MovedRow, FastenerId>* m_moved;
};

} // namespace caprail
