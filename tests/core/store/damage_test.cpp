// SPDX-License-Identifier: GPL-3.0-or-later
/// Damaged and hostile files: refused or read, never a crash, a hang or a write to the file. The method (every
/// truncation, flipped bits on every page, hand-made hostile schemas) follows "How SQLite Is Tested", sections 3.4 and
/// 4 (sqlite.org/testing.html, from memory).
#include "alter.h"

#include <chrono>
#include <gmock/gmock.h>
#include <ledger/entry_json.h>
#include <random>
#include <store/care/check.h>
#include <store/file/entry_rows.h>
#include <store/sqlite/time_guard.h>
#include <sys/wait.h>
#include <thread>
#include <unistd.h>

namespace caprail {
namespace {

using namespace samples;
using testing::HasSubstr;

/// Opens and checks a file, which must take under 5 s and leave it as it was. True when it opened.
bool tryToRead(const std::string& path, const Ledger& original) {
    const std::string before = read(path);
    const auto start = std::chrono::steady_clock::now();
    const auto file = RecordFile::open(path, OpenMode::readWrite);
    const CheckReport report = checkFile(path);
    EXPECT_LT(std::chrono::steady_clock::now() - start, std::chrono::seconds(5));
    EXPECT_EQ(read(path), before);
    if (file) {
        EXPECT_EQ(file->ledger().entries(), original.entries()) << "a damaged entry was believed";
    } else {
        EXPECT_FALSE(file.error().sentence.empty());
        EXPECT_NE(report.verdict, CheckVerdict::sound) << file.error().sentence;
    }
    return file.has_value();
}

TEST(Damage, of_a_file_cut_off_anywhere_is_noticed) {
    const Folder folder;
    const std::string path = folder / "smith.caprail";
    const Ledger ledger = makeFullRecord(path);
    const std::string sound = read(path);
    int cuts = 0;
    for (std::size_t size = 0; size < sound.size(); size += 512) {
        write(path, sound.substr(0, size));
        EXPECT_FALSE(tryToRead(path, ledger)) << size;
        ++cuts;
    }
    RecordProperty("cuts", cuts);
    EXPECT_GT(cuts, 400);
}

TEST(Damage, by_flipped_bits_on_every_page_is_never_believed) {
    const Folder folder;
    const std::string path = folder / "smith.caprail";
    const Ledger ledger = makeFullRecord(path);
    const std::string sound = read(path);
    std::mt19937 random(20260504); // always the same flips
    int flips = 0;
    int refused = 0;
    for (std::size_t page = 0; page * 4096 < sound.size(); ++page) {
        std::vector<std::size_t> places{0, 1, 3, 5, 8, 4095, 4000};
        for (int i = 0; i < 5; ++i) {
            places.push_back(random() % 4096);
        }
        for (const std::size_t place : places) {
            std::string damaged = sound;
            char& byte = damaged[page * 4096 + place];
            byte = static_cast<char>(byte ^ (1 << random() % 8));
            write(path, damaged);
            refused += tryToRead(path, ledger) ? 0 : 1;
            ++flips;
        }
    }
    RecordProperty("flips", flips);
    RecordProperty("refused", refused);
    EXPECT_GT(refused, flips / 10); // most bytes of a small record are empty room
}

TEST(Damage, by_pages_full_of_noise_or_of_other_pages_is_never_believed) {
    const Folder folder;
    const std::string path = folder / "smith.caprail";
    const Ledger ledger = makeFullRecord(path);
    const std::string sound = read(path);
    std::mt19937 random(7);
    for (std::size_t page = 1; page * 4096 < sound.size(); ++page) {
        std::string noisy = sound;
        for (std::size_t i = 0; i < 4096; ++i) {
            noisy[page * 4096 + i] = static_cast<char>(random());
        }
        write(path, noisy);
        tryToRead(path, ledger);
        std::string swapped = sound;
        swapped.replace(page * 4096, 4096, sound, (random() % (sound.size() / 4096)) * 4096, 4096);
        write(path, swapped);
        tryToRead(path, ledger);
    }
}

/// A record with one entry whose row is given, sealed so that it fits: what a skilled liar would make.
void makeSealed(const std::string& path, std::size_t kind, const std::vector<Cell>& cells, const std::string& person) {
    makeRecord(path, 0);
    auto database = Database::open(path, Access::readWrite);
    ASSERT_TRUE(database);
    Entry entry{1, morning, person, {}, {}};
    const KindInfo& info = allKinds()[kind];
    entry.seal = sealOver(Seal{}, canonicalText(1, morning, person, info, cells));
    sqlite3_stmt* row = nullptr;
    sqlite3_prepare_v2((*database)->handle(), "INSERT INTO entry VALUES (1, ?, ?, ?, ?)", -1, &row, nullptr);
    const std::string time = format(morning);
    sqlite3_bind_text(row, 1, time.c_str(), -1, SQLITE_STATIC);
    sqlite3_bind_text(row, 2, person.data(), static_cast<int>(person.size()), SQLITE_STATIC);
    sqlite3_bind_text(row, 3, info.kind.data(), static_cast<int>(info.kind.size()), SQLITE_STATIC);
    sqlite3_bind_blob(row, 4, entry.seal.bytes.data(), 32, SQLITE_STATIC);
    ASSERT_EQ(sqlite3_step(row), SQLITE_DONE);
    sqlite3_finalize(row);
    std::string sql = "INSERT INTO " + std::string(info.kind) + " VALUES (1";
    for (std::size_t i = 0; i < cells.size(); ++i) {
        sql += ", ?";
    }
    sqlite3_prepare_v2((*database)->handle(), (sql + ")").c_str(), -1, &row, nullptr);
    for (int at = 1; const Cell& cell : cells) {
        if (const auto* n = std::get_if<std::int64_t>(&cell)) {
            sqlite3_bind_int64(row, at, *n);
        } else if (const auto* s = std::get_if<std::string>(&cell)) {
            sqlite3_bind_text(row, at, s->data(), static_cast<int>(s->size()), SQLITE_STATIC);
        }
        ++at;
    }
    ASSERT_EQ(sqlite3_step(row), SQLITE_DONE) << sqlite3_errmsg((*database)->handle());
    sqlite3_finalize(row);
}

TEST(Hostile, values_are_refused_even_under_a_seal_that_fits) {
    const Folder folder;
    const std::size_t gapKind = *kindIndex("gap_reading");
    const std::size_t noteKind = *kindIndex("note_added");
    struct Case {
        std::string name;
        std::size_t kind;
        std::vector<Cell> cells;
        std::string person;
    };
    const auto gapCells = [](std::string position, std::int64_t nm) {
        return std::vector<Cell>{position, std::int64_t{1}, nm, std::string("1"), std::string("F"), {}, {}, {}};
    };
    const std::vector<Case> cases{
        {"huge length", gapKind, gapCells("1L", INT64_MAX), "Ann"},
        {"hugely negative length", gapKind, gapCells("1L", INT64_MIN), "Ann"},
        {"no such position", gapKind, gapCells("999999999999L", 1), "Ann"},
        {"invalid UTF-8", noteKind, {std::string("\xff\xfe"), std::string("x")}, "Ann"},
        {"invalid UTF-8 in the person", noteKind, {std::string(), std::string("x")}, "\xc3"},
        {"NUL in a text", noteKind, {std::string("a\0b", 3), std::string("x")}, "Ann"},
        {"a text of 20 MB", noteKind, {std::string(), std::string(20'000'000, 'x')}, "Ann"},
        {"a person of 20 MB", noteKind, {std::string(), std::string("x")}, std::string(20'000'000, 'x')},
    };
    for (const Case& c : cases) {
        const std::string path = folder / (c.name + ".caprail");
        makeSealed(path, c.kind, c.cells, c.person);
        const auto file = RecordFile::open(path, OpenMode::readWrite);
        EXPECT_FALSE(file) << c.name;
        if (!file) {
            EXPECT_THAT(file.error().sentence, testing::ContainsRegex("[Ee]ntry 1")) << c.name;
            EXPECT_LT(file.error().sentence.size(), 2000U) << c.name;
        }
        EXPECT_EQ(checkFile(path).verdict, CheckVerdict::damagedOrAltered) << c.name;
    }
    makeSealed(folder / "good.caprail", gapKind, gapCells("1L", 1), "Ann");
    EXPECT_TRUE(RecordFile::open(folder / "good.caprail", OpenMode::readWrite))
        << "the cases above fail for their own reasons";
}

TEST(Hostile, entries_beyond_the_memory_limit_are_refused_without_being_read) {
    const Folder folder;
    const std::string path = folder / "smith.caprail";
    makeRecord(path, 1);
    alter(path, "INSERT INTO entry SELECT 9223372036854775807, time, person, kind, seal FROM entry");
    const auto file = RecordFile::open(path, OpenMode::readWrite);
    EXPECT_FALSE(file);
}

/// The most memory, in MiB, that a process of its own takes to open and check a file; −1 when it crashed.
double peakMemoryOf(const std::string& path, double& seconds) {
    int ends[2];
    EXPECT_EQ(::pipe(ends), 0);
    const auto start = std::chrono::steady_clock::now();
    const pid_t child = ::fork();
    if (child == 0) {
        std::ofstream("/proc/self/clear_refs") << "5"; // forget the peak that was inherited
        (void)RecordFile::open(path, OpenMode::readOnly);
        (void)checkFile(path);
        double peak = -1;
        std::ifstream status("/proc/self/status");
        for (std::string word; status >> word;) {
            if (word == "VmHWM:") {
                status >> peak;
            }
        }
        ::_exit(::write(ends[1], &peak, sizeof(peak)) == sizeof(peak) ? 0 : 1);
    }
    ::close(ends[1]);
    double peak = -1;
    EXPECT_EQ(::read(ends[0], &peak, sizeof(peak)), static_cast<ssize_t>(sizeof(peak)));
    ::close(ends[0]);
    ::waitpid(child, nullptr, 0);
    seconds = std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
    return peak / 1024;
}

TEST(Hostile, files_take_less_than_512_mib_and_no_long_time) {
    // Rows are added by SQL, as anyone could: the first seal that does not fit, the numbers or the limit on memory end
    // the reading, whichever comes first.
    const std::vector<std::pair<std::string, std::string>> cases{
        {"300 000 rows", "WITH RECURSIVE n(i) AS (SELECT 2 UNION ALL SELECT i + 1 FROM n WHERE i < 300000) INSERT INTO "
                         "entry SELECT i, e.time, e.person, e.kind, e.seal FROM n, entry AS e WHERE e.sequence = 1; "
                         "INSERT INTO gap_reading SELECT e.sequence, g.position, g.pass, g.gap_nm, g.gap_typed, "
                         "g.instrument, g.does_not_go_nm, g.does_not_go_typed, g.straightedge FROM entry AS e, gap_reading AS g WHERE g.sequence = 1 AND e.sequence > 1"},
        {"texts of 250 KB", "WITH RECURSIVE n(i) AS (SELECT 2 UNION ALL SELECT i + 1 FROM n WHERE i < 900) INSERT INTO "
                            "entry SELECT i, e.time, e.person, 'note_added', e.seal FROM n, entry AS e WHERE "
                            "e.sequence = 1; INSERT INTO note_added SELECT sequence, '', hex(zeroblob(125000)) FROM "
                            "entry WHERE sequence > 1"},
        {"one text of 200 MB", "UPDATE gap_reading SET gap_typed = hex(zeroblob(100000000))"},
        {"one blob of 200 MB", "INSERT INTO attachment VALUES (hex(zeroblob(32)), zeroblob(200000000))"},
        {"a seal of 200 MB", "PRAGMA ignore_check_constraints = ON; UPDATE entry SET seal = zeroblob(200000000)"},
    };
    for (const auto& [name, sql] : cases) {
        const Folder folder;
        const std::string path = folder / "smith.caprail";
        makeRecord(path, 1);
        sqlite3_hard_heap_limit64(0); // the limit is the process's; whoever made the file had none
        alter(path, sql);
        double seconds = 0;
        const double peak = peakMemoryOf(path, seconds);
        std::printf("%-20s %6.1f MiB %5.2f s\n", name.c_str(), peak, seconds);
        EXPECT_GT(peak, 0) << name;
        EXPECT_LT(peak, 512) << name;
        EXPECT_LT(seconds, 10) << name; // opened and checked: twice 5 s
        EXPECT_EQ(checkFile(path).verdict, CheckVerdict::damagedOrAltered) << name;
    }
}

TEST(Hostile, a_sealed_record_larger_than_memory_may_be_is_refused_before_it_is_all_read) {
    const Folder folder;
    const std::string path = folder / "smith.caprail";
    makeRecord(path, 0);
    {
        auto database = Database::open(path, Access::readWrite);
        ASSERT_TRUE(database && (*database)->run("PRAGMA synchronous = OFF; BEGIN"));
        EntryWriter writer(**database);
        Entry entry{0, morning, "Ann", NoteAdded{"", std::string(255UL * 1024, 'x')}, {}};
        const std::vector<Cell> cells = cellsOf(entry.body);
        for (entry.sequence = 1; entry.sequence <= 1'350; ++entry.sequence) {
            entry.seal = sealOver(entry.seal, canonicalText(entry));
            ASSERT_TRUE(writer.insert(entry, cells));
        }
        ASSERT_TRUE((*database)->run("COMMIT"));
    }
    double seconds = 0;
    const double peak = peakMemoryOf(path, seconds);
    std::printf("%.0f MiB of sealed texts: %.0f MiB, %.2f s\n",
                static_cast<double>(std::filesystem::file_size(path)) / 1024 / 1024, peak, seconds);
    EXPECT_GT(peak, 100);
    EXPECT_LT(peak, 512);
    const auto file = RecordFile::open(path, OpenMode::readOnly);
    ASSERT_FALSE(file);
    EXPECT_THAT(file.error().sentence, HasSubstr("more than this program reads into memory"));
}

TEST(Hostile, statements_that_never_end_are_stopped) {
    const Folder folder;
    makeRecord(folder / "smith.caprail", 1);
    auto database = Database::open(folder / "smith.caprail", Access::readOnly);
    ASSERT_TRUE(database);
    const auto start = std::chrono::steady_clock::now();
    {
        const TimeGuard guard(**database, std::chrono::milliseconds(200));
        const auto answer = (*database)->integer(
            "WITH RECURSIVE r(n) AS (SELECT 1 UNION ALL SELECT n + 1 FROM r) SELECT max(n) FROM r");
        ASSERT_FALSE(answer);
        EXPECT_THAT(answer.error().sentence, HasSubstr("takes longer to read than a record does"));
    }
    EXPECT_LT(std::chrono::steady_clock::now() - start, std::chrono::seconds(5));
    EXPECT_TRUE((*database)->integer("SELECT count(*) FROM entry")) << "the guard is gone with its scope";
    {
        // A disk that stalls, a stopped program: waiting is no computing.
        const TimeGuard guard(**database, std::chrono::milliseconds(200));
        std::this_thread::sleep_for(std::chrono::milliseconds(400));
        EXPECT_TRUE((*database)->integer(
            "WITH RECURSIVE r(n) AS (SELECT 1 UNION ALL SELECT n + 1 FROM r LIMIT 20000) SELECT max(n) FROM r"));
    }
    EXPECT_EQ(TimeGuard::allowedFor(1'000'000), std::chrono::seconds(5));
    EXPECT_EQ(TimeGuard::allowedFor(1'100LL * 1024 * 1024), std::chrono::seconds(55));
}

TEST(Hostile, journals_beside_a_record_do_no_harm) {
    const Folder folder;
    const std::string path = folder / "smith.caprail";
    makeRecord(path, 2);
    std::mt19937 random(3);
    std::string noise(20'000, '\0');
    for (char& c : noise) {
        c = static_cast<char>(random());
    }
    for (const std::string& journal :
         {noise, std::string("\xd9\xd5\x05\xf9\x20\xa1\x63\xd7", 8) + noise, std::string()}) {
        write(path + "-journal", journal);
        const auto file = RecordFile::open(path, OpenMode::readWrite);
        if (file) {
            EXPECT_EQ(file->ledger().size(), 2);
        } else {
            EXPECT_FALSE(file.error().sentence.empty());
        }
    }
}

} // namespace
} // namespace caprail
