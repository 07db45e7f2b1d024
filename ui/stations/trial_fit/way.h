// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>
#include <session/record_session.h>
#include <text/label.h>

class QComboBox;
class QPushButton;

namespace caprail {

/// Which face of the girdle is up, and where its cutout lies.
class TrialFitWay : public QWidget {
    Q_OBJECT
public:
    explicit TrialFitWay(RecordSession& session, QWidget* parent = nullptr);
    void refresh();
    [[nodiscard]] QPushButton* button() const { return m_set; }

private:
    void store();
    RecordSession& m_session;
    QComboBox* m_face;
    QComboBox* m_end;
    QComboBox* m_side;
    QPushButton* m_set;
    Label* m_state;
    std::int64_t m_shown = -1; ///< the entry that the boxes show
};

} // namespace caprail
