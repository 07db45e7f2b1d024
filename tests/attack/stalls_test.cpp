// SPDX-License-Identifier: GPL-3.0-or-later
/// A disk that stalls, and a program that is stopped for a while: a sound record stays sound.
#include "attack.h"

namespace caprail::attack {
namespace {

/// A record long enough that the program asks itself during the reading whether it takes too long.
void makeLongRecord(const std::string& path, const Folder& scratch) {
    std::string lines = read(SAMPLE_BUILDS "/mid-survey.jsonl");
    for (int i = 0; i < 4'000; ++i) {
        lines += R"({"kind":"note_added","person":"Mira Solheim","time":"2026-06-01T20:00:00.000Z","place":"","text":)"
                 "\"note " +
                 std::to_string(i) + "\"}\n";
    }
    write(scratch / "long.jsonl", lines);
    const Answer made = caprail({"import", scratch / "long.jsonl", path});
    ASSERT_EQ(made.exitCode, 0) << made.err;
}

TEST(AttackStalls, of_the_disk_make_no_sound_record_damaged) {
    const Folder folder;
    const std::string record = folder / "a.caprail";
    makeLongRecord(record, folder);
    Count count;
    // At the beginning, while the pages are checked, while the entries are read.
    for (const int at : isLong() ? std::vector<int>{3, 10, 40, 60, 100, 150, 200} : std::vector<int>{60}) {
        const Answer answer =
            run({{"check", record},
                 {},
                 {"LD_PRELOAD=" SLOW_DISK, "CAPRAIL_STALL=6", "CAPRAIL_STALL_AT=" + std::to_string(at)},
                 std::chrono::milliseconds(60'000)});
        count.held(answer.exitCode == 0 && answer.says("is sound"), "a stall at read " + std::to_string(at), answer);
    }
}

TEST(AttackStalls, of_the_program_make_no_sound_record_damaged) {
    const Folder folder;
    const std::string record = folder / "a.caprail";
    makeLongRecord(record, folder);
    Count count;
    for (int i = 0; i < so(1, 6); ++i) {
        static std::chrono::milliseconds pause;
        pause = std::chrono::milliseconds(15 + 15 * i);
        const Answer answer = run({{"check", record}, {}, {}, std::chrono::milliseconds(60'000), [](pid_t program) {
                                       static pid_t stopped = 0;
                                       if (stopped != program) {
                                           stopped = program;
                                           ::usleep(static_cast<useconds_t>(pause.count() * 1000));
                                           ::kill(program, SIGSTOP);
                                           ::usleep(5'500'000);
                                           ::kill(program, SIGCONT);
                                       }
                                   }});
        count.held(answer.exitCode == 0 && answer.says("is sound"), "stopped for 5.5 s", answer);
    }
}

} // namespace
} // namespace caprail::attack
