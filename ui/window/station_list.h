// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <session/record_session.h>
#include <tables/table.h>

namespace caprail {

/// The stations in the order of the job, each with a sign for how its checks stand and how many are open.
class StationList : public List<Station, Station> {
    Q_OBJECT
public:
    explicit StationList(RecordSession& session, QWidget* parent = nullptr);
    void refresh();
    void show(Station station);

signals:
    void stationChosen(caprail::Station station);
};

} // namespace caprail
