// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QString>
#include <vector>
#include <work/gauge_line.h>

namespace caprail {

/// How a gauge is connected.
enum class GaugeWay { keyboard, serial };
/// What ends a line: carriage return, line feed or the Enter key; the Tab key; or a pause in which nothing comes.
enum class GaugeEnd { line, tab, pause };
enum class GaugeParity { none, even, odd };

/// One gauge of this computer, as a person set it once. Kept in the user's configuration; nothing of it is in a record.
struct GaugeSetup {
    QString instrument; ///< its name in records, which a reading then carries; empty: as chosen at the station
    GaugeWay way = GaugeWay::keyboard;
    GaugeEnd end = GaugeEnd::line;
    GaugeLineForm form;
    QString device; ///< of a serial line, "/dev/ttyUSB0"
    int speed = 9600;
    int dataBits = 8; ///< 7 or 8
    int stopBits = 1; ///< 1 or 2
    GaugeParity parity = GaugeParity::none;
    bool isUsed = true;

    /// As it reads in a sentence: its instrument, else where it is connected.
    [[nodiscard]] QString name() const;
    friend bool operator==(const GaugeSetup&, const GaugeSetup&) = default;
};

/// Those of this computer, in the order in which they were added.
std::vector<GaugeSetup> loadGauges();
void saveGauges(const std::vector<GaugeSetup>& gauges);

} // namespace caprail
