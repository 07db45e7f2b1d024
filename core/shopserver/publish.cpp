// SPDX-License-Identifier: GPL-3.0-or-later
#include <shopserver/publish.h>

#include <base/say.h>
#include <filesystem>
#include <future>
#include <shop/record_summary.h>
#include <shopserver/photo_sender.h>
#include <shopserver/publication_json.h>
#include <store/file/record_file.h>
#include <store/sqlite/database.h>

namespace caprail {

namespace {

/// What one call to the server carries: large enough that the way there counts for little, small enough for any memory.
constexpr std::size_t batchBytes = 512UL * 1024;

/// One publication: of one record to one database.
class Publication {
public:
    Publication(PublishStatements& statements, const RecordFile& record, const std::stop_token& stop,
                const PublishProgress& progress)
        : m_statements(statements), m_record(record), m_ledger(record.ledger()), m_stop(stop), m_progress(progress),
          m_identity(bytesOf(m_ledger.at(1).seal)), m_photos(statements, record) {
        m_published.head = m_ledger.seal();
    }

    Result<Published> run() {
        const auto held = m_statements.known(m_identity, m_ledger.size());
        if (!held) {
            return tl::unexpected(held.error());
        }
        if (*held) {
            auto news = judge(**held);
            if (news && m_published.what == Published::What::nothingNew) { // but what is there may have been damaged
                news = m_photos.isNeeded((*held)->id);
            }
            if (!news || !*news) {
                return news ? Result<Published>(m_published) : tl::unexpected(news.error());
            }
        }
        m_digest = digest(m_ledger); // before anything is held there
        auto done = m_statements.database().together([&] { return sendAll(); });
        return done ? Result<Published>(m_published) : tl::unexpected(done.error());
    }

private:
    Result<bool> isSameAt(std::int64_t number) {
        const auto there = m_statements.known(m_identity, number);
        return there ? Result<bool>(*there && (*there)->seal == bytesOf(m_ledger.at(number).seal))
                     : tl::unexpected(there.error());
    }

    /// Whether there is something to send: refuses another history of the same record.
    Result<bool> judge(const HeldState& held) {
        const std::int64_t here = m_ledger.size();
        const std::int64_t both = std::min(here, held.entries);
        auto isSame = both == 0              ? Result<bool>(true)
                            : both == held.entries ? Result<bool>(held.head == bytesOf(m_ledger.at(both).seal))
                                                   : isSameAt(both);
        if (!isSame) {
            return isSame;
        }
        if (!*isSame) {
            return fork(both);
        }
        m_published.what = here == held.entries  ? Published::What::nothingNew
                           : here < held.entries ? Published::What::olderCopy
                                                 : Published::What::sent;
        m_published.ahead = std::max<std::int64_t>(held.entries - here, 0);
        return here > held.entries;
    }

    /// The first entry that is another one there: entries 1 to n are the same exactly when the seals of n are.
    tl::unexpected<Problem> fork(std::int64_t unlike) {
        std::int64_t alike = 1; // the record was found by it
        while (unlike - alike > 1) {
            const std::int64_t middle = alike + (unlike - alike) / 2;
            const auto isSame = isSameAt(middle);
            if (!isSame) {
                return tl::unexpected(isSame.error());
            }
            (*isSame ? alike : unlike) = middle;
        }
        return refuse(
            Core::say("its history is not the one that %1 holds of the same record: they differ from entry %2 on. "
                      "Nothing of it was stored; fetch the other one and compare the two.",
                      m_statements.database().place().shownAs, unlike));
    }

    Result<void> sendAll() {
        const auto held = m_statements.hold(m_identity);
        if (!held) {
            return tl::unexpected(held.error());
        }
        const auto news = judge(*held); // again: another one may have been faster
        if (!news || m_published.what == Published::What::olderCopy) {
            return news ? Result<void>() : tl::unexpected(news.error());
        }
        m_of = m_ledger.size() - held->entries;
        auto done = *news ? sendEntries(*held) : Result<void>();
        if (done) {
            const auto photos = m_photos.send(held->id, m_stop, [&] { tell(0); });
            done = photos ? Result<void>() : tl::unexpected(photos.error());
            m_published.photos = photos.value_or(0);
            m_published.what = m_published.photos > 0 ? Published::What::sent : m_published.what;
        }
        return done && *news ? sendListing(*held) : done;
    }

