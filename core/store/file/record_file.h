// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <ledger/ledger.h>
#include <memory>
#include <store/file/record_location.h>
#include <vector>

namespace caprail {

enum class OpenMode { readWrite, readOnly };

/// One build record on the disk, opened: a single SQLite file that entries are only added to. An entry is on the disk,
/// safe against a power cut, when `append` returns; only then is it in `ledger()`. While a record is open for writing
/// a small lock file lies beside it; nothing else is left there, so the file alone can be mailed.
class RecordFile {
public:
    /// Makes an empty record and opens it for writing. Refuses to overwrite; after a refusal nothing is left.
    static Result<RecordFile> create(const std::string& path);
    /// The same, begun with all entries of a ledger in one transaction, before the file has its name: whoever is killed
    /// meanwhile leaves no record or the whole beginning. Refuses, besides, entries that cannot be kept, and ones of
    /// attachments.
    static Result<RecordFile> create(const std::string& path, const Ledger& beginning);
    /// Opens a record, verifying header, schema, pages, structure and all seals; the file is not changed by that. Where
    /// a write to it was cut off, what is read only is a private copy, and what is written has that write taken back
    /// first (store/cut_off.h); `remark` tells. Asked to write, it opens read-only when another program has the record,
    /// the file may not be written, or it is of an earlier version that was not upgraded yet (see `readOnlyReason` and
    /// store/upgrade.h). Refuses files that are no records, newer ones, damaged and altered ones.
    static Result<RecordFile> open(const std::string& path, OpenMode mode);
    RecordFile(RecordFile&&) noexcept;
    RecordFile& operator=(RecordFile&&) noexcept;
    ~RecordFile();

    [[nodiscard]] const Ledger& ledger() const;
    /// Absolute, links resolved.
    [[nodiscard]] const std::string& path() const;
    [[nodiscard]] bool isReadOnly() const;
    /// Why it cannot be written, as a sentence; empty when it can.
    [[nodiscard]] const std::string& readOnlyReason() const;
    /// What a person should know of how it was opened, as a sentence: that a write was cut off. Empty mostly.
    [[nodiscard]] const std::string& remark() const;

    /// Stores one entry and gives its sequence number. Whether it makes sense in this record was judged before
    /// (assessment/admission.h); refused here is what cannot be kept: when the disk fails, when the entry would not
    /// read back the same, an attachment's entry whose bytes are not in the file. On refusal nothing has changed.
    Result<std::int64_t> append(UtcTime time, const std::string& person, const Body& body);
    /// Stores an attachment's bytes and its entry together. Refuses bytes that do not fit the entry's hash and size.
    Result<std::int64_t> appendWithAttachment(UtcTime time, const std::string& person, const AttachmentAdded& entry,
                                              std::string_view bytes);
    /// Whether an entry can be kept at all, whatever the disk says: refuses texts that are too long or not plain UTF-8,
    /// moments outside the calendar, attachments larger than a record takes.
    [[nodiscard]] Result<void> canKeep(UtcTime time, const std::string& person, const Body& body) const;
    /// The bytes kept under a hash; refuses when they are missing or no longer fit it.
    [[nodiscard]] Result<std::string> attachmentBytes(const std::string& sha256) const;

    /// Takes in what another program appended since; true when there was something. Refuses, and keeps what it has,
    /// when the file no longer begins with the entries that were read from it.
    Result<bool> refresh();
    /// Whether an entry that is appended now would go where the path leads: refuses when the file was moved, deleted,
    /// replaced, taken away with its disk, or made read-only since it was opened. `append` asks this first.
    [[nodiscard]] Result<void> isStillThere() const;
    /// Where it lies, to be looked at on another thread.
    [[nodiscard]] const RecordLocation& location() const;
    /// Writes a copy of the record as it is on the disk, by SQLite's backup, with its mode and group. Refuses to
    /// overwrite.
    Result<void> saveCopy(const std::string& path) const;
    /// Writes a new record from what is in memory, for when the disk no longer answers: every entry with its seal, and
    /// the attachments' bytes that can still be read. Gives a sentence for each attachment whose bytes are missing in
    /// the copy. It gets mode and group that the record had. Refuses to overwrite.
    [[nodiscard]] Result<std::vector<std::string>> saveElsewhere(const std::string& path) const;
    /// Puts a copy in the place of this record, which is kept as `keptAs` (store/copies.h), and goes on in that.
    /// Refuses when it is open read-only, and what restoreRecord refuses; then nothing has changed.
    Result<void> restoreFrom(const std::string& copy, const std::string& keptAs);

private:
    struct State;
    explicit RecordFile(std::unique_ptr<State> state);
    /// Reads the record at `state.path` into `state`, to be written to when it holds the lock.
    static Result<void> load(State& state);
    /// For what was read from a private copy: reads the record itself once the write was taken back there.
    Result<bool> refreshFromCopy();
    Result<std::int64_t> store(UtcTime time, const std::string& person, const Body& body,
                               const std::string_view* bytes);
    std::unique_ptr<State> m_state;
};

} // namespace caprail
