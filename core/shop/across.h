// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <fasteners/review.h>
#include <shop/record_figures.h>

namespace caprail {

/// One record's part in the comparison of many.
struct AcrossRecord {
    std::string label; ///< "Orrin Vale, 6.2 V8"
    std::int64_t id = 0;
    RecordFigures figures;
};

/// One value of a banded quantity, and whose it is.
struct AcrossValue {
    std::string label, place;
    std::int64_t record = 0, build = 1;
    Length value;
    CheckState state = CheckState::notDone;
    std::optional<Band> limits = {}; ///< that its record judged it by
};

/// A quantity at one place over all records: counts and ranges, no more.
struct AcrossSpread {
    std::string place;
    std::size_t count = 0, out = 0;   ///< values; those that were judged out
    Length smallest, median, largest; ///< the median of an even count is the lower of the two in the middle
};

/// The names of the banded quantities that occur, in alphabetical order.
std::vector<std::string> bandsIn(const std::vector<AcrossRecord>& records);
/// All values of one, sorted by place, then value.
std::vector<AcrossValue> valuesOf(const std::vector<AcrossRecord>& records, std::string_view band);
/// The band that all of these values were judged by; none where their records set different ones, or none.
std::optional<Band> commonBand(const std::vector<AcrossValue>& values);
/// Per place, in the places' order of the engine. `values` as `valuesOf` gives them.
std::vector<AcrossSpread> spreadsOf(const std::vector<AcrossValue>& values);

/// Movement in verify rounds over all records: how often pulled, how often moved, the largest angle. Most movements
/// first, then the larger share, then the name.
enum class MovementBy { fastener, wrench, person };
std::vector<MovementCount> movementsBy(const std::vector<AcrossRecord>& records, MovementBy by);

/// An instrument as all records together know it: those of one name, kind and serial are taken to be the same.
struct AcrossInstrument {
    std::string name, serial;
    InstrumentType type = InstrumentType::micrometer;
    std::optional<Date> calibrated, due; ///< the latest that any record knows
    std::size_t records = 0;             ///< that use it
    std::optional<std::int64_t> dueCycles;
    std::int64_t cycles = 0; ///< the most that one record counts: records do not know of each other's pulls
};
/// The earliest due first; those without a date last.
std::vector<AcrossInstrument> instrumentsDue(const std::vector<AcrossRecord>& records);

/// Tables for a spreadsheet (RFC 4180). Lengths in the units given.
std::string valuesCsv(const std::vector<AcrossValue>& values, std::string_view band, const Units& units);
std::string movementsCsv(const std::vector<MovementCount>& counts, MovementBy by);
std::string instrumentsCsv(const std::vector<AcrossInstrument>& instruments);

} // namespace caprail
