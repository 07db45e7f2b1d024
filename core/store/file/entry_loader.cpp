// SPDX-License-Identifier: GPL-3.0-or-later
#include <store/file/entry_loader.h>

#include <algorithm>
#include <deque>
#include <future>
#include <memory>
#include <store/sqlite/defences.h>
#include <thread>
#include <base/say.h>
#include <utility>

namespace caprail {

namespace {

constexpr std::size_t batchSize = 512;
/// Bytes of texts in a batch: several are on their way at a time, and long texts must not add up.
constexpr std::size_t largestBatch = 128UL * 1024;

/// Checks rows one after another, each against the seal before it, and makes entries of them.
class RowVerifier {
public:
    Result<void> verify(const EntryRow& row, const Seal& before, Entry& entry) {
        if (auto done = readEntry(row, entry); !done) {
            return done;
        }
        // Over the cells as they are, not over the entry made from them, which may ignore a cell that means nothing;
        // and over the moment as it is written, which `readEntry` found to be the only way to write it.
        const std::string_view sealed =
            m_canonical.write(row.sequence, row.time, row.person, allKinds()[row.kind], row.cells);
        if (sealOver(before, sealed) != row.seal) {
            return refuse(Core::say(
                "The seal of entry %1 does not fit: it, or the one before it, was altered after it was sealed.",
                row.sequence));
        }
        return {};
    }

private:
    CanonicalWriter m_canonical;
};

/// Rows on their way to be verified, with their texts, and the entries made of them. It is filled again and again, so
/// that its memory is asked for once.
class Batch {
public:
    Batch() { m_texts.reserve(largestBatch); }
    Batch(Batch&&) = default;
    Batch& operator=(Batch&&) = default;
    Batch(const Batch&) = delete;
    Batch& operator=(const Batch&) = delete;
    ~Batch() = default;

    void clear() {
        m_texts.clear();
        m_filled = 0;
        m_entries.clear();
        m_outcome = {};
        if (m_texts.capacity() > 2 * largestBatch) { // one long text was in it
            m_texts = {};
            m_texts.reserve(largestBatch);
        }
    }
    [[nodiscard]] bool isEmpty() const { return m_filled == 0; }
    /// Whether a row of so many bytes of texts finds room: the first always does.
    [[nodiscard]] bool hasRoom(std::size_t bytes) const {
        return isEmpty() || (m_filled < batchSize && m_texts.size() + bytes <= m_texts.capacity());
    }
    void add(const EntryRow& row, std::size_t bytes) {
        if (isEmpty()) {
            m_texts.reserve(bytes); // before any view of it is taken
        }
        if (m_filled == m_rows.size()) {
            m_rows.emplace_back();
        }
        EntryRow& kept = m_rows[m_filled++];
        kept.sequence = row.sequence;
        kept.kind = row.kind;
        kept.seal = row.seal;
        kept.time = keep(row.time);
        kept.person = keep(row.person);
        kept.cells.assign(row.cells.begin(), row.cells.end());
        for (CellView& cell : kept.cells) {
            if (auto* text = std::get_if<std::string_view>(&cell)) {
                *text = keep(*text);
            }
        }
    }
    [[nodiscard]] const Seal& lastSeal() const { return m_rows[m_filled - 1].seal; }

    /// Makes the entries; stops at the first that does not fit.
    void verify(Seal before) {
        RowVerifier verifier;
        m_entries.reserve(m_filled);
        for (std::size_t i = 0; i < m_filled && m_outcome; ++i) {
            m_outcome = verifier.verify(m_rows[i], before, m_entries.emplace_back());
            before = m_rows[i].seal;
        }
        if (!m_outcome) {
            m_entries.pop_back();
        }
    }
    std::vector<Entry>& entries() { return m_entries; }
    [[nodiscard]] const Result<void>& outcome() const { return m_outcome; }

private:
    std::string_view keep(std::string_view text) {
        const std::size_t at = m_texts.size();
        m_texts += text;
        return std::string_view(m_texts).substr(at);
    }

    std::vector<EntryRow> m_rows; ///< the first `m_filled` of them
    std::size_t m_filled = 0;
    std::string m_texts; ///< never grown while a row looks into it
    std::vector<Entry> m_entries;
    Result<void> m_outcome;
};

/// Batches being verified, in order; as many at a time as there are cores.
class Verification {
public:
    explicit Verification(Ledger& ledger) : m_ledger(ledger), m_before(ledger.seal()) {}

    /// An empty batch to be filled.
    std::unique_ptr<Batch> emptyBatch() {
        if (m_spare.empty()) {
            return std::make_unique<Batch>();
        }
        auto batch = std::move(m_spare.back());
        m_spare.pop_back();
        batch->clear();
        return batch;
    }

