// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// The shape of a journal, and the clearance of the bearing that runs on it.
#include <optional>
#include <span>
#include <string>
#include <units/band.h>
#include <units/format.h>
#include <units/length.h>
#include <base/problem.h>
#include <vector>

namespace caprail {

/// One micrometer reading of a journal.
struct DiameterReading {
    std::int64_t station = 1;   ///< along the journal, 1 at the front
    std::int64_t direction = 1; ///< around it: 1 vertical (square to the parting line), 2 horizontal
    Length diameter;
};
inline constexpr std::int64_t verticalDirection = 1;

/// A journal from its readings. Repeated readings of one place are averaged first, so that only the journal's shape is
/// called taper or out-of-round.
struct JournalShape {
    Length mean;              ///< over the places
    Length smallest, largest; ///< of the places
    Length taper;             ///< largest difference along the journal in one direction
    Length outOfRound;        ///< largest difference around it at one station
    std::optional<Length> verticalMean;
    std::vector<std::pair<std::int64_t, Length>> vertical; ///< station and vertical diameter there, by station
    std::size_t stations = 0, directions = 0;
    std::string missing; ///< what is still to be read, as a sentence; empty: two stations × two directions are there
    [[nodiscard]] bool isComplete() const { return missing.empty(); }
};
/// Refuses no readings, a station or direction below 1, and a diameter that is not above zero.
Result<JournalShape> journalShape(std::span<const DiameterReading> readings);

/// Anything read at one station of a bearing: a bore diameter, a housing diameter or, by gauging strip, a clearance.
struct StationReading {
    std::int64_t station = 1;
    Length value;
};

/// The clearance of one bearing: its worst places, which are what is judged, and what was read.
struct BearingClearance {
    /// Smallest bore less the largest journal diameter in any direction (a journal turns), and largest bore less the
    /// smallest journal diameter.
    Length smallest, largest;
    Length mean;                          ///< of the stations below, to be shown: never judged
    std::vector<StationReading> stations; ///< vertical clearances, station by station, in their order
    std::vector<StationReading> bores;    ///< as read, repeats of a station averaged; empty for a gauging strip
    [[nodiscard]] Length range() const { return largest - smallest; }
};
/// Clearance = bore − journal. Bores are square to the parting line, with the shells in and the cap at full torque; for
/// `stations` the journal's vertical diameter there is taken, or its vertical mean where it was not read there.
/// Refuses no bore reading, a bore that is not above zero, and a journal without a vertical reading. A clearance below
/// zero is given as it is: it is out of any band, and says that something was read wrong.
Result<BearingClearance> clearanceFromBore(std::span<const StationReading> bores, const JournalShape& journal);
/// Clearance = housing − both shells − journal, shell thickness at the crown. Refuses as above, and a shell that is not
/// above zero.
Result<BearingClearance> clearanceFromHousing(std::span<const StationReading> housings, Length upperShell,
                                              Length lowerShell, const JournalShape& journal);
/// A gauging strip shows the clearance itself. Refuses no reading and a reading that is not above zero.
Result<BearingClearance> clearanceFromStrip(std::span<const StationReading> clearances);

/// Taper and out-of-round of a journal are at most 0.0005 in each (common practice, no source).
inline constexpr Length usualFormLimit = tenths(5);

/// 0.00075 to 0.0010 of the journal's diameter (common practice, no source), to whole nanometres. Refuses a diameter
/// that is not above zero.
Result<Band> defaultClearanceBand(Length journalDiameter);

/// "0.0023 to 0.0025 in, mean 0.0024 in over 2 stations."
std::string describe(const BearingClearance&, const Units&);
/// "Diameter 2.4482 in, taper 0.0001 in, out-of-round 0.0002 in." and what is missing.
std::string describe(const JournalShape&, const Units&);

} // namespace caprail
