// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <catalogue/connection.h>
#include <fasteners/review.h>
#include <functional>
#include <shop/record_figures.h>

namespace caprail {

/// Which records are compared: those of a template, of a layout, or all that were read whole.
struct AcrossOf {
    std::string templateName, layout; ///< one of them at most; empty: any
    friend bool operator==(const AcrossOf&, const AcrossOf&) = default;
};

/// A template or a layout that records have, and how many of them.
struct AcrossGroup {
    std::string name;
    std::int64_t records = 0;
};

/// One value of a banded quantity, and whose it is.
struct AcrossValue {
    std::string label, place; ///< "Orrin Vale, 6.2 V8, KL-2207"; "main-2"
    std::int64_t record = 0, build = 1;
    Length value;
    CheckState state = CheckState::notDone;
};

/// A quantity at one place over all records: counts and ranges, no more.
struct AcrossSpread {
    std::string place;
    std::int64_t count = 0, out = 0;  ///< values; those that were judged out
    Length smallest, median, largest; ///< the median of an even count is the lower of the two in the middle
};

/// A quantity at each place, in the places' order of the engine.
struct AcrossSpreads {
    std::vector<AcrossSpread> places;
    std::int64_t values = 0;
    /// That all of these values were judged by; none where their records set different ones, or none.
    std::optional<Band> band = {};
};

/// What movement in verify rounds is counted by.
enum class MovementBy { fastener, wrench, person };

/// An instrument as all records together know it: those of one name, kind and serial are taken to be the same.
struct AcrossInstrument {
    std::string name, serial;
    InstrumentType type = InstrumentType::micrometer;
    std::optional<Date> calibrated, due; ///< the latest that any record knows
    std::int64_t records = 0;            ///< that use it
    std::optional<std::int64_t> dueCycles;
    std::int64_t cycles = 0; ///< the most that one record counts: records do not know of each other's pulls
};

/// Many engines compared, by the database that holds their figures as rows: an index of a folder or a shop's database.
/// Nothing is kept here; the connection must outlive it. Each answer refuses when the database does.
class Across {
public:
    explicit Across(Connection& connection, AcrossOf of = {}) : m_connection(&connection), m_of(std::move(of)) {}

    Result<std::int64_t> records();
    Result<std::int64_t> pulls(); ///< in the verify rounds of all of them
    /// By name; of all records, whichever are compared.
    Result<std::vector<AcrossGroup>> templates();
    Result<std::vector<AcrossGroup>> layouts();

    /// The names of the banded quantities that occur, in alphabetical order.
    Result<std::vector<std::string>> bands();
    Result<AcrossSpreads> spreads(std::string_view band);
    /// One value after another, sorted by place, then value.
    Result<void> eachValue(std::string_view band, const std::function<void(AcrossValue value)>& take);

    /// How often pulled, how often moved, the largest angle. Most movements first, then the larger share, then the
    /// name.
    Result<std::vector<MovementCount>> movements(MovementBy by);
    /// The earliest due first; those without a date last.
    Result<std::vector<AcrossInstrument>> instruments();

private:
    [[nodiscard]] bool isOfAll() const { return m_of == AcrossOf(); }
    [[nodiscard]] std::string within(std::string_view table) const;
    Result<Query> asked(const std::string& sql, std::string_view first = {});
    Result<std::vector<AcrossGroup>> groupsBy(std::string_view column);
    Result<void> addMedians(std::string_view band, AcrossSpreads& spreads, const std::vector<std::string>& orders);

    Connection* m_connection;
    AcrossOf m_of;
};

/// Tables for a spreadsheet (RFC 4180).
std::string movementsCsv(const std::vector<MovementCount>& counts, MovementBy by);
std::string instrumentsCsv(const std::vector<AcrossInstrument>& instruments);
/// All values of a quantity, however many, as a file at `path`, in the place of a table that stands there; lengths in
/// the units given. Refuses what the database or the disk refuses, and then leaves what was there.
Result<void> writeValues(Across& across, std::string_view band, const Units& units, const std::string& path);

} // namespace caprail