    /// False when an entry was found that does not fit: there is no use in reading on.
    bool add(std::unique_ptr<Batch> batch, bool isLast) {
        const Seal before = std::exchange(m_before, batch->lastSeal());
        // A short ledger is not worth a thread.
        const auto how =
            isLast && m_waiting.empty() ? std::launch::deferred : std::launch::async | std::launch::deferred;
        m_waiting.push_back(std::async(how, [batch = std::move(batch), before]() mutable {
            batch->verify(before);
            return std::move(batch);
        }));
        if (m_waiting.size() > m_most) {
            takeFirst();
        }
        return m_outcome.has_value();
    }

    /// Waits for the rest; the first entry that does not fit is the one that is named.
    Result<void> finish() {
        while (!m_waiting.empty()) {
            takeFirst();
        }
        return m_outcome;
    }

private:
    void takeFirst() {
        std::unique_ptr<Batch> batch = m_waiting.front().get();
        m_waiting.pop_front();
        if (!m_outcome) {
            return;
        }
        for (Entry& entry : batch->entries()) {
            m_ledger.appendVerified(std::move(entry));
        }
        m_outcome = batch->outcome();
        m_spare.push_back(std::move(batch));
    }

    Ledger& m_ledger;
    Seal m_before;
    Result<void> m_outcome;
    std::vector<std::unique_ptr<Batch>> m_spare;
    std::deque<std::future<std::unique_ptr<Batch>>> m_waiting;
    std::size_t m_most = std::clamp(std::thread::hardware_concurrency(), 1U, 8U);
};

std::size_t textsOf(const EntryRow& row) {
    std::size_t bytes = row.time.size() + row.person.size();
    for (const CellView& cell : row.cells) {
        const auto* text = std::get_if<std::string_view>(&cell);
        bytes += text == nullptr ? 0 : text->size();
    }
    return bytes;
}

/// Fills batches; false when the entries came to their end.
class RowSource {
public:
    RowSource(Database& database, EntryReader reader, std::int64_t first)
        : m_database(database), m_reader(std::move(reader)), m_expected(first) {}

    Result<bool> fill(Batch& batch) {
        if (m_isWaiting) { // the row that found no room in the batch before
            batch.add(m_row, m_texts);
            m_isWaiting = false;
        }
        for (;;) {
            auto more = next();
            if (!more || !*more) {
                return more;
            }
            if (!batch.hasRoom(m_texts)) {
                m_isWaiting = true;
                return true;
            }
            batch.add(m_row, m_texts);
        }
    }

private:
    Result<bool> next() {
        auto more = m_reader.next(m_row);
        if (!more || !*more) {
            return more;
        }
        if (m_row.sequence != m_expected) {
            return refuse(Core::say(
                "%1 has entry %2 where entry %3 must be: entries were removed, inserted or put in another order.",
                inQuotes(m_database.path()), m_row.sequence, m_expected));
        }
        ++m_expected;
        m_texts = textsOf(m_row);
        m_memory += sizeof(Entry) + Body::besideOf(m_row.kind) + m_texts;
        if (m_memory > largestLedger) {
            return refuse(Core::say("%1 holds more than this program reads into memory (%2 MiB of entries).",
                                    inQuotes(m_database.path()), largestLedger / 1024 / 1024));
        }
        return true;
    }

    Database& m_database;
    EntryReader m_reader;
    std::int64_t m_expected;
    std::size_t m_memory = 0;
    EntryRow m_row;          ///< its texts lie in SQLite until the next is read
    std::size_t m_texts = 0; ///< bytes of them
    bool m_isWaiting = false;
};

} // namespace

Result<Entry> verifiedEntry(const EntryRow& row, const Seal& before) {
    Result<Entry> entry;
    if (auto done = RowVerifier().verify(row, before, *entry); !done) {
        return tl::unexpected(done.error());
    }
    return entry;
}

Result<void> readEntries(Database& database, Ledger& ledger) {
    const auto count = database.integer("SELECT coalesce(max(sequence), 0) FROM entry");
    if (!count) {
        return tl::unexpected(count.error());
    }
    // The number is not believed further than a full record would go.
    const std::int64_t more = std::clamp<std::int64_t>(*count - ledger.size(), 0, largestLedger / sizeof(Entry));
    if (more > static_cast<std::int64_t>(batchSize)) {
        ledger.reserve(static_cast<std::size_t>(more));
    }
    auto reader = EntryReader::after(database, ledger.size());
    if (!reader) {
        return tl::unexpected(reader.error());
    }
    RowSource source(database, std::move(*reader), ledger.size() + 1);
    Verification verification(ledger);
    Result<bool> readOn = true;
    while (readOn && *readOn) {
        auto batch = verification.emptyBatch();
        readOn = source.fill(*batch);
        const bool isLast = !readOn || !*readOn;
        if (!batch->isEmpty() && !verification.add(std::move(batch), isLast)) {
            break;
        }
    }
    if (auto verified = verification.finish(); !verified) {
        return refuse(Core::say("In %1: %2", inQuotes(database.path()), verified.error().sentence));
    }
    return readOn ? Result<void>() : tl::unexpected(readOn.error());
}

} // namespace caprail
