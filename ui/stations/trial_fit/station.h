// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <stations/common/station.h>
#include <tables/table.h>
#include <text/label.h>
#include <work/trial_work.h>

class QPushButton;
class QStackedWidget;

namespace caprail {

class ChecksView;
class EntriesTable;
class EntryField;
class InstrumentBox;
class PlanView;
class TrialFitWay;
struct TrialRow;

/// The trial fit: the crank turned, the girdle laid on its stacks and its nuts brought to torque, and what is looked at
/// then, once for the engine and once per throw. p, f or a measured clearance answers an item and goes on to the next; a
/// fail opens a finding. While the gate is shut the panel says why, each reason a jump to its place.
class TrialFitStation : public StationPanel {
    Q_OBJECT
public:
    explicit TrialFitStation(RecordSession& session, QWidget* parent = nullptr);
    [[nodiscard]] Station station() const override { return Station::trialFit; }
    [[nodiscard]] QString help() const override;
    [[nodiscard]] std::vector<Caution> cautions() const override;
    void refresh() override;
    /// "way", "girdle-nuts", "turning-before the girdle", "own-tray:2", "throw-2" or an item's name. While a nut is loose,
    /// an item leads to the nuts.
    void select(const QString& subject) override;
    [[nodiscard]] QString subject() const override;
    [[nodiscard]] EntryField* entryField() const override { return m_field; }
    [[nodiscard]] std::vector<BenchWord> benchWords() const override;
    [[nodiscard]] const TrialTask& task() const { return m_task; }

private:
    void build();
    void fillRows();
    void choose(const TrialTask& task);
    /// A throw, the pickup or the dipstick of the diagram: its first item that is not good.
    void chooseOnPlan(const QString& place);
    void refreshPlan();
    void step(int by);
    void ask();
    void askForAnswer(TrialId place);
    void askForNut();
    void askForTurning(TurningStage stage);
    void askOwnCheck(const OwnPlace& place);
    Result<void> store(TrialId place, const QString& text);
    /// Stores it; once nothing more is asked of this line, goes on to the next.
    Result<void> storeAndGoOn(Result<Body> entry);
    void refreshGate();
    TrialTask m_task = TrialId{TrialItem::dipstick, 0};
    TrialFitWay* m_way;
    PlanView* m_plan;
    List<TrialRow, TrialTask>* m_rows;
    Label* m_gate;
    QStackedWidget* m_entry; ///< the field, or what holds the gate
    EntryField* m_field;
    InstrumentBox* m_instrument;
    QPushButton* m_pass;
    QPushButton* m_fail;
    ChecksView* m_holding;
    EntriesTable* m_entries;
};

} // namespace caprail
