// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <stations/common/station.h>
#include <tables/table.h>
#include <text/label.h>

class QPushButton;

namespace caprail {

class ChecksView;
class EntriesTable;
class EntryField;
class InstrumentBox;
class OptionalField;
class PickupSectionView;

/// The pickup's clearance over the pan floor: the stack-up in section, its terms measured one after the other, the
/// clearance they add up to, and what to change to reach the middle of the band. Up and Down choose the term; Enter
/// stores and goes on.
class PickupStation : public StationPanel {
    Q_OBJECT
public:
    explicit PickupStation(RecordSession& session, QWidget* parent = nullptr);
    [[nodiscard]] Station station() const override { return Station::pickup; }
    [[nodiscard]] QString help() const override;
    [[nodiscard]] std::vector<Caution> cautions() const override;
    void refresh() override;
    /// A term's name ("pan depth") or a part's ("gasket").
    void select(const QString& subject) override;
    [[nodiscard]] EntryField* entryField() const override { return m_field; }
    [[nodiscard]] QString subject() const override { return QStringLiteral("pickup"); }
    [[nodiscard]] PickupTerm term() const { return m_term; }
    [[nodiscard]] OptionalField* temperature() const { return m_temperature; }

private:
    void build();
    void choose(PickupTerm term);
    void askForTerm();
    Result<void> store(PickupTerm term, const Entered<Length>& value);
    void changePart();
    PickupTerm m_term = PickupTerm::panDepth;
    PickupSectionView* m_section;
    List<PickupTerm, PickupTerm>* m_terms;
    Label* m_how;
    EntryField* m_field;
    InstrumentBox* m_instrument;
    OptionalField* m_temperature;
    Label* m_clearance;
    Label* m_verdict;
    Label* m_advice;
    QPushButton* m_change;
    QPushButton* m_why;
    EntriesTable* m_entries;
};

} // namespace caprail
