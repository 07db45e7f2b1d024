// SPDX-License-Identifier: GPL-3.0-or-later
#include <shop/hand_over.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <set>
#include <shop/entry_text.h>
#include <store/csv.h>
#include <store/database.h>
#include <store/new_file.h>
#include <store/text_form.h>
#include <unistd.h>
#include <units/plain_text.h>
#include <units/say.h>

namespace caprail {

namespace {

namespace fs = std::filesystem;

Result<std::string> wholeFile(const fs::path& path) {
    std::ifstream in(path, std::ios::binary);
    std::string bytes((std::istreambuf_iterator<char>(in)), {});
    return in.bad() || !in.is_open()
               ? Result<std::string>(refuse(Core::say("%1 cannot be read back.", inQuotes(path.string()))))
               : bytes;
}

/// "12-main-3 journal.jpg": the entry's number keeps two of one name apart.
std::string photoName(const Entry& entry, const AttachmentAdded& photo) {
    const fs::path named(photo.fileName);
    const std::string name = safeName(named.stem().string(), "photo");
    const std::string ending = safeName(named.extension().string(), "");
    return std::to_string(entry.sequence) + "-" + name + (ending.empty() ? "" : "." + ending);
}

Result<void> writePhotos(const RecordFile& record, const fs::path& folder) {
    const Ledger& ledger = record.ledger();
    for (const Entry& entry : ledger.entries()) {
        const auto* photo = std::get_if<AttachmentAdded>(&entry.body);
        if (photo == nullptr || ledger.isStruck(entry.sequence)) {
            continue;
        }
        const auto bytes = record.attachmentBytes(photo->sha256);
        if (!bytes) {
            return tl::unexpected(bytes.error());
        }
        if (auto written = writeText((folder / photoName(entry, *photo)).string(), *bytes); !written) {
            return written;
        }
    }
    return {};
}

/// GNU coreutils' form: hash, two spaces, name, sorted by name. Names hold no backslash and no line break.
Result<void> writeSums(const fs::path& folder) {
    std::set<std::string> names;
    for (const auto& entry : fs::recursive_directory_iterator(folder)) {
        if (entry.is_regular_file()) {
            names.insert(entry.path().lexically_relative(folder).generic_string());
        }
    }
    std::string sums;
    for (const auto& name : names) {
        const auto bytes = wholeFile(folder / name);
        if (!bytes) {
            return tl::unexpected(bytes.error());
        }
        sums += sha256Hex(*bytes) + "  " + name + "\n";
    }
    return writeText((folder / "SHA256SUMS").string(), sums);
}

Result<void> fill(const RecordFile& record, const fs::path& folder, const HandOverOptions& options) {
    const auto at = [&](const char* name) { return (folder / name).string(); };
    if (options.writeSheet) {
        if (auto done = options.writeSheet(at("build-sheet.pdf")); !done) {
            return done;
        }
    }
    if (auto done = exportLedger(record.ledger(), at("ledger.jsonl")); !done) {
        return done;
    }
    if (auto done = writeText(at("history.txt"), historyText(record.ledger(), options.units)); !done) {
        return done;
    }
    if (options.withTables) {
        if (auto done = exportCsv(record.ledger(), at("tables")); !done) {
            return done;
        }
    }
    if (auto done = writePhotos(record, photosFolder(at("ledger.jsonl"))); !done) {
        return done;
    }
    return writeSums(folder);
}

} // namespace

std::string historyText(const Ledger& ledger, const Units& units) {
    std::string text;
    for (const Entry& entry : ledger.entries()) {
        const std::string line = historyLine(entry.body, units);
        text += std::to_string(entry.sequence) + "  " + format(entry.time) + "  " + visibly(entry.person) + "  " +
                (ledger.isStruck(entry.sequence)
                     ? "[" + Core::say("struck by entry %1", ledger.struckBy(entry.sequence)) + "] "
                     : "") +
                line + "\n";
    }
    return text + "\n" + Core::say("Seal over all entries: %1", shortForm(ledger.seal())) + "\n";
}

Result<void> handOver(const RecordFile& record, const std::string& folder, const HandOverOptions& options) {
    std::error_code error;
    const fs::path target = fs::absolute(folder, error).lexically_normal();
    const fs::path whole = target.has_filename() ? target : target.parent_path(); // "out/" names "out"
    if (fs::exists(whole, error) && !(fs::is_directory(whole, error) && fs::is_empty(whole, error))) {
        return refuse(Core::say("%1 exists already and is not empty: choose another folder.", inQuotes(folder)));
    }
    const fs::path unfinished = whole.string() + ".unfinished-" + std::to_string(::getpid());
    fs::remove_all(unfinished, error);
    if (!fs::create_directories(unfinished, error) || error) {
        return refuse(Core::say("%1 cannot be made (%2): check the folder and the disk.", inQuotes(unfinished.string()),
                                error.message()));
    }
    auto done = fill(record, unfinished, options);
    if (done) {
        fs::remove(whole, error); // the empty one
        fs::rename(unfinished, whole, error);
        if (error) {
            done =
                refuse(Core::say("%1 cannot be made (%2): choose another folder.", inQuotes(folder), error.message()));
        }
    }
    if (!done) {
        fs::remove_all(unfinished, error);
        return done;
    }
    return syncToDisk(whole.parent_path().string());
}

} // namespace caprail
