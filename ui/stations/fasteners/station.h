// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <stations/common/station.h>

class QStackedWidget;

namespace caprail {

class FastenersClamp;
class FastenersGroups;
class FastenersPage;
class FastenersTighten;
class FastenersVerify;
class PlanTools;
class PlanView;
class ViewSwitches;

enum class FastenersMode { tighten, verify, groups, clamp };

/// Fasteners: what is specified, what was brought to it, and the verify rounds, with the diagram as the form.
class FastenersStation : public StationPanel {
    Q_OBJECT
public:
    explicit FastenersStation(RecordSession& session, QWidget* parent = nullptr);
    [[nodiscard]] Station station() const override { return Station::fasteners; }
    [[nodiscard]] QString help() const override;
    [[nodiscard]] std::vector<Caution> cautions() const override;
    void refresh() override;
    /// A fastener's code, "round", "groups", a group's name.
    void select(const QString& subject) override;

    void setMode(FastenersMode mode);
    [[nodiscard]] QString subject() const override;
    [[nodiscard]] EntryField* entryField() const override;
    [[nodiscard]] std::vector<BenchWord> benchWords() const override;
    [[nodiscard]] FastenersMode mode() const { return m_mode; }
    [[nodiscard]] FastenerId selected() const { return m_fastener; }

private:
    QWidget* buildBar();
    void choose(FastenerId fastener);
    void step(int by);
    void refreshDiagram();
    [[nodiscard]] FastenersPage* page() const;
    FastenersMode m_mode = FastenersMode::tighten;
    FastenerId m_fastener;
    PlanView* m_plan;
    PlanTools* m_tools;
    FastenersTighten* m_tighten;
    FastenersVerify* m_verify;
    FastenersGroups* m_groups;
    FastenersClamp* m_clamp;
    QStackedWidget* m_body;
    QStackedWidget* m_right;
    ViewSwitches* m_modes = nullptr;
};

} // namespace caprail
