// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <session/plan_runner.h>
#include <stations/girdle/page.h>
#include <text/label.h>
#include <work/block_load.h>

class QComboBox;
class QPushButton;

namespace caprail {

class ChecksView;
class EntryField;
class PlaceHeading;

/// The stacks: what the plan proposes for the places that are open, taken over in one action, or stacks built by hand by typing shim names; pins,
/// the objective, and how far what was built is from the best.
class GirdleStacks : public GirdlePage {
    Q_OBJECT
public:
    GirdleStacks(RecordSession& session, PlanRunner& runner, QWidget* parent = nullptr);
    void refresh(Position selected) override;
    /// Shows what came of the plan since; all else stands as it was.
    void showPlan();
    void focusField() override;
    bool type(const QString& text) override;
    /// What the plan is for: the open places, or everything where the person asked for that.
    [[nodiscard]] PlanScope scope() const;

signals:
    void scopeChosen();
    void kitAsked();

private:
    void build();
    void askForStack();
    void refreshPlan();
    void refreshLoad();
    void refreshPlace();
    [[nodiscard]] const PlannedStack* planned() const;
    /// The stack at the position with the shims typed for it, in words: thickness, residual, and in band or not.
    [[nodiscard]] QString echoOf(const std::vector<std::string>& shims) const;
    void takePlanOver();
    void togglePin();
    void confirm();
    void setAsideFromStack();
    void setObjective(int index);
    /// What the shims typed for a position do to the load on its cap; empty while that is not known.
    [[nodiscard]] QString effectOf(Length residual) const;
    PlanRunner& m_runner;
    SharedGirdle m_girdle;           ///< as of the last refresh; null: not known, or not worked out yet
    std::optional<BlockLoad> m_load; ///< with it
    Position m_position;
    Label* m_plan;
    Label* m_unmet;
    Label* m_built;
    QPushButton* m_kit; ///< the way there while no shim is listed; Enter goes it
    QPushButton* m_takeOver;
    QPushButton* m_anew; ///< down: what stands is planned anew as well
    QComboBox* m_objective;
    PlaceHeading* m_heading;
    EntryField* m_field;
    QPushButton* m_pin;
    QPushButton* m_confirm;
    QPushButton* m_aside;
    ChecksView* m_checks;
    Label* m_flushness;
};

} // namespace caprail