    /// Entries as the server takes them at once.
    struct Batch {
        std::string lines, seals;
        std::int64_t first = 0, last = 0; ///< numbers
    };
    [[nodiscard]] Batch batchFrom(std::int64_t first) const {
        Batch batch{{}, {}, first, first - 1};
        for (const Entry& entry : m_ledger.entriesFrom(first)) {
            batch.lines += (batch.lines.empty() ? "" : "\n") + canonicalText(entry);
            batch.seals += bytesOf(entry.seal);
            batch.last = entry.sequence;
            if (batch.lines.size() >= batchBytes) {
                break;
            }
        }
        return batch;
    }

    /// The next batch is made while the server works on the one before.
    Result<void> sendEntries(const HeldState& held) {
        const auto making = [this](std::int64_t first) {
            return std::async(std::launch::async, [this, first] { return batchFrom(first); });
        };
        std::future<Batch> next = making(held.entries + 1);
        for (std::int64_t sent = held.entries; sent < m_ledger.size();) {
            const Batch batch = next.get();
            if (batch.last < m_ledger.size()) {
                next = making(batch.last + 1);
            }
            if (m_stop.stop_requested()) {
                return refuse(Core::say("Publishing was stopped: nothing of this record was stored."));
            }
            if (auto done = m_statements.addEntries(held.id, batch.first, batch.lines, batch.seals); !done) {
                return done;
            }
            tell(batch.last - sent);
            sent = batch.last;
        }
        m_published.entries = m_ledger.size() - held.entries;
        return {};
    }

    Result<void> sendListing(const HeldState& held) {
        namespace fs = std::filesystem;
        std::error_code error;
        const auto size = fs::file_size(m_record.path(), error);
        return m_statements.publish(held.id, m_published.entries,
                                    listingJson(m_digest.summary, fs::path(m_record.path()).filename().string(),
                                                error ? 0 : static_cast<std::int64_t>(size)),
                                    distinctWords(m_digest.words), figuresJson(m_digest.figures));
    }

    void tell(std::int64_t more) {
        m_done += more;
        if (m_progress) {
            m_progress(m_done, m_of);
        }
    }

    PublishStatements& m_statements;
    const RecordFile& m_record;
    const Ledger& m_ledger;
    const std::stop_token& m_stop;
    const PublishProgress& m_progress;
    std::string m_identity; ///< seal of the first entry, as bytes
    PhotoSender m_photos;
    Published m_published;
    RecordDigest m_digest;
    std::int64_t m_done = 0, m_of = 0;
};

} // namespace

std::string sentenceOf(const Published& published) {
    if (published.what == Published::What::nothingNew) {
        return Core::say("Nothing new: all of it was published before.");
    }
    if (published.what == Published::What::olderCopy) {
        return Core::count(published.ahead,
                           Core::mark("An older copy: the database holds one entry more, and was left as it is."),
                           Core::mark("An older copy: the database holds %1 entries more, and was left as it is."));
    }
    const std::string entries =
        Core::count(published.entries, Core::mark("One entry sent."), Core::mark("%1 entries sent."));
    const std::string photos =
        Core::count(published.photos, Core::mark("One photo or file sent."), Core::mark("%1 photos and files sent."));
    return published.photos == 0 ? entries : published.entries == 0 ? photos : entries + " " + photos;
}

RecordPublisher::RecordPublisher(Connection& database) : m_statements(std::make_unique<PublishStatements>(database)) {}
RecordPublisher::~RecordPublisher() = default;

Result<Published> RecordPublisher::publish(const std::string& path, const std::stop_token& stop,
                                           const PublishProgress& progress) {
    const auto record = RecordFile::open(path, OpenMode::readOnly);
    return record ? publish(*record, stop, progress) : tl::unexpected(record.error());
}

Result<Published> RecordPublisher::publish(const RecordFile& record, const std::stop_token& stop,
                                           const PublishProgress& progress) {
    if (record.ledger().empty()) {
        return refuse(Core::say("%1 holds no entry yet: there is nothing to publish.", inQuotes(record.path())));
    }
    auto published = Publication(*m_statements, record, stop, progress).run();
    return published ? published : refuse(inQuotes(record.path()) + ": " + published.error().sentence);
}

} // namespace caprail
