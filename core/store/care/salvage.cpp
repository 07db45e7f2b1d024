// SPDX-License-Identifier: GPL-3.0-or-later
#include <store/care/salvage.h>

#include <QFile>
#include <QTemporaryDir>
#include <filesystem>
#include <map>
#include <store/care/damaged_copy.h>
#include <store/sqlite/defences.h>
#include <store/file/entry_loader.h>
#include <store/file/entry_rows.h>
#include <store/sqlite/header.h>
#include <store/file/new_file.h>
#include <store/sqlite/schema.h>
#include <base/plain_text.h>
#include <base/say.h>

namespace caprail {

namespace {

constexpr std::size_t mostSentences = 100;

/// The largest number that any table still gives, asked from its end; tables that do not answer are left out.
std::int64_t lastNumber(Database& database) {
    std::int64_t last = 0;
    const auto ask = [&](const std::string& table) {
        if (const auto number = database.integer("SELECT coalesce(max(sequence), 0) FROM " + table)) {
            last = std::max(last, *number);
        }
        // Where the end of the tree is damaged, its beginning may be readable.
        auto rows = database.prepare("SELECT sequence FROM " + table + " ORDER BY sequence");
        for (auto more = rows ? rows->step() : Result<bool>(false); more && *more; more = rows->step()) {
            last = std::max(last, rows->integer(0));
        }
    };
    ask("entry");
    for (const KindInfo& info : allKinds()) {
        ask(std::string(info.kind));
    }
    return last;
}

/// What is said of the file that is salvaged from.
struct Source {
    std::string fileName;
    std::int64_t size = 0;
    std::string sha256;
};

/// Of the copy that is worked on, before anything in it is repaired.
Result<Source> sourceOf(const std::string& damaged, const std::string& copy) {
    QFile file(QString::fromStdString(copy));
    if (!file.open(QIODevice::ReadOnly)) {
        return refuse(Core::say("%1 cannot be read: %2.", inQuotes(damaged), file.errorString().toStdString()));
    }
    const uchar* bytes = file.size() == 0 ? nullptr : file.map(0, file.size());
    if (bytes == nullptr && file.size() != 0) {
        return refuse(Core::say("%1 cannot be read: %2.", inQuotes(damaged), file.errorString().toStdString()));
    }
    const std::string_view all(reinterpret_cast<const char*>(bytes), static_cast<std::size_t>(file.size()));
    return Source{visibly(std::filesystem::path(damaged).filename().string()), file.size(), sha256Hex(all)};
}

/// Numbers in order as "4", "7-12".
std::vector<std::string> runsOf(const std::vector<std::int64_t>& numbers) {
    std::vector<std::string> runs;
    for (std::size_t first = 0; first < numbers.size();) {
        std::size_t last = first;
        while (last + 1 < numbers.size() && numbers[last + 1] == numbers[last] + 1) {
            ++last;
        }
        runs.push_back(std::to_string(numbers[first]) + (last > first ? "-" + std::to_string(numbers[last]) : ""));
        first = last + 1;
    }
    return runs;
}

/// The sentence with the record, as its path may be shown, in the place of the copy that was worked on: nobody has
/// heard of that.
std::string ofRecord(std::string sentence, const std::string& copy, const std::string& record) {
    for (auto at = sentence.find(copy); at != std::string::npos; at = sentence.find(copy, at + record.size())) {
        sentence.replace(at, copy.size(), record);
    }
    return sentence;
}

/// Carries entries over from the damaged database into a new one.
class Salvage {
public:
    Salvage(Database& from, Database& to, Source source, UtcTime now, SalvageReport& report)
        : m_from(from), m_to(to), m_source(std::move(source)), m_now(now), m_lookup(from), m_writer(to),
          m_report(report) {}

    Result<void> run() {
        // A number is not believed further than a record of the largest size could go.
        const std::int64_t last = std::min(lastNumber(m_from), std::int64_t{largestLedger / sizeof(Entry)});
        if (auto begun = m_to.run("BEGIN IMMEDIATE"); !begun) {
            return begun;
        }
        for (std::int64_t number = 1; number <= last; ++number) {
            auto entry = read(number);
            auto carried = entry ? carry(std::move(*entry)) : tl::unexpected(entry.error());
            if (!carried) {
                if (m_diskFailed) {
                    return carried;
                }
                m_report.lost.push_back(number);
                say(Core::say("Entry %1 is lost: %2", number, carried.error().sentence));
            }
        }
        if (m_report.kept == 0) {
            return refuse(
                Core::say("Not one entry of %1 can be read: look for a copy of it.", inQuotes(m_from.path())));
        }
        if (auto told = tellOfIt(); !told) {
            return told;
        }
        return m_to.run("COMMIT");
    }

private:
    /// The entries that say what was salvaged; a list that is too long for one goes on in the next.
    Result<void> tellOfIt() {
        constexpr std::size_t mostRuns = 4000;
        const auto unsealed = runsOf(m_report.unsealed);
        const auto lost = runsOf(m_report.lost);
        const auto part = [](const std::vector<std::string>& runs, std::size_t from) {
            NameList list;
            for (std::size_t i = from; i < runs.size() && i < from + mostRuns; ++i) {
                list.names.push_back(runs[i]);
            }
            return list;
        };
        for (std::size_t from = 0; from == 0 || from < std::max(unsealed.size(), lost.size()); from += mostRuns) {
            Entry entry{m_report.kept + ++m_report.added,
                        m_now,
                        salvager,
                        Salvaged{m_source.fileName, m_source.size, m_source.sha256,
                                 m_before == Seal{} ? std::string() : shortForm(m_before), part(unsealed, from),
                                 part(lost, from)},
                        {}};
            const std::vector<Cell> cells = cellsOf(entry.body);
            if (auto stored = asStored(entry, cells); !stored) {
                return tl::unexpected(stored.error());
            }
            entry.seal = m_seal = sealOver(m_seal, canonicalText(entry));
            if (auto done = m_writer.insert(entry, cells); !done) {
                return done;
            }
        }
        return {};
    }

