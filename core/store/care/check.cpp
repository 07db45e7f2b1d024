// SPDX-License-Identifier: GPL-3.0-or-later
#include <store/care/check.h>

#include <ledger/typed_values.h>
#include <set>
#include <sqlite3.h>
#include <store/file/beside.h>
#include <store/sqlite/defences.h>
#include <store/file/entry_loader.h>
#include <store/sqlite/header.h>
#include <store/file/open_checked.h>
#include <store/sqlite/schema.h>
#include <base/say.h>

namespace caprail {

namespace {

constexpr std::size_t mostFindings = 100;

/// Collects findings; `isFull` once there are enough to know that the file is not to be trusted. What is added first is
/// a finding of damage; what only could not be read to its end is kept apart.
class Findings {
public:
    explicit Findings(CheckReport& report) : m_report(report) {}
    void add(std::string sentence) {
        m_isDamaged = true;
        put(std::move(sentence));
    }
    /// A failure of the database, whose last code says which of the two it is.
    void addFailure(const Database& database, const Problem& problem) {
        m_isDamaged = m_isDamaged || !isUnfinished(database.lastCode());
        put(problem.sentence);
    }
    void addFrom(const Database& database, const Result<void>& result) {
        if (!result) {
            addFailure(database, result.error());
        }
    }
    void addUnfinished(const Problem& problem) { put(problem.sentence); }
    [[nodiscard]] bool isFull() const { return m_report.findings.size() >= mostFindings; }
    [[nodiscard]] CheckVerdict verdict() const {
        return m_report.findings.empty() ? CheckVerdict::sound
               : m_isDamaged             ? CheckVerdict::damagedOrAltered
                                         : CheckVerdict::notFinished;
    }

private:
    void put(std::string sentence) {
        if (!isFull()) {
            m_report.findings.push_back(std::move(sentence));
        }
    }
    CheckReport& m_report;
    bool m_isDamaged = false;
};

/// Checks each entry by itself; gives the entries of attachments that were read.
std::vector<AttachmentAdded> checkEntries(Database& database, const std::string& sealDigits, CheckReport& report,
                                          Findings& findings) {
    std::vector<AttachmentAdded> attachments;
    auto reader = EntryReader::after(database, 0);
    if (!reader) {
        findings.addFailure(database, reader.error());
        return attachments;
    }
    EntryRow row;
    for (std::int64_t expected = 1; !findings.isFull(); ++expected) {
        const auto more = reader->next(row);
        if (!more) {
            findings.addFailure(database, more.error());
            break;
        }
        if (!*more) {
            break;
        }
        if (row.sequence != expected) {
            findings.add(Core::say(
                "Entry %1 stands where entry %2 must be: entries were removed, inserted or put in another order.",
                row.sequence, expected));
            expected = row.sequence;
        }
        auto entry = verifiedEntry(row, report.seal);
        if (entry) {
            if (const auto contradiction = contradictionIn(entry->body)) {
                findings.add(Core::say("Entry %1: %2", row.sequence, *contradiction));
            }
            if (const auto* added = entry->body.as<AttachmentAdded>()) {
                attachments.push_back(*added);
            }
        } else {
            findings.add(entry.error().sentence);
        }
        report.seal = row.seal;
        ++report.entries;
        if (report.sealedEntry && toHex(row.seal).starts_with(sealDigits)) {
            report.sealedEntry = row.sequence;
        }
    }
    return attachments;
}

void checkAttachments(Database& database, const std::vector<AttachmentAdded>& added, CheckReport& report,
                      Findings& findings) {
    std::set<std::string> kept;
    auto rows = database.prepare("SELECT sha256, bytes FROM attachment");
    if (!rows) {
        return findings.addFailure(database, rows.error());
    }
    for (auto more = rows->step(); !findings.isFull(); more = rows->step()) {
        if (!more) {
            return findings.addFailure(database, more.error());
        }
        if (!*more) {
            break;
        }
        const std::string hash(rows->text(0));
        if (sha256Hex(rows->bytes(1)) != hash) {
            findings.add(
                Core::say("The bytes of the attachment %1 do not fit their hash: they were altered or damaged.",
                          hash.substr(0, 64)));
        }
        kept.insert(hash);
        ++report.attachments;
    }
    std::set<std::string> named;
    for (const AttachmentAdded& entry : added) {
        named.insert(entry.sha256);
        if (!kept.contains(entry.sha256)) {
            findings.add(Core::say("The bytes of the attachment “%1” (%2) are missing: they were removed.",
                                   entry.fileName, entry.sha256));
        }
    }
    for (const std::string& hash : kept) {
        if (!named.contains(hash)) {
            findings.add(
                Core::say("No entry tells of the attachment %1: it was put there by hand.", hash.substr(0, 64)));
        }
    }
}

void checkContent(Database& database, const std::string& sealDigits, CheckReport& report, Findings& findings) {
    if (auto schema = verifySchema(database); !schema) {
        findings.addFrom(database, schema); // what the tables hold means nothing then, and must not be run
        return;
    }
    findings.addFrom(database, verifyPages(database));
    findings.addFrom(database, verifyStructure(database, "integrity_check"));
    auto loose = database.prepare("SELECT \"table\", rowid FROM pragma_foreign_key_check LIMIT 20");
    if (!loose) {
        findings.addFailure(database, loose.error());
    }
    for (auto more = loose ? loose->step() : Result<bool>(false);; more = loose->step()) {
        if (!more) {
            findings.addFailure(database, more.error());
        }
        if (!more || !*more) {
            break;
        }
        findings.add(Core::say("The table “%1” has details of entry %2, which does not exist.", loose->text(0),
                               loose->integer(1)));
    }
    if (!sealDigits.empty()) {
        report.sealedEntry = 0;
    }
    checkAttachments(database, checkEntries(database, sealDigits, report, findings), report, findings);
    if (report.sealedEntry == 0 && findings.verdict() != CheckVerdict::notFinished) {
        findings.add(Core::say("No entry has the seal that was given: this is not the ledger that it was taken down "
                               "from, or its end was removed. It has %1 entries and ends with the seal %2.",
                               report.entries, shortForm(report.seal)));
    }
}

} // namespace

Result<std::string> readShortForm(const std::string& typed) {
    std::string digits;
    for (const char c : typed) {
        const bool isUpper = c >= 'A' && c <= 'F';
        if (isUpper || (c >= 'a' && c <= 'f') || (c >= '0' && c <= '9')) {
            digits += isUpper ? static_cast<char>(c - 'A' + 'a') : c;
        } else if (c != '-' && c != ' ') {
            digits.clear();
            break;
        }
    }
    if (digits.size() != 20 && digits.size() != 64) {
        return refuse(Core::say("“%1” is not a seal: type the five groups of four digits as they stand on the sheet, "
                                "like 3f2a-91c0-77de-0b15-a4c2.",
                                typed.substr(0, 100)));
    }
    return digits;
}

CheckReport checkFile(const std::string& path, const std::string& sealDigits) {
    CheckReport report;
    Findings findings(report);
    const auto resolved = resolveRecord(path);
    const auto header = resolved ? readHeader(*resolved) : tl::unexpected(resolved.error());
    if (!header) {
        findings.add(header.error().sentence);
        return report;
    }
    if (header->kind != FileKind::record) {
        findings.add(header->sentence);
        report.verdict =
            header->kind == FileKind::damagedRecord ? CheckVerdict::damagedOrAltered : CheckVerdict::notARecord;
        return report;
    }
    if (auto beside = lookBeside(*resolved); !beside) {
        findings.addUnfinished(beside.error());
        report.verdict = findings.verdict();
        return report;
    }
    int sqliteCode = SQLITE_OK;
    auto database = openDefended(*resolved, Access::readOnly, &sqliteCode);
    if (database) {
        if (!(*database)->remark().empty()) {
            report.remarks.push_back((*database)->remark());
        }
        findings.addFrom(**database, inOneState(**database, [&]() -> Result<void> {
            checkContent(**database, sealDigits, report, findings);
            return {};
        }));
    } else if (isUnfinished(sqliteCode)) {
        findings.addUnfinished(database.error());
    } else {
        findings.add(database.error().sentence);
    }
    report.verdict = findings.verdict();
    return report;
}

} // namespace caprail
