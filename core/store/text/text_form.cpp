// SPDX-License-Identifier: GPL-3.0-or-later
#include <store/text/text_form.h>

#include <QCryptographicHash>
#include <QFile>
#include <filesystem>
#include <fstream>
#include <ledger/entry_json.h>
#include <ledger/entry_texts.h>
#include <ledger/remarks.h>
#include <ledger/typed_values.h>
#include <map>
#include <optional>
#include <set>
#include <store/sqlite/defences.h>
#include <store/file/entry_rows.h>
#include <store/text/kept_photos.h>
#include <store/file/new_file.h>
#include <store/file/read_file.h>
#include <store/sqlite/schema.h>
#include <base/plain_text.h>
#include <base/say.h>

namespace caprail {

namespace {

/// A line may hold every text of an entry at its longest, each character escaped.
constexpr std::size_t longestLine = 8UL * 1024 * 1024;
/// No record that this program can read gives a longer text.
constexpr std::int64_t longestText = std::int64_t{2} * 1024 * 1024 * 1024;
constexpr std::int64_t mostEmptyLines = 1'000'000;
constexpr const char* sumsName = "SHA256SUMS"; ///< beside the ledger of a hand-over

/// Adds the entries of a text to a record that is being made. Lines without a seal wait until the text ends: what says
/// that they came from outside stands before them, and counts them.
class Importer {
public:
    Importer(Database& database, const std::string& textPath, std::optional<UtcTime> now)
        : m_writer(database), m_photos(textPath), m_textPath(textPath), m_now(now) {}

    Result<void> add(std::string_view line) {
        auto draft = fromJson(line);
        if (!draft) {
            return tl::unexpected(draft.error());
        }
        if (auto good = judge(*draft, line.size()); !good) {
            return good;
        }
        Entry entry{m_lines + 1, *draft->time, std::move(draft->person), std::move(draft->body), {}};
        if (const auto* added = entry.body.as<AttachmentAdded>()) {
            if (auto done = addAttachment(*added); !done) {
                return done;
            }
        }
        m_time = entry.time;
        ++m_lines;
        if (draft->seal) {
            return store(std::move(entry), draft->seal);
        }
        m_hash.addData(QByteArrayView(line.data(), static_cast<qsizetype>(line.size())));
        m_hash.addData(QByteArrayView("\n"));
        m_waiting.push_back(std::move(entry));
        return {};
    }

    /// Stores what waits, behind the entry that says where it comes from.
    Result<void> finish() {
        if (m_waiting.empty()) {
            return {};
        }
        const std::int64_t before = m_sequence;
        const bool isPipe = m_textPath.starts_with("/dev/");
        BroughtIn brought{isPipe ? std::string() : visibly(std::filesystem::path(m_textPath).filename().string()),
                          static_cast<std::int64_t>(m_waiting.size()), m_hash.result().toHex().toStdString(),
                          m_now ? Rare<Date>(dateOf(*m_now)) : Rare<Date>()};
        const Entry& first = m_waiting.front();
        auto done = store({0, first.time, first.person, Body(std::move(brought)), {}}, {});
        for (std::size_t i = 0; done && i < m_waiting.size(); ++i) {
            if (auto* strike = m_waiting[i].body.as<Struck>(); strike != nullptr && strike->entry > before) {
                ++strike->entry; // the entry above took a number
            }
            done = store(std::move(m_waiting[i]), {});
        }
        return done;
    }

    [[nodiscard]] Imported imported() const {
        return {m_sequence, m_attachments, m_seal, static_cast<std::int64_t>(m_waiting.size())};
    }
    [[nodiscard]] std::int64_t lines() const { return m_lines; }

private:
    /// What every line needs, and what a line without a seal must not be.
    Result<void> judge(const EntryDraft& draft, std::size_t size) {
        if (!draft.time) {
            return refuse(Core::say("The entry has no member “time”: give it, for example \"2026-05-04T09:30:00Z\"."));
        }
        if (draft.person.empty()) {
            return refuse(Core::say("The entry has no member “person”: say who made it."));
        }
        if (draft.sequence && *draft.sequence != m_lines + 1) {
            return refuse(Core::say("It has the number %1 where %2 must be.", *draft.sequence, m_lines + 1));
        }
        if (auto seen = checkTexts(draft.person, draft.body); !seen) {
            return seen;
        }
        if (auto contradiction = contradictionIn(draft.body)) {
            return refuse(std::move(*contradiction));
        }
        if (draft.seal && !m_waiting.empty()) {
            return refuse(Core::say("It has a seal, and a line before it has none: a seal stands on every line before it too."));
        }
        if (!draft.seal && m_time && *draft.time < *m_time) {
            return refuse(Core::say("Its time, %1, is before that of the line above it, %2: entries stand in the order in which "
                                    "they were made.",
                                    format(*draft.time), format(*m_time)));
        }
        if (!draft.seal && m_now && isInFuture(*draft.time, *m_now)) {
            return refuse(Core::say("Its time, %1, lies in the future: nobody made it yet.", format(*draft.time)));
        }
        m_memory += sizeof(Entry) + Body::besideOf(draft.body.index()) + size;
        if (m_memory > largestLedger) {
            return refuse(Core::say("There are more entries than a record may hold (%1 MiB of them).",
                                    largestLedger / 1024 / 1024));
        }
        return {};
    }

