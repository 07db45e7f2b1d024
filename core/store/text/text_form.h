// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <ledger/ledger.h>
#include <store/file/record_file.h>

namespace caprail {

/// Writes the whole ledger as text, one JSON object a line (ledger/entry_json.h): read back, it gives the same seals.
/// Refuses to overwrite; after a refusal nothing is left.
Result<void> exportLedger(const Ledger& ledger, const std::string& path);
/// As above, and the bytes of the attachments, each in a file named by its hash in the folder
/// `attachmentsFolder(path)`, which is made only when there are any, and before the text, so that there is never a text
/// without its photos. Such a folder that an export left which was killed is taken over; any other is refused.
Result<void> exportLedger(const RecordFile& record, const std::string& path);

/// What was made of a text. The chain of seals does not tell whether its end was cut off: the person compares these
/// with the sheet.
struct Imported {
    std::int64_t entries = 0;
    std::int64_t attachments = 0;
    Seal seal; ///< of the last entry
    std::int64_t outside = 0; ///< of the entries: came without a seal, and the entry before them says so
};

/// Makes a new record from such a text, which may come through a pipe and is read to its end. Lines that carry a seal
/// are verified and keep it. Lines without a seal (typed by hand) get theirs, behind an entry `brought_in` that says that
/// they came from outside; none with a seal may follow them. Every line needs kind, person and time; without a seal, times
/// out of order are refused, and, where `now` is given, times in the future. The bytes of attachments are taken from `attachmentsFolder(textPath)`, or by their hash from
/// `photosFolder(textPath)`. Refuses, naming the line, what cannot be read or does not fit its seal; refuses to
/// overwrite; after a refusal nothing is left. Also refused: a text without one entry, one that goes on for longer than
/// a record could hold, one that does not fit its sum in a file `SHA256SUMS` beside it, as a hand-over has one, and
/// texts that hide characters (ledger/entry_texts.h). Whether the entries make sense together is not judged here:
/// `reviewLedger` (assessment/review.h) does.
Result<Imported> importLedger(const std::string& textPath, const std::string& newRecord,
                              std::optional<UtcTime> now = {});

/// "x.jsonl.attachments" for "x.jsonl".
std::string attachmentsFolder(const std::string& textPath);
/// The folder "photos" beside the text: where a hand-over keeps them, under names for people.
std::string photosFolder(const std::string& textPath);

} // namespace caprail
