// SPDX-License-Identifier: GPL-3.0-or-later
/// Journals beside a record: planted, foreign, torn, and the honest ones that a kill leaves.
#include "cut_off_writes.h"

#include <random>
#include <sys/stat.h>

namespace caprail::attack {
namespace {

class AttackJournals : public testing::Test {
protected:
    void SetUp() override { makeRecord(record); }
    /// A call in a folder of temporary files of its own, which must be empty afterwards.
    Answer call(const std::vector<std::string>& arguments) const {
        return run(
            {arguments, {}, {"TMPDIR=" + temporary.path(), "XDG_RUNTIME_DIR=" + home.path(), "HOME=" + home.path()}});
    }
    [[nodiscard]] bool leftNothing() const { return temporary.names().empty(); }

    Folder folder, elsewhere, temporary, home;
    std::string record = folder / "a.caprail";
    std::string entry = noteEntry(elsewhere);
    Count count;
};

TEST_F(AttackJournals, that_name_another_file_do_not_delete_it) {
    const std::string victim = elsewhere / "thesis.txt";
    const std::string listed = elsewhere / "listed.txt";
    const std::string text = "years of work";
    const Pair reached = cutOffWrite(record, CutOff::reached);
    const Pair begun = cutOffWrite(record, CutOff::begun);
    const std::string whole = read(record);
    const std::vector<std::pair<std::string, Pair>> plants{
        {"a hot journal", {reached.record, reached.journal + naming(victim)}},
        {"a begun journal", {whole, begun.journal + naming(victim)}},
        {"noise", {whole, std::string(600, 'x') + naming(victim)}},
        {"zeros, which SQLite writes over", {whole, std::string(600, '\0') + naming(victim)}},
        {"a name alone", {whole, naming(victim)}},
        {"a file that lists the journal", {whole, begun.journal + naming(listed)}}};
    write(listed, record + "-journal" + std::string(1, '\0'));
    for (const auto& [name, plant] : plants) {
        const Folder out;
        auto calls = readingCalls(record, out);
        calls.push_back({"append", record, entry});
        calls.push_back({"shop", folder.path(), "--list"});
        for (const std::vector<std::string>& arguments : calls) {
            write(victim, text);
            plant.put(record);
            const Answer answer = call(arguments);
            const bool isList = arguments.front() == "shop";
            count.held(answer.isOrderly() && (isList || answer.exitCode == 2) && read(victim) == text &&
                           std::filesystem::exists(listed) && plant.isUntouchedAt(record) && leftNothing() &&
                           (isList || answer.says("names another file")),
                       name + ": " + arguments.front(), answer);
        }
    }
}

TEST_F(AttackJournals, that_a_kill_left_are_not_played_back_by_who_only_reads) {
    const std::vector<std::string> before = ledgerOf(record, elsewhere);
    for (const CutOff how : {CutOff::begun, CutOff::synced, CutOff::reached}) {
        const std::string name = how == CutOff::begun ? "begun" : how == CutOff::synced ? "synced" : "reached";
        const Pair pair = cutOffWrite(record, how);
        for (const mode_t mode : {0600, 0400}) {
            const Folder out;
            pair.put(record);
            ::chmod(record.c_str(), mode);
            for (const std::vector<std::string>& arguments : readingCalls(record, out)) {
                const Answer answer = call(arguments);
                count.held(answer.exitCode == 0 && !answer.crashed &&
                               answer.says("was cut off") == (how != CutOff::begun) && pair.isUntouchedAt(record) &&
                               leftNothing() && folder.names().size() == 2,
                           name + ": " + arguments.front(), answer);
            }
            count.held(ledgerOf(record, elsewhere) == before, name + ": the ledger is that before the write");
            ::chmod(record.c_str(), 0600);
        }
        std::filesystem::remove(record + "-journal");
        std::filesystem::remove(record);
        makeRecord(record);
    }
}

TEST_F(AttackJournals, that_a_kill_left_are_taken_back_by_who_writes_and_both_files_are_kept) {
    const std::vector<std::string> before = ledgerOf(record, elsewhere);
    const Pair pair = cutOffWrite(record, CutOff::reached);
    pair.put(record);
    ::chmod(record.c_str(), 0640);
    const Answer answer = call({"append", record, entry});
    const std::vector<std::string> after = ledgerOf(record, elsewhere);
    std::string kept;
    for (const std::string& name : folder.names()) {
        kept = name.ends_with(" cut off.caprail-backup") ? folder / name : kept;
    }
    struct stat status {};
    count.held(answer.exitCode == 0 && answer.says("taken back") && after.size() == before.size() + 1 &&
                   beginsWith(after, before) && !kept.empty() && pair.isUntouchedAt(kept) && leftNothing() &&
                   ::stat(kept.c_str(), &status) == 0 && (status.st_mode & 0777) == 0640,
               "append after a kill", answer);
    count.held(caprail({"check", record}).exitCode == 0, "the record is sound");
    const Answer keptIsRead = caprail({"check", kept});
    count.held(keptIsRead.exitCode == 0 && keptIsRead.says("was cut off"), "what was kept can be read", keptIsRead);

    std::filesystem::remove(kept);
    std::filesystem::remove(kept + "-journal");
    for (const CutOff how : {CutOff::begun, CutOff::synced}) {
        cutOffWrite(record, how).put(record);
        const Answer early = call({"append", record, entry});
        count.held(early.exitCode == 0 && folder.names().size() == 1,
                   "append after a write that had not reached the record: nothing need be kept", early);
    }
}

TEST_F(AttackJournals, of_other_files_harm_no_record) {
    // The same record at several times, with the journal of a write that was cut off at each; and another record.
    std::vector<std::string> states;
    std::vector<std::string> journals;
    const int times = so(4, 12);
    for (int i = 0; i < times; ++i) {
        states.push_back(read(record));
        journals.push_back(cutOffWrite(record, CutOff::reached).journal);
        ASSERT_EQ(caprail({"append", record, entry}).exitCode, 0);
    }
    makeRecord(elsewhere / "b.caprail", "closed");
    journals.push_back(cutOffWrite(elsewhere / "b.caprail", CutOff::reached).journal);
    for (std::size_t state = 0; state < states.size(); ++state) {
        for (std::size_t journal = 0; journal < journals.size(); ++journal) {
            if (state == journal || state == journal + 1) {
                continue; // its own: the write is that which was cut off, or is the very next one
            }
            const Pair pair{states[state], journals[journal]};
            for (const std::vector<std::string>& arguments :
                 {std::vector<std::string>{"check", record}, {"show", record}, {"append", record, entry}}) {
                pair.put(record);
                const Answer answer = call(arguments);
                count.held(answer.exitCode == 2 && pair.isUntouchedAt(record) && leftNothing() &&
                               answer.says("journal of a write to another file"),
                           arguments.front() + ": state " + std::to_string(state) + ", journal " +
                               std::to_string(journal),
                           answer);
            }
        }
    }
    // A copy made by the program itself counts its writes anew.
    write(record, states[2]);
    std::filesystem::remove(record + "-journal");
}

TEST_F(AttackJournals, with_flipped_bits_lose_no_entry) {
    const std::vector<std::string> before = ledgerOf(record, elsewhere);
    const Pair pair = cutOffWrite(record, CutOff::reached);
    std::mt19937 random(20260504); // always the same flips
    for (int i = 0; i < so(25, 600); ++i) {
        Pair flipped = pair;
        const std::size_t at = i % 2 == 0 ? random() % 28 : random() % flipped.journal.size();
        flipped.journal[at] = static_cast<char>(flipped.journal[at] ^ (1 << random() % 8));
        for (const std::string& name : folder.names()) {
            std::filesystem::remove(folder / name);
        }
        flipped.put(record);
        const Answer checked = call({"check", record});
        bool good = checked.isOrderly() && flipped.isUntouchedAt(record) && leftNothing();
        count.held(good, "check, byte " + std::to_string(at), checked);
        const Answer answer = call({"append", record, entry});
        good = answer.isOrderly() && leftNothing() &&
               (answer.exitCode == 0 ? beginsWith(ledgerOf(record, elsewhere), before) : flipped.isUntouchedAt(record));
        count.held(good, "append, byte " + std::to_string(at), answer);
    }
}

TEST_F(AttackJournals, written_ahead_are_not_read) {
    // Someone switches a copy to write-ahead mode, adds to it, and puts only the write-ahead file beside the record.
    const std::string copy = elsewhere / "copy.caprail";
    write(copy, read(record));
    sqlite3* db = nullptr;
    ASSERT_EQ(sqlite3_open_v2(copy.c_str(), &db, SQLITE_OPEN_READWRITE, nullptr), SQLITE_OK);
    ASSERT_EQ(sqlite3_exec(db, "PRAGMA journal_mode = WAL; PRAGMA user_version = 2", nullptr, nullptr, nullptr),
              SQLITE_OK);
    write(record + "-wal", read(copy + "-wal"));
    sqlite3_close(db);
    const Pair pair{read(record), {}};
    const Folder out;
    auto calls = readingCalls(record, out);
    calls.push_back({"append", record, entry});
    for (const std::vector<std::string>& arguments : calls) {
        const Answer answer = call(arguments);
        count.held(answer.exitCode == 2 && pair.isUntouchedAt(record) && folder.names().size() == 2 &&
                       answer.says("-wal"),
                   arguments.front(), answer);
    }
}

} // namespace
} // namespace caprail::attack
