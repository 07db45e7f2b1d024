// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>
#include <session/record_session.h>
#include <tables/table.h>
#include <text/label.h>
#include <work/warm_look.h>

class QComboBox;
class QLineEdit;

namespace caprail {

class BearingsFilm;

/// Every clearance as it would be with block and crank at other temperatures: a look ahead, never a verdict, and not
/// stored. Coefficients start from a handbook and can be changed.
class BearingsWarm : public QWidget {
    Q_OBJECT
public:
    /// `film` lies beside it and is told of every temperature.
    BearingsWarm(RecordSession& session, BearingsFilm& film, QWidget* parent = nullptr);
    void refresh();
    void focusField();

private:
    void build();
    [[nodiscard]] Result<Warming> read() const;
    void takeMaterial(const QComboBox* box, QLineEdit* coefficient);
    RecordSession& m_session;
    BearingsFilm& m_film;
    QComboBox *m_blockIs, *m_crankIs;
    QLineEdit *m_block, *m_crank, *m_measuredAt, *m_blockNow, *m_crankNow;
    Table<WarmClearance, JournalId>* m_table;
    Label* m_remark;
};

} // namespace caprail
