// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <functional>
#include <shopserver/publish_statements.h>
#include <stop_token>
#include <store/file/record_file.h>

namespace caprail {

/// Sends the photos and files of a record that a database does not have yet, piece by piece, so that no more than one
/// of them is in memory. Within the transaction of its publication.
class PhotoSender {
public:
    PhotoSender(PublishStatements& statements, const RecordFile& record, std::int64_t recordId)
        : m_statements(statements), m_record(record), m_id(recordId) {}
    /// Those of the entries from number `first` on; gives how many were sent. `sent` is told after each. Refuses bytes
    /// that are missing or do not fit, and when it is to stop.
    Result<std::int64_t> sendFrom(std::int64_t first, const std::stop_token& stop, const std::function<void()>& sent);

private:
    Result<void> send(const std::string& hash, std::string_view bytes);
    PublishStatements& m_statements;
    const RecordFile& m_record;
    std::int64_t m_id;
};

/// The 32 bytes of a hash or a seal that is written as 64 hexadecimal digits; empty where it is something else.
std::string bytesOfHex(std::string_view digits);
/// A seal as a database keeps it.
std::string bytesOf(const Seal& seal);

} // namespace caprail
