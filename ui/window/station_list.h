// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QListWidget>
#include <session/record_session.h>

namespace caprail {

/// The stations in the order of the job, each with a sign for how its checks stand and how many are open.
class StationList : public QListWidget {
    Q_OBJECT
public:
    explicit StationList(RecordSession& session, QWidget* parent = nullptr);
    void refresh();
    void show(Station station);

signals:
    void stationChosen(caprail::Station station);

private:
    RecordSession& m_session;
};

} // namespace caprail
