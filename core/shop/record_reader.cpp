// SPDX-License-Identifier: GPL-3.0-or-later
#include <shop/record_reader.h>

#include <array>
#include <climits>
#include <cstdlib>
#include <functional>
#include <shop/folder_walk.h>
#include <sqlite3.h>
#include <store/file/beside.h>
#include <store/sqlite/defences.h>
#include <store/sqlite/header.h>
#include <store/file/open_checked.h>
#include <sys/stat.h>
#include <base/say.h>

namespace caprail {

namespace {

/// The state of a file as its own header counts it: SQLite adds one to the change counter with every transaction
/// (sqlite.org/fileformat2.html, section 1.3.8, from memory).
struct Header {
    std::array<char, 100> bytes{};
    std::int64_t length = 0; ///< of what was read of it
    std::int64_t size = 0;
    friend bool operator==(const Header&, const Header&) = default;
};

/// Through the connection's own handle: a second one, when closed, would drop the locks of a window that has the record
/// open (sqlite.org/howtocorrupt.html, section 2.2).
Result<Header> headerOf(const Database& database) {
    sqlite3_file* file = nullptr;
    sqlite3_file_control(database.handle(), "main", SQLITE_FCNTL_FILE_POINTER, static_cast<void*>(&file));
    Header header;
    if (file == nullptr || file->pMethods == nullptr) {
        return refuse(sentenceFor(SQLITE_CANTOPEN, database.path(), {}));
    }
    sqlite3_int64 size = 0;
    int code = file->pMethods->xFileSize(file, &size);
    header.size = size;
    header.length = std::min<std::int64_t>(size, static_cast<std::int64_t>(header.bytes.size()));
    if (code == SQLITE_OK && header.length > 0) {
        code = file->pMethods->xRead(file, header.bytes.data(), static_cast<int>(header.length), 0);
    }
    if (code != SQLITE_OK) {
        return refuse(sentenceFor(code, database.path(), sqlite3_errstr(code)));
    }
    return header;
}

/// A journal beside the file: someone is writing, or was cut off while writing. Something else under that name counts
/// too, whatever it is: no link is followed, and nothing is opened.
bool hasJournal(const std::string& path) {
    struct stat info {};
    return ::lstat((path + "-journal").c_str(), &info) == 0 && (info.st_size > 0 || !S_ISREG(info.st_mode));
}

FileFinding found(FileReading reading, std::string sentence) {
    return {reading, std::move(sentence), {}};
}

FileFinding beingWritten(const std::string& path) {
    return found(FileReading::beingWritten, Core::say("%1 is being written, or a write was cut off: it is read again "
                                                      "later; opening it takes back what was cut off.",
                                                      inQuotes(path)));
}

FileFinding unreadable(const std::string& sentence) {
    return found(FileReading::unreadable, sentence);
}

/// The header's verdict; a record's is `summarised`.
FileFinding judged(const Header& header, const std::string& path) {
    const HeaderFinding finding = judgeHeader({header.bytes.data(), static_cast<std::size_t>(header.length)},
                                              static_cast<std::uint64_t>(header.size), path);
    switch (finding.kind) {
    case FileKind::record:
        return found(FileReading::summarised, {});
    case FileKind::newerRecord:
        return found(FileReading::newer, finding.sentence);
    case FileKind::damagedRecord:
        return found(FileReading::damaged, finding.sentence);
    case FileKind::notARecord:
        break;
    }
    return found(FileReading::foreign, finding.sentence);
}

Result<void> summaryRow(Database& database, RecordSummary& summary) {
    auto row = database.prepare(
        "SELECT e.sequence, e.time, e.person, d.customer, d.engine, d.serial FROM entry e LEFT JOIN engine_described d "
        "ON d.sequence = (SELECT max(sequence) FROM engine_described) ORDER BY e.sequence DESC LIMIT 1");
    if (!row) {
        return tl::unexpected(row.error());
    }
    const auto more = row->step();
    if (!more) {
        return tl::unexpected(more.error());
    }
    if (!*more) {
        return {}; // an empty record
    }
    const auto words = [&](int column) { return plainLine(row->text(column).substr(0, 1000)); };
    const auto time = parseUtcTime(row->text(1));
    if (!time) {
        return refuse(Core::say("%1 is damaged: its last entry has no time. Salvage what can be read.",
                                inQuotes(database.path())));
    }
    summary.entries = row->integer(0);
    summary.lastEntry = *time;
    summary.who = words(2);
    summary.customer = words(3);
    summary.engine = words(4);
    summary.serial = words(5);
    return {};
}

Result<void> whole(ConnectionForMany& connection, Database& database, RecordDigest& out) {
    if (auto good = connection.verifyItsSchema(); !good) {
        return good;
    }
    Ledger ledger;
    if (auto good = readSoundTables(database, ledger); !good) {
        return good;
    }
    out = digest(ledger);
    return {};
}

/// Whether a failure of this code is the file's own, or its disk's.
FileReading readingFor(int code) {
    if ((code & 0xff) == SQLITE_INTERRUPT) {
        return FileReading::unfinished;
    }
    return isUnfinished(code) ? FileReading::unreadable : FileReading::damaged;
}

/// Links are resolved as bytes, because SQLite follows none and Qt's strings cannot hold every name.
Result<std::string> resolved(const std::string& path) {
    std::array<char, PATH_MAX> room{};
    if (::realpath(path.c_str(), room.data()) == nullptr) {
        return refuse(Core::say("%1 cannot be reached: it is gone, or may not be read.", inQuotes(plainLine(path))));
    }
    return std::string(room.data());
}

using Read = std::function<Result<void>(Database&, RecordDigest&)>;

/// What reading a file in one state of it came to.
struct ReadOutcome {
    Result<void> done;
    int code = SQLITE_OK;       ///< SQLite's, when it failed
    bool isOtherSchema = false; ///< nothing was read: the connection goes by another schema
};

ReadOutcome readThrough(ConnectionForMany& connection, Database& database, const Read& read, RecordDigest& digest) {
    ReadOutcome outcome;
    outcome.done = connection.isFresh() ? defend(database) : Result<void>();
    if (!outcome.done) {
        return outcome;
    }
    // Under its guard too: a file made to keep SQLite busy for hours is given up after seconds.
    outcome.done = inOneState(database, [&]() -> Result<void> {
        const auto isIts = connection.hasItsSchema();
        outcome.isOtherSchema = isIts && !*isIts;
        auto done = !isIts ? tl::unexpected(isIts.error()) : *isIts ? read(database, digest) : Result<void>();
        outcome.code = database.lastCode();
        return done;
    });
    return outcome;
}

/// As `readAt`, on a file that can be reached and that no journal lies beside.
FileFinding readReachable(ConnectionForMany& connection, const std::string& real, const std::string& path,
                          const Read& read, FileReading whenGood) {
    auto database = connection.leadTo(real);
    if (!database) {
        return unreadable(plainLine(database.error().sentence));
    }
    const auto before = headerOf(**database);
    if (!before) {
        return unreadable(plainLine(before.error().sentence));
    }
    FileFinding finding = judged(*before, real);
    if (finding.reading != FileReading::summarised) {
        finding.sentence = plainLine(finding.sentence);
        return finding;
    }
    const ReadOutcome outcome = readThrough(connection, **database, read, finding.digest);
    const auto after = headerOf(**database);
    if (!after || *after != *before || hasJournal(real)) {
        return beingWritten(plainLine(path));
    }
    if (outcome.isOtherSchema) {
        connection.forget();
        return readReachable(connection, real, path, read, whenGood); // a fresh connection goes by the file's own
    }
    if (!outcome.done) {
        return found(readingFor(outcome.code), plainLine(outcome.done.error().sentence));
    }
    finding.reading = whenGood;
    return finding;
}

FileFinding readAt(ConnectionForMany& connection, const std::string& path, const Read& read, FileReading whenGood) {
    const auto real = resolved(path);
    if (!real) {
        return unreadable(real.error().sentence);
    }
    if (hasJournal(*real)) {
        const auto beside = lookBeside(*real);
        return beside ? beingWritten(plainLine(path)) : unreadable(plainLine(beside.error().sentence));
    }
    FileFinding finding = readReachable(connection, *real, path, read, whenGood);
    if (finding.reading != whenGood) {
        connection.forget(); // what it met there is not carried on to the next file
    }
    return finding;
}

} // namespace

FileFinding RecordReader::readSummary(const std::string& path) {
    return readAt(
        m_connection, path, [](Database& database, RecordDigest& out) { return summaryRow(database, out.summary); },
        FileReading::summarised);
}

FileFinding RecordReader::readWhole(const std::string& path) {
    return readAt(
        m_connection, path,
        [this](Database& database, RecordDigest& out) { return whole(m_connection, database, out); },
        FileReading::assessed);
}

FileFinding readSummary(const std::string& path) {
    return RecordReader().readSummary(path);
}

FileFinding readWhole(const std::string& path) {
    return RecordReader().readWhole(path);
}

} // namespace caprail
