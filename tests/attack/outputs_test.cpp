// SPDX-License-Identifier: GPL-3.0-or-later
/// Outputs aimed at records and at other people's files, at full disks and closed pipes; files that appear in the last
/// moment; names that are no text; pictures that are drawings.
#include "attack.h"

#include <ledger/entry.h>
#include <sys/stat.h>

namespace caprail::attack {
namespace {

/// What is at a place before and after an attack.
std::string stateOf(const std::string& path) {
    std::error_code error;
    const auto status = std::filesystem::symlink_status(path, error);
    const std::string kind = std::to_string(static_cast<int>(status.type())) + " ";
    if (std::filesystem::is_symlink(status)) {
        return kind + std::filesystem::read_symlink(path, error).string();
    }
    return kind + (std::filesystem::is_regular_file(status) ? read(path) : "");
}

/// Runs a line in a shell that has $caprail; for redirections.
Answer shell(const std::string& line, const Folder& folder) {
    Answer answer;
    const std::string err = folder / "shell-err";
    const std::string whole = "export QT_QPA_PLATFORM=offscreen LC_ALL=C.UTF-8 caprail='" CAPRAIL_PROGRAM "' "
                              "ASAN_OPTIONS=exitcode=99:detect_leaks=0 UBSAN_OPTIONS=exitcode=99:halt_on_error=1; "
                              "cd '" +
                              folder.path() + "'; timeout 60 sh -c '" + line + "' 2>'" + err + "'";
    const int status = std::system(whole.c_str());
    answer.exitCode = WIFEXITED(status) ? WEXITSTATUS(status) : -1;
    answer.hung = answer.exitCode == 124;
    answer.err = read(err);
    answer.crashed = answer.exitCode == 99 || answer.exitCode < 0 || answer.exitCode > 128;
    std::filesystem::remove(err);
    return answer;
}

TEST(AttackOutputs, aimed_at_records_and_other_peoples_files_write_over_none) {
    Count count;
    const Folder folder;
    const std::string record = folder / "a.caprail";
    makeRecord(record, "closed");
    makeRecord(folder / "other.caprail");
    std::filesystem::create_directory(folder / "full");
    write(folder / "full/theirs", "x");
    std::vector<std::string> targets{record, folder / "other.caprail", folder / "full"};
    for (const char* const name : {"link.pdf", "link.png", "link.jsonl", "link.caprail"}) {
        std::filesystem::create_symlink(record, folder / name);
        targets.push_back(folder / name);
    }
    for (const char* const name : {"hard.pdf", "hard.png"}) {
        std::filesystem::create_hard_link(folder / "other.caprail", folder / name);
        targets.push_back(folder / name);
    }
    for (const char* const name : {"letter.pdf", "letter.png", "letter.jsonl", "letter-1.png", "empty.pdf"}) {
        write(folder / name, std::string(name) == "empty.pdf" ? "" : "Dear Mr. Vale");
        targets.push_back(folder / name);
    }
    for (const char* const name : {"pipe.pdf", "pipe.png"}) {
        ASSERT_EQ(::mkfifo((folder / name).c_str(), 0600), 0);
        targets.push_back(folder / name);
    }
    std::filesystem::create_symlink(folder / "nowhere", folder / "dangling.pdf");
    targets.push_back(folder / "dangling.pdf");
    std::filesystem::create_symlink("/dev/null", folder / "null.pdf");
    targets.push_back(folder / "null.pdf");
    const auto names = folder.names();
    for (const std::string& target : targets) {
        const std::vector<std::vector<std::string>> calls{{"sheet", record, target},
                                                          {"sheet", record, target, "--replace"},
                                                          {"sheet", record, target, "--replace", "--difference"},
                                                          {"export", record, target},
                                                          {"export", record, "--ledger", target},
                                                          {"import", SAMPLE_BUILDS "/closed.jsonl", target},
                                                          {"handover", record, target}};
        for (const auto& call : calls) {
            std::vector<std::string> before;
            for (const std::string& one : targets) {
                before.push_back(stateOf(one));
            }
            const Answer answer = caprail(call);
            std::vector<std::string> after;
            for (const std::string& one : targets) {
                after.push_back(stateOf(one));
            }
            const bool isRefused = answer.isOrderly() && answer.exitCode != 0 && !answer.err.empty() &&
                                   (call[0] != "sheet" || answer.exitCode == 64);
            // Pages of "letter.png" go beside it; the one that stands there is what refuses them.
            count.held(isRefused && after == before && folder.names() == names,
                       call[0] + " " + (call.size() > 3 ? call[3] : "") + " to " + target, answer);
        }
    }
}

TEST(AttackOutputs, replace_an_earlier_sheet_only_when_told_to) {
    Count count;
    const Folder folder;
    makeRecord(folder / "a.caprail");
    for (const std::string out : {"a.pdf", "a.png"}) {
        const std::string first = folder / (out == "a.pdf" ? "a.pdf" : "a-1.png");
        count.held(caprail({"sheet", folder / "a.caprail", folder / out}).exitCode == 0 && !read(first).empty(), "new");
        const std::string old = read(first);
        const Answer refused = caprail({"sheet", folder / "a.caprail", folder / out});
        count.held(refused.exitCode == 1 && refused.says("--replace") && read(first) == old, "again", refused);
        const Answer replaced = caprail({"sheet", folder / "a.caprail", folder / out, "--replace", "--letter"});
        count.held(replaced.exitCode == 0 && read(first) != old, "replaced", replaced);
    }
}

TEST(AttackOutputs, leave_a_file_that_appears_in_the_last_moment_as_it_is) {
    Count count;
    const Folder folder;
    makeRecord(folder / "a.caprail");
    const std::vector<std::pair<std::vector<std::string>, std::string>> calls{
        {{"sheet", folder / "a.caprail", folder / "a.pdf"}, "a.pdf"},
        {{"sheet", folder / "a.caprail", folder / "a.png"}, "a-1.png"},
        {{"export", folder / "a.caprail", folder / "tables"}, "tables"},
        {{"export", folder / "a.caprail", "--ledger", folder / "a.jsonl"}, "a.jsonl"},
        {{"import", SAMPLE_BUILDS "/closed.jsonl", folder / "new.caprail"}, "new.caprail"},
        {{"handover", folder / "a.caprail", folder / "out"}, "out"}};
    for (const auto& [arguments, late] : calls) {
        std::vector<std::string> both{"a.caprail", late};
        std::sort(both.begin(), both.end());
        const Answer answer = run({arguments, {}, {"LD_PRELOAD=" LATE_FILE, "CAPRAIL_LATE=" + folder / late}});
        count.held(answer.isOrderly() && answer.exitCode != 0 && answer.says("exists already") &&
                       read(folder / late) == "someone else's" && folder.names() == both,
                   arguments[0] + " " + late, answer);
        std::filesystem::remove(folder / late);
    }
}

TEST(AttackOutputs, on_a_full_disk_leave_nothing_and_say_why) {
    Count count;
    const Folder folder;
    makeRecord(folder / "a.caprail", "closed");
    const auto names = folder.names();
    const std::vector<std::vector<std::string>> calls{{"sheet", folder / "a.caprail", folder / "a.pdf"},
                                                      {"sheet", folder / "a.caprail", folder / "a.png"},
                                                      {"export", folder / "a.caprail", folder / "tables"},
                                                      {"export", folder / "a.caprail", "--ledger", folder / "a.jsonl"},
                                                      {"import", SAMPLE_BUILDS "/closed.jsonl", folder / "new.caprail"},
                                                      {"handover", folder / "a.caprail", folder / "out", "--csv"}};
    for (const auto& call : calls) {
        bool isDone = false;
        for (long long room = 100; !isDone && room < 100'000'000; room *= isLong() ? 2 : 8) {
            const Answer answer = run({call, {}, {"LD_PRELOAD=" FULL_DISK, "CAPRAIL_ROOM=" + std::to_string(room)}});
            isDone = answer.exitCode == 0;
            const bool saysWhy = answer.says("No space left on device") || answer.says("no room on the disk") ||
                                 answer.says("does not answer as it should"); // SQLite's own words for a record
            count.held(answer.isOrderly() && !answer.says("Unknown error") &&
                           (isDone || (saysWhy && folder.names() == names)),
                       call[0] + " with room for " + std::to_string(room), answer);
        }
        EXPECT_TRUE(isDone) << call[0];
        for (const std::string& name : folder.names()) {
            if (name != "a.caprail") {
                std::filesystem::remove_all(folder / name);
            }
        }
    }
}

TEST(AttackOutputs, that_are_printed_where_nothing_arrives_are_no_success) {
    Count count;
    const Folder folder;
    makeRecord(folder / "a.caprail");
    write(folder / "note.json", R"({"kind":"note_added","person":"Mira Solheim","text":"x"})");
    write(folder / "case.json", R"({"unit":"0.0001 in","band":[-5,5],"largest_stack":0,"positions":[],"shims":[]})");
    for (const char* const call : {"show a.caprail", "show a.caprail --json", "check a.caprail", "plan case.json",
                                   "shop . --list", "shop . --json", "append a.caprail note.json",
                                   "import " SAMPLE_BUILDS "/closed.jsonl new.caprail", "--help", "--version"}) {
        std::filesystem::remove(folder / "new.caprail");
        const Answer full = shell(std::string("\"$caprail\" ") + call + " > /dev/full", folder);
        count.held(full.exitCode == 1 && full.says("No space left on device"), std::string(call) + " > /dev/full",
                   full);
        std::filesystem::remove(folder / "new.caprail");
        const Answer closed = shell(std::string("\"$caprail\" ") + call + " >&-", folder);
        count.held(closed.exitCode == 1 && closed.says("Bad file descriptor"), std::string(call) + " >&-", closed);
    }
    const Answer quiet = shell("\"$caprail\" export a.caprail tables >&-", folder);
    count.held(quiet.exitCode == 0, "a verb that prints nothing needs nobody who reads", quiet);
}

TEST(AttackOutputs, of_records_whose_names_are_no_text_bear_those_very_names) {
    Count count;
    for (const std::string name : {"caf\xE9.caprail", "\xFF\xFE.caprail", "cut \xF0\x9D.caprail"}) {
        const Folder folder;
        const std::string record = folder / name;
        const Answer made = caprail({"import", SAMPLE_BUILDS "/closed.jsonl", record});
        count.held(made.exitCode == 0 && folder.names() == std::vector<std::string>{name}, "import " + name, made);
        for (const std::vector<std::string>& call : {std::vector<std::string>{"check", record},
                                                     {"show", record},
                                                     {"sheet", record, folder / (name + ".pdf")},
                                                     {"export", record, folder / (name + "-tables")},
                                                     {"handover", record, folder / (name + "-out")}}) {
            const Answer answer = caprail(call);
            count.held(answer.exitCode == 0 && !answer.says("QCommandLineParser"), call[0] + " " + name, answer);
        }
        // A record that cannot be locked under its own name is not written to, and says so.
        const std::string bytes = read(record);
        const Answer refused =
            caprail({"append", record, "-"}, R"({"kind":"note_added","person":"Mira Solheim","text":"x"})");
        count.held(refused.exitCode == 1 && refused.says("not UTF-8") && read(record) == bytes, "append " + name,
                   refused);
        const std::vector<std::string> wanted{name, name + "-out", name + "-tables", name + ".pdf"};
        count.held(folder.names() == wanted, "the names of what was made from " + name);
        std::filesystem::create_directory(folder / "sub\xE9");
        std::filesystem::copy_file(record, folder / "sub\xE9/" + name);
        const Answer listed = run({{"shop", folder / "sub\xE9", "--list"}, {}, {"XDG_CACHE_HOME=" + folder / "cache"}});
        count.held(listed.exitCode == 0 && listed.says("Halloran"), "shop with " + name, listed);
    }
}

TEST(AttackOutputs, of_a_shop_whose_cache_cannot_be_made_are_the_same_list) {
    Count count;
    const Folder folder;
    std::filesystem::create_directory(folder / "shop");
    makeRecord(folder / "shop/a.caprail", "closed");
    write(folder / "file", "not a folder");
    const Answer kept = run({{"shop", folder / "shop", "--list"}, {}, {"XDG_CACHE_HOME=" + folder / "cache"}});
    ASSERT_EQ(kept.exitCode, 0) << kept.err;
    for (const char* const cache : {"file", "file/in/it", "/dev/null", "/proc/nowhere"}) {
        const std::string place = cache[0] == '/' ? std::string(cache) : folder / cache;
        const Answer answer = run({{"shop", folder / "shop", "--list"}, {}, {"XDG_CACHE_HOME=" + place}});
        count.held(answer.exitCode == 0 && answer.out == kept.out, "a cache at " + place, answer);
        const Answer found = run({{"shop", folder / "shop", "--search", "halloran"}, {}, {"XDG_CACHE_HOME=" + place}});
        count.held(found.exitCode == 0 && found.out == kept.out, "a search with a cache at " + place, found);
    }
}

TEST(AttackOutputs, draw_no_drawing_whatever_a_photo_or_a_logo_calls_itself) {
    Count count;
    const Folder folder;
    ASSERT_EQ(::mkfifo((folder / "pipe").c_str(), 0600), 0);
    write(folder / "secret.svg",
          "<svg xmlns='http://www.w3.org/2000/svg' width='9' height='9'><rect width='9' height='9'/></svg>");
    int number = 0;
    for (const std::string& href : {std::string("/dev/zero"), folder / "pipe", folder / "secret.svg"}) {
        for (const char* const type : {"image/png", "image/jpeg", "image/svg+xml"}) {
            const std::string drawing = "<svg xmlns='http://www.w3.org/2000/svg' "
                                        "xmlns:xlink='http://www.w3.org/1999/xlink' width='40' height='40'><image "
                                        "width='40' height='40' xlink:href='" +
                                        href + "'/></svg>";
            const std::string base = folder / std::to_string(++number);
            const std::string hash = sha256Hex(drawing);
            std::string text = read(SAMPLE_BUILDS "/mid-survey.jsonl");
            text +=
                R"({"kind":"attachment_added","person":"Mira Solheim","time":"2026-06-02T09:30:00Z","place":"main-3",)"
                R"("file_name":"cap.png","media_type":")" +
                std::string(type) + R"(","caption":"cap 3","sha256":")" + hash + R"(","original_sha256":")" + hash +
                R"(","size_bytes":)" + std::to_string(drawing.size()) + "}\n";
            write(base + ".jsonl", text);
            std::filesystem::create_directory(base + ".jsonl.attachments");
            write(base + ".jsonl.attachments/" + hash, drawing);
            const Answer made = caprail({"import", base + ".jsonl", base + ".caprail"});
            ASSERT_EQ(made.exitCode, 0) << made.err;
            const Answer sheet = caprail({"sheet", base + ".caprail", base + ".pdf"});
            count.held(sheet.exitCode == 0, std::string(type) + " that draws " + href, sheet);
            write(base + ".png", drawing);
            const Answer logo = caprail({"sheet", base + ".caprail", base + "-2.pdf", "--logo", base + ".png"});
            count.held(logo.exitCode == 2 && logo.says("not a JPEG, PNG, WebP or HEIF"), "a logo that draws " + href,
                       logo);
        }
    }
}

} // namespace
} // namespace caprail::attack
