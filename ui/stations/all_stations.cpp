// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/all_stations.h>

#include <stations/bearings/station.h>
#include <stations/closing/station.h>
#include <stations/engine/station.h>
#include <stations/fasteners/station.h>
#include <stations/girdle/station.h>
#include <stations/history/station.h>
#include <stations/pickup/station.h>
#include <stations/trial_fit/station.h>

namespace caprail {

StationPanel* makeStation(Station station, RecordSession& session, QWidget* parent) {
    switch (station) {
    case Station::engine:
        return new EngineStation(session, parent);
    case Station::bearings:
        return new BearingsStation(session, parent);
    case Station::fasteners:
        return new FastenersStation(session, parent);
    case Station::girdle:
        return new GirdleStation(session, parent);
    case Station::trialFit:
        return new TrialFitStation(session, parent);
    case Station::pickup:
        return new PickupStation(session, parent);
    case Station::closing:
        return new ClosingStation(session, parent);
    case Station::history:
        break;
    }
    return new HistoryStation(session, parent);
}

} // namespace caprail
