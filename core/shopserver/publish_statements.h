// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <catalogue/connection.h>
#include <optional>

namespace caprail {

/// What the database has of a record.
struct HeldState {
    std::int64_t id = 0, entries = 0;
    std::string head; ///< seal of the last entry, as bytes
    std::string seal; ///< of the entry that was asked for, as bytes; empty where there is none
};

/// The functions of migrations/003_publish.sql and 005_photos.sql, each as a statement that is prepared the first time
/// that it is needed. Seals and hashes are bytes.
class PublishStatements {
public:
    explicit PublishStatements(Connection& database) : m_database(database) {}
    [[nodiscard]] Connection& database() { return m_database; }

    /// Nothing for a record that is not known.
    Result<std::optional<HeldState>> known(std::string_view identity, std::int64_t entry);
    /// Those of these attachments, a hash behind the other, that the database has not whole, likewise.
    Result<std::string> lacking(std::int64_t record, std::string_view hashes);
    /// From here on, only within a transaction.
    Result<HeldState> hold(std::string_view identity);
    Result<void> addEntries(std::int64_t record, std::int64_t first, std::string_view lines, std::string_view seals);
    /// True when its bytes are to follow.
    Result<bool> beginAttachment(std::int64_t record, std::string_view sha256, std::int64_t size);
    Result<void> addPiece(std::string_view sha256, std::int64_t piece, std::string_view bytes);
    Result<void> publish(std::int64_t record, std::int64_t sent, std::string_view listing, std::string_view words,
                         std::string_view figures);

private:
    Connection& m_database;
    std::optional<Query> m_known, m_lacking, m_hold, m_addEntries, m_begin, m_addPiece, m_publish;
};

} // namespace caprail
