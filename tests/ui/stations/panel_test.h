// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// A record on which the engine, bearings, fasteners and history panels are tried, with its panel kept up to date as
/// the window does it.
#include "station_record.h"

#include <stations/common/station.h>

namespace caprail {

template <class Panel> class PanelTest : public testing::Test {
protected:
    PanelTest() : panel(*bench.session) {
        QObject::connect(bench.session.get(), &RecordSession::changed, &panel, [this] { panel.refresh(); });
        panel.resize(1060, 680);
        panel.show();
    }
    [[nodiscard]] const Facts& facts() const { return bench.facts(); }
    [[nodiscard]] std::int64_t entries() const { return bench.session->ledger().size(); }
    StationRecord bench;
    Panel panel;
};

} // namespace caprail
