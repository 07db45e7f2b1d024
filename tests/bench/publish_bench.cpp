// SPDX-License-Identifier: GPL-3.0-or-later
/// Publishing a long record, beside plain COPY of the same rows into a table of the same form. Goal: within three
/// times. What only the record's file takes, to be opened, verified and assessed, is told by itself.
///
///     publish_bench [COUNT]     entries; 100 000 otherwise
#include "bench_server.h"
#include "large_record.h"

#include <QCoreApplication>
#include <algorithm>
#include <chrono>
#include <filesystem>
#include <functional>
#include <shop/record_summary.h>
#include <shopserver/fetch.h>
#include <shopserver/publish.h>
#include <shopserver/tables.h>
#include <store/file/record_file.h>
#include <unistd.h>

namespace {

using namespace caprail;

double seconds(const std::function<void()>& work) {
    const auto begin = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count();
}

/// The best of three: other work on the machine only ever adds.
double best(const std::function<void()>& prepare, const std::function<void()>& work) {
    double least = 1e9;
    for (int round = 0; round < 3; ++round) {
        prepare();
        least = std::min(least, seconds(work));
    }
    return least;
}

void measure(BenchServer& server, const std::string& path, std::int64_t count) {
    {
        Connection postgres = server.open("postgres");
        must(postgres.run("CREATE DATABASE bench TEMPLATE template0"));
    }
    Connection database = server.open("bench");
    (void)must(makeTables(database));
    std::string identity;
    const double file = best([] {},
                             [&] {
                                 const auto record = must(RecordFile::open(path, OpenMode::readOnly));
                                 identity = toHex(record.ledger().at(1).seal);
                                 (void)digest(record.ledger());
                             });
    RecordPublisher publisher(database);
    const auto takeAway = [&] { must(database.run("SELECT take_away(identity) FROM record")); };
    const double whole = best(takeAway, [&] { (void)must(publisher.publish(path)); });
    const double again = best([] {}, [&] { (void)must(publisher.publish(path)); });

    const std::string rows = server.folder() + "/rows";
    must(database.run("COPY entry TO '" + rows + "'"));
    must(database.run("CREATE TABLE public.plain (LIKE entry)"));
    must(database.run("ALTER TABLE public.plain ADD PRIMARY KEY (record, number)"));
    const double copy = best([&] { must(database.run("TRUNCATE public.plain")); },
                             [&] { must(database.run("COPY public.plain FROM '" + rows + "'")); });
    const std::string out = path + ".fetched";
    const double fetched =
        best([&] { std::filesystem::remove(out); }, [&] { (void)must(fetchRecord(database, identity, out)); });
    std::filesystem::remove(out);
    std::printf("%lld entries\n", static_cast<long long>(count));
    std::printf("COPY of the rows          %7.3f s\n", copy);
    std::printf("publishing                %7.3f s, of which the file alone %.3f s\n", whole, file);
    std::printf("  without the file        %7.3f s, %.1f times COPY (goal 3)\n", whole - file, (whole - file) / copy);
    std::printf("publishing again, nothing %7.3f s\n", again);
    std::printf("fetching, verified        %7.3f s\n", fetched);
}

} // namespace

int main(int argc, char** argv) {
    const QCoreApplication application(argc, argv);
    const std::int64_t count = argc > 1 ? std::atoll(argv[1]) : 100'000;
    std::string name = (std::filesystem::temp_directory_path() / "caprail-bench-XXXXXX").string();
    const std::filesystem::path folder(::mkdtemp(name.data()));
    largerecord::makeRecord(SAMPLE_BUILDS, (folder / "long.caprail").string(), count);
    {
        BenchServer server((folder / "note").string());
        measure(server, (folder / "long.caprail").string(), count);
    }
    std::filesystem::remove_all(folder);
    return 0;
}
