// SPDX-License-Identifier: GPL-3.0-or-later
#include <shop/across.h>

#include <base/csv.h>
#include <store/file/output_file.h>

namespace caprail {

std::string movementsCsv(const std::vector<MovementCount>& counts, MovementBy by) {
    const std::string_view what = by == MovementBy::fastener ? "fastener"
                                  : by == MovementBy::wrench ? "wrench"
                                                             : "person";
    CsvWriter csv({what, "pulled", "moved", "largest_deg"});
    for (const MovementCount& count : counts) {
        csv.text(count.what).number(count.pulled).number(count.moved);
        csv.plain(formatNumber(static_cast<double>(count.largest.value()) / 1000.0, 1)).endLine();
    }
    return csv.written();
}

std::string instrumentsCsv(const std::vector<AcrossInstrument>& instruments) {
    CsvWriter csv({"instrument", "serial", "kind", "calibrated", "due", "records", "cycles", "due_cycles"});
    for (const AcrossInstrument& one : instruments) {
        csv.text(one.name).text(one.serial).plain(word(one.type));
        csv.plain(one.calibrated ? format(*one.calibrated) : "").plain(one.due ? format(*one.due) : "");
        csv.number(static_cast<std::int64_t>(one.records)).number(one.cycles).number(one.dueCycles).endLine();
    }
    return csv.written();
}

Result<void> writeValues(Across& across, std::string_view band, const Units& units, const std::string& path) {
    return writeOutput(path, OutputSort::text, true, [&](const std::string& unfinished) {
        constexpr std::size_t atATime = 1 << 20; // bytes: the table may be longer than the memory has room for
        CsvWriter csv({"quantity", "place", "record", "build", std::string("value_") + symbol(units.length), "state"});
        Result<void> written;
        const auto bring = [&] {
            written = written ? addTo(unfinished, csv.written()) : written;
            csv = CsvWriter();
        };
        const auto read = across.eachValue(band, [&](const AcrossValue& v) {
            csv.text(band).text(v.place).text(v.label).number(v.build).plain(formatBare(v.value, units));
            csv.plain(word(v.state)).endLine();
            if (csv.written().size() > atATime) {
                bring();
            }
        });
        bring();
        return read ? written : read;
    });
}

} // namespace caprail
