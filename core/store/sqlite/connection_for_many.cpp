// SPDX-License-Identifier: GPL-3.0-or-later
#include <store/sqlite/connection_for_many.h>

#include <array>
#include <cstddef>
#include <sqlite3.h>
#include <store/sqlite/schema.h>
#include <vector>

namespace caprail {

namespace {

constexpr const char* vfsName = "caprail-many";
using FirstBytes = std::array<char, 100>;

sqlite3_vfs* underneath() {
    return sqlite3_vfs_find(nullptr);
}

/// A file of the system's own layer, open to be read.
class RealFile {
public:
    RealFile() = default;
    RealFile(const RealFile&) = delete;
    RealFile& operator=(const RealFile&) = delete;
    RealFile(RealFile&& other) noexcept : m_name(std::move(other.m_name)), m_room(std::move(other.m_room)) {}
    RealFile& operator=(RealFile&& other) noexcept {
        close();
        m_name = std::move(other.m_name);
        m_room = std::move(other.m_room);
        return *this;
    }
    ~RealFile() { close(); }

    int open(const char* path, int flags) {
        sqlite3_vfs* const vfs = underneath();
        const std::string journal = std::string(path) + "-journal";
        const std::string wal = std::string(path) + "-wal";
        m_name.reset(sqlite3_create_filename(path, journal.c_str(), wal.c_str(), 0, nullptr));
        if (!m_name) {
            return SQLITE_NOMEM;
        }
        m_room.resize(static_cast<std::size_t>(vfs->szOsFile) / sizeof(std::max_align_t) + 1);
        return vfs->xOpen(vfs, m_name.get(), file(), flags, nullptr);
    }
    [[nodiscard]] bool isOpen() const { return !m_room.empty() && file()->pMethods != nullptr; }
    [[nodiscard]] sqlite3_file* file() const {
        return reinterpret_cast<sqlite3_file*>(const_cast<std::max_align_t*>(m_room.data()));
    }
    int read(void* to, int count, sqlite3_int64 from) const { return file()->pMethods->xRead(file(), to, count, from); }
    int size(sqlite3_int64* bytes) const { return file()->pMethods->xFileSize(file(), bytes); }
    void close() {
        if (isOpen()) {
            file()->pMethods->xClose(file());
        }
        m_room.clear();
    }

private:
    struct FreeName {
        void operator()(const char* name) const { sqlite3_free_filename(const_cast<char*>(name)); }
    };
    std::unique_ptr<const char, FreeName> m_name; ///< the layer keeps a pointer to it
    std::vector<std::max_align_t> m_room;         ///< empty: nothing is open
};

/// What SQLite takes for its file: the real one behind it is another from time to time.
struct LedFile {
    sqlite3_file base; ///< first, as SQLite wants it
    RealFile* real;
};

RealFile& realOf(sqlite3_file* file) {
    return *reinterpret_cast<LedFile*>(file)->real;
}

/// Reads what is there; whatever would change or lock a file is refused or does nothing.
const sqlite3_io_methods* methods() {
    static const sqlite3_io_methods table = [] {
        sqlite3_io_methods m{};
        m.iVersion = 1;
        m.xClose = [](sqlite3_file* file) {
            delete reinterpret_cast<LedFile*>(file)->real;
            return SQLITE_OK;
        };
        m.xRead = [](sqlite3_file* file, void* to, int count, sqlite3_int64 from) {
            return realOf(file).read(to, count, from);
        };
        m.xWrite = [](sqlite3_file*, const void*, int, sqlite3_int64) { return SQLITE_READONLY; };
        m.xTruncate = [](sqlite3_file*, sqlite3_int64) { return SQLITE_READONLY; };
        m.xSync = [](sqlite3_file*, int) { return SQLITE_OK; };
        m.xFileSize = [](sqlite3_file* file, sqlite3_int64* bytes) { return realOf(file).size(bytes); };
        m.xLock = [](sqlite3_file*, int) { return SQLITE_OK; };
        m.xUnlock = [](sqlite3_file*, int) { return SQLITE_OK; };
        m.xCheckReservedLock = [](sqlite3_file*, int* isReserved) {
            *isReserved = 0;
            return SQLITE_OK;
        };
        m.xFileControl = [](sqlite3_file*, int, void*) { return SQLITE_NOTFOUND; };
        m.xSectorSize = [](sqlite3_file*) { return 4096; };
        m.xDeviceCharacteristics = [](sqlite3_file*) { return 0; };
        return m;
    }();
    return &table;
}

int openLed(sqlite3_vfs*, const char* path, sqlite3_file* file, int flags, int* outFlags) {
    auto* const led = reinterpret_cast<LedFile*>(file);
    led->base.pMethods = nullptr;
    if (path == nullptr || (flags & SQLITE_OPEN_MAIN_DB) == 0) {
        return SQLITE_CANTOPEN; // a journal or a temporary file: nothing that only reads needs one
    }
    auto real = std::make_unique<RealFile>();
    if (const int sqliteCode = real->open(path, flags); sqliteCode != SQLITE_OK) {
        return sqliteCode;
    }
    led->real = real.release();
    led->base.pMethods = methods();
    if (outFlags != nullptr) {
        *outFlags = flags;
    }
    return SQLITE_OK;
}

/// The layer that is told to SQLite, once: no journal is ever there for it, the rest it asks of the system's own.
bool isLayerKnown() {
    static sqlite3_vfs layer = [] {
        sqlite3_vfs vfs = *underneath();
        vfs.szOsFile = sizeof(LedFile);
        vfs.pNext = nullptr;
        vfs.zName = vfsName;
        vfs.xOpen = openLed;
        vfs.xDelete = [](sqlite3_vfs*, const char*, int) { return SQLITE_READONLY; };
        vfs.xAccess = [](sqlite3_vfs*, const char*, int, int* answer) {
            *answer = 0;
            return SQLITE_OK;
        };
        vfs.xFullPathname = [](sqlite3_vfs*, const char* path, int room, char* full) {
            return underneath()->xFullPathname(underneath(), path, room, full);
        };
        return vfs;
    }();
    static const int sqliteCode = sqlite3_vfs_register(&layer, 0);
    return sqliteCode == SQLITE_OK;
}

/// Whether a connection that was opened on a file with the one header reads one with the other rightly: pages, text,
/// and the schema's own counter (sqlite.org/fileformat2.html, section 1.3, from memory) are alike.
bool isLaidOutAlike(const FirstBytes& a, const FirstBytes& b) {
    const auto same = [&](std::size_t from, std::size_t to) {
        return std::equal(a.begin() + static_cast<std::ptrdiff_t>(from), a.begin() + static_cast<std::ptrdiff_t>(to),
                          b.begin() + static_cast<std::ptrdiff_t>(from));
    };
    return same(0, 24) && same(40, 48) && same(52, 92);
}

/// Characters of a schema that are looked at: ours has a tenth of it. A larger one is nobody's but its own file's.
constexpr std::size_t largestSchema = 1024UL * 1024;

/// Every row of the schema in one text, cut off where it is larger than `largestSchema`, each cell with its length
/// before it, so that no two schemas have the same.
Result<std::string> schemaText(Database& database) {
    auto rows = database.prepare("SELECT type, name, tbl_name, rootpage, sql FROM sqlite_schema LIMIT 1000");
    if (!rows) {
        return tl::unexpected(rows.error());
    }
    std::string text;
    for (auto more = rows->step();; more = rows->step()) {
        if (!more) {
            return tl::unexpected(more.error());
        }
        if (!*more || text.size() > largestSchema) {
            return text;
        }
        for (int column = 0; column < 5; ++column) {
            const std::string_view cell = rows->text(column);
            text += std::to_string(cell.size());
            text += ':';
            text += cell;
        }
    }
}

} // namespace

struct ConnectionForMany::State {
    std::unique_ptr<Database> database;
    sqlite3_file* file = nullptr; ///< of the connection
    std::array<char, 100> header{};
    std::string schema; ///< that the connection goes by; empty: not read yet
    bool isFresh = true;
    bool isSchemaVerified = false;

