// SPDX-License-Identifier: GPL-3.0-or-later
#include <shopserver/held_text.h>

#include <algorithm>
#include <base/hex.h>
#include <base/say.h>
#include <shopserver/photo_sender.h>

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
        for (auto more = query->step(); !more || *more; more = query->step()) {
            const std::string seal = more ? query->bytes(2) : std::string();
            auto done = !more ? tl::unexpected(more.error()) : takeEntry(query->integer(0), query->text(1), seal);
            if (!done) {
                return done;
            }
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
        if (number != m_fetched.entries + 1 || sealBytes.size() != seal.bytes.size() ||
            (isFirst && sealBytes != m_identity)) {
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
        return m_take.entry(line, seal);
    }

    Result<void> readPhotos() {
        auto query =
            m_database.prepare("SELECT ra.sha256, p.bytes FROM record_attachment AS ra JOIN attachment_piece AS p "
                               "ON p.sha256 = ra.sha256 WHERE ra.record = ? ORDER BY ra.sha256, p.piece");
        if (!query) {
            return tl::unexpected(query.error());
        }
        query->bind(1, m_id);
        std::string before;
        for (auto more = query->step(); !more || *more; more = query->step()) {
            if (!more) {
                return tl::unexpected(more.error());
            }
            if (m_stop.stop_requested()) {
                return refuse(Core::say("Fetching was stopped: nothing was made."));
            }
            const std::string hash = query->bytes(0);
            m_fetched.photos += hash == before ? 0 : 1;
            before = hash;
            if (auto done =
                    m_take.photo(hexOf({caprail::bytesOf(std::string_view(hash)), hash.size()}), query->bytes(1));
                !done) {
                return done;
            }
        }
        if (m_progress) {
            m_progress(m_entries, m_entries);
        }
        return {};
    }

    Connection& m_database;
    std::string m_identity; ///< as bytes
    const HeldTaker& m_take;
    const std::stop_token& m_stop;
    const FetchProgress& m_progress;
    std::int64_t m_id = 0, m_entries = 0;
    std::string m_head;
    Fetched m_fetched;
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
