// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <functional>
#include <ledger/entries.h>
#include <map>
#include <shopserver/publish_statements.h>
#include <stop_token>
#include <store/file/record_file.h>

namespace caprail {

/// Sends the photos and files of a record that a database does not have, or has not whole, piece by piece, so that no
/// more than one of them is in memory.
class PhotoSender {
public:
    PhotoSender(PublishStatements& statements, const RecordFile& record);
    /// Whether the database lacks one.
    Result<bool> isNeeded(std::int64_t recordId);
    /// Within a transaction: gives how many were sent; `sent` is told after each. Refuses bytes that are missing or do
    /// not fit, and when it is to stop.
    Result<std::int64_t> send(std::int64_t recordId, const std::stop_token& stop, const std::function<void()>& sent);

private:
    Result<void> sendOne(const std::string& key, std::string_view bytes);
    PublishStatements& m_statements;
    const RecordFile& m_record;
    /// By their hashes as bytes, in whose order they go: two publishers never wait for each other.
    std::map<std::string, const AttachmentAdded*> m_photos;
    std::string m_hashes; ///< of all, one behind the other
};

/// The 32 bytes of a hash or a seal that is written as 64 hexadecimal digits; empty where it is something else.
std::string bytesOfHex(std::string_view digits);
/// A seal as a database keeps it.
std::string bytesOf(const Seal& seal);

} // namespace caprail
