// SPDX-License-Identifier: GPL-3.0-or-later
#include <store/text_form.h>

#include <QDir>
#include <QDirIterator>
#include <QFile>
#include <filesystem>
#include <ledger/entry_json.h>
#include <ledger/typed_values.h>
#include <optional>
#include <set>
#include <store/defences.h>
#include <store/entry_rows.h>
#include <store/new_file.h>
#include <store/schema.h>
#include <units/say.h>

namespace caprail {

namespace {

/// A line may hold every text of an entry at its longest, each character escaped.
constexpr qint64 longestLine = qint64{8} * 1024 * 1024;

Result<void> writeWhole(const std::string& path, const std::function<bool(QFile&)>& write) {
    return makeNewFile(path, [&](const std::string& unfinished) -> Result<void> {
        QFile file(QString::fromStdString(unfinished));
        if (!file.open(QIODevice::WriteOnly) || !write(file) || !file.flush()) {
            return refuse(Core::say("%1 cannot be written: %2.", inQuotes(path), file.errorString().toStdString()));
        }
        return {};
    });
}

/// Adds the entries of a text to a record that is being made.
class Importer {
public:
    Importer(Database& database, std::string textPath) : m_writer(database), m_textPath(std::move(textPath)) {}

    Result<void> add(std::string_view line) {
        auto draft = fromJson(line);
        if (!draft) {
            return tl::unexpected(draft.error());
        }
        if (!draft->time) {
            return refuse(Core::say("The entry has no member “time”: give it, for example \"2026-05-04T09:30:00Z\"."));
        }
        if (draft->person.empty()) {
            return refuse(Core::say("The entry has no member “person”: say who made it."));
        }
        if (draft->sequence && *draft->sequence != m_sequence + 1) {
            return refuse(Core::say("It has the number %1 where %2 must be.", *draft->sequence, m_sequence + 1));
        }
        if (auto contradiction = contradictionIn(draft->body)) {
            return refuse(std::move(*contradiction));
        }
        const std::vector<Cell> cells = cellsOf(draft->body);
        auto entry = asStored({m_sequence + 1, *draft->time, draft->person, draft->body, {}}, cells);
        if (!entry) {
            return tl::unexpected(entry.error());
        }
        entry->seal =
            sealOver(m_seal, canonicalText(entry->sequence, entry->time, entry->person, kindOf(entry->body), cells));
        if (draft->seal && *draft->seal != entry->seal) {
            return refuse(
                Core::say("Its seal does not fit: it, or a line before it, was altered after it was sealed."));
        }
        if (const auto* added = std::get_if<AttachmentAdded>(&entry->body)) {
            if (auto done = addAttachment(*added); !done) {
                return done;
            }
        }
        m_seal = entry->seal;
        ++m_sequence;
        return m_writer.insert(*entry, cells);
    }

private:
    Result<void> addAttachment(const AttachmentAdded& added) {
        // The hash names a file: it must be one, not a path to somewhere else.
        if (auto hash = sealFromHex(added.sha256); !hash) {
            return refuse(Core::say("Its “sha256” is not 64 hexadecimal digits."));
        }
        const std::string named = attachmentsFolder(m_textPath) + "/" + added.sha256;
        if (QFile::exists(QString::fromStdString(named))) {
            const auto bytes = bytesIn(QString::fromStdString(named), added);
            return bytes ? m_writer.insertAttachment(added.sha256, *bytes)
                         : refuse(Core::say("The bytes in %1 do not fit the hash and size of its attachment.",
                                            inQuotes(named)));
        }
        QDirIterator photos(QString::fromStdString(photosFolder(m_textPath)), QDir::Files);
        while (photos.hasNext()) {
            if (const auto bytes = bytesIn(photos.next(), added)) {
                return m_writer.insertAttachment(added.sha256, *bytes);
            }
        }
        return refuse(Core::say("The bytes of its attachment are neither in %1 nor among the files of %2: put them "
                                "there.",
                                inQuotes(named), inQuotes(photosFolder(m_textPath))));
    }

