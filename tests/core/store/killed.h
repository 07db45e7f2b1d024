// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// Programs that are killed while they append to a record, at random moments: what they acknowledged is in the file,
/// whole, under seals that hold. Method: "How SQLite Is Tested", section 3.3 "Crash Testing" (sqlite.org/testing.html,
/// from memory).
#include "samples.h"

#include <chrono>
#include <csignal>
#include <cstdlib>
#include <functional>
#include <random>
#include <spawn.h>
#include <store/care/check.h>
#include <sys/wait.h>
#include <thread>
#include <unistd.h>

namespace caprail::samples {

/// Starts a program that prints the number of each entry, one a line, once it is acknowledged; kills it after a time,
/// and gives the last number (0: none). A program that ends by itself must have ended well.
inline std::int64_t runUntilKilled(std::vector<std::string> command, std::chrono::microseconds time) {
    int ends[2];
    EXPECT_EQ(::pipe(ends), 0);
    posix_spawn_file_actions_t actions;
    posix_spawn_file_actions_init(&actions);
    posix_spawn_file_actions_adddup2(&actions, ends[1], STDOUT_FILENO);
    posix_spawn_file_actions_addclose(&actions, ends[0]);
    std::vector<char*> arguments;
    for (std::string& argument : command) {
        arguments.push_back(argument.data());
    }
    arguments.push_back(nullptr);
    pid_t child = 0;
    EXPECT_EQ(::posix_spawn(&child, command.front().c_str(), &actions, nullptr, arguments.data(), environ), 0);
    posix_spawn_file_actions_destroy(&actions);
    ::close(ends[1]);
    std::this_thread::sleep_for(time);
    ::kill(child, SIGKILL);
    int status = 0;
    ::waitpid(child, &status, 0);
    EXPECT_TRUE(WIFSIGNALED(status) || WEXITSTATUS(status) == 0) << command.front() << ": " << WEXITSTATUS(status);
    std::string printed;
    char buffer[4096];
    for (ssize_t count = 0; (count = ::read(ends[0], buffer, sizeof(buffer))) > 0;) {
        printed.append(buffer, static_cast<std::size_t>(count));
    }
    ::close(ends[0]);
    printed.resize(printed.rfind('\n') == std::string::npos ? 0 : printed.rfind('\n'));
    return printed.empty() ? 0 : std::atoll(printed.c_str() + printed.rfind('\n') + 1);
}

/// How often to kill: so often, or as CAPRAIL_KILLS says (thousands in the long run, see DEVELOPERS.md).
inline int killsWanted(int usually) {
    const char* wanted = std::getenv("CAPRAIL_KILLS");
    return wanted == nullptr ? usually : std::atoi(wanted);
}

/// Kills a program that appends to the record at `path` again and again, and looks at what is left each time: read
/// first, as `check` would a record just found; then opened to write, as the window would. `fresh` makes the record
/// anew, now and then: a long ledger would only make opening slower.
inline void killAgainAndAgain(const std::string& path, const std::vector<std::string>& command, int kills,
                              std::chrono::microseconds longest, const std::function<void()>& fresh) {
    ASSERT_GT(kills, 0);
    std::mt19937 random(static_cast<unsigned>(::getpid()));
    fresh();
    const std::int64_t first = checkFile(path).entries;
    std::int64_t acknowledged = first;
    std::int64_t stored = 0;
    int withJournal = 0;
    int beyond = 0;
    for (int i = 0; i < kills; ++i) {
        if (acknowledged > first + 3'000) {
            std::filesystem::remove(path);
            fresh();
            acknowledged = first;
        }
        const auto time = std::chrono::microseconds(5'000 + random() % static_cast<unsigned>(longest.count()));
        const std::int64_t before = acknowledged;
        acknowledged = std::max(acknowledged, runUntilKilled(command, time));
        withJournal += std::filesystem::exists(path + "-journal") ? 1 : 0;
        const CheckReport report = checkFile(path);
        ASSERT_EQ(report.verdict, CheckVerdict::sound) << report.findings.front();
        auto file = RecordFile::open(path, OpenMode::readWrite);
        ASSERT_TRUE(file) << file.error().sentence;
        ASSERT_FALSE(file->isReadOnly()) << file->readOnlyReason();
        ASSERT_GE(file->ledger().size(), acknowledged);
        ASSERT_LE(file->ledger().size(), acknowledged + 1) << "an entry that was never asked for";
        beyond += file->ledger().size() > acknowledged ? 1 : 0;
        acknowledged = file->ledger().size();
        stored += acknowledged - before;
    }
    std::printf("%d kills, %d in the middle of a write, %d after the write and before the answer; %lld entries\n",
                kills, withJournal, beyond, static_cast<long long>(stored));
    EXPECT_GT(withJournal, 0) << "no kill fell into a write: the test is too gentle";
}

} // namespace caprail::samples