    void say(std::string sentence) {
        if (m_report.sentences.size() < mostSentences) {
            m_report.sentences.push_back(std::move(sentence));
        }
    }

    Result<Entry> read(std::int64_t number) {
        EntryRow row;
        if (auto found = m_lookup.read(number, row); !found) {
            return tl::unexpected(found.error());
        }
        auto verified = verifiedEntry(row, m_before);
        m_before = row.seal;
        if (verified) {
            return verified;
        }
        auto entry = entryFrom(row);
        if (entry) {
            m_report.unsealed.push_back(number);
            say(Core::say("The seal of entry %1 does not fit: it was altered, or the one before it is lost.", number));
        }
        return entry;
    }

    Result<void> carry(Entry entry) {
        if (auto* strike = entry.body.as<Struck>()) {
            const auto now = m_numbers.find(strike->entry);
            if (now == m_numbers.end()) {
                return refuse(Core::say("it strikes entry %1, which is lost.", strike->entry));
            }
            strike->entry = now->second;
        }
        if (const auto* added = entry.body.as<AttachmentAdded>()) {
            if (auto done = carryAttachment(*added); !done) {
                return done;
            }
        }
        m_numbers.emplace(entry.sequence, ++m_report.kept);
        entry.sequence = m_report.kept;
        const std::vector<Cell> cells = cellsOf(entry.body);
        entry.seal = sealOver(m_seal, canonicalText(entry));
        m_seal = entry.seal;
        return store(m_writer.insert(entry, cells));
    }

    Result<void> carryAttachment(const AttachmentAdded& added) {
        // By the index first; where that is damaged, by going through the table.
        for (const char* sql : {"SELECT bytes FROM attachment WHERE sha256 = ?",
                                "SELECT bytes FROM attachment NOT INDEXED WHERE sha256 = ?"}) {
            auto row = m_from.prepare(sql);
            if (!row) {
                continue;
            }
            row->bind(1, std::string_view(added.sha256));
            const auto found = row->step();
            if (found && *found && sha256Hex(row->bytes(0)) == added.sha256) {
                return store(m_writer.insertAttachment(added.sha256, row->bytes(0)));
            }
        }
        return refuse(Core::say("the bytes of its attachment “%1” cannot be read.", added.fileName));
    }

    Result<void> store(Result<void> written) {
        m_diskFailed = m_diskFailed || !written;
        return written;
    }

    Database& m_from;
    Database& m_to;
    Source m_source;
    UtcTime m_now;
    EntryLookup m_lookup;
    EntryWriter m_writer;
    SalvageReport& m_report;
    std::map<std::int64_t, std::int64_t> m_numbers; ///< from old to new
    Seal m_before;                                  ///< of the entry before, as stored in the damaged file
    Seal m_seal;
    bool m_diskFailed = false;
};

} // namespace

Result<SalvageReport> salvage(const std::string& damaged, const std::string& newRecord, UtcTime now) {
    auto resolved = resolveRecord(damaged);
    if (!resolved) {
        return tl::unexpected(resolved.error());
    }
    if (const auto header = readHeader(*resolved); header && header->kind == FileKind::newerRecord) {
        return refuse(header->sentence);
    }
    SalvageReport report;
    auto made = makeNewFileLike(*resolved, newRecord, [&](const std::string& unfinished) -> Result<void> {
        const QTemporaryDir folder;
        const std::string copy = folder.filePath(QStringLiteral("copy")).toStdString();
        if (auto done = copyDamaged(*resolved, copy, report.sentences); !done) {
            return done;
        }
        auto source = sourceOf(*resolved, copy);
        if (!source) {
            return tl::unexpected(source.error());
        }
        auto from = openDamaged(copy, report.sentences);
        auto to = from ? Database::open(unfinished, Access::readWrite) : tl::unexpected(from.error());
        if (!to) {
            return tl::unexpected(to.error());
        }
        if (auto done = defend(**to); !done) {
            return done;
        }
        if (auto done = createSchema(**to); !done) {
            return done;
        }
        auto done = Salvage(**from, **to, std::move(*source), now, report).run();
        const std::string record = visibly(*resolved);
        for (std::string& sentence : report.sentences) {
            sentence = ofRecord(std::move(sentence), copy, record);
        }
        return done ? done : refuse(ofRecord(done.error().sentence, copy, record));
    });
    if (!made) {
        return tl::unexpected(made.error());
    }
    return report;
}

} // namespace caprail
