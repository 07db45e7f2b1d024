// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// Entries to and from their rows: one row in `entry`, one in the table of the kind.
#include <ledger/ledger.h>
#include <optional>
#include <store/sqlite/database.h>
#include <vector>

namespace caprail {

/// Inserts entries; statements are prepared once per kind. Runs within the caller's transaction.
class EntryWriter {
public:
    explicit EntryWriter(Database& database) : m_database(database), m_details(allKinds().size()) {}
    /// `cells` are those of the entry's body.
    Result<void> insert(const Entry& entry, std::span<const CellView> cells);
    Result<void> insert(const Entry& entry, const std::vector<Cell>& cells) { return insert(entry, viewsOf(cells)); }
    /// Stores bytes under their hash, if they are not there already.
    Result<void> insertAttachment(const std::string& sha256, std::string_view bytes);

private:
    Database& m_database;
    std::optional<Statement> m_entry;
    std::vector<std::optional<Statement>> m_details;
};

/// One entry as its rows hold it, nothing of it believed yet. Texts lie where SQLite has them, until whoever filled
/// the row is asked for the next.
struct EntryRow {
    std::int64_t sequence = 0;
    std::string_view time, person;
    std::size_t kind = 0; ///< index in allKinds()
    std::vector<CellView> cells;
    Seal seal;
};

/// Steps through the entries after a given one in order, one cursor per kind beside that of `entry`.
class EntryReader {
public:
    static Result<EntryReader> after(Database& database, std::int64_t sequence);
    /// Fills `row` with the next entry; false at the end. Refuses entries without details, and details without entry.
    Result<bool> next(EntryRow& row);

private:
    struct Detail {
        std::optional<Statement> statement; ///< none: the file's version has no table of this kind
        bool hasRow = false;
    };
    EntryReader(Database& database, Statement entries) : m_database(&database), m_entries(std::move(entries)) {}
    Result<void> advance(Detail& detail);
    Result<bool> atEnd();
    Database* m_database;
    Statement m_entries;
    std::vector<Detail> m_details;
    std::optional<std::size_t> m_shown; ///< the kind whose row was given last, to be stepped over next
};

/// Reads single entries by number: for a damaged file, where a cursor would stop at the first bad page.
class EntryLookup {
public:
    explicit EntryLookup(Database& database) : m_database(database), m_details(allKinds().size()) {}
    /// Refuses when the entry or its details cannot be read.
    Result<void> read(std::int64_t sequence, EntryRow& row);

private:
    Database& m_database;
    std::optional<Statement> m_entry;
    std::vector<std::string> m_selects;
    std::vector<std::optional<Statement>> m_details;
};

/// Turns a row into an entry, without looking at its seal; refuses what its kind does not allow.
Result<Entry> entryFrom(const EntryRow& row);
/// The same, made in its place. After a refusal what `entry` holds means nothing.
Result<void> readEntry(const EntryRow& row, Entry& entry);

/// The entry as it will come back from the disk: what the ledger in memory holds is never more than the file says.
/// Refuses texts that are no plain UTF-8 or too long, and moments outside the calendar. `cells` are those of its body.
Result<Entry> asStored(const Entry& entry, const std::vector<Cell>& cells);

} // namespace caprail
