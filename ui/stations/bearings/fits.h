// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>
#include <session/record_session.h>
#include <tables/table.h>

class QPushButton;

namespace caprail {

class EntriesTable;
class EntryField;
class InstrumentBox;
class OptionalField;
class PlaceHeading;
struct FitRow;

/// Crank end play, rod side clearance per throw and the fits of the shop's own, as a plain list with bands. The
/// selected one is what the field asks for.
class BearingsFits : public QWidget {
    Q_OBJECT
public:
    explicit BearingsFits(RecordSession& session, QWidget* parent = nullptr);
    void refresh();
    void choose(const FitId& id);
    void focusField();
    void type(const QString& text);
    [[nodiscard]] const FitId& id() const { return m_id; }
    [[nodiscard]] EntryField* field() const { return m_field; }
    [[nodiscard]] OptionalField* temperature() const { return m_temperature; }

signals:
    void chosen(const caprail::FitId& id);

private:
    void build();
    void step(int by);
    void go(const FitId& id);
    Result<void> store(const Entered<Length>& value);
    RecordSession& m_session;
    std::vector<FitId> m_ids; ///< in the order of the list
    FitId m_id;
    PlaceHeading* m_heading;
    EntryField* m_field;
    InstrumentBox* m_instrument;
    OptionalField* m_temperature;
    Table<FitRow, FitId>* m_table;
    QPushButton* m_bands;
    EntriesTable* m_entries;
};

/// Every fit that a band asks for: crank end play, each throw, and the shop's own with one more than were read.
std::vector<FitId> fitsAsked(const Facts& facts);
/// "Rod side clearance, throw 2", "Piston to bore, place 3"
QString fitName(const FitId& id);

} // namespace caprail
