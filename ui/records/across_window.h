// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QMainWindow>
#include <shop/across.h>
#include <shop/shop_index.h>
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
    struct Record {
        AcrossRecord figures;
        QString templateName, layout;
    };
    AcrossWindow(std::vector<Record> records, Units units, UtcTime now, QWidget* parent = nullptr);
    void setUnits(const Units& units);

private:
    QWidget* spreadPage();
    QWidget* movementPage();
    QWidget* instrumentPage();
    void choose();
    void showSpread();
    void showMovement();
    void showInstruments();
    void save(const std::string& csv, const QString& name);

    std::vector<Record> m_records;
    std::vector<AcrossRecord> m_chosen;
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

/// The assessed records of a list with their figures. Refuses when the index cannot be read to its end.
Result<std::vector<AcrossWindow::Record>> recordsFor(ShopIndex& index, const std::vector<ShopRow>& rows);

} // namespace caprail
