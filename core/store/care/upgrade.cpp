// SPDX-License-Identifier: GPL-3.0-or-later
#include <store/care/upgrade.h>

#include <store/care/check.h>
#include <store/sqlite/defences.h>
#include <store/file/entry_loader.h>
#include <store/sqlite/header.h>
#include <store/file/new_file.h>
#include <store/file/open_checked.h>
#include <store/sqlite/schema.h>
#include <store/file/writer_lock.h>
#include <unistd.h>
#include <base/say.h>

namespace caprail {

namespace {

/// Carries every row over as it stands, verifying each seal on the way; gives the last seal.
Result<Seal> carryEntries(Database& from, Database& to) {
    auto reader = EntryReader::after(from, 0);
    if (!reader) {
        return tl::unexpected(reader.error());
    }
    EntryWriter writer(to);
    EntryRow row;
    Seal seal;
    for (;;) {
        const auto more = reader->next(row);
        if (!more) {
            return tl::unexpected(more.error());
        }
        if (!*more) {
            return seal;
        }
        const auto entry = verifiedEntry(row, seal);
        if (!entry) {
            return refuse(Core::say("In %1: %2", inQuotes(from.path()), entry.error().sentence));
        }
        if (auto done = writer.insert(*entry, row.cells); !done) {
            return tl::unexpected(done.error());
        }
        seal = row.seal;
    }
}

Result<void> carryAttachments(Database& from, Database& to) {
    EntryWriter writer(to);
    auto rows = from.prepare("SELECT sha256, bytes FROM attachment ORDER BY rowid");
    if (!rows) {
        return tl::unexpected(rows.error());
    }
    for (auto more = rows->step();; more = rows->step()) {
        if (!more) {
            return tl::unexpected(more.error());
        }
        if (!*more) {
            return {};
        }
        if (auto done = writer.insertAttachment(std::string(rows->text(0)), rows->bytes(1)); !done) {
            return done;
        }
    }
}

/// Fills the empty file at `path` with the present tables and everything that `from` holds.
Result<void> writeUpgraded(Database& from, const std::string& path) {
    auto to = Database::open(path, Access::readWrite);
    auto done = to ? defend(**to) : tl::unexpected(to.error());
    done = done ? createSchema(**to) : done;
    done = done ? (*to)->run("BEGIN IMMEDIATE") : done;
    if (!done) {
        return done;
    }
    const auto seal = carryEntries(from, **to);
    done = seal ? carryAttachments(from, **to) : tl::unexpected(seal.error());
    done = done ? (*to)->run("COMMIT") : done;
    if (!done) {
        return done;
    }
    *to = nullptr;
    const CheckReport report = checkFile(path);
    if (report.verdict != CheckVerdict::sound || report.seal != *seal) {
        return refuse(Core::say(
            "%1 could not be upgraded: %2", inQuotes(from.path()),
            (report.findings.empty() ? Core::say("the new file has another seal.") : report.findings.front())));
    }
    return done;
}

Result<void> saveChecked(const std::string& path, const std::string& keptAs) {
    // By a connection of its own: SQLite backs nothing up through one that holds the right to write.
    auto source = openDefended(path, Access::readOnly);
    if (!source) {
        return tl::unexpected(source.error());
    }
    return makeNewFileLike(path, keptAs, [&](const std::string& unfinished) -> Result<void> {
        if (auto done = backUp(**source, unfinished); !done) {
            return done;
        }
        const CheckReport report = checkFile(unfinished);
        return report.verdict == CheckVerdict::sound ? Result<void>() : refuse(report.findings.front());
    });
}

} // namespace

Result<std::optional<std::uint32_t>> olderVersion(const std::string& path) {
    const auto resolved = resolveRecord(path);
    const auto header = resolved ? readHeader(*resolved) : tl::unexpected(resolved.error());
    if (!header) {
        return tl::unexpected(header.error());
    }
    if (header->kind != FileKind::record) {
        return refuse(header->sentence);
    }
    return header->version < schemaVersion ? std::optional(header->version) : std::nullopt;
}

Result<void> upgradeRecord(const std::string& path, const std::string& keptAs) {
    const auto resolved = resolveRecord(path);
    if (!resolved) {
        return tl::unexpected(resolved.error());
    }
    const auto lock = WriterLock::take(*resolved);
    if (!lock) {
        return tl::unexpected(lock.error());
    }
    removeUnfinished(*resolved);
    const auto older = olderVersion(*resolved);
    if (!older || !*older) {
        return older ? Result<void>() : tl::unexpected(older.error());
    }
    Ledger ledger;
    auto old = openChecked(*resolved, Access::readWrite, ledger);
    auto done = old ? prepareForWriting(**old) : tl::unexpected(old.error());
    done = done ? (*old)->run("BEGIN IMMEDIATE") : done;
    done = done ? saveChecked(*resolved, keptAs) : done;
    if (!done) {
        return done;
    }
    done = replaceFile(*resolved, [&](const std::string& unfinished) { return writeUpgraded(**old, unfinished); });
    if (!done) {
        ::unlink(keptAs.c_str()); // nothing was changed, so there is nothing to keep
    }
    return done;
}

} // namespace caprail
