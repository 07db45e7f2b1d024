// SPDX-License-Identifier: GPL-3.0-or-later
/// Records of very many entries against the least that the same work can cost, in one run. Goals: an entry imported in
/// under 0.1 ms of the processor; one more entry judged, folded in and assessed within a frame (16 ms) whatever the
/// record's length. `--benchmark_filter=/20000` is the short form.
#include "large_record.h"

#include <assessment/admission.h>
#include <benchmark/benchmark.h>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sqlite3.h>
#include <store/text/text_form.h>
#include <unistd.h>

namespace {

using namespace caprail;
using largerecord::Manner;

[[noreturn]] void stop(const std::string& sentence) {
    std::fprintf(stderr, "large_bench: %s\n", sentence.c_str());
    std::exit(1);
}

/// In the build folder; gone at the end of the program.
std::string scratch(const std::string& name) {
    static const struct Folder {
        std::string path = (std::filesystem::current_path() / ("large-bench-" + std::to_string(::getpid()))).string();
        Folder() { std::filesystem::create_directory(path); }
        Folder(const Folder&) = delete;
        Folder& operator=(const Folder&) = delete;
        ~Folder() { std::filesystem::remove_all(path); }
    } folder;
    return folder.path + "/" + name;
}

std::string textOf(std::int64_t count) {
    const std::string path = scratch(std::to_string(count) + ".jsonl");
    if (!std::filesystem::exists(path)) {
        if (auto done = exportLedger(largerecord::ledgerOf(SAMPLE_BUILDS, count), path); !done) {
            stop(done.error().sentence);
        }
    }
    return path;
}

/// The same lines, each put as it is into one table by a bare C program in one transaction.
void linesIntoATable(benchmark::State& state) {
    const std::string text = textOf(state.range(0));
    const std::string path = scratch("bare.db");
    for (auto _ : state) {
        std::filesystem::remove(path);
        sqlite3* db = nullptr;
        sqlite3_stmt* insert = nullptr;
        sqlite3_open(path.c_str(), &db);
        sqlite3_exec(db, "CREATE TABLE line (sequence INTEGER PRIMARY KEY, text TEXT); BEGIN", nullptr, nullptr,
                     nullptr);
        sqlite3_prepare_v2(db, "INSERT INTO line(text) VALUES (?)", -1, &insert, nullptr);
        std::ifstream lines(text);
        for (std::string line; std::getline(lines, line);) {
            sqlite3_bind_text(insert, 1, line.data(), static_cast<int>(line.size()), SQLITE_STATIC);
            sqlite3_step(insert);
            sqlite3_reset(insert);
        }
        sqlite3_finalize(insert);
        if (sqlite3_exec(db, "COMMIT", nullptr, nullptr, nullptr) != SQLITE_OK) {
            stop(sqlite3_errmsg(db));
        }
        sqlite3_close(db);
    }
}
BENCHMARK(linesIntoATable)->Arg(20'000)->Arg(200'000)->Unit(benchmark::kMillisecond)->Iterations(1);

void importOfALedger(benchmark::State& state) {
    const std::string text = textOf(state.range(0));
    const std::string path = scratch("imported.caprail");
    for (auto _ : state) {
        std::filesystem::remove(path);
        if (auto done = importLedger(text, path); !done) {
            stop(done.error().sentence);
        }
    }
    // Of the processor: goal 100 µs.
    state.counters["an_entry"] = benchmark::Counter(static_cast<double>(state.range(0)),
                                                    benchmark::Counter::kIsRate | benchmark::Counter::kInvert);
}
BENCHMARK(importOfALedger)->Arg(20'000)->Arg(200'000)->Unit(benchmark::kMillisecond)->Iterations(1);

/// What happens between an entry's being on the disk and the screens' being told: judged, folded in, assessed.
void oneMoreEntry(benchmark::State& state, Manner manner) {
    Ledger ledger = largerecord::ledgerOf(SAMPLE_BUILDS, state.range(0), manner);
    Facts facts = fold(ledger);
    Assessment assessment = assess(facts);
    const std::string person = ledger.entries().back().person;
    for (auto _ : state) {
        const Body body = GapReading{{4, Side::right}, 2, {thou(64.8), "64.8 thou"}, "LEAVES-2", {}, "EDGE-1"};
        if (auto may = mayAppend(ledger, facts, assessment, person, body); !may) {
            stop(may.error().sentence);
        }
        apply(facts, ledger.append(ledger.entries().back().time, person, body));
        assessment = assess(facts);
        benchmark::DoNotOptimize(assessment);
    }
}
BENCHMARK_CAPTURE(oneMoreEntry, worked, Manner::worked)
    ->Arg(400)
    ->Arg(20'000)
    ->Arg(200'000)
    ->Unit(benchmark::kMillisecond)
    ->MinTime(0.3);
BENCHMARK_CAPTURE(oneMoreEntry, heaped, Manner::heaped)
    ->Arg(400)
    ->Arg(20'000)
    ->Arg(200'000)
    ->Unit(benchmark::kMillisecond)
    ->MinTime(0.3);

/// A strike folds everything anew, to see whether later entries still make sense. Goal: under 100 ms at 200 000.
void oneStrike(benchmark::State& state) {
    Ledger ledger = largerecord::ledgerOf(SAMPLE_BUILDS, state.range(0));
    Facts facts = fold(ledger);
    Assessment assessment = assess(facts);
    const std::string person = ledger.entries().back().person;
    for (auto _ : state) {
        state.PauseTiming();
        ledger.append(ledger.entries().back().time, person, NoteAdded{"", "to be struck"});
        apply(facts, ledger.entries().back());
        const Body strike = Struck{ledger.size(), "slipped"};
        state.ResumeTiming();
        std::optional<Facts> afterwards;
        if (auto may = mayAppend(ledger, facts, assessment, person, strike, {}, &afterwards); !may) {
            stop(may.error().sentence);
        }
        ledger.append(ledger.entries().back().time, person, strike);
        facts = afterwards ? std::move(*afterwards) : fold(ledger);
        assessment = assess(facts);
    }
}
BENCHMARK(oneStrike)->Arg(20'000)->Arg(200'000)->Unit(benchmark::kMillisecond)->Iterations(3);

} // namespace

BENCHMARK_MAIN();
