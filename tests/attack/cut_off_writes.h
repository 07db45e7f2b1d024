// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// Records in the middle of a write, as a kill leaves them, and journals as an attacker makes them.
#include "attack.h"

#include <sqlite3.h>

namespace caprail::attack {

/// A record and the journal beside it, as bytes.
struct Pair {
    std::string record, journal;
    void put(const std::string& path) const {
        write(path, record);
        if (!journal.empty()) {
            write(path + "-journal", journal);
        }
    }
    /// Whether both lie at `path` as they were put there.
    [[nodiscard]] bool isUntouchedAt(const std::string& path) const {
        return read(path) == record && (journal.empty() || read(path + "-journal") == journal);
    }
};

/// How far a write had got when it was cut off.
enum class CutOff {
    begun,  ///< the journal was begun; SQLite takes no notice of one that was not synced
    synced, ///< the journal is on the disk, and the record as it was
    reached ///< the first pages of the record were written, too
};

/// Begins a write at the record and gives both files as they are in the middle of it; the record is then as before.
inline Pair cutOffWrite(const std::string& path, CutOff how) {
    const std::string before = read(path);
    sqlite3* db = nullptr;
    EXPECT_EQ(sqlite3_open_v2(path.c_str(), &db, SQLITE_OPEN_READWRITE, nullptr), SQLITE_OK);
    EXPECT_EQ(sqlite3_exec(db,
                           "BEGIN IMMEDIATE; INSERT INTO entry SELECT sequence + 1, time, person, 'note_added', seal "
                           "FROM entry ORDER BY sequence DESC LIMIT 1; INSERT INTO note_added SELECT max(sequence), "
                           "'', hex(zeroblob(20000)) FROM entry",
                           nullptr, nullptr, nullptr),
              SQLITE_OK)
        << sqlite3_errmsg(db);
    if (how != CutOff::begun) {
        EXPECT_EQ(sqlite3_db_cacheflush(db), SQLITE_OK);
    }
    const Pair pair{how == CutOff::reached ? read(path) : before, read(path + "-journal")};
    EXPECT_FALSE(pair.journal.empty());
    sqlite3_exec(db, "ROLLBACK", nullptr, nullptr, nullptr);
    sqlite3_close(db);
    return pair;
}

inline std::string fourBytes(std::uint32_t value) {
    std::string bytes;
    for (int shift = 24; shift >= 0; shift -= 8) {
        bytes += static_cast<char>(value >> shift);
    }
    return bytes;
}

inline const std::string journalMagic("\xd9\xd5\x05\xf9\x20\xa1\x63\xd7", 8);

/// What stands at the end of a journal of a write over several files: the name of the file that tells of all of them
/// ("The Rollback Journal", sqlite.org/fileformat2.html, section 3, from memory).
inline std::string naming(const std::string& file) {
    std::uint32_t sum = 0;
    for (const char c : file) {
        sum += static_cast<std::uint32_t>(static_cast<signed char>(c));
    }
    return fourBytes(0x40000000 / 4096 + 1) + file + fourBytes(static_cast<std::uint32_t>(file.size())) +
           fourBytes(sum) + journalMagic;
}

/// The entries that the record holds, as an export of its ledger gives them, one a line.
inline std::vector<std::string> ledgerOf(const std::string& record, const Folder& scratch) {
    const std::string out = scratch / "ledger-of.jsonl";
    std::filesystem::remove(out);
    std::vector<std::string> lines;
    if (caprail({"export", record, "--ledger", out}).exitCode == 0) {
        std::ifstream in(out);
        for (std::string line; std::getline(in, line);) {
            lines.push_back(line);
        }
    }
    return lines;
}

inline bool beginsWith(const std::vector<std::string>& longer, const std::vector<std::string>& beginning) {
    return longer.size() >= beginning.size() && std::equal(beginning.begin(), beginning.end(), longer.begin());
}

inline std::string noteEntry(const Folder& folder) {
    const std::string entry = folder / "entry.jsonl";
    write(entry, R"({"kind":"note_added","person":"Mira Solheim","place":"","text":"one more note"})");
    return entry;
}

/// Every way in which a record is only read.
inline std::vector<std::vector<std::string>> readingCalls(const std::string& record, const Folder& out) {
    return {{"check", record},
            {"show", record},
            {"show", record, "--json"},
            {"export", record, "--ledger", out / "l.jsonl"},
            {"export", record, out / "csv"},
            {"sheet", record, out / "s.pdf"},
            {"handover", record, out / "handover"}};
}

} // namespace caprail::attack
