// SPDX-License-Identifier: GPL-3.0-or-later
/// Pipes that are filled bit by bit, cut off or never end; and programs killed while they make something, which is then
/// made again.
#include "attack.h"

#include <csignal>
#include <ledger/entry.h>
#include <random>
#include <sys/stat.h>

namespace caprail::attack {
namespace {

/// A pipe in the file system into which a process of its own writes.
class Pipe {
public:
    Pipe(std::string path, const std::string& text, std::size_t atOnce, bool isEndless = false)
        : m_path(std::move(path)) {
        EXPECT_EQ(::mkfifo(m_path.c_str(), 0600), 0);
        m_writer = ::fork();
        if (m_writer != 0) {
            return;
        }
        ::signal(SIGPIPE, SIG_DFL);
        const int out = ::open(m_path.c_str(), O_WRONLY);
        do {
            for (std::size_t at = 0; at < text.size(); at += atOnce) {
                if (::write(out, text.data() + at, std::min(atOnce, text.size() - at)) < 0) {
                    ::_exit(1);
                }
                if (!isEndless) {
                    ::usleep(300);
                }
            }
        } while (isEndless);
        ::_exit(0);
    }
    Pipe(const Pipe&) = delete;
    Pipe& operator=(const Pipe&) = delete;
    ~Pipe() {
        ::kill(m_writer, SIGKILL);
        ::waitpid(m_writer, nullptr, 0);
        ::unlink(m_path.c_str());
    }
    [[nodiscard]] const std::string& path() const { return m_path; }

private:
    std::string m_path;
    pid_t m_writer = 0;
};

TEST(AttackPipes, are_imported_to_their_end_or_not_at_all) {
    Count count;
    const Folder folder;
    const std::string text = read(SAMPLE_BUILDS "/closed.jsonl");
    const Answer whole = caprail({"import", SAMPLE_BUILDS "/closed.jsonl", folder / "whole.caprail"});
    ASSERT_EQ(whole.exitCode, 0) << whole.err;
    const std::string said = whole.out.substr(whole.out.find(" was made: ")); // count and seal
    const std::string checked = caprail({"check", folder / "whole.caprail"}).out;
    count.held(checked.find(said.substr(11)) != std::string::npos, "check says the same as import", whole);
    int number = 0;
    const auto fresh = [&] { return folder / (std::to_string(++number) + ".caprail"); };
    for (const std::size_t atOnce : {std::size_t{37}, std::size_t{4096}, std::size_t{70'000}}) {
        const Pipe pipe(folder / "pipe", text, atOnce);
        const std::string record = fresh();
        const Answer answer = caprail({"import", pipe.path(), record});
        count.held(answer.exitCode == 0 && answer.says(said), "a pipe, " + std::to_string(atOnce) + " bytes at once",
                   answer);
    }
    for (const char* const name : {"-", "/dev/stdin"}) {
        const Answer answer = caprail({"import", name, fresh()}, text);
        count.held(answer.exitCode == 0 && answer.says(said), std::string("standard input as ") + name, answer);
    }
    for (const std::string& nothing : {std::string(), std::string("\n\n \n")}) {
        const std::string record = fresh();
        const Answer answer = caprail({"import", "-", record}, nothing);
        count.held(answer.exitCode == 2 && answer.says("does not hold a single entry") &&
                       !std::filesystem::exists(record),
                   "nothing", answer);
        const Pipe pipe(folder / "pipe", nothing, 10);
        const Answer piped = caprail({"import", pipe.path(), record});
        count.held(piped.exitCode == 2 && !std::filesystem::exists(record), "an empty pipe", piped);
    }
    // A ledger that was cut at the end of a line says another count and another seal.
    const int cuts = so(5, 100);
    std::size_t at = 0;
    for (int cut = 0; cut < cuts; ++cut) {
        at = text.find('\n', at + text.size() / static_cast<std::size_t>(cuts + 2));
        const std::string record = fresh();
        const Answer answer = caprail({"import", "-", record}, text.substr(0, at + 1));
        count.held(answer.exitCode == 0 && !answer.says(said) && answer.says("seal "), "cut at a line's end", answer);
        const Answer torn = caprail({"import", "-", fresh()}, text.substr(0, at - 5));
        count.held(torn.exitCode == 2 && torn.says("line "), "cut within a line", torn);
    }
}

TEST(AttackPipes, a_ledger_of_a_hand_over_that_was_cut_is_told_by_its_sums) {
    Count count;
    const Folder folder;
    makeRecord(folder / "a.caprail", "closed");
    ASSERT_EQ(caprail({"handover", folder / "a.caprail", folder / "out"}).exitCode, 0);
    const std::string text = read(folder / "out/ledger.jsonl");
    std::size_t end = text.size() - 1;
    for (int cut = 0; cut < so(5, 50); ++cut) {
        end = text.rfind('\n', end - 1);
        write(folder / "out/ledger.jsonl", text.substr(0, end + 1));
        const Answer answer = caprail({"import", folder / "out/ledger.jsonl", folder / "b.caprail"});
        count.held(answer.exitCode == 2 && answer.says("does not fit its sum") &&
                       !std::filesystem::exists(folder / "b.caprail"),
                   "cut lines: " + std::to_string(cut + 1), answer);
    }
    write(folder / "out/ledger.jsonl", text);
    const Answer answer = caprail({"import", folder / "out/ledger.jsonl", folder / "b.caprail"});
    count.held(answer.exitCode == 0, "whole", answer);
}

TEST(AttackPipes, that_never_end_are_ended) {
    Count count;
    const Folder folder;
    makeRecord(folder / "a.caprail");
    const std::string bytes = read(folder / "a.caprail");
    const std::string entry = R"({"kind":"note_added","person":"Nobody","text":"x"})"
                              "\n";
    const std::vector<std::pair<std::vector<std::string>, std::string>> calls{
        {{"plan"}, "zeros"},  {{"append", folder / "a.caprail"}, "zeros"}, {{"import"}, "zeros"},
        {{"plan"}, "[[[[[["}, {{"append", folder / "a.caprail"}, entry},   {{"import"}, "\n"},
        {{"import"}, "{"},    {{"append", folder / "a.caprail"}, "\n"}};
    for (const auto& [call, text] : calls) {
        std::vector<std::string> arguments = call;
        std::string pattern;
        while (text != "zeros" && pattern.size() < 60'000) {
            pattern += text;
        }
        const Pipe pipe(folder / "pipe", text == "zeros" ? std::string("\0", 1) : pattern, 65'536, text != "zeros");
        arguments.push_back(text == "zeros" ? "/dev/zero" : pipe.path());
        if (call[0] == "import") {
            arguments.push_back(folder / "new.caprail");
        }
        Call endless{arguments, {}};
        endless.allowed = std::chrono::milliseconds(120'000); // under a sanitizer, on a machine with other work
        const Answer answer = run(endless);
        count.held(answer.isOrderly() && answer.exitCode != 0 && !answer.err.empty() &&
                       !std::filesystem::exists(folder / "new.caprail") && read(folder / "a.caprail") == bytes,
                   call[0] + " of an endless stream", answer);
    }
}

/// When the program that runs now is killed.
std::chrono::steady_clock::time_point killAt;
void killWhenDue(pid_t process) {
    if (std::chrono::steady_clock::now() >= killAt) {
        ::kill(process, SIGKILL);
    }
}

/// Files below a folder, with their sizes; PDFs without, for they hold the moment of their making.
std::vector<std::string> inventory(const std::string& folder) {
    std::vector<std::string> all;
    for (const auto& entry : std::filesystem::recursive_directory_iterator(folder)) {
        const std::string name = entry.path().lexically_relative(folder).string();
        const bool isSized =
            entry.is_regular_file() && entry.path().extension() != ".pdf" && entry.path().filename() != "SHA256SUMS";
        all.push_back(name + (isSized ? " " + std::to_string(entry.file_size()) : ""));
    }
    std::sort(all.begin(), all.end());
    return all;
}

TEST(AttackKills, while_something_is_made_leave_nothing_that_bars_its_being_made_again) {
    Count count;
    const Folder source;
    makeRecord(source / "plain.caprail", "closed");
    // Photos, so that there is something between the first file and the last.
    for (int i = 0; i < 12; ++i) {
        write(source / ("photo-" + std::to_string(i)), std::string(200'000, static_cast<char>('a' + i)));
    }
    ASSERT_EQ(caprail({"export", source / "plain.caprail", "--ledger", source / "a.jsonl"}).exitCode, 0);
    std::string text = read(source / "a.jsonl");
    std::filesystem::create_directory(source / "a.jsonl.attachments");
    for (int i = 0; i < 12; ++i) {
        const std::string bytes = read(source / ("photo-" + std::to_string(i)));
        const std::string hash = sha256Hex(bytes);
        write(source / "a.jsonl.attachments/" + hash, bytes);
        text += R"({"kind":"attachment_added","person":"Mira Solheim","time":"2026-06-02T09:30:00Z","place":"main-3",)"
                R"("file_name":"cap.png","media_type":"image/png","caption":"cap 3","sha256":")" +
                hash + R"(","original_sha256":")" + hash + R"(","size_bytes":200000})" + "\n";
    }
    write(source / "a.jsonl", text);
    const std::string record = source / "a.caprail";
    const Answer made = caprail({"import", source / "a.jsonl", record});
    ASSERT_EQ(made.exitCode, 0) << made.err;
    const Folder folder;
    const std::vector<std::vector<std::string>> calls{{"export", record, "--ledger", folder / "a.jsonl"},
                                                      {"export", record, folder / "tables"},
                                                      {"handover", record, folder / "out", "--csv"},
                                                      {"import", source / "a.jsonl", folder / "b.caprail"},
                                                      {"sheet", record, folder / "a.pdf"}};
    std::mt19937 random(20'261'128);
    const auto clear = [&] {
        for (const std::string& name : folder.names()) {
            std::filesystem::remove_all(folder / name);
        }
    };
    int inFlight = 0;
    for (const auto& call : calls) {
        clear();
        const auto begun = std::chrono::steady_clock::now();
        ASSERT_EQ(caprail(call).exitCode, 0);
        const auto whole =
            std::chrono::duration_cast<std::chrono::microseconds>(std::chrono::steady_clock::now() - begun);
        const auto wanted = inventory(folder.path());
        for (int kill = 0; kill < so(8, 200); ++kill) {
            clear();
            killAt = std::chrono::steady_clock::now() +
                     std::chrono::microseconds(static_cast<std::int64_t>(random()) % whole.count());
            Call killed{call, {}};
            killed.meanwhile = &killWhenDue;
            (void)run(killed);
            const auto left = folder.names();
            inFlight += left.empty() ? 0 : 1;
            const bool isDone = inventory(folder.path()) == wanted;
            if (isDone) {
                count.held(true, "whole before the kill");
                continue;
            }
            // Nothing of it stands under its own name half made; a record's text comes after its photos.
            const Answer again = caprail(call);
            count.held(again.exitCode == 0 && inventory(folder.path()) == wanted,
                       call[0] + " killed, then called again", again);
        }
    }
    std::printf("%d kills left something behind for a moment\n", inFlight);
}

} // namespace
} // namespace caprail::attack
