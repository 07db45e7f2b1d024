// SPDX-License-Identifier: GPL-3.0-or-later
/// The shop's list against the least that the same work can cost, in one run. Goals: the first listing of 5 000 or
/// 20 000 records within 1.5 times of a bare loop that opens each and reads one row; a start that lists 50 000 from the
/// index in under 200 ms; a search for each letter typed in under 16 ms at 50 000.
#include "shop_index_filler.h"

#include <benchmark/benchmark.h>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <map>
#include <shop/shop_scan.h>
#include <sqlite3.h>
#include <store/file/entry_rows.h>
#include <store/file/record_file.h>
#include <string>
#include <unistd.h>

namespace {

using namespace caprail;

constexpr UtcTime morning{1'777'887'000'000};
constexpr int manyRecords = 50'000;

[[noreturn]] void stop(const std::string& sentence) {
    std::fprintf(stderr, "%s\n", sentence.c_str());
    std::exit(1);
}

/// In the build folder; gone at the end of the program.
std::string scratch(const std::string& name) {
    static const struct Folder {
        std::string path = std::filesystem::canonical(std::filesystem::current_path()).string() + "/shop-bench-" +
                           std::to_string(::getpid());
        Folder() { std::filesystem::create_directory(path); }
        Folder(const Folder&) = delete;
        Folder& operator=(const Folder&) = delete;
        ~Folder() { std::filesystem::remove_all(path); }
    } folder;
    return folder.path + "/" + name;
}

/// A build in the middle of its survey: some two hundred entries, as a record on the stand has.
Ledger ledgerOf(int number) {
    Ledger ledger;
    const auto add = [&](Body body) {
        ledger.append({morning.milliseconds + ledger.size() * 1000}, "Ann Carpenter", std::move(body));
    };
    add(PersonAdded{"Ann Carpenter", "assembler"});
    add(EngineDescribed{"Kestrel Lane", "Customer " + std::to_string(number), "6.2 V8", std::to_string(number), ""});
    add(LayoutSet{});
    add(NoteAdded{"", "note " + std::to_string(number)});
    for (int i = 0; i < 200; ++i) {
        add(GapReading{{i % 5 + 1, Side::right}, i / 5 + 1, {tenths(500 + i % 50), "57.5 thou"}, ""});
    }
    return ledger;
}

/// An empty record, which the others begin as.
const std::string& emptyRecord() {
    static const std::string path = [] {
        std::string made = scratch("empty.caprail");
        if (auto file = RecordFile::create(made); !file) {
            stop(file.error().sentence);
        }
        return made;
    }();
    return path;
}

/// A record of its own, with its own customer and seals; nothing here waits for the disk.
void makeRecord(const std::string& path, int number) {
    std::filesystem::copy_file(emptyRecord(), path);
    auto database = Database::open(path, Access::readWrite);
    EntryWriter writer(**database);
    (void)(*database)->run("PRAGMA synchronous = OFF; PRAGMA journal_mode = MEMORY; BEGIN");
    const Ledger ledger = ledgerOf(number);
    for (const Entry& entry : ledger.entries()) {
        if (auto done = writer.insert(entry, cellsOf(entry.body)); !done) {
            stop(done.error().sentence);
        }
    }
    if (auto done = (*database)->run("COMMIT"); !done) {
        stop(done.error().sentence);
    }
}

/// A folder of so many records, in folders of 500, no two alike.
const std::string& shopOf(std::int64_t count) {
    static std::map<std::int64_t, std::string> made;
    std::string& path = made[count];
    if (path.empty()) {
        path = scratch("shop-" + std::to_string(count));
        for (std::int64_t i = 0; i < count; ++i) {
            const std::string sub = path + "/" + std::to_string(i / 500);
            std::filesystem::create_directories(sub);
            makeRecord(sub + "/" + std::to_string(i) + ".caprail", static_cast<int>(i));
        }
    }
    return path;
}

/// How many records the folder holds: `--benchmark_filter=/5000` is the short form.
void folders(benchmark::internal::Benchmark* bench) {
    bench->Arg(5'000)->Arg(20'000)->MeasureProcessCPUTime();
}

void bareLoopOverEachFile(benchmark::State& state) {
    const std::string& folder = shopOf(state.range(0));
    for (auto _ : state) {
        std::size_t rows = 0;
        for (const auto& entry : std::filesystem::recursive_directory_iterator(folder)) {
            if (!entry.is_regular_file()) {
                continue;
            }
            sqlite3* db = nullptr;
            sqlite3_stmt* row = nullptr;
            sqlite3_open_v2(entry.path().c_str(), &db, SQLITE_OPEN_READONLY, nullptr);
            sqlite3_prepare_v2(db, "SELECT customer FROM engine_described", -1, &row, nullptr);
            rows += sqlite3_step(row) == SQLITE_ROW ? 1U : 0U;
            sqlite3_finalize(row);
            sqlite3_close(db);
        }
        if (rows != static_cast<std::size_t>(state.range(0))) {
            stop("the bare loop read " + std::to_string(rows) + " rows");
        }
    }
}
BENCHMARK(bareLoopOverEachFile)->Apply(folders)->Unit(benchmark::kMillisecond)->UseRealTime()->Iterations(3);

/// Until every record stands in the list: whose engine, who and when. States and counts follow in the background.
void firstListing(benchmark::State& state) {
    const std::string& folder = shopOf(state.range(0));
    for (auto _ : state) {
        ShopIndex::discard(scratch("cache"), folder);
        auto index = ShopIndex::open(scratch("cache"), folder);
        ShopScan scan(*index, folder);
        std::stop_source whenListed;
        std::size_t listed = 0;
        ScanEvents events;
        events.rows = [&](const std::vector<ShopRow>& rows) {
            listed += rows.size();
            if (listed >= static_cast<std::size_t>(state.range(0))) {
                whenListed.request_stop();
            }
        };
        (void)scan.run(whenListed.get_token(), events);
        if (listed != static_cast<std::size_t>(state.range(0))) {
            stop("the listing holds " + std::to_string(listed) + " rows");
        }
    }
}
BENCHMARK(firstListing)->Apply(folders)->Unit(benchmark::kMillisecond)->UseRealTime()->Iterations(3);

/// The same and every ledger read, its seals verified, and assessed: what runs in the background after that.
void firstListingWithEveryRecordAssessed(benchmark::State& state) {
    const std::string& folder = shopOf(state.range(0));
    for (auto _ : state) {
        ShopIndex::discard(scratch("cache"), folder);
        auto index = ShopIndex::open(scratch("cache"), folder);
        ShopScan scan(*index, folder);
        const auto report = scan.run({}, {});
        if (!report || report->assessed != static_cast<std::size_t>(state.range(0))) {
            stop("not every record was assessed");
        }
    }
}
BENCHMARK(firstListingWithEveryRecordAssessed)
    ->Apply(folders)
    ->Unit(benchmark::kMillisecond)
    ->UseRealTime()
    ->Iterations(1);

/// When nothing changed: a look at every file's numbers.
void scanOfAnUnchangedFolder(benchmark::State& state) {
    const std::string& folder = shopOf(state.range(0));
    auto index = ShopIndex::open(scratch("cache"), folder);
    ShopScan scan(*index, folder);
    (void)scan.run({}, {});
    for (auto _ : state) {
        const auto report = scan.run({}, {});
        if (!report || report->summarised != 0) {
            stop("something was read again");
        }
    }
}
BENCHMARK(scanOfAnUnchangedFolder)->Apply(folders)->Unit(benchmark::kMillisecond)->UseRealTime();

const std::string& indexOf50000() {
    static const std::string root = shopbench::fillIndex(scratch("cache"), manyRecords, figuresOf(ledgerOf(1)));
    return root;
}

void startFromTheIndexOf50000(benchmark::State& state) {
    const std::string& root = indexOf50000();
    for (auto _ : state) {
        auto index = ShopIndex::open(scratch("cache"), root);
        const auto rows = index->rows();
        if (!rows || rows->size() != manyRecords) {
            stop("the index holds another number of rows");
        }
    }
}
BENCHMARK(startFromTheIndexOf50000)->Unit(benchmark::kMillisecond)->UseRealTime();

/// What is typed letter by letter, the first letters being the worst.
void searchKeystrokeAt50000(benchmark::State& state) {
    const std::string& root = indexOf50000();
    auto index = ShopIndex::open(scratch("cache"), root);
    static const char* const typed[] = {"s", "so", "solh", "b", "bu", "burr ra", "kl 49", "v", "orrin vale 12"};
    const std::string text = typed[state.range(0)];
    state.SetLabel(text);
    std::size_t found = 0;
    for (auto _ : state) {
        const auto ids = index->search(text);
        found = ids ? ids->size() : 0;
        if (found == 0) {
            stop("nothing found for " + text);
        }
    }
    state.counters["found"] = static_cast<double>(found);
}
BENCHMARK(searchKeystrokeAt50000)->Unit(benchmark::kMillisecond)->UseRealTime()->DenseRange(0, 8);

} // namespace

BENCHMARK_MAIN();
