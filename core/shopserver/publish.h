// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <catalogue/connection.h>
#include <functional>
#include <ledger/entry.h>
#include <stop_token>
#include <store/file/record_file.h>
#include <vector>

namespace caprail {

class PublishStatements;

/// What came of publishing one record.
struct Published {
    enum class What { sent, nothingNew, olderCopy } what = What::nothingNew;
    std::int64_t entries = 0; ///< sent now
    std::int64_t photos = 0;  ///< and files, sent now; without an entry: the database had lost them
    std::int64_t ahead = 0;   ///< of an older copy: so many entries more the database holds
    Seal head;                ///< of the file
};
/// "12 entries and 2 photos sent.", for a person.
std::string sentenceOf(const Published& published);

/// How far a publication is: entries and photos of the record that were sent, of how many.
using PublishProgress = std::function<void(std::int64_t done, std::int64_t of)>;

/// Publishes records, one after another, over one connection; its statements are prepared once. It is of no use any
/// more when the connection was lost: the next one begins with a new connection.
class RecordPublisher {
public:
    explicit RecordPublisher(Connection& database);
    RecordPublisher(const RecordPublisher&) = delete;
    RecordPublisher& operator=(const RecordPublisher&) = delete;
    ~RecordPublisher();

    /// Sends what the database does not have yet of the record at `path`: entries, photos, the line of the list, the
    /// figures, in one transaction: all of it or nothing. The record is only read. Asked again, it sends nothing.
    /// Refuses, in a sentence that names the file: what `RecordFile::open` refuses (damaged and altered ones), an empty
    /// one, a record whose history is another than the database holds of it (both have the same first seal; it says
    /// from which entry on they differ), and what the database refuses; `Connection::isOffline` tells whether to try
    /// again later. A record whose database has more is an older copy: nothing is sent, which is no error.
    Result<Published> publish(const std::string& path, const std::stop_token& stop = {},
                              const PublishProgress& progress = {});
    /// The same of a record that was opened by its path.
    Result<Published> publish(const RecordFile& record, const std::stop_token& stop = {},
                              const PublishProgress& progress = {});

private:
    std::unique_ptr<PublishStatements> m_statements;
};

} // namespace caprail
