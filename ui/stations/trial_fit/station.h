// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <stations/common/station.h>
#include <tables/table.h>
#include <text/label.h>

class QPushButton;
class QStackedWidget;

namespace caprail {

class ChecksView;
class EntriesTable;
class EntryField;
class PlanView;
class TrialFitWay;
struct TrialRow;

/// The trial fit: the girdle laid on its stacks, and what is looked at then, once for the engine and once per throw.
/// p, f or a measured clearance answers an item and goes on to the next; a fail opens a finding. While the gate is
/// shut the panel says why, each reason a jump to its place.
class TrialFitStation : public StationPanel {
    Q_OBJECT
public:
    explicit TrialFitStation(RecordSession& session, QWidget* parent = nullptr);
    [[nodiscard]] Station station() const override { return Station::trialFit; }
    [[nodiscard]] QString help() const override;
    [[nodiscard]] std::vector<Caution> cautions() const override;
    void refresh() override;
    /// "way", "throw-2" or an item's name.
    void select(const QString& subject) override;
    [[nodiscard]] QString subject() const override;
    [[nodiscard]] EntryField* entryField() const override { return m_field; }
    [[nodiscard]] TrialId item() const { return m_item; }

private:
    void build();
    void fillRows();
    void choose(TrialId id);
    /// A throw, the pickup or the dipstick of the diagram: its first item that is not good.
    void chooseOnPlan(const QString& place);
    void refreshPlan();
    void step(int by);
    void askForAnswer();
    Result<void> store(const QString& text);
    [[nodiscard]] std::vector<TrialId> items() const;
    void refreshGate();
    TrialId m_item{TrialItem::dipstick, 0};
    TrialFitWay* m_way;
    PlanView* m_plan;
    List<TrialRow, TrialId>* m_rows;
    Label* m_gate;
    QStackedWidget* m_entry; ///< the field, or what holds the gate
    EntryField* m_field;
    QPushButton* m_pass;
    QPushButton* m_fail;
    ChecksView* m_holding;
    EntriesTable* m_entries;
};

} // namespace caprail
