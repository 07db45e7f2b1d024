// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <stations/common/station.h>

namespace caprail {

/// The panel of a station, owned by `parent`.
StationPanel* makeStation(Station station, RecordSession& session, QWidget* parent);

} // namespace caprail
