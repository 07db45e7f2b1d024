// SPDX-License-Identifier: GPL-3.0-or-later
/// Pipes, devices, folders, sockets, links and huge files under the names that a record's lock and journals have.
#include "attack.h"

#include <functional>
#include <sys/socket.h>
#include <sys/stat.h>
#include <sys/un.h>

namespace caprail::attack {
namespace {

struct Thing {
    std::string name;
    std::function<void(const std::string&)> put;
};

void putSocket(const std::string& path) {
    const int socket = ::socket(AF_UNIX, SOCK_STREAM | SOCK_CLOEXEC, 0);
    sockaddr_un address{};
    address.sun_family = AF_UNIX;
    ASSERT_LT(path.size(), sizeof(address.sun_path));
    std::memcpy(address.sun_path, path.data(), path.size());
    ASSERT_EQ(::bind(socket, reinterpret_cast<const sockaddr*>(&address), sizeof(address)), 0);
    ::close(socket);
}

std::vector<Thing> things(const Folder& elsewhere) {
    write(elsewhere / "letter.txt", "Dear sir, the crank is ready.");
    return {{"a pipe", [](const std::string& path) { ASSERT_EQ(::mkfifo(path.c_str(), 0600), 0); }},
            {"a link to an endless device",
             [](const std::string& path) { ASSERT_EQ(::symlink("/dev/zero", path.c_str()), 0); }},
            {"a folder", [](const std::string& path) { ASSERT_EQ(::mkdir(path.c_str(), 0700), 0); }},
            {"a socket", putSocket},
            {"a link to a letter",
             [letter = elsewhere / "letter.txt"](const std::string& path) {
                 ASSERT_EQ(::symlink(letter.c_str(), path.c_str()), 0);
             }},
            {"a file of 3 GB", [](const std::string& path) {
                 write(path, "");
                 ASSERT_EQ(::truncate(path.c_str(), 3'000'000'000), 0);
             }}};
}

TEST(AttackSpecialFiles, as_lock_or_journal_hold_no_program_up) {
    Count count;
    const Folder elsewhere;
    const std::string entry = elsewhere / "entry.jsonl";
    write(entry, R"({"kind":"note_added","person":"Mira Solheim","place":"","text":"a note"})");
    for (const Thing& thing : things(elsewhere)) {
        for (const std::string ending : {"-journal", "-wal", "-shm", "lock"}) {
            const Folder folder;
            const std::string record = folder / "a.caprail";
            makeRecord(record);
            const std::string before = read(record);
            thing.put(ending == "lock" ? folder / ".a.caprail.lock" : record + ending);
            const std::string what = thing.name + " as " + ending + ": ";
            for (const std::string verb : {"check", "show"}) {
                const Answer answer = caprail({verb, record});
                count.held(answer.isOrderly() && read(record) == before, what + verb, answer);
            }
            const Answer answer = caprail({"append", record, entry});
            const bool isRefused = answer.exitCode == 1 || answer.exitCode == 2;
            count.held(answer.isOrderly() && isRefused && !answer.err.empty() && read(record) == before,
                       what + "append", answer);
        }
    }
    EXPECT_EQ(read(elsewhere / "letter.txt"), "Dear sir, the crank is ready.");
}

} // namespace
} // namespace caprail::attack
