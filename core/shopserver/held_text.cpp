// SPDX-License-Identifier: GPL-3.0-or-later
#include <shopserver/held_text.h>

#include <QCryptographicHash>
#include <algorithm>
#include <base/hex.h>
#include <base/say.h>
#include <ledger/entry_json.h>
#include <map>
#include <shopserver/photo_sender.h>
#include <store/sqlite/defences.h>
#include <utility>

namespace caprail {

namespace {

constexpr std::int64_t toldEvery = 1000;

class HeldReader {
public:
    HeldReader(Connection& database, std::string identity, const HeldTaker& take, const std::stop_token& stop,
               const FetchProgress& progress)
        : m_database(database), m_identity(std::move(identity)), m_take(take), m_stop(stop), m_progress(progress) {}

    Result<Fetched> run() {
        auto done = m_database.together([&]() -> Result<void> {
            // Somebody may publish more of it meanwhile: all is read as it stands now.
            auto all = m_database.run("SET TRANSACTION ISOLATION LEVEL REPEATABLE READ READ ONLY");
            all = all ? findRecord() : all;
            all = all ? readEntries() : all;
            return all ? readPhotos() : all;
        });
        return done ? Result<Fetched>(m_fetched) : tl::unexpected(done.error());
    }

private:
    const std::string& name() const { return m_database.place().shownAs; }

    Result<void> findRecord() {
        auto query = m_database.prepare("SELECT id, entries, head FROM record WHERE identity = ?");
        if (!query) {
            return tl::unexpected(query.error());
        }
        query->bindBytes(1, m_identity);
        const auto row = query->step();
        if (!row || !*row) {
            return row ? refuse(Core::say("The database %1 holds no record with this first seal.", name()))
                       : tl::unexpected(row.error());
        }
        m_id = query->integer(0);
        m_entries = query->integer(1);
        m_head = query->bytes(2);
        query->reset();
        return {};
    }

    Result<void> readEntries() {
        auto query = m_database.prepare("SELECT number, line, seal FROM entry WHERE record = ? ORDER BY number");
        if (!query) {
            return tl::unexpected(query.error());
        }
        query->bind(1, m_id);
        if (auto done =
                query->each([&](const Query& row) { return takeEntry(row.integer(0), row.text(1), row.bytes(2)); });
            !done) {
            return done;
        }
        const bool isWhole = m_fetched.entries == m_entries && bytesOf(m_fetched.seal) == m_head;
        return isWhole ? Result<void>()
                       : refuse(Core::say(
                             "The database %1 holds %2 entries of this record where it should hold %3, or they "
                             "end in another seal: rows were removed or altered there.",
                             name(), m_fetched.entries, m_entries));
    }

    Result<void> takeEntry(std::int64_t number, const std::string& line, const std::string& sealBytes) {
        Seal seal;
        const bool isFirst = m_fetched.entries == 0;
        if (number != m_fetched.entries + 1 || number > m_entries || sealBytes.size() != seal.bytes.size() ||
            (isFirst && sealBytes != m_identity) || line.empty() || line.find('\n') != std::string::npos) {
            return refuse(
                Core::say("The database %1 has entry %2 of this record where entry %3 must be, or its seal is "
                          "another: rows were removed or altered there.",
                          name(), number, m_fetched.entries + 1));
        }
        if (m_stop.stop_requested()) {
            return refuse(Core::say("Fetching was stopped: nothing was made."));
        }
        std::ranges::copy(sealBytes, seal.bytes.begin());
        m_fetched.seal = seal;
        ++m_fetched.entries;
        if (m_progress && m_fetched.entries % toldEvery == 0) {
            m_progress(m_fetched.entries, m_entries);
        }
        auto done = m_take.entry(line, seal);
        return done ? notePhoto(line) : done;
    }

    /// Of an entry that adds one.
    Result<void> notePhoto(const std::string& line) {
        // Members stand without spaces in what is sealed, and in no text with plain quotes.
        static const std::string kind = "\"kind\":\"" + std::string(AttachmentAdded::kind) + "\"";
        if (line.find(kind) == std::string::npos) {
            return {};
        }
        const auto said = fromJson(line);
        const auto* added = said ? said->body.as<AttachmentAdded>() : nullptr;
        if (added == nullptr) {
            return said ? Result<void>() : tl::unexpected(said.error());
        }
        m_expected.emplace(added->sha256, Photo{m_fetched.entries, added->fileName, added->size});
        return {};
    }

