// SPDX-License-Identifier: GPL-3.0-or-later
/// A program that is killed while it appends, at random moments: what it acknowledged is in the file, whole, under
/// seals that hold. A killed process is not a power cut (the system still writes its buffers): that part rests on the
/// order of writes and syncs, which fault_test.cpp tries by failing each. Method: "How SQLite Is Tested", section 3.3
/// "Crash Testing" (sqlite.org/testing.html, from memory).
#include "samples.h"

#include <csignal>
#include <cstdlib>
#include <random>
#include <spawn.h>
#include <store/check.h>
#include <sys/wait.h>
#include <thread>
#include <unistd.h>

namespace caprail {
namespace {

using namespace samples;

/// Lets the helper append for a while, kills it, and gives the last number that it acknowledged (0: none).
std::int64_t appendUntilKilled(const std::string& path, std::chrono::microseconds time) {
    int ends[2];
    EXPECT_EQ(::pipe(ends), 0);
    posix_spawn_file_actions_t actions;
    posix_spawn_file_actions_init(&actions);
    posix_spawn_file_actions_adddup2(&actions, ends[1], STDOUT_FILENO);
    posix_spawn_file_actions_addclose(&actions, ends[0]);
    std::string program = APPEND_FOREVER;
    std::string argument = path;
    char* arguments[] = {program.data(), argument.data(), nullptr};
    pid_t child = 0;
    EXPECT_EQ(::posix_spawn(&child, program.c_str(), &actions, nullptr, arguments, environ), 0);
    posix_spawn_file_actions_destroy(&actions);
    ::close(ends[1]);
    std::this_thread::sleep_for(time);
    ::kill(child, SIGKILL);
    int status = 0;
    ::waitpid(child, &status, 0);
    EXPECT_TRUE(WIFSIGNALED(status)) << "the helper ended by itself: " << WEXITSTATUS(status);
    std::int64_t last = 0;
    std::int64_t number = 0;
    while (::read(ends[0], &number, sizeof(number)) == sizeof(number)) {
        last = number;
    }
    ::close(ends[0]);
    return last;
}

TEST(Kill, loses_no_acknowledged_entry_and_leaves_no_half_one) {
    const char* wanted = std::getenv("CAPRAIL_KILLS"); // thousands in the long run, see tests/run
    const int kills = wanted == nullptr ? 200 : std::atoi(wanted);
    ASSERT_GT(kills, 0);
    const Folder folder;
    const std::string path = folder / "smith.caprail";
    makeRecord(path, 0);
    std::mt19937 random(static_cast<unsigned>(::getpid()));
    std::int64_t acknowledged = 0;
    int withJournal = 0;
    int beyond = 0;
    for (int i = 0; i < kills; ++i) {
        if (acknowledged > 3'000) { // a long ledger would only make opening slower
            std::filesystem::remove(path);
            makeRecord(path, 0);
            acknowledged = 0;
        }
        const auto time = std::chrono::microseconds(5'000 + random() % 60'000);
        const std::int64_t last = appendUntilKilled(path, time);
        acknowledged = std::max(acknowledged, last);
        withJournal += std::filesystem::exists(path + "-journal") ? 1 : 0;
        // Read first, as `check` would on a record just found; then open to write, as the window would.
        const CheckReport report = checkFile(path);
        ASSERT_EQ(report.verdict, CheckVerdict::sound) << report.findings.front();
        auto file = RecordFile::open(path, OpenMode::readWrite);
        ASSERT_TRUE(file) << file.error().sentence;
        ASSERT_FALSE(file->isReadOnly()) << file->readOnlyReason();
        ASSERT_GE(file->ledger().size(), acknowledged);
        ASSERT_LE(file->ledger().size(), acknowledged + 1) << "an entry that was never asked for";
        beyond += file->ledger().size() > acknowledged ? 1 : 0;
        acknowledged = file->ledger().size();
    }
    std::printf("%d kills, %d in the middle of a write, %d after the write and before the answer\n", kills, withJournal,
                beyond);
    EXPECT_GT(withJournal, 0) << "no kill fell into a write: the test is too gentle";
}

} // namespace
} // namespace caprail
