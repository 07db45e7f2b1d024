// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QTimer>
#include <QWidget>
#include <assessment/repeatability.h>
#include <measure/gauge_study.h>
#include <session/record_session.h>
#include <text/label.h>

class QComboBox;

namespace caprail {

class PlainTable;

/// How well people repeat themselves: the pooled scatter of each with each instrument over the record, and a study of
/// one quantity that splits the scatter into places, people and repeatability, each held against the band that the readings
/// serve (%GRR, number of distinct categories). The study is made of readings that are
/// in the record anyway: when two or three people have each read the same places twice or more, it is there.
class HistoryRepeatability : public QWidget {
    Q_OBJECT
public:
    explicit HistoryRepeatability(RecordSession& session, QWidget* parent = nullptr);
    void refresh();
    [[nodiscard]] PlainTable* pooled() const { return m_pooled; }
    [[nodiscard]] PlainTable* split() const { return m_split; }
    [[nodiscard]] PlainTable* counts() const { return m_counts; }
    [[nodiscard]] QComboBox* quantity() const { return m_quantity; }
    [[nodiscard]] QString words() const;

private:
    void build();
    /// Collects for a moment, then lets the window live on; once all is collected, shows it.
    void gather();
    void showPooled();
    void showStudy();
    void showSplit(const GaugeStudy& study, const std::optional<Band>& band);
    void showCounts(const CrossedReadings& crossed);
    void goTo(const QString& place);
    RecordSession& m_session;
    ReadingsGathering m_readings;
    QTimer m_timer;
    PlainTable* m_pooled;
    QComboBox* m_quantity;
    Label* m_words;
    PlainTable* m_split;
    PlainTable* m_counts;
};

} // namespace caprail
