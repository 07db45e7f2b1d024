// SPDX-License-Identifier: GPL-3.0-or-later
/// The list, the search and the comparison of a shop's database with 200 000 records and four million banded values,
/// beside SQLite with the same rows, asked by the same code. Goals, of the database: the first page within 100 ms, a
/// search as one types within 50 ms, the spread of every quantity within 2 s.
///
///     catalogue_bench [--rows N]     N records; 200 000 otherwise
#include "bench_server.h"

#include <QCoreApplication>
#include <chrono>
#include <cstdio>
#include <cstring>
#include <filesystem>
#include <functional>
#include <shop/across.h>
#include <shop/listing_pages.h>
#include <shop/shop_index.h>
#include <shopserver/tables.h>
#include <unistd.h>

namespace {

using namespace caprail;

constexpr UtcTime now{1'777'887'000'000};

/// The numbers 1 to `count`, in both dialects.
std::string numbers(std::int64_t count) {
    return "WITH RECURSIVE n(i) AS (SELECT CAST(1 AS bigint) UNION ALL SELECT i + 1 FROM n WHERE i < " +
           std::to_string(count) + ") ";
}

const char* const customer =
    "(CASE i % 5 WHEN 0 THEN 'Orrin' WHEN 1 THEN 'Ines' WHEN 2 THEN 'Bea' WHEN 3 THEN 'Sven' "
    "ELSE 'Ada' END || ' ' || CASE i % 7 WHEN 0 THEN 'Vale' WHEN 1 THEN 'Roth' WHEN 2 THEN 'Lund' "
    "WHEN 3 THEN 'Solheim' WHEN 4 THEN 'Okoro' WHEN 5 THEN 'Haas' ELSE 'Ames' END)";

/// `path` and what stands behind the columns that both have differ.
void fillListing(Connection& connection, std::int64_t count, const std::string& path, const std::string& moreColumns,
                 const std::string& moreValues) {
    must(connection.run(
        "INSERT INTO listing(id, path, size, modified, changed, inode, reading, sentence, customer, engine, serial, "
        "build, "
        "state, round, round_result, pulled, moved, out, stale, last_entry, entries, who, calibration_due, template, "
        "layout, people" +
        moreColumns + ") " + numbers(count) + "SELECT i, " + path + ", 40000, i, i, i, 1, '', " + customer +
        ", 'Engine ' || (i % 97), 'KL-' || i, 1, 1 + i % 4, i % 5, i % 5, 10, 0, i % 3, i % 11, 1777887000000 - (i * "
        "7919 % " +
        std::to_string(count) + ") * 60000, 100, " + customer +
        ", 20000 + i % 900, 'Template ' || (i % 6), '5 mains of 2', " + customer + moreValues + " FROM n"));
}

/// Twenty values a record: five main clearances, eight rod clearances, seven residuals.
void fillBanded(Connection& connection, std::int64_t count) {
    for (const auto& [band, places] :
         {std::pair("main clearance", 5), std::pair("rod clearance", 8), std::pair("residual", 7)}) {
        for (int place = 1; place <= places; ++place) {
            const std::string name = std::string(band).substr(0, 4) + "-" + std::to_string(place);
            must(connection.run(
                "INSERT INTO banded(listing, build, band, place, place_order, value_nm, state, lower_nm, "
                "upper_nm) " +
                numbers(count) + "SELECT i, 1, '" + band + "', '" + name + "', '" + name +
                "', 50000 + i * 7919 % 20011, 1 + i % 2, 45000, 65000 FROM n"));
        }
    }
}

/// The middle of so many runs, in milliseconds.
double measured(int runs, const std::function<void()>& run) {
    std::vector<double> all;
    for (int i = 0; i < runs; ++i) {
        const auto begin = std::chrono::steady_clock::now();
        run();
        all.push_back(std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - begin).count());
    }
    std::ranges::sort(all);
    return all[all.size() / 2];
}

void line(const std::string& what, const std::function<void(Connection&)>& run, Connection& database, Connection& index,
          double goal, int runs = 7) {
    const double there = measured(runs, [&] { run(database); });
    const double here = measured(runs, [&] { run(index); });
    std::printf("%-44s %9.1f ms %9.1f ms   goal %6.0f ms  %s\n", what.c_str(), there, here, goal,
                there <= goal ? "met" : "NOT MET");
    std::fflush(stdout);
}

