// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// One connection that is led from record to record. Nearly all that a short look at a record costs is what SQLite
/// makes of its schema, two hundred tables, triggers and views, which are the same in every record: so it is made once.
#include <memory>
#include <store/sqlite/database.h>
#include <string>

namespace caprail {

/// SQLite's layer for `Access::untouched`; null when it cannot be told of it (no memory).
const char* layerForMany();

/// Reads files as `Access::untouched` does: no lock, no journal, nothing made beside them, and no change seen while it
/// reads; the caller finds out whether someone wrote meanwhile. One file at a time, by one thread.
class ConnectionForMany {
public:
    ConnectionForMany();
    ConnectionForMany(const ConnectionForMany&) = delete;
    ConnectionForMany& operator=(const ConnectionForMany&) = delete;
    ~ConnectionForMany();

    /// The connection, on the file at `path`, a real path without links. No transaction and no statement of the file
    /// before may be left. It is the connection used before where the two headers say that pages, text and schema are
    /// laid out alike; else a fresh one (`isFresh`), to which the caller applies `defend`.
    Result<Database*> leadTo(const std::string& path);
    [[nodiscard]] bool isFresh() const;
    /// Whether the file's schema, with the pages where its tables begin, is the one that this connection goes by. To be
    /// asked in the transaction, before anything else is read; when it is not: `forget`, and lead a fresh one there.
    Result<bool> hasItsSchema();
    /// As `verifySchema` (schema.h), once for all files that have the same.
    Result<void> verifyItsSchema();
    /// Closes the connection and lets go of the file.
    void forget();

private:
    struct State;
    std::unique_ptr<State> m_state;
};

} // namespace caprail