    /// Whether the connection could be led to the file.
    bool leadTo(const std::string& path) {
        RealFile next;
        FirstBytes nextHeader{};
        if (!database || schema.empty() ||
            next.open(path.c_str(), SQLITE_OPEN_READONLY | SQLITE_OPEN_MAIN_DB | SQLITE_OPEN_NOFOLLOW) != SQLITE_OK ||
            next.read(nextHeader.data(), static_cast<int>(std::tuple_size_v<FirstBytes>), 0) != SQLITE_OK ||
            !isLaidOutAlike(header, nextHeader)) {
            return false;
        }
        realOf(file) = std::move(next);
        database->isNowAt(path);
        isFresh = false;
        // The pages of the file before are forgotten.
        return sqlite3_file_control(database->handle(), "main", SQLITE_FCNTL_RESET_CACHE, nullptr) == SQLITE_OK;
    }
};

const char* layerForMany() {
    return isLayerKnown() ? vfsName : nullptr;
}

ConnectionForMany::ConnectionForMany() : m_state(std::make_unique<State>()) {}
ConnectionForMany::~ConnectionForMany() = default;

bool ConnectionForMany::isFresh() const {
    return m_state->isFresh;
}

void ConnectionForMany::forget() {
    m_state = std::make_unique<State>();
}

Result<Database*> ConnectionForMany::leadTo(const std::string& path) {
    if (m_state->leadTo(path)) {
        return m_state->database.get();
    }
    forget();
    auto database = Database::open(path, Access::untouched);
    if (!database) {
        return tl::unexpected(database.error());
    }
    sqlite3_file* file = nullptr;
    sqlite3_file_control((*database)->handle(), "main", SQLITE_FCNTL_FILE_POINTER, static_cast<void*>(&file));
    if (file == nullptr || file->pMethods != methods()) {
        return refuse(sentenceFor(SQLITE_CANTOPEN, path, {}));
    }
    m_state->database = std::move(*database);
    m_state->file = file;
    return m_state->database.get();
}

Result<bool> ConnectionForMany::hasItsSchema() {
    State& s = *m_state;
    auto text = schemaText(*s.database);
    if (!text) {
        return tl::unexpected(text.error());
    }
    if (!s.schema.empty()) {
        return *text == s.schema;
    }
    if (text->size() <= largestSchema &&
        realOf(s.file).read(s.header.data(), static_cast<int>(std::tuple_size_v<FirstBytes>), 0) == SQLITE_OK) {
        s.schema = std::move(*text);
    }
    return true;
}

Result<void> ConnectionForMany::verifyItsSchema() {
    if (m_state->isSchemaVerified) {
        return {};
    }
    auto verified = verifySchema(*m_state->database);
    m_state->isSchemaVerified = verified.has_value();
    return verified;
}

} // namespace caprail
