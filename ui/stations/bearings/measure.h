// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>
#include <array>
#include <stations/bearings/places.h>
#include <text/label.h>

class QPushButton;
class QSpinBox;

namespace caprail {

class EntriesTable;
class EntryField;
class InstrumentBox;
class OptionalField;
class PlaceHeading;

/// One pass over the journals: diameters, bores with shells, bare housings or gauging strips. The field asks for one
/// place after the other; Enter stores and goes to the next.
class BearingsMeasure : public QWidget {
    Q_OBJECT
public:
    explicit BearingsMeasure(RecordSession& session, QWidget* parent = nullptr);
    void setMode(BearingsMode mode);
    void refresh();
    /// Goes to a journal: its first place without a reading, else its first.
    void choose(JournalId journal);
    void focusField();
    void type(const QString& text);
    [[nodiscard]] const BearingSlot& slot() const { return m_slot; }
    [[nodiscard]] SlotCounts counts() const;
    [[nodiscard]] EntryField* field() const { return m_field; }
    [[nodiscard]] OptionalField* temperature() const { return m_temperature; }

signals:
    void chosen(caprail::JournalId journal);

private:
    void build();
    void askForValue();
    void step(int by);
    void go(const BearingSlot& slot);
    [[nodiscard]] InstrumentBox* instrument() const;
    Result<void> store(const Entered<Length>& value);
    [[nodiscard]] Result<Body> entryOf(const Entered<Length>& value) const;
    RecordSession& m_session;
    BearingsMode m_mode = BearingsMode::journals;
    BearingSlot m_slot;
    PlaceHeading* m_heading;
    EntryField* m_field;
    QSpinBox *m_stations, *m_directions;
    std::array<InstrumentBox*, 3> m_instruments;
    OptionalField* m_temperature;
    Label *m_places, *m_results, *m_next;
    QPushButton *m_crank, *m_shells, *m_laidIn;
    EntriesTable* m_entries;
};

} // namespace caprail
