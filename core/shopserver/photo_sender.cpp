// SPDX-License-Identifier: GPL-3.0-or-later
#include <shopserver/photo_sender.h>

#include <base/say.h>
#include <map>

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

Result<void> PhotoSender::send(const std::string& hash, std::string_view bytes) {
    const std::string key = bytesOfHex(hash);
    for (std::int64_t piece = 0;; ++piece) {
        const bool isLast = bytes.size() <= pieceSize;
        auto done = m_statements.addPiece(key, piece, bytes.substr(0, pieceSize), isLast);
        if (!done || isLast) {
            return done;
        }
        bytes.remove_prefix(pieceSize);
    }
}

Result<std::int64_t> PhotoSender::sendFrom(std::int64_t first, const std::stop_token& stop,
                                           const std::function<void()>& sent) {
    std::map<std::string, std::int64_t> sizes; // in the order of their hashes: two publishers never wait for each other
    for (const Entry& entry : m_record.ledger().entriesFrom(first)) {
        if (const auto* added = entry.body.as<AttachmentAdded>()) {
            sizes.emplace(added->sha256, added->size);
        }
    }
    std::int64_t count = 0;
    for (const auto& [hash, size] : sizes) {
        if (stop.stop_requested()) {
            return refuse(Core::say("Publishing was stopped: nothing of this record was stored."));
        }
        const auto isNew = m_statements.beginAttachment(m_id, bytesOfHex(hash), size);
        if (!isNew) {
            return tl::unexpected(isNew.error());
        }
        if (*isNew) {
            const auto bytes = m_record.attachmentBytes(hash);
            auto done = bytes ? send(hash, *bytes) : tl::unexpected(bytes.error());
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