    Result<void> readPhotos() {
        auto query =
            m_database.prepare("SELECT ra.sha256, p.bytes FROM record_attachment AS ra JOIN attachment_piece AS p "
                               "ON p.sha256 = ra.sha256 WHERE ra.record = ? ORDER BY ra.sha256, p.piece");
        if (!query) {
            return tl::unexpected(query.error());
        }
        query->bind(1, m_id);
        std::string present;
        auto read = query->each([&](const Query& row) -> Result<void> {
            if (m_stop.stop_requested()) {
                return refuse(Core::say("Fetching was stopped: nothing was made."));
            }
            const std::string bytes = row.bytes(0);
            const std::string hash = hexOf({caprail::bytesOf(std::string_view(bytes)), bytes.size()});
            if (hash != present) {
                if (auto good = endPhoto(present); !good) {
                    return good;
                }
                present = hash;
            }
            return takePiece(hash, row.bytes(1));
        });
        if (!read) {
            return read;
        }
        auto good = endPhoto(present);
        if (good && !m_expected.empty()) {
            const auto& [hash, photo] = *m_expected.begin();
            return refuse(
                Core::say("The database %1 lacks the bytes of the photo or file “%2” of entry %3: publish the "
                          "record again from its file.",
                          name(), photo.fileName, photo.entry));
        }
        if (good && m_progress) {
            m_progress(m_entries, m_entries);
        }
        return good;
    }

    Result<void> takePiece(const std::string& hash, const std::string& piece) {
        const auto photo = m_expected.find(hash);
        if (photo == m_expected.end()) { // no entry names it
            return {};
        }
        m_hash.addData(QByteArrayView(piece.data(), static_cast<qsizetype>(piece.size())));
        m_size += static_cast<std::int64_t>(piece.size());
        // A server that lies may send more than any disk holds.
        return m_size > std::min(photo->second.size, largestAttachment) ? doesNotFit(hash) : m_take.photo(hash, piece);
    }

    /// Judges a photo of which all pieces came.
    Result<void> endPhoto(const std::string& hash) {
        const std::int64_t size = std::exchange(m_size, 0);
        const std::string found = m_hash.result().toHex().toStdString();
        m_hash.reset();
        const auto photo = m_expected.find(hash);
        if (photo == m_expected.end()) {
            return {};
        }
        if (found != hash || size != photo->second.size) {
            return doesNotFit(hash);
        }
        m_expected.erase(photo);
        ++m_fetched.photos;
        return {};
    }

    Result<void> doesNotFit(const std::string& hash) const {
        return refuse(
            Core::say("%1: the bytes of the photo or file %2 do not fit their hash.", name(), hash.substr(0, 20)));
    }

    Connection& m_database;
    std::string m_identity; ///< as bytes
    const HeldTaker& m_take;
    const std::stop_token& m_stop;
    const FetchProgress& m_progress;
    std::int64_t m_id = 0, m_entries = 0;
    std::string m_head;
    Fetched m_fetched;

    /// What an entry says of its photo.
    struct Photo {
        std::int64_t entry = 0;
        std::string fileName;
        std::int64_t size = 0;
    };
    std::map<std::string, Photo> m_expected; ///< by hash: named by an entry, and not come yet
    QCryptographicHash m_hash{QCryptographicHash::Sha256};
    std::int64_t m_size = 0; ///< of what came of the present one
};

} // namespace

Result<Fetched> readHeld(Connection& database, std::string_view identity, const HeldTaker& take,
                         const std::stop_token& stop, const FetchProgress& progress) {
    std::string bytes = bytesOfHex(identity);
    if (bytes.empty()) {
        return refuse(Core::say("A record is named by its first seal, 64 hexadecimal digits, but “%1” is not.",
                                identity.substr(0, 80)));
    }
    return HeldReader(database, std::move(bytes), take, stop, progress).run();
}

} // namespace caprail
