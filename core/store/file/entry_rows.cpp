// SPDX-License-Identifier: GPL-3.0-or-later
#include <store/file/entry_rows.h>

#include <cstring>
#include <store/sqlite/defences.h>
#include <store/sqlite/schema.h>
#include <base/say.h>
#include <unordered_map>
#include <utility>

namespace caprail {

namespace {

std::string entryName(std::int64_t sequence) {
    return Core::say("entry %1", sequence);
}

std::string_view sealView(const Seal& seal) {
    return {reinterpret_cast<const char*>(seal.bytes.data()), seal.bytes.size()};
}

std::string detailInsert(const KindInfo& info) {
    std::string sql = "INSERT INTO " + std::string(info.kind) + " VALUES (?";
    for (std::size_t i = 0; i < info.columns.size(); ++i) {
        sql += ", ?";
    }
    return sql + ")";
}

Result<std::size_t> indexOfKind(std::string_view kind) {
    static const auto byName = [] {
        std::unordered_map<std::string_view, std::size_t> map;
        for (const KindInfo& info : allKinds()) {
            map.emplace(info.kind, map.size());
        }
        return map;
    }();
    const auto at = byName.find(kind);
    return at == byName.end() ? kindIndex(kind) : Result<std::size_t>(at->second);
}

Result<void> checkText(std::string_view text) {
    if (text.size() > largestText) {
        return refuse(Core::say("holds a text longer than %1 KiB: shorten it", largestText / 1024));
    }
    if (!isPlainUtf8(text)) {
        return refuse(Core::say("holds a text that is not plain UTF-8: type it again"));
    }
    return {};
}

/// The row of `entry`: sequence, time, person, kind, seal.
Result<void> readEntryRow(const Database& database, const Statement& statement, EntryRow& row) {
    row.sequence = statement.integer(0);
    row.time = statement.value(1).text;
    row.person = statement.value(2).text;
    const auto kind = indexOfKind(statement.value(3).text);
    const std::string_view seal = statement.value(4).text;
    if (!kind || seal.size() != row.seal.bytes.size()) {
        return refuse(Core::say("In %1 %2 is damaged: %3", inQuotes(database.path()), entryName(row.sequence),
                                (kind ? Core::say("its seal has the wrong length.") : kind.error().sentence)));
    }
    row.kind = *kind;
    std::memcpy(row.seal.bytes.data(), seal.data(), seal.size());
    return {};
}

/// The row of the kind's table: sequence, then a cell for each column.
Result<void> readCells(const Database& database, const Statement& statement, EntryRow& row) {
    const std::vector<Column>& columns = allKinds()[row.kind].columns;
    row.cells.resize(columns.size());
    for (std::size_t i = 0; i < columns.size(); ++i) {
        const Statement::Value value = statement.value(static_cast<int>(i) + 1);
        if (value.type == Statement::Type::null) {
            row.cells[i] = CellView();
        } else if (value.type == Statement::Type::integer) {
            row.cells[i] = value.integer;
        } else if (value.type == Statement::Type::text) {
            if (auto good = checkText(value.text); !good) {
                return refuse(Core::say("In %1 “%2” of %3 %4.", inQuotes(database.path()), columns[i].name,
                                        entryName(row.sequence), good.error().sentence));
            }
            row.cells[i] = value.text;
        } else {
            return refuse(Core::say("In %1 “%2” of %3 is neither a whole number nor a text: the file is damaged.",
                                    inQuotes(database.path()), columns[i].name, entryName(row.sequence)));
        }
    }
    return {};
}

std::string detailsMissing(const Database& database, const EntryRow& row) {
    return Core::say("%1 lacks the details of %2 in the table “%3”: it was altered or damaged.",
                     inQuotes(database.path()), entryName(row.sequence), allKinds()[row.kind].kind);
}

} // namespace

Result<void> EntryWriter::insert(const Entry& entry, std::span<const CellView> cells) {
    auto& detail = m_details[entry.body.index()];
    if (!m_entry) {
        auto statement = m_database.prepare("INSERT INTO entry VALUES (?, ?, ?, ?, ?)");
        if (!statement) {
            return tl::unexpected(statement.error());
        }
        m_entry = std::move(*statement);
    }
    const KindInfo& info = kindOf(entry.body);
    if (!detail) {
        auto statement = m_database.prepare(detailInsert(info));
        if (!statement) {
            return tl::unexpected(statement.error());
        }
        detail = std::move(*statement);
    }
    const std::string time = format(entry.time);
    m_entry->bind(1, entry.sequence);
    m_entry->bind(2, time);
    m_entry->bind(3, entry.person);
    m_entry->bind(4, info.kind);
    m_entry->bindBytes(5, sealView(entry.seal));
    if (auto done = m_entry->run(); !done) {
        return done;
    }
    detail->bind(1, entry.sequence);
    for (int at = 2; const CellView& cell : cells) {
        if (const auto* n = std::get_if<std::int64_t>(&cell)) {
            detail->bind(at, *n);
        } else if (const auto* s = std::get_if<std::string_view>(&cell)) {
            detail->bind(at, *s);
        } else {
            detail->bindNull(at);
        }
        ++at;
    }
    return detail->run();
}

Result<void> EntryWriter::insertAttachment(const std::string& sha256, std::string_view bytes) {
    auto statement = m_database.prepare("INSERT INTO attachment SELECT ?1, ?2 "
                                        "WHERE NOT EXISTS (SELECT 1 FROM attachment WHERE sha256 = ?1)");
    if (!statement) {
        return tl::unexpected(statement.error());
    }
    statement->bind(1, std::string_view(sha256));
    statement->bindBytes(2, bytes);
    return statement->run();
}

Result<EntryReader> EntryReader::after(Database& database, std::int64_t sequence) {
    auto entries = database.prepare("SELECT sequence, time, person, kind, seal FROM entry WHERE sequence > " +
                                    std::to_string(sequence) + " ORDER BY sequence");
    if (!entries) {
        return tl::unexpected(entries.error());
    }
    const auto selects = detailSelects(database);
    if (!selects) {
        return tl::unexpected(selects.error());
    }
    EntryReader reader(database, std::move(*entries));
    for (const std::string& select : *selects) {
        if (select.empty()) { // no table in this version
            reader.m_details.emplace_back();
            continue;
        }
        auto statement =
            database.prepare(select + " WHERE sequence > " + std::to_string(sequence) + " ORDER BY sequence");
        if (!statement) {
            return tl::unexpected(statement.error());
        }
        reader.m_details.push_back({std::move(*statement), false});
        if (auto done = reader.advance(reader.m_details.back()); !done) {
            return tl::unexpected(done.error());
        }
    }
    return reader;
}

Result<void> EntryReader::advance(Detail& detail) {
    const auto more = detail.statement->step();
    if (!more) {
        return tl::unexpected(more.error());
    }
    detail.hasRow = *more;
    return {};
}

Result<bool> EntryReader::atEnd() {
    for (std::size_t kind = 0; kind < m_details.size(); ++kind) {
        if (m_details[kind].hasRow) {
            return refuse(Core::say(
                "%1 has details of %2 in the table “%3” without that entry: it was altered or damaged.",
                inQuotes(m_database->path()), entryName(m_details[kind].statement->integer(0)), allKinds()[kind].kind));
        }
    }
    return false;
}

Result<bool> EntryReader::next(EntryRow& row) {
    if (m_shown) {
        if (auto done = advance(m_details[*std::exchange(m_shown, {})]); !done) {
            return tl::unexpected(done.error());
        }
    }
    const auto more = m_entries.step();
    if (!more) {
        return tl::unexpected(more.error());
    }
    if (!*more) {
        return atEnd();
    }
    if (auto done = readEntryRow(*m_database, m_entries, row); !done) {
        return tl::unexpected(done.error());
    }
    Detail& detail = m_details[row.kind];
    if (!detail.hasRow || detail.statement->integer(0) != row.sequence) {
        return refuse(detailsMissing(*m_database, row));
    }
    if (auto done = readCells(*m_database, *detail.statement, row); !done) {
        return tl::unexpected(done.error());
    }
    m_shown = row.kind;
    return true;
}

Result<void> EntryLookup::read(std::int64_t sequence, EntryRow& row) {
    const auto find = [&](std::optional<Statement>& statement, const std::string& sql) -> Result<bool> {
        if (!statement) {
            auto prepared = m_database.prepare(sql + " WHERE sequence = ?");
            if (!prepared) {
                return tl::unexpected(prepared.error());
            }
            statement = std::move(*prepared);
        }
        statement->reset();
        statement->bind(1, sequence);
        return statement->step();
    };
    const auto found = find(m_entry, "SELECT sequence, time, person, kind, seal FROM entry");
    if (!found || !*found) {
        return found ? refuse(Core::say("its row is gone.")) : tl::unexpected(found.error());
    }
    if (auto done = readEntryRow(m_database, *m_entry, row); !done) {
        return done;
    }
    if (m_selects.empty()) {
        auto selects = detailSelects(m_database);
        if (!selects) {
            return tl::unexpected(selects.error());
        }
        m_selects = std::move(*selects);
    }
    auto& detail = m_details[row.kind];
    if (m_selects[row.kind].empty()) {
        return refuse(detailsMissing(m_database, row));
    }
    const auto details = find(detail, m_selects[row.kind]);
    if (!details || !*details) {
        return details ? refuse(detailsMissing(m_database, row)) : tl::unexpected(details.error());
    }
    return readCells(m_database, *detail, row);
}

Result<Entry> entryFrom(const EntryRow& row) {
    Result<Entry> entry;
    if (auto done = readEntry(row, *entry); !done) {
        return tl::unexpected(done.error());
    }
    return entry;
}

Result<void> readEntry(const EntryRow& row, Entry& entry) {
    const auto about = [&](const std::string& sentence) {
        return refuse(Core::say("Entry %1: %2", row.sequence, sentence));
    };
    const auto time = parseUtcTime(row.time);
    if (!time || row.time.size() != 24) { // only the form with milliseconds is written, so that bytes fit the seal
        return about(Core::say("“%1” is not a moment as a record writes it.", row.time.substr(0, 40)));
    }
    if (auto good = checkText(row.person); !good) {
        return about(Core::say("its person %1.", good.error().sentence));
    }
    if (auto body = readBody(row.kind, row.cells, entry.body); !body) {
        return about(body.error().sentence);
    }
    entry.sequence = row.sequence;
    entry.time = *time;
    entry.person.assign(row.person);
    entry.seal = row.seal;
    return {};
}

Result<Entry> asStored(const Entry& entry, const std::vector<Cell>& cells) {
    const KindInfo& info = kindOf(entry.body);
    for (std::size_t i = 0; i < cells.size(); ++i) {
        const auto* text = std::get_if<std::string>(&cells[i]);
        const auto good = text == nullptr ? Result<void>() : checkText(*text);
        if (!good) {
            return refuse("“" + info.columns[i].name + "” " + good.error().sentence + ".");
        }
    }
    const std::string time = format(entry.time);
    auto stored = entryFrom({entry.sequence, time, entry.person, entry.body.index(), viewsOf(cells), entry.seal});
    if (stored && stored->time != entry.time) {
        return refuse(Core::say("The moment of this entry lies outside the calendar: set the clock of this computer."));
    }
    return stored;
}

} // namespace caprail
