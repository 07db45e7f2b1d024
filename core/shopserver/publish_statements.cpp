// SPDX-License-Identifier: GPL-3.0-or-later
#include <shopserver/publish_statements.h>

#include <base/say.h>

namespace caprail {

Result<std::optional<HeldState>> PublishStatements::known(std::string_view identity, std::int64_t entry) {
    const auto query = m_database.ready(m_known, "SELECT id, entries, head, coalesce(seal, '') FROM known(?, ?)");
    if (!query) {
        return tl::unexpected(query.error());
    }
    Query& q = **query;
    q.bindBytes(1, identity);
    q.bind(2, entry);
    const auto row = q.step();
    if (!row) {
        return tl::unexpected(row.error());
    }
    std::optional<HeldState> held;
    if (*row) {
        held = HeldState{q.integer(0), q.integer(1), q.bytes(2), q.bytes(3)};
    }
    q.reset();
    return held;
}

Result<std::string> PublishStatements::lacking(std::int64_t record, std::string_view hashes) {
    const auto query = m_database.ready(m_lacking, "SELECT sha256 FROM lacking(?, ?)");
    if (!query) {
        return tl::unexpected(query.error());
    }
    Query& q = **query;
    q.bind(1, record);
    q.bindBytes(2, hashes);
    std::string all;
    const auto read = q.each([&](const Query& row) -> Result<void> {
        all += row.bytes(0);
        return {};
    });
    return read ? Result<std::string>(std::move(all)) : tl::unexpected(read.error());
}

Result<HeldState> PublishStatements::hold(std::string_view identity) {
    const auto query = m_database.ready(m_hold, "SELECT id, entries, head FROM hold_record(?)");
    if (!query) {
        return tl::unexpected(query.error());
    }
    Query& q = **query;
    q.bindBytes(1, identity);
    const auto row = q.step();
    if (!row || !*row) {
        return row ? Result<HeldState>(refuse(Core::say("The database %1 does not keep this record: try again.",
                                                        m_database.place().shownAs)))
                   : tl::unexpected(row.error());
    }
    HeldState held{q.integer(0), q.integer(1), q.bytes(2), {}};
    q.reset();
    return held;
}

Result<void> PublishStatements::addEntries(std::int64_t record, std::int64_t first, std::string_view lines,
                                           std::string_view seals) {
    const auto query = m_database.ready(m_addEntries, "SELECT add_entries(?, ?, ?, ?)");
    if (!query) {
        return tl::unexpected(query.error());
    }
    Query& q = **query;
    q.bind(1, record);
    q.bind(2, first);
    q.bind(3, lines);
    q.bindBytes(4, seals);
    return q.run();
}

Result<bool> PublishStatements::beginAttachment(std::int64_t record, std::string_view sha256, std::int64_t size) {
    const auto query = m_database.ready(m_begin, "SELECT CAST(begin_attachment(?, ?, ?) AS integer)");
    if (!query) {
        return tl::unexpected(query.error());
    }
    Query& q = **query;
    q.bind(1, record);
    q.bindBytes(2, sha256);
    q.bind(3, size);
    const auto row = q.step();
    if (!row) {
        return tl::unexpected(row.error());
    }
    const bool isNew = *row && q.integer(0) != 0;
    q.reset();
    return isNew;
}

Result<void> PublishStatements::addPiece(std::string_view sha256, std::int64_t piece, std::string_view bytes) {
    const auto query = m_database.ready(m_addPiece, "SELECT add_piece(?, ?, ?, true)");
    if (!query) {
        return tl::unexpected(query.error());
    }
    Query& q = **query;
    q.bindBytes(1, sha256);
    q.bind(2, piece);
    q.bindBytes(3, bytes);
    return q.run();
}

Result<void> PublishStatements::publish(std::int64_t record, std::int64_t sent, std::string_view listing,
                                        std::string_view words, std::string_view figures) {
    const auto query = m_database.ready(m_publish, "SELECT publish(?, ?, CAST(? AS jsonb), ?, CAST(? AS jsonb))");
    if (!query) {
        return tl::unexpected(query.error());
    }
    Query& q = **query;
    q.bind(1, record);
    q.bind(2, sent);
    q.bind(3, listing);
    q.bind(4, words);
    q.bind(5, figures);
    return q.run();
}

} // namespace caprail
