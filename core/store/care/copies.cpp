// SPDX-License-Identifier: GPL-3.0-or-later
#include <store/care/copies.h>

#include <array>
#include <cstdio>
#include <filesystem>
#include <store/care/check.h>
#include <store/sqlite/header.h>
#include <store/file/new_file.h>
#include <store/file/open_checked.h>
#include <store/file/writer_lock.h>
#include <unistd.h>
#include <base/say.h>

namespace caprail {

namespace {

/// What SQLite would take for a part of the record.
constexpr std::array endingsBeside{"-journal", "-wal", "-shm"};

bool exists(const std::string& path) {
    std::error_code error;
    return std::filesystem::exists(std::filesystem::symlink_status(path, error));
}

/// Gives a damaged file a second name, which leaves the first as it is; a rename does where the disk has no such thing.
Result<void> keepUnderName(const std::string& record, const std::string& keptAs) {
    if (exists(keptAs)) {
        return refuse(Core::say("%1 exists already and is not overwritten: choose another name.", inQuotes(keptAs)));
    }
    if (::link(record.c_str(), keptAs.c_str()) != 0) {
        if (auto moved = moveToNewName(record, keptAs); !moved) {
            return moved;
        }
    }
    // A journal that stayed would be played back into the restored record.
    for (const char* const ending : endingsBeside) {
        (void)std::rename((record + ending).c_str(), (keptAs + ending).c_str());
    }
    return {};
}

void takeBack(const std::string& record, const std::string& keptAs) {
    (void)std::rename(keptAs.c_str(), record.c_str());
    for (const char* const ending : endingsBeside) {
        (void)std::rename((keptAs + ending).c_str(), (record + ending).c_str());
    }
    ::unlink(keptAs.c_str()); // two names of one file are left by the first line as they are (POSIX, rename)
}

std::string freeBackupName(const std::string& record, const std::string& what) {
    const std::string begins =
        folderOf(record) + "/" + std::filesystem::path(record).stem().string() + " " + what;
    std::string name = begins + ".caprail-backup";
    for (int n = 2; exists(name) || exists(name + "-journal"); ++n) {
        name = begins + " (" + std::to_string(n) + ").caprail-backup";
    }
    return name;
}

/// Fills the empty file `unfinished` with the copy, as SQLite reads it.
Result<void> fillFrom(const std::string& copy, const std::string& unfinished) {
    auto source = openDefended(copy, Access::readOnly);
    return source ? backUp(**source, unfinished) : tl::unexpected(source.error());
}

} // namespace

LedgerComparison compare(const Ledger& first, const Ledger& second) {
    // A seal is over all that went before: equal seals at a place mean equal ledgers up to there.
    std::int64_t common = std::min(first.size(), second.size());
    while (common > 0 && first.at(common).seal != second.at(common).seal) {
        --common;
    }
    return {common, first.size() - common, second.size() - common};
}

std::string datedBackupName(const std::string& record, Date day) {
    return freeBackupName(record, format(day));
}

std::string cutOffBackupName(const std::string& record, Date day) {
    return freeBackupName(record, format(day) + " cut off");
}

Result<void> restoreRecord(const std::string& copy, const std::string& record, const std::string& keptAs) {
    const auto resolved = resolveRecord(record);
    const auto lock = resolved ? WriterLock::take(*resolved) : tl::unexpected(resolved.error());
    return lock ? restoreUnderLock(copy, record, keptAs) : tl::unexpected(lock.error());
}

Result<void> restoreUnderLock(const std::string& copy, const std::string& record, const std::string& keptAs) {
    const auto from = resolveRecord(copy);
    const auto to = from ? resolveRecord(record) : from;
    if (!to) {
        return tl::unexpected(to.error());
    }
    if (*from == *to) {
        return refuse(Core::say("%1 is the record itself: choose a copy of it.", inQuotes(record)));
    }
    if (const CheckReport report = checkFile(*from); report.verdict != CheckVerdict::sound) {
        return refuse(Core::say("The copy is not restored: %1", report.findings.front()));
    }
    const auto mode = FileMode::like(*to);
    if (!mode) {
        return tl::unexpected(mode.error());
    }
    removeUnfinished(*to);
    // To write, so that a write that was cut off is taken back before the record is copied.
    auto old = checkFile(*to).verdict == CheckVerdict::sound ? openDefended(*to, Access::readWrite)
                                                             : Result<std::unique_ptr<Database>>(nullptr);
    if (!old) {
        return tl::unexpected(old.error());
    }
    const bool isReadable = *old != nullptr;
    auto kept = isReadable ? makeNewFileLike(*to, keptAs,
                                             [&](const std::string& unfinished) { return backUp(**old, unfinished); })
                           : keepUnderName(*to, keptAs);
    if (!kept) {
        return kept;
    }
    const auto fill = [&](const std::string& unfinished) { return fillFrom(*from, unfinished); };
    auto done = exists(*to) ? replaceFile(*to, fill) : makeNewFileLike(*mode, *to, fill);
    if (!done && isReadable) {
        ::unlink(keptAs.c_str());
    } else if (!done) {
        takeBack(*to, keptAs);
    }
    return done;
}

} // namespace caprail
