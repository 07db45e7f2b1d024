// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <stations/bearings/places.h>
#include <stations/common/station.h>

class QStackedWidget;

namespace caprail {

class BearingsFilm;
class BearingsFits;
class BearingsMeasure;
class BearingsShells;
class BearingsWarm;
class ClearanceChart;
class PlanTools;
class PlanView;
class ViewSwitches;

/// Bearings: journals and bores measured on the diagram, what they come to, fits, shells, and clearances and oil films
/// when warm.
class BearingsStation : public StationPanel {
    Q_OBJECT
public:
    explicit BearingsStation(RecordSession& session, QWidget* parent = nullptr);
    [[nodiscard]] Station station() const override { return Station::bearings; }
    [[nodiscard]] QString help() const override;
    [[nodiscard]] std::vector<Caution> cautions() const override;
    void refresh() override;
    /// "main-3", "rod-5", "crank end play:1", "shells", "fits".
    void select(const QString& subject) override;

    void setMode(BearingsMode mode);
    [[nodiscard]] QString subject() const override;
    [[nodiscard]] EntryField* entryField() const override;
    [[nodiscard]] BearingsMode mode() const { return m_mode; }

private:
    QWidget* buildBar();
    QWidget* buildWork();
    void refreshDiagram();
    void placeChosen(const QString& place);
    void focusField();
    [[nodiscard]] QString selectedPlace() const;
    BearingsMode m_mode = BearingsMode::journals;
    PlanView* m_plan;
    PlanTools* m_tools;
    ClearanceChart* m_chart;
    BearingsMeasure* m_measure;
    BearingsFits* m_fits;
    BearingsShells* m_shells;
    BearingsFilm* m_film;
    BearingsWarm* m_warm;
    QStackedWidget* m_body;
    QStackedWidget* m_left; ///< diagram and chart, or the oil films beside the warm clearances
    QStackedWidget* m_right;
    ViewSwitches* m_modes = nullptr;
};

} // namespace caprail
