// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <stations/common/station.h>

class QTabWidget;

namespace caprail {

class EngineBands;
class EngineLayoutPage;
class EngineOwnChecks;
class EngineParts;
class EnginePeople;
class EngineValues;

/// The engine and what is asked of it: description and layout, bands and rules, people and instruments, the shop's own
/// checks, whose figures the values are, and the parts. All of it is entered as entries, so a change in mid-build is recorded and makes stale what was judged by it.
class EngineStation : public StationPanel {
    Q_OBJECT
public:
    explicit EngineStation(RecordSession& session, QWidget* parent = nullptr);
    [[nodiscard]] Station station() const override { return Station::engine; }
    [[nodiscard]] QString help() const override;
    [[nodiscard]] std::vector<Caution> cautions() const override;
    void refresh() override;
    /// "engine", "layout", "bands", "rules", "people", "instruments", "own checks", "values", "parts", "zero checks", a band's, an instrument's or a
    /// check's name.
    void select(const QString& subject) override;

    [[nodiscard]] EngineLayoutPage* layoutPage() const { return m_layout; }
    [[nodiscard]] EnginePeople* peoplePage() const { return m_people; }
    [[nodiscard]] QTabWidget* tabs() const { return m_tabs; }

private:
    QTabWidget* m_tabs;
    EngineLayoutPage* m_layout;
    EngineBands* m_bands;
    EnginePeople* m_people;
    EngineOwnChecks* m_ownChecks;
    EngineValues* m_values;
    EngineParts* m_parts;
};

} // namespace caprail
