// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QMainWindow>
#include <records/database_notice.h>
#include <shop/across.h>
#include <tables/table.h>
#include <text/label.h>

class QComboBox;

namespace caprail {

class AcrossChart;

/// Many engines compared: the spread of any banded quantity over all records of a template or a layout, movement in
/// verify rounds by position, wrench and person, and the instruments by the day that their calibration falls due.
/// Counts and ranges, no claim beyond them.
class AcrossWindow : public QMainWindow {
    Q_OBJECT
public:
    /// Compares what this database holds: an index of a folder or a shop's database. It is asked from a thread of its
    /// own.
    AcrossWindow(DatabasePlace place, Units units, UtcTime now, QWidget* parent = nullptr);

private:
    QWidget* spreadPage();
    QWidget* movementPage();
    QWidget* instrumentPage();
    [[nodiscard]] AcrossOf of() const;
    template <class Question, class Show> void ask(const QString& topic, Question question, Show show);
    void clear(const QString& topic);
    void askGroups();
    void choose();
    void showSpread();
    void showMovement();
    void showInstruments();
    void saveValues();
    void save(const std::string& csv, const QString& name);

    DatabaseLink* m_link;
    DatabaseNotice* m_notice;
    Units m_units;
    UtcTime m_now;
    QComboBox *m_of, *m_band, *m_by;
    Label* m_counts;
    AcrossChart* m_chart;
    Table<AcrossSpread, std::string>* m_spreads;
    Table<MovementCount, std::string>* m_movements;
    using Instrument = std::tuple<std::string, InstrumentType, std::string>; ///< name, kind, serial
    Table<AcrossInstrument, Instrument>* m_instruments;
};

} // namespace caprail
