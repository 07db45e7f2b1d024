// SPDX-License-Identifier: GPL-3.0-or-later
#include <shopserver/photo_sender.h>

#include <base/say.h>
#include <set>

namespace caprail {

namespace {

constexpr std::size_t pieceSize = 1024UL * 1024;

} // namespace

std::string bytesOf(const Seal& seal) {
    return {reinterpret_cast<const char*>(seal.bytes.data()), seal.bytes.size()};
}

std::string bytesOfHex(std::string_view digits) {
    const auto seal = sealFromHex(digits);
    return seal ? bytesOf(*seal) : std::string();
}

PhotoSender::PhotoSender(PublishStatements& statements, const RecordFile& record)
    : m_statements(statements), m_record(record) {
    for (const Entry& entry : record.ledger().entries()) {
        if (const auto* added = entry.body.as<AttachmentAdded>()) {
            m_photos.emplace(bytesOfHex(added->sha256), added);
        }
    }
    for (const auto& [key, added] : m_photos) {
        m_hashes += key;
    }
}

Result<bool> PhotoSender::isNeeded(std::int64_t recordId) {
    if (m_photos.empty()) {
        return false;
    }
    const auto lacking = m_statements.lacking(recordId, m_hashes);
    return lacking ? Result<bool>(!lacking->empty()) : tl::unexpected(lacking.error());
}

Result<void> PhotoSender::sendOne(const std::string& key, std::string_view bytes) {
    for (std::int64_t piece = 0;; ++piece) {
        const bool isLast = bytes.size() <= pieceSize;
        auto done = m_statements.addPiece(key, piece, bytes.substr(0, pieceSize));
        if (!done || isLast) {
            return done;
        }
        bytes.remove_prefix(pieceSize);
    }
}

Result<std::int64_t> PhotoSender::send(std::int64_t recordId, const std::stop_token& stop,
                                       const std::function<void()>& sent) {
    const auto lacking =
        m_photos.empty() ? Result<std::string>(std::string()) : m_statements.lacking(recordId, m_hashes);
    if (!lacking) {
        return tl::unexpected(lacking.error());
    }
    constexpr std::size_t hashSize = 32;
    std::set<std::string> wanted;
    for (std::size_t at = 0; at < lacking->size(); at += hashSize) {
        wanted.insert(lacking->substr(at, hashSize));
    }
    std::int64_t count = 0;
    for (const std::string& key : wanted) {
        if (stop.stop_requested()) {
            return refuse(Core::say("Publishing was stopped: nothing of this record was stored."));
        }
        const auto named = m_photos.find(key);
        if (named == m_photos.end()) { // a server that asks for what nobody has
            continue;
        }
        const AttachmentAdded& added = *named->second;
        const auto isNew = m_statements.beginAttachment(recordId, key, added.size);
        if (!isNew) {
            return tl::unexpected(isNew.error());
        }
        if (*isNew) {
            const auto bytes = m_record.attachmentBytes(added.sha256);
            auto done = bytes ? sendOne(key, *bytes) : tl::unexpected(bytes.error());
            if (!done) {
                return tl::unexpected(done.error());
            }
            ++count;
        }
        sent();
    }
    return count;
}

} // namespace caprail
