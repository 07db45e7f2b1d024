// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <stations/common/station.h>
#include <text/label.h>

class QTabWidget;

namespace caprail {

class ChecksView;
class ClosingFindings;
class ClosingPhotos;
class ClosingSteps;

/// Closing up: what still holds the gate, each a jump to its place; the steps in order, ticked by name; findings, notes
/// and photos; the sign-off and, after it, a new build.
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

private:
    Label* m_gate;
    ClosingSteps* m_steps;
    ChecksView* m_holding;
    QTabWidget* m_tabs;
    ClosingFindings* m_findings;
    ClosingPhotos* m_photos;
};

} // namespace caprail
