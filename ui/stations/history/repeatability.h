// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QTimer>
#include <QWidget>
#include <assessment/repeatability.h>
#include <measure/gauge_study.h>
#include <session/record_session.h>
#include <tables/table.h>
#include <text/label.h>

class QComboBox;

namespace caprail {

struct ScatterShare;
struct ReadingCounts;

/// How well people repeat themselves: the pooled scatter of each with each instrument over the record, and a study of
/// one quantity that splits the scatter into places, people and repeatability, each held against the band that the readings
/// serve (%GRR, number of distinct categories). The study is made of readings that are
/// in the record anyway: when two or three people have each read the same places twice or more, it is there.
class HistoryRepeatability : public QWidget {
    Q_OBJECT
public:
    explicit HistoryRepeatability(RecordSession& session, QWidget* parent = nullptr);
    void refresh();

private:
    void build();
    /// Collects for a moment, then lets the window live on; once all is collected, shows it.
    void gather();
    void showPooled();
    void showStudy();
    void showSplit(const GaugeStudy& study, const std::optional<Band>& band);
    void showCounts(const CrossedReadings& crossed);
    /// To where the readings of a place are made.
    void goTo(const std::string& place);
    RecordSession& m_session;
    ReadingsGathering m_readings;
    QTimer m_timer;
    using Who = std::tuple<MeasuredQuantity, std::string, std::string>;
    Table<PersonalRepeatability, Who>* m_pooled;
    QComboBox* m_quantity;
    Label* m_words;
    Table<ScatterShare, std::size_t>* m_split;
    Table<ReadingCounts, std::string>* m_counts;
};

} // namespace caprail