    /// Numbers, seals and writes; compares with the seal that the line brought.
    Result<void> store(Entry made, const std::optional<Seal>& seal) {
        made.sequence = m_sequence + 1;
        const std::vector<Cell> cells = cellsOf(made.body);
        auto entry = asStored(made, cells);
        if (!entry) {
            return tl::unexpected(entry.error());
        }
        entry->seal =
            sealOver(m_seal, canonicalText(entry->sequence, entry->time, entry->person, kindOf(entry->body), cells));
        if (seal && *seal != entry->seal) {
            return refuse(
                Core::say("Its seal does not fit: it, or a line before it, was altered after it was sealed."));
        }
        m_seal = entry->seal;
        ++m_sequence;
        return m_writer.insert(*entry, cells);
    }

    Result<void> addAttachment(const AttachmentAdded& added) {
        // The hash names a file: it must be one, not a path to somewhere else.
        if (auto hash = sealFromHex(added.sha256); !hash) {
            return refuse(Core::say("Its “sha256” is not 64 hexadecimal digits."));
        }
        // The same picture at two places is kept once.
        if (const auto [before, isNew] = m_added.emplace(added.sha256, added.size); !isNew) {
            return before->second == added.size
                       ? Result<void>()
                       : refuse(Core::say("Its attachment has another size than the same one before."));
        }
        const auto bytes = m_photos.bytesOf(m_lines + 1, added);
        ++m_attachments;
        return bytes ? m_writer.insertAttachment(added.sha256, *bytes) : tl::unexpected(bytes.error());
    }