    /// The bytes of a file when they are the attachment's.
    static std::optional<std::string> bytesIn(const QString& path, const AttachmentAdded& added) {
        QFile file(path);
        if (added.size > largestAttachment || file.size() != added.size || !file.open(QIODevice::ReadOnly)) {
            return {};
        }
        std::string bytes = file.readAll().toStdString();
        return sha256Hex(bytes) == added.sha256 ? std::optional(std::move(bytes)) : std::nullopt;
    }

    EntryWriter m_writer;
    std::string m_textPath;
    Seal m_seal;
    std::int64_t m_sequence = 0;
};

Result<void> importInto(Database& database, QFile& text) {
    if (auto begun = database.run("BEGIN IMMEDIATE"); !begun) {
        return begun;
    }
    Importer importer(database, text.fileName().toStdString());
    for (std::int64_t number = 1; !text.atEnd(); ++number) {
        const QByteArray line = text.readLine(longestLine);
        const auto at = [&] {
            return Core::say("%1, line %2", inQuotes(text.fileName().toStdString()), number) + ": ";
        };
        if (line.size() >= longestLine - 1) {
            return refuse(at() + Core::say("the line is too long for an entry."));
        }
        if (line.isEmpty() && text.error() != QFileDevice::NoError) {
            return refuse(at() + text.errorString().toStdString() + ".");
        }
        const QByteArray trimmed = line.trimmed();
        if (trimmed.isEmpty()) {
            continue;
        }
        auto added = importer.add({trimmed.constData(), static_cast<std::size_t>(trimmed.size())});
        if (!added) {
            return refuse(at() + added.error().sentence);
        }
    }
    return database.run("COMMIT");
}

} // namespace

std::string attachmentsFolder(const std::string& textPath) {
    return textPath + ".attachments";
}

std::string photosFolder(const std::string& textPath) {
    return (std::filesystem::path(textPath).parent_path() / "photos").string();
}

Result<void> exportLedger(const Ledger& ledger, const std::string& path) {
    return writeWhole(path, [&](QFile& file) {
        for (const Entry& entry : ledger.entries()) {
            const std::string line = toJsonLine(entry) + '\n';
            if (file.write(line.data(), static_cast<qint64>(line.size())) != static_cast<qint64>(line.size())) {
                return false;
            }
        }
        return true;
    });
}

Result<void> exportLedger(const RecordFile& record, const std::string& path) {
    std::set<std::string> hashes;
    for (const Entry& entry : record.ledger().entries()) {
        if (const auto* added = std::get_if<AttachmentAdded>(&entry.body)) {
            hashes.insert(added->sha256);
        }
    }
    const std::string folder = attachmentsFolder(path);
    if (!hashes.empty() && !QDir().mkdir(QString::fromStdString(folder))) {
        return refuse(
            Core::say("The folder %1 cannot be made, or exists already: choose another name.", inQuotes(folder)));
    }
    Result<void> done;
    for (auto hash = hashes.begin(); done && hash != hashes.end(); ++hash) {
        auto bytes = record.attachmentBytes(*hash);
        done = bytes ? writeWhole(folder + "/" + *hash,
                                  [&](QFile& file) {
                                      const auto size = static_cast<qint64>(bytes->size());
                                      return file.write(bytes->data(), size) == size;
                                  })
                     : tl::unexpected(bytes.error());
    }
    if (done) {
        done = exportLedger(record.ledger(), path);
    }
    if (!done && !hashes.empty()) {
        QDir(QString::fromStdString(folder)).removeRecursively(); // it was made above
    }
    return done;
}

Result<void> importLedger(const std::string& textPath, const std::string& newRecord) {
    QFile text(QString::fromStdString(textPath));
    if (!text.open(QIODevice::ReadOnly)) {
        return refuse(Core::say("%1 cannot be read: %2.", inQuotes(textPath), text.errorString().toStdString()));
    }
    return makeNewFile(newRecord, [&](const std::string& unfinished) -> Result<void> {
        auto database = Database::open(unfinished, Access::readWrite);
        if (!database) {
            return tl::unexpected(database.error());
        }
        if (auto done = defend(**database); !done) {
            return done;
        }
        if (auto done = createSchema(**database); !done) {
            return done;
        }
        return importInto(**database, text);
    });
}

} // namespace caprail
