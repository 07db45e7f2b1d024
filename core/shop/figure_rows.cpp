// SPDX-License-Identifier: GPL-3.0-or-later
#include <shop/figure_rows.h>

#include <array>
#include <charconv>

namespace caprail {

namespace {

constexpr std::array<const char*, 3> dropping{"DELETE FROM banded WHERE listing = ?",
                                              "DELETE FROM movement WHERE listing = ?",
                                              "DELETE FROM instrument WHERE listing = ?"};

void bindOptional(Query& query, int at, std::optional<std::int64_t> value) {
    if (value) {
        query.bind(at, *value);
    } else {
        query.bindNull(at);
    }
}
std::optional<std::int64_t> daysOf(const std::optional<Date>& date) {
    return date ? std::optional(date->days) : std::nullopt;
}

} // namespace

std::vector<std::string> figureTables(const Dialect& d) {
    const std::string integer(d.integer);
    const std::string text(d.text);
    const std::string number = " " + integer + " NOT NULL, ";
    const std::string words = " " + text + " NOT NULL, ";
    const std::string end = ")" + std::string(d.endOfTable);
    return {"CREATE TABLE banded(listing" + number + "build" + number + "band" + words + "place" + words +
                "place_order" + words + "value_nm" + number + "state" + number + "lower_nm " + integer + ", upper_nm " +
                integer + end,
            "CREATE TABLE movement(listing" + number + "fastener" + words + "wrench" + words + "person" + words +
                "pulled" + number + "moved" + number + "largest_mdeg " + integer + " NOT NULL" + end,
            "CREATE TABLE instrument(listing" + number + "name" + words + "kind" + number + "serial" + words +
                "calibrated " + integer + ", due " + integer + ", cycles" + number + "due_cycles " + integer + end,
            "CREATE INDEX banded_listing ON banded(listing)", "CREATE INDEX movement_listing ON movement(listing)",
            "CREATE INDEX instrument_listing ON instrument(listing)",
            // Holds all that a spread asks for, in its order.
            std::string("CREATE INDEX banded_band ON banded(") +
                "band, place_order, value_nm, place, state, lower_nm, upper_nm, listing)"};
}

std::string placeOrder(const std::string& place) {
    const auto digit = std::min(place.find_first_of("0123456789"), place.size());
    int number = 0;
    const char* const end = place.data() + place.size();
    const auto [rest, error] = std::from_chars(place.data() + digit, end, number);
    const std::string digits = std::to_string(error == std::errc() ? number : 0);
    constexpr std::size_t most = 10;
    return place.substr(0, digit) + '\x01' + std::string(most - digits.size(), '0') + digits + std::string(rest, end);
}

Result<void> FigureWriter::putBanded(std::int64_t listing, const RecordFigures& figures) {
    auto put = m_connection->ready(
        m_banded, "INSERT INTO banded(listing, build, band, place, place_order, value_nm, state, lower_nm, "
                  "upper_nm) VALUES(?, ?, ?, ?, ?, ?, ?, ?, ?)");
    if (!put) {
        return tl::unexpected(put.error());
    }
    Query& q = **put;
    for (const BandedFigure& f : figures.banded) {
        q.bind(1, listing);
        q.bind(2, f.build);
        q.bind(3, f.band);
        q.bind(4, f.place);
        q.bind(5, placeOrder(f.place));
        q.bind(6, f.value.value());
        q.bind(7, static_cast<std::int64_t>(f.state));
        bindOptional(q, 8, f.limits ? std::optional(f.limits->lo().value()) : std::nullopt);
        bindOptional(q, 9, f.limits ? std::optional(f.limits->hi().value()) : std::nullopt);
        if (auto done = q.run(); !done) {
            return done;
        }
    }
    return {};
}

Result<void> FigureWriter::putMovements(std::int64_t listing, const RecordFigures& figures) {
    auto put = m_connection->ready(
        m_movement, "INSERT INTO movement(listing, fastener, wrench, person, pulled, moved, largest_mdeg) "
                    "VALUES(?, ?, ?, ?, ?, ?, ?)");
    if (!put) {
        return tl::unexpected(put.error());
    }
    Query& q = **put;
    for (const PullFigure& f : figures.pulls) {
        q.bind(1, listing);
        q.bind(2, f.fastener);
        q.bind(3, f.wrench);
        q.bind(4, f.person);
        q.bind(5, f.pulled);
        q.bind(6, f.moved);
        q.bind(7, f.largest.value());
        if (auto done = q.run(); !done) {
            return done;
        }
    }
    return {};
}

Result<void> FigureWriter::putInstruments(std::int64_t listing, const RecordFigures& figures) {
    auto put = m_connection->ready(m_instrument,
                                   "INSERT INTO instrument(listing, name, kind, serial, calibrated, due, cycles, "
                                   "due_cycles) VALUES(?, ?, ?, ?, ?, ?, ?, ?)");
    if (!put) {
        return tl::unexpected(put.error());
    }
    Query& q = **put;
    for (const InstrumentFigure& f : figures.instruments) {
        q.bind(1, listing);
        q.bind(2, f.name);
        q.bind(3, static_cast<std::int64_t>(f.type));
        q.bind(4, f.serial);
        bindOptional(q, 5, daysOf(f.calibrated));
        bindOptional(q, 6, daysOf(f.due));
        q.bind(7, f.cycles);
        bindOptional(q, 8, f.dueCycles);
        if (auto done = q.run(); !done) {
            return done;
        }
    }
    return {};
}

Result<void> FigureWriter::put(std::int64_t listing, const RecordFigures& figures) {
    auto done = remove(listing);
    done = done ? putBanded(listing, figures) : done;
    done = done ? putMovements(listing, figures) : done;
    return done ? putInstruments(listing, figures) : done;
}

Result<void> FigureWriter::remove(std::int64_t listing) {
    for (std::size_t i = 0; i < dropping.size(); ++i) {
        auto drop = m_connection->ready(m_drop[i], dropping[i]);
        if (!drop) {
            return tl::unexpected(drop.error());
        }
        (*drop)->bind(1, listing);
        if (auto done = (*drop)->run(); !done) {
            return done;
        }
    }
    return {};
}

} // namespace caprail