    EntryWriter m_writer;
    KeptPhotos m_photos;
    std::string m_textPath;
    std::optional<UtcTime> m_now;
    std::map<std::string, std::int64_t> m_added; ///< hash and size
    std::vector<Entry> m_waiting;                ///< without a seal, with the numbers of the text
    QCryptographicHash m_hash{QCryptographicHash::Sha256};
    std::optional<UtcTime> m_time; ///< of the line before
    Seal m_seal;
    std::int64_t m_lines = 0;
    std::int64_t m_sequence = 0;
    std::int64_t m_attachments = 0;
    std::size_t m_memory = 0; ///< of the entries, as they will be when the record is read
};

Result<Imported> importInto(Database& database, LineReader& text, const std::string& textPath,
                            std::optional<UtcTime> now) {
    if (auto begun = database.run("BEGIN IMMEDIATE"); !begun) {
        return tl::unexpected(begun.error());
    }
    Importer importer(database, textPath, now);
    std::int64_t empty = 0;
    std::string_view line;
    for (std::int64_t number = 1;; ++number) {
        const auto at = [&] { return Core::say("%1, line %2", inQuotes(textPath), number) + ": "; };
        const auto more = text.next(line);
        if (!more) {
            return refuse(at() + more.error().sentence);
        }
        if (!*more) {
            break;
        }
        const auto first = line.find_first_not_of(" \t\r");
        if (first == std::string_view::npos) {
            if (++empty > mostEmptyLines) {
                return refuse(at() + Core::say("there are more than a million empty lines: this is not a ledger."));
            }
            continue;
        }
        auto added = importer.add(line.substr(first, line.find_last_not_of(" \t\r") + 1 - first));
        if (!added) {
            return refuse(at() + added.error().sentence);
        }
    }
    if (auto finished = importer.finish(); !finished) {
        return refuse(inQuotes(textPath) + ": " + finished.error().sentence);
    }
    if (importer.lines() == 0) {
        return refuse(Core::say("%1 does not hold a single entry: name the text of a ledger.", inQuotes(textPath)));
    }
    auto done = database.run("COMMIT");
    return done ? Result<Imported>(importer.imported()) : tl::unexpected(done.error());
}

/// A chain of seals knows nothing of its own end: a text that was cut off at the end of a line looks whole. Where the
/// sums of a hand-over lie beside it, they tell.
Result<void> fitsItsSum(const std::string& textPath) {
    namespace fs = std::filesystem;
    const fs::path path(textPath);
    const std::string sums = (path.parent_path() / sumsName).string();
    std::error_code error;
    if (!fs::is_regular_file(sums, error) || !fs::is_regular_file(path, error)) {
        return {};
    }
    std::ifstream in(sums);
    std::string line;
    std::string wanted;
    while (wanted.empty() && std::getline(in, line)) {
        if (line.size() > 66 && line.compare(64, 2, "  ") == 0 && line.substr(66) == path.filename().string()) {
            wanted = line.substr(0, 64);
        }
    }
    QFile text;
    QCryptographicHash hash(QCryptographicHash::Sha256);
    if (wanted.empty() ||
        !text.open(std::fopen(textPath.c_str(), "rb"), QIODevice::ReadOnly, QFileDevice::AutoCloseHandle) ||
        !hash.addData(&text)) {
        return {}; // not named there; or what cannot be read is said when it is read
    }
    return hash.result().toHex().toStdString() == wanted
               ? Result<void>()
               : refuse(Core::say("%1 does not fit its sum in %2: it was cut off or altered after it was handed over. "
                                  "Ask for it again.",
                                  inQuotes(textPath), inQuotes(sums)));
}

/// Writes the bytes of attachments into a folder, each under its hash, as `write` does.
Result<void> writeAttachments(const RecordFile& record, const std::set<std::string>& hashes, const std::string& folder,
                              Result<void> (*write)(const std::string& path, std::string_view bytes)) {
    for (const std::string& hash : hashes) {
        const auto bytes = record.attachmentBytes(hash);
        auto done = bytes ? write(folder + "/" + hash, *bytes) : tl::unexpected(bytes.error());
        if (!done) {
            return done;
        }
    }
    return {};
}

/// Gives the attachments that a folder lacks, when it holds nothing but attachments of an export that was cut off:
/// plain files, each named by the hash of its bytes. Refuses every other folder.
Result<void> takeOver(const std::string& folder, std::set<std::string>& hashes) {
    namespace fs = std::filesystem;
    std::error_code error;
    for (fs::directory_iterator entry(folder, error); !error && entry != fs::directory_iterator();
         entry.increment(error)) {
        const std::string name = entry->path().filename().string();
        const bool isPlain = entry->is_regular_file(error) && !entry->is_symlink(error);
        const auto bytes =
            isPlain ? readWholeFile(entry->path().string(), largestAttachment) : Result<std::string>(refuse(name));
        if (!bytes || sha256Hex(*bytes) != name) {
            return refuse(Core::say("The folder %1 exists already, and holds other files than an export that was cut "
                                    "off would leave: choose another name.",
                                    inQuotes(folder)));
        }
        hashes.erase(name);
    }
    return error ? refuse(Core::say("%1 cannot be read back: %2.", inQuotes(folder), error.message())) : Result<void>();
}

Result<void> makePart(const std::string& path, std::string_view bytes) {
    return makeNewFile(path, bytes);
}

} // namespace

std::string attachmentsFolder(const std::string& textPath) {
    return textPath + ".attachments";
}

std::string photosFolder(const std::string& textPath) {
    return (std::filesystem::path(textPath).parent_path() / "photos").string();
}

Result<void> exportLedger(const Ledger& ledger, const std::string& path) {
    return makeNewFile(path, [&](const std::string& unfinished) -> Result<void> {
        constexpr std::size_t atOnce = 1024UL * 1024;
        std::string text;
        for (const Entry& entry : ledger.entries()) {
            text += toJsonLine(entry) + '\n';
            if (text.size() < atOnce) {
                continue;
            }
            if (auto written = addTo(unfinished, text); !written) {
                return written;
            }
            text.clear();
        }
        return addTo(unfinished, text);
    });
}

Result<void> exportLedger(const RecordFile& record, const std::string& path) {
    std::set<std::string> hashes;
    for (const Entry& entry : record.ledger().entries()) {
        if (const auto* added = entry.body.as<AttachmentAdded>()) {
            hashes.insert(added->sha256);
        }
    }
    std::error_code error;
    if (hashes.empty() || std::filesystem::exists(std::filesystem::symlink_status(path, error))) {
        return exportLedger(record.ledger(), path); // where the text exists, it is refused before its photos are made
    }
    // The photos first: a text without them would look whole. What a killed export left of them is taken over.
    const std::string folder = attachmentsFolder(path);
    const bool isNew = !std::filesystem::exists(std::filesystem::symlink_status(folder, error));
    auto done = isNew ? makeNewFolder(folder,
                                      [&](const std::string& unfinished) {
                                          return writeAttachments(record, hashes, unfinished, &writeInside);
                                      })
                      : takeOver(folder, hashes);
    if (done && !isNew) {
        done = writeAttachments(record, hashes, folder, &makePart);
    }
    if (done) {
        done = exportLedger(record.ledger(), path);
        if (!done && isNew) {
            std::filesystem::remove_all(folder, error); // it was made above
        }
    }
    return done;
}

Result<Imported> importLedger(const std::string& textPath, const std::string& newRecord, std::optional<UtcTime> now) {
    auto text = LineReader::open(textPath, longestLine, longestText);
    if (!text) {
        return tl::unexpected(text.error());
    }
    Imported imported;
    auto made = makeNewFile(newRecord, [&](const std::string& unfinished) -> Result<void> {
        auto database = Database::open(unfinished, Access::readWrite);
        auto done = database ? fitsItsSum(textPath) : tl::unexpected(database.error());
        done = done ? defend(**database) : done;
        done = done ? createSchema(**database) : done;
        if (!done) {
            return done;
        }
        const auto taken = importInto(**database, *text, textPath, now);
        if (!taken) {
            return tl::unexpected(taken.error());
        }
        imported = *taken;
        return {};
    });
    return made ? Result<Imported>(imported) : tl::unexpected(made.error());
}

} // namespace caprail
