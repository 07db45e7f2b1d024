// SPDX-License-Identifier: GPL-3.0-or-later
#include <store/file/entry_loader.h>

#include <algorithm>
#include <deque>
#include <future>
#include <store/sqlite/defences.h>
#include <thread>
#include <base/say.h>
#include <utility>

namespace caprail {

namespace {

constexpr std::size_t batchSize = 512;
/// Bytes of texts in a batch: several are on their way at a time, and long texts must not add up.
constexpr std::size_t largestBatch = 1024UL * 1024;

/// Rows on their way to be verified; they come back with the entries, so that their memory is used again.
struct Batch {
    std::vector<EntryRow> rows;
    std::size_t filled = 0;
    std::size_t memory = 0;
    Seal before;
    std::vector<Entry> entries;
    Result<void> outcome;
};

Batch verify(Batch batch) {
    batch.entries.reserve(batch.filled);
    Seal before = batch.before;
    for (std::size_t i = 0; i < batch.filled && batch.outcome; ++i) {
        auto entry = verifiedEntry(batch.rows[i], before);
        before = batch.rows[i].seal;
        if (entry) {
            batch.entries.push_back(std::move(*entry));
        } else {
            batch.outcome = tl::unexpected(entry.error());
        }
    }
    return batch;
}

/// Batches being verified, in order; as many at a time as there are cores.
class Verification {
public:
    explicit Verification(Ledger& ledger) : m_ledger(ledger), m_before(ledger.seal()) {}

    /// An empty batch to be filled.
    Batch emptyBatch() {
        Batch batch = std::exchange(m_spare, Batch());
        batch.rows.resize(batchSize);
        batch.filled = 0;
        batch.memory = 0;
        return batch;
    }

    /// False when an entry was found that does not fit: there is no use in reading on.
    bool add(Batch batch, bool isLast) {
        batch.before = m_before;
        m_before = batch.rows[batch.filled - 1].seal;
        // A short ledger is not worth a thread.
        const auto how =
            isLast && m_waiting.empty() ? std::launch::deferred : std::launch::async | std::launch::deferred;
        m_waiting.push_back(std::async(how, verify, std::move(batch)));
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
        Batch batch = m_waiting.front().get();
        m_waiting.pop_front();
        if (!m_outcome) {
            return;
        }
        for (Entry& entry : batch.entries) {
            m_ledger.appendVerified(std::move(entry));
        }
        batch.entries.clear();
        m_outcome = batch.outcome;
        if (batch.memory < largestBatch) { // else its rows would go on holding room for texts as long
            m_spare = std::move(batch);
        }
    }

    Ledger& m_ledger;
    Seal m_before;
    Result<void> m_outcome;
    Batch m_spare;
    std::deque<std::future<Batch>> m_waiting;
    std::size_t m_most = std::clamp(std::thread::hardware_concurrency(), 1U, 8U);
};

std::size_t memoryOf(const EntryRow& row) {
    std::size_t bytes = sizeof(Entry) + row.person.size();
    for (const Cell& cell : row.cells) {
        const auto* text = std::get_if<std::string>(&cell);
        bytes += text == nullptr ? 0 : text->size();
    }
    return bytes;
}

/// Fills a batch; false when the entries came to their end.
class RowSource {
public:
    RowSource(Database& database, EntryReader reader, std::int64_t first)
        : m_database(database), m_reader(std::move(reader)), m_expected(first) {}

    Result<bool> fill(Batch& batch) {
        for (; batch.filled < batchSize && batch.memory < largestBatch; ++batch.filled) {
            EntryRow& row = batch.rows[batch.filled];
            auto more = m_reader.next(row);
            if (!more || !*more) {
                return more;
            }
            if (row.sequence != m_expected) {
                return refuse(Core::say(
                    "%1 has entry %2 where entry %3 must be: entries were removed, inserted or put in another order.",
                    inQuotes(m_database.path()), row.sequence, m_expected));
            }
            ++m_expected;
            const std::size_t memory = memoryOf(row);
            batch.memory += memory;
            m_memory += memory;
            if (m_memory > largestLedger) {
                return refuse(Core::say("%1 holds more than this program reads into memory (%2 MiB of entries).",
                                        inQuotes(m_database.path()), largestLedger / 1024 / 1024));
            }
        }
        return true;
    }

private:
    Database& m_database;
    EntryReader m_reader;
    std::int64_t m_expected;
    std::size_t m_memory = 0;
};

} // namespace

Result<Entry> verifiedEntry(const EntryRow& row, const Seal& before) {
    auto entry = entryFrom(row);
    if (!entry) {
        return entry;
    }
    // Over the cells as they are, not over the entry made from them, which may ignore a cell that means nothing.
    const KindInfo& info = allKinds()[row.kind];
    if (sealOver(before, canonicalText(row.sequence, entry->time, row.person, info, row.cells)) != row.seal) {
        return refuse(
            Core::say("The seal of entry %1 does not fit: it, or the one before it, was altered after it was sealed.",
                      row.sequence));
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
        Batch batch = verification.emptyBatch();
        readOn = source.fill(batch);
        const bool isLast = !readOn || !*readOn;
        if (batch.filled != 0 && !verification.add(std::move(batch), isLast)) {
            break;
        }
    }
    if (auto verified = verification.finish(); !verified) {
        return refuse(Core::say("In %1: %2", inQuotes(database.path()), verified.error().sentence));
    }
    return readOn ? Result<void>() : tl::unexpected(readOn.error());
}

} // namespace caprail
