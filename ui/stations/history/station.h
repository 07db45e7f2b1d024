// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <stations/common/station.h>

class QTabWidget;

namespace caprail {

class HistoryChanges;
class HistoryLedger;
class HistoryRepeatability;
class HistoryVerify;

/// What was seen and done, in order: the whole ledger, the verify rounds fastener by fastener, how well people
/// repeat themselves, and what was changed after something had been judged by it.
class HistoryStation : public StationPanel {
    Q_OBJECT
public:
    explicit HistoryStation(RecordSession& session, QWidget* parent = nullptr);
    [[nodiscard]] Station station() const override { return Station::history; }
    [[nodiscard]] QString help() const override;
    [[nodiscard]] std::vector<Caution> cautions() const override;
    void refresh() override;
    /// "find" (the search field), "rounds", "repeatability", "changes", or an entry's number.
    void select(const QString& subject) override;
    /// Built when first asked for, as the next one: they hold half a dozen tables.
    [[nodiscard]] HistoryVerify* verifyPage();
    [[nodiscard]] HistoryRepeatability* repeatabilityPage();
    [[nodiscard]] HistoryChanges* changesPage();

private:
    void fill(int tab, QWidget* page);

    QTabWidget* m_tabs;
    HistoryLedger* m_ledger;
    HistoryVerify* m_verify = nullptr;
    HistoryRepeatability* m_repeatability = nullptr;
    HistoryChanges* m_changes = nullptr;
};

} // namespace caprail