void measureAll(Connection& database, Connection& index, std::int64_t rows) {
    std::printf("%-44s %12s %12s\n", "", "PostgreSQL", "SQLite");
    const auto page = [rows](Connection& c, ListingWish wish, std::int64_t from) {
        wish.now = now;
        if (must(ListingPages(c).page(wish, from, 100)).empty() && from < rows) {
            std::fprintf(stderr, "Nothing was found for %s.\n", wish.search.c_str());
            std::exit(1);
        }
    };
    line(
        "first page, last entry first", [&](Connection& c) { page(c, {}, 0); }, database, index, 100);
    for (const char* order : {"customer", "engine", "state", "round", "out", "calibration_due", "file"}) {
        line(
            std::string("first page by ") + order,
            [&](Connection& c) { page(c, {.order = order, .isDescending = false}, 0); }, database, index, 100);
    }
    line(
        "a page in the middle", [&](Connection& c) { page(c, {}, rows / 2); }, database, index, 100);
    line(
        "first page, something out or stale",
        [&](Connection& c) { page(c, {.filter = {.state = ListFilter::State::needsAttention}}, 0); }, database, index,
        100);
    line(
        "first page of one person", [&](Connection& c) { page(c, {.filter = {.person = "Bea Lund"}}, 0); }, database,
        index, 100);
    line(
        "count of all", [&](Connection& c) { (void)must(ListingPages(c).count({})); }, database, index, 100);
    for (const char* typed : {"s", "so", "solh", "burr ra", "kl 49", "orrin vale 12", "kl 149999"}) {
        line(
            std::string("search “") + typed + "”", [&](Connection& c) { page(c, {.search = typed}, 0); }, database,
            index, 50);
    }
    line(
        "spread of rod clearance", [](Connection& c) { (void)must(Across(c).spreads("rod clearance")); }, database,
        index, 2000, 3);
    line(
        "spread of every quantity",
        [](Connection& c) {
            for (const std::string& band : must(Across(c).bands())) {
                (void)must(Across(c).spreads(band));
            }
        },
        database, index, 2000, 3);
    line(
        "spread of rod clearance of one template",
        [](Connection& c) {
            (void)must(Across(c, {"Template 3", ""}).spreads("rod clearance"));
        },
        database, index, 2000, 3);
}

void fillDatabase(Connection& database, std::int64_t count) {
    (void)must(makeTables(database));
    must(database.run("INSERT INTO record(identity, head, entries) SELECT sha256(CAST('i' || i AS bytea)), "
                      "sha256(CAST('h' || i AS bytea)), 100 FROM generate_series(1, " +
                      std::to_string(count) + ") AS i"));
    fillListing(database, count, "'engines/' || i || '.caprail'", ", identity, head, published, publisher",
                ", 'i' || i, 'h' || i, now(), 'bench'");
    must(database.run(
        "INSERT INTO found(id, words) SELECT id, to_tsvector('simple', lower(customer || ' ' || engine || ' kl ' "
        "|| id || ' burr on the rail at cap ' || (id % 5))) FROM listing"));
    fillBanded(database, count);
    must(database.run("VACUUM ANALYZE listing"));
    must(database.run("VACUUM ANALYZE found"));
    must(database.run("VACUUM ANALYZE banded"));
}

void fillIndex(Connection& index, std::int64_t count) {
    must(index.together([&]() -> Result<void> {
        fillListing(index, count, "CAST('engines/' || i || '.caprail' AS BLOB)", ", line", ", x''");
        must(index.run("INSERT INTO found(rowid, words) SELECT id, customer || ' ' || engine || ' kl ' || id || "
                       "' burr on the rail at cap ' || (id % 5) FROM listing"));
        fillBanded(index, count);
        return index.run("ANALYZE");
    }));
}

} // namespace

int main(int argc, char** argv) {
    const QCoreApplication application(argc, argv); // which finds the drivers
    const bool hasRows = argc == 3 && std::strcmp(argv[1], "--rows") == 0;
    const std::int64_t count = hasRows ? std::max(1LL, std::atoll(argv[2])) : 200'000;
    const std::string folder =
        (std::filesystem::temp_directory_path() / ("caprail-catalogue-bench-" + std::to_string(::getpid()))).string();
    std::filesystem::create_directory(folder);
    {
        const BenchServer server(folder + "/server");
        {
            Connection maker = server.open("postgres");
            must(maker.run("CREATE DATABASE bench TEMPLATE template0"));
        }
        Connection database = server.open("bench");
        fillDatabase(database, count);
        ShopIndex index = must(ShopIndex::open(folder + "/cache", "/srv/engines"));
        fillIndex(index.connection(), count);
        std::printf("%lld records, %lld banded values\n", static_cast<long long>(count),
                    static_cast<long long>(count * 20));
        measureAll(database, index.connection(), count);
    }
    std::filesystem::remove_all(folder);
    return 0;
}
