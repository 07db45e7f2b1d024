// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <session/girdle_runner.h>
#include <session/plan_runner.h>
#include <stations/common/station.h>
#include <stations/girdle/diagram.h>

class QStackedWidget;

namespace caprail {

class GirdleActions;
class GirdleBoard;
class GirdleFeel;
class GirdleGaps;
class GirdleKit;
class GirdleLoadPage;
class GirdlePage;
class GirdleRecheck;
class GirdleStacks;
class GirdleSurvey;
class PlanTools;
class ViewSwitches;

/// The main job: gaps, shims, stacks and rechecks under the girdle, and the load that is left. The diagram is the form:
/// a place is selected, a value is typed, Enter stores it and goes on. Alt+1 to Alt+6 choose the mode.
class GirdleStation : public StationPanel {
    Q_OBJECT
public:
    explicit GirdleStation(RecordSession& session, QWidget* parent = nullptr);
    [[nodiscard]] Station station() const override { return Station::girdle; }
    [[nodiscard]] QString help() const override;
    [[nodiscard]] std::vector<Caution> cautions() const override;
    void refresh() override;
    /// A position's code; the mode follows what that position needs first. "shims" opens the kit, "feel" the study
    /// of a feel, "load" the load in the block.
    void select(const QString& subject) override;

    [[nodiscard]] GirdleMode mode() const { return m_mode; }
    void setMode(GirdleMode mode);
    [[nodiscard]] Position position() const { return m_position; }
    [[nodiscard]] QString subject() const override;
    [[nodiscard]] EntryField* entryField() const override;
    /// Built when first asked for, as the next one.
    [[nodiscard]] GirdleKit* kit();
    [[nodiscard]] GirdleRecheck* recheck();
    [[nodiscard]] GirdleFeel* feel();
    [[nodiscard]] GirdleLoadPage* load();
    [[nodiscard]] PlanRunner& planRunner() { return m_runner; }

private:
    void build();
    void listenTo(GirdlePage* page);
    QWidget* buildBar();
    QWidget* buildWork();
    void choose(Position position);
    void step(int by);
    void refreshBoard();
    /// Asks for the plan of what is known; while the plate is being worked out, nothing.
    void plan();
    /// With the plate worked out there is a load to tell, and to plan for.
    void girdleReady();
    void planReady();
    /// What is known, in the mode that is on.
    void showWork();
    [[nodiscard]] GirdlePage* page() const;
    void focusMode();
    /// The modes that take the whole room: the kit and the study of a feel.
    [[nodiscard]] bool isWholePage() const { return m_mode == GirdleMode::shims || m_mode == GirdleMode::feel; }

    PlanRunner m_runner;
    GirdleRunner& m_girdle;
    GirdleMode m_mode = GirdleMode::gaps;
    Position m_position;
    ViewSwitches* m_modes = nullptr;
    GirdleSurvey* m_survey;
    PlanTools* m_tools;
    GirdleActions* m_actions;
    GirdleBoard* m_board;
    GirdleGaps* m_gaps;
    GirdleKit* m_kit = nullptr;
    GirdleStacks* m_stacks;
    GirdleRecheck* m_recheck = nullptr;
    GirdleFeel* m_feel = nullptr;
    GirdleLoadPage* m_load = nullptr;
    QStackedWidget* m_body;  ///< the work area, the kit, or the study of a feel
    QStackedWidget* m_left;  ///< diagram and chart, or the board
    QStackedWidget* m_right; ///< the page of the mode
};

} // namespace caprail
