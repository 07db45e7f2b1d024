// SPDX-License-Identifier: GPL-3.0-or-later
#include <store/file/record_file.h>

#include <base/say.h>
#include <optional>
#include <store/care/copies.h>
#include <store/care/upgrade.h>
#include <store/file/beside.h>
#include <store/file/entry_rows.h>
#include <store/file/new_file.h>
#include <store/file/open_checked.h>
#include <store/file/record_location.h>
#include <store/file/writer_lock.h>
#include <store/sqlite/defences.h>
#include <store/sqlite/header.h>
#include <store/sqlite/schema.h>
#include <sys/stat.h>

namespace caprail {

struct RecordFile::State {
    std::string path;
    std::optional<RecordLocation> location; ///< the file that the path led to when it was opened
    std::optional<FileMode> mode;     ///< of that file
    std::string readOnlyReason;
    std::optional<WriterLock> lock; ///< before the database, so that it is let go after it is closed
    std::unique_ptr<Database> database;
    std::optional<EntryWriter> writer;
    Ledger ledger;
    std::int64_t dataVersion = 0; ///< changes when another connection has written
};

namespace {

constexpr std::string_view dataVersionSql = "PRAGMA data_version";

/// The number of the last entry on the disk and its seal, or 0.
Result<Entry> lastOnDisk(Database& database) {
    auto row = database.prepare("SELECT sequence, seal FROM entry ORDER BY sequence DESC LIMIT 1");
    if (!row) {
        return tl::unexpected(row.error());
    }
    const auto found = row->step();
    if (!found) {
        return tl::unexpected(found.error());
    }
    Entry last;
    if (*found) {
        last.sequence = row->integer(0);
        const std::string_view seal = row->bytes(1);
        for (std::size_t i = 0; i < seal.size() && i < last.seal.bytes.size(); ++i) {
            last.seal.bytes[i] = static_cast<std::uint8_t>(seal[i]);
        }
    }
    return last;
}

/// Bytes of a file; 0 when it is not there.
std::int64_t lengthOf(const std::string& path) {
    struct stat status {};
    return ::lstat(path.c_str(), &status) == 0 ? status.st_size : 0;
}

/// In one transaction. An attachment has no bytes here, so its entry is refused.
Result<void> insertAll(Database& database, const Ledger& ledger) {
    if (auto begun = database.run("BEGIN IMMEDIATE"); !begun) {
        return begun;
    }
    EntryWriter writer(database);
    for (const Entry& entry : ledger.entries()) {
        const std::vector<Cell> cells = cellsOf(entry.body);
        const auto* attachment = entry.body.as<AttachmentAdded>();
        if (attachment != nullptr) {
            return refuse(
                Core::say("A record cannot begin with the attachment “%1”: add it afterwards.", attachment->fileName));
        }
        if (auto stored = asStored(entry, cells); !stored) {
            return tl::unexpected(stored.error());
        }
        if (auto done = writer.insert(entry, cells); !done) {
            return done;
        }
    }
    return database.run("COMMIT");
}

} // namespace

RecordFile::RecordFile(std::unique_ptr<State> state) : m_state(std::move(state)) {}
RecordFile::RecordFile(RecordFile&&) noexcept = default;
RecordFile& RecordFile::operator=(RecordFile&&) noexcept = default;
RecordFile::~RecordFile() = default;

const Ledger& RecordFile::ledger() const {
    return m_state->ledger;
}
const std::string& RecordFile::path() const {
    return m_state->path;
}
bool RecordFile::isReadOnly() const {
    return !m_state->readOnlyReason.empty();
}
const std::string& RecordFile::readOnlyReason() const {
    return m_state->readOnlyReason;
}

const std::string& RecordFile::remark() const {
    return m_state->database->remark();
}

Result<RecordFile> RecordFile::create(const std::string& path) {
    return create(path, Ledger());
}

Result<RecordFile> RecordFile::create(const std::string& path, const Ledger& beginning) {
    auto made = makeNewFile(path, [&](const std::string& unfinished) -> Result<void> {
        auto database = Database::open(unfinished, Access::readWrite);
        auto done = database ? defend(**database) : tl::unexpected(database.error());
        done = done ? createSchema(**database) : done;
        return done && !beginning.empty() ? insertAll(**database, beginning) : done;
    });
    if (!made) {
        return tl::unexpected(made.error());
    }
    return open(path, OpenMode::readWrite);
}

Result<RecordFile> RecordFile::open(const std::string& path, OpenMode mode) {
    auto state = std::make_unique<State>();
    auto resolved = resolveRecord(path);
    if (!resolved) {
        return tl::unexpected(resolved.error());
    }
    state->path = std::move(*resolved);
    const auto older = olderVersion(state->path);
    if (!older) {
        return tl::unexpected(older.error());
    }
    if (mode == OpenMode::readOnly) {
        state->readOnlyReason = Core::say("%1 was opened to be read only.", inQuotes(state->path));
    } else if (*older) {
        state->readOnlyReason = Core::say(
            "%1 was written by an earlier version of this program: it can be read, and written once it is upgraded.",
            inQuotes(state->path));
    } else if (auto lock = WriterLock::take(state->path)) {
        state->lock = std::move(*lock);
    } else {
        state->readOnlyReason = lock.error().sentence;
    }
    if (auto loaded = load(*state); !loaded) {
        return tl::unexpected(loaded.error());
    }
    return RecordFile(std::move(state));
}

Result<void> RecordFile::load(State& state) {
    auto location = RecordLocation::of(state.path);
    if (!location) {
        return tl::unexpected(location.error());
    }
    state.location = std::move(*location);
    auto mode = FileMode::like(state.path);
    if (!mode) {
        return tl::unexpected(mode.error());
    }
    state.mode = std::move(*mode);
    auto database = openChecked(state.path, state.lock ? Access::readWrite : Access::readOnly, state.ledger);
    if (!database) {
        return tl::unexpected(database.error());
    }
    state.database = std::move(*database);
    if (state.lock) {
        if (auto ready = prepareForWriting(*state.database); !ready) {
            return ready;
        }
        state.writer.emplace(*state.database);
    }
    const auto version = state.database->integer(dataVersionSql);
    if (!version) {
        return tl::unexpected(version.error());
    }
    state.dataVersion = *version;
    return {};
}

Result<void> RecordFile::canKeep(UtcTime time, const std::string& person, const Body& body) const {
    const auto* attachment = body.as<AttachmentAdded>();
    if (attachment != nullptr && attachment->size > largestAttachment) {
        return refuse(Core::say("“%1” is larger than a record takes (%2 MiB): make it smaller first.",
                                attachment->fileName, largestAttachment / 1024 / 1024));
    }
    const auto stored = asStored({ledger().size() + 1, time, person, body, {}}, cellsOf(body));
    return stored ? Result<void>() : tl::unexpected(stored.error());
}

Result<std::int64_t> RecordFile::append(UtcTime time, const std::string& person, const Body& body) {
    return store(time, person, body, nullptr);
}

Result<std::int64_t> RecordFile::appendWithAttachment(UtcTime time, const std::string& person,
                                                      const AttachmentAdded& entry, std::string_view bytes) {
    if (auto good = canKeep(time, person, entry); !good) {
        return tl::unexpected(good.error());
    }
    if (entry.size != static_cast<std::int64_t>(bytes.size()) || entry.sha256 != sha256Hex(bytes)) {
        return refuse(
            Core::say("The bytes of “%1” do not fit the size and hash that its entry gives.", entry.fileName));
    }
    return store(time, person, entry, &bytes);
}

Result<std::int64_t> RecordFile::store(UtcTime time, const std::string& person, const Body& body,
                                       const std::string_view* bytes) {
    State& s = *m_state;
    if (isReadOnly()) {
        return refuse(s.readOnlyReason);
    }
    if (auto there = isStillThere(); !there) {
        return tl::unexpected(there.error());
    }
    if (s.lock && !s.lock->isHeld()) {
        s.readOnlyReason = Core::say("%1 was taken over by another program or window: it can only be read here. What is "
                                     "typed here belongs there now.",
                                     inQuotes(s.path));
        return refuse(s.readOnlyReason);
    }
    if (auto beside = lookBeside(s.path); !beside) {
        return tl::unexpected(beside.error());
    }
    const std::vector<Cell> cells = cellsOf(body);
    auto entry = asStored({s.ledger.size() + 1, time, person, body, {}}, cells);
    if (!entry) {
        return tl::unexpected(entry.error());
    }
    const auto* attachment = body.as<AttachmentAdded>();
    if (attachment != nullptr && bytes == nullptr) {
        if (auto kept = attachmentBytes(attachment->sha256); !kept) {
            return tl::unexpected(kept.error());
        }
    }
    entry->seal = sealOver(s.ledger.seal(), canonicalText(entry->sequence, time, person, kindOf(body), cells));

    const auto write = [&]() -> Result<void> {
        if (auto begun = s.database->run("BEGIN IMMEDIATE"); !begun) {
            return begun;
        }
        const auto version = s.database->integer(dataVersionSql);
        if (!version) {
            return tl::unexpected(version.error());
        }
        if (*version != s.dataVersion) {
            return refuse(
                Core::say("%1 was written by another program since it was read: read it again, then store the entry.",
                          inQuotes(s.path)));
        }
        if (auto whole = verifyPages(*s.database); !whole) {
            return whole;
        }
        if (auto done = s.writer->insert(*entry, cells); !done) {
            return done;
        }
        if (bytes != nullptr) {
            if (auto done = s.writer->insertAttachment(attachment->sha256, *bytes); !done) {
                return done;
            }
        }
        return s.database->run("COMMIT");
    };
    if (auto written = write(); !written) {
        if (s.database->inTransaction()) {
            (void)s.database->run("ROLLBACK"); // a failed rollback ends the transaction all the same
        }
        // A commit that failed in its very last step (the folder's sync) may be on the disk nevertheless.
        const auto last = lastOnDisk(*s.database);
        const bool isThere = last && last->sequence == entry->sequence && last->seal == entry->seal;
        if (!isThere || !syncToDisk(folderOf(s.path))) {
            return tl::unexpected(written.error());
        }
    }
    if (auto taken = s.ledger.appendSealed(std::move(*entry)); !taken) {
        return tl::unexpected(taken.error());
    }
    return s.ledger.size();
}

Result<std::string> RecordFile::attachmentBytes(const std::string& sha256) const {
    auto row = m_state->database->prepare("SELECT bytes FROM attachment WHERE sha256 = ?");
    if (!row) {
        return tl::unexpected(row.error());
    }
    row->bind(1, std::string_view(sha256));
    const auto found = row->step();
    if (!found) {
        return tl::unexpected(found.error());
    }
    if (!*found) {
        return refuse(
            Core::say("%1 holds no attachment with the hash %2.", inQuotes(m_state->path), sha256.substr(0, 64)));
    }
    std::string bytes(row->bytes(0));
    if (sha256Hex(bytes) != sha256) {
        return refuse(
            Core::say("In %1 the attachment %2 is damaged or was altered: its bytes no longer fit their hash.",
                      inQuotes(m_state->path), sha256.substr(0, 64)));
    }
    return bytes;
}

Result<void> RecordFile::isStillThere() const {
    auto there = m_state->location->isStillThere();
    return there && !isReadOnly() ? mayWrite(m_state->path) : there;
}

const RecordLocation& RecordFile::location() const {
    return *m_state->location;
}

Result<bool> RecordFile::refresh() {
    State& s = *m_state;
    if (auto there = s.location->isStillThere(); !there) {
        return tl::unexpected(there.error());
    }
    if (isReadOnly() && !remark().empty()) {
        return refreshFromCopy();
    }
    const auto version = s.database->integer(dataVersionSql);
    if (!version) {
        return tl::unexpected(version.error());
    }
    if (*version == s.dataVersion) {
        return false;
    }
    Ledger longer = s.ledger;
    if (auto read = readTail(*s.database, longer); !read) {
        return tl::unexpected(read.error());
    }
    const bool isNew = longer.size() != s.ledger.size();
    s.ledger = std::move(longer);
    s.dataVersion = *version;
    return isNew;
}

Result<bool> RecordFile::refreshFromCopy() {
    State& s = *m_state;
    if (lengthOf(s.path + "-journal") != 0) {
        return false;
    }
    auto fresh = std::make_unique<State>();
    fresh->path = s.path;
    fresh->readOnlyReason = s.readOnlyReason;
    if (auto loaded = load(*fresh); !loaded) {
        return tl::unexpected(loaded.error());
    }
    const LedgerComparison now = compare(s.ledger, fresh->ledger);
    if (now.onlyInFirst != 0) {
        return refuse(
            Core::say("%1 no longer holds the entries that were read from it: it was replaced. Save a copy of "
                      "what is on screen elsewhere.",
                      inQuotes(s.path)));
    }
    m_state = std::move(fresh);
    return now.onlyInSecond != 0;
}

Result<void> RecordFile::saveCopy(const std::string& path) const {
    const auto present = FileMode::like(m_state->path);
    return makeNewFileLike(present ? *present : *m_state->mode, path,
                           [&](const std::string& unfinished) { return backUp(*m_state->database, unfinished); });
}

Result<std::vector<std::string>> RecordFile::saveElsewhere(const std::string& path) const {
    std::vector<std::string> missing;
    const auto present = FileMode::like(m_state->path);
    auto saved =
        makeNewFileLike(present ? *present : *m_state->mode, path, [&](const std::string& unfinished) -> Result<void> {
            auto to = Database::open(unfinished, Access::readWrite);
            auto done = to ? defend(**to) : tl::unexpected(to.error());
            done = done ? createSchema(**to) : done;
            done = done ? (*to)->run("BEGIN IMMEDIATE") : done;
            if (!done) {
                return done;
            }
            EntryWriter writer(**to);
            for (const Entry& entry : ledger().entries()) {
                if (const auto* added = entry.body.as<AttachmentAdded>()) {
                    if (const auto bytes = attachmentBytes(added->sha256)) {
                        done = writer.insertAttachment(added->sha256, *bytes);
                    } else {
                        missing.push_back(Core::say("The bytes of “%1” (entry %2) could not be read: %3",
                                                    added->fileName, entry.sequence, bytes.error().sentence));
                    }
                }
                done = done ? writer.insert(entry, cellsOf(entry.body)) : done;
                if (!done) {
                    return done;
                }
            }
            return (*to)->run("COMMIT");
        });
    if (!saved) {
        return tl::unexpected(saved.error());
    }
    return missing;
}

Result<void> RecordFile::restoreFrom(const std::string& copy, const std::string& keptAs) {
    if (isReadOnly()) {
        return refuse(readOnlyReason());
    }
    if (auto restored = restoreUnderLock(copy, path(), keptAs); !restored) {
        return restored;
    }
    auto state = std::make_unique<State>();
    state->path = path();
    const auto older = olderVersion(path());
    if (older && *older) {
        state->readOnlyReason = Core::say(
            "%1 was restored from a copy of an earlier version: it can be read, and written once it is upgraded.",
            inQuotes(path()));
    } else {
        state->lock = std::move(m_state->lock);
    }
    if (auto loaded = load(*state); !loaded) {
        m_state->lock = std::move(state->lock);
        return loaded;
    }
    m_state = std::move(state);
    return {};
}

} // namespace caprail
