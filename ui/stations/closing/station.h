// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <stations/common/station.h>
#include <text/label.h>

class QPushButton;
class QTabWidget;

namespace caprail {

class ChecksView;
class ClosingFindings;
class ClosingPhotos;
class ClosingSteps;
class ClosingTaskPage;

/// Closing up: the steps and how each stands; beside them what still holds the gate, each a jump to its place, or the one
/// thing that comes next, large, with the field that takes it; findings, notes and photos on pages of their own.
class ClosingStation : public StationPanel {
    Q_OBJECT
public:
    explicit ClosingStation(RecordSession& session, QWidget* parent = nullptr);
    [[nodiscard]] Station station() const override { return Station::closing; }
    [[nodiscard]] QString help() const override;
    [[nodiscard]] std::vector<Caution> cautions() const override;
    void refresh() override;
    /// "step", "sign-off", "findings", "photos" or a finding's name.
    void select(const QString& subject) override;
    [[nodiscard]] QString subject() const override;
    /// While the gate is open and the work is shown.
    [[nodiscard]] EntryField* entryField() const override;
    [[nodiscard]] QWidget* benchPicture() const override;


private:
    void showUnconfirmed();
    Label* m_gate;
    ClosingSteps* m_steps;
    Label* m_unconfirmed; ///< values that nobody confirmed
    QPushButton* m_values;
    ChecksView* m_holding;
    ClosingTaskPage* m_task;
    QTabWidget* m_tabs;
    ClosingFindings* m_findings;
    ClosingPhotos* m_photos;
};

} // namespace caprail
