// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>
#include <session/record_session.h>
#include <tables/table.h>
#include <text/label.h>
#include <work/warm_look.h>

class QComboBox;
class QGridLayout;
class QLineEdit;

namespace caprail {

class FilmChart;

/// The least oil film of each measured bearing, as it was measured and warm, for a speed, an oil and a load that
/// somebody names: a look ahead, never a verdict, and not stored. Without a load there is none, and it says so.
class BearingsFilm : public QWidget {
    Q_OBJECT
public:
    explicit BearingsFilm(RecordSession& session, QWidget* parent = nullptr);
    /// The clearances as the page beside it shows them, and how warm the oil is; none: the temperatures there cannot be
    /// read.
    void refresh(const std::vector<WarmClearance>& clearances, std::optional<Temperature> oilNow);

signals:
    void edited();

private:
    void build();
    QGridLayout* buildFields();
    void takeGrade();
    /// Refuses what cannot be read, in one sentence.
    [[nodiscard]] Result<FilmQuestion> read() const;
    RecordSession& m_session;
    QLineEdit *m_speed, *m_load, *m_width, *m_at40, *m_at100;
    QComboBox* m_grade;
    Table<BearingFilm, JournalId>* m_table;
    FilmChart* m_chart;
    Label* m_remark;
};

} // namespace caprail
