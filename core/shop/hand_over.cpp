// SPDX-License-Identifier: GPL-3.0-or-later
#include <shop/hand_over.h>

#include <algorithm>
#include <base/hex.h>
#include <filesystem>
#include <ledger/remarks.h>
#include <set>
#include <shop/entry_text.h>
#include <shop/hand_over_readme.h>
#include <shop/key_folder.h>
#include <shop/table_export.h>
#include <store/file/new_file.h>
#include <store/file/read_file.h>
#include <store/text/text_form.h>
#include <base/plain_text.h>
#include <base/say.h>

namespace caprail {

namespace {

namespace fs = std::filesystem;

constexpr std::int64_t largestOfHandOver = std::int64_t{4} * 1024 * 1024 * 1024;

/// "12-main-3 journal.jpg": the entry's number keeps two of one name apart.
std::string photoName(const Entry& entry, const AttachmentAdded& photo) {
    const fs::path named(photo.fileName);
    const std::string name = safeName(named.stem().string(), "photo");
    const std::string ending = safeName(named.extension().string(), "");
    return std::to_string(entry.sequence) + "-" + name + (ending.empty() ? "" : "." + ending);
}

Result<void> writePhotos(const RecordFile& record, const fs::path& folder) {
    std::error_code error;
    const Ledger& ledger = record.ledger();
    for (const Entry& entry : ledger.entries()) {
        const auto* photo = entry.body.as<AttachmentAdded>();
        if (photo == nullptr || ledger.isStruck(entry.sequence)) {
            continue;
        }
        const auto bytes = record.attachmentBytes(photo->sha256);
        if (!bytes) {
            return tl::unexpected(bytes.error());
        }
        fs::create_directories(folder, error); // what it could not make is said when the photo is written
        if (auto written = writeInside((folder / photoName(entry, *photo)).string(), *bytes); !written) {
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
        const auto bytes = readWholeFile((folder / name).string(), largestOfHandOver);
        if (!bytes) {
            return tl::unexpected(bytes.error());
        }
        sums += sha256Hex(*bytes) + "  " + name + "\n";
    }
    return writeInside((folder / "SHA256SUMS").string(), sums);
}

/// What another program needs to verify the signature: the statement that is signed, the key, and the signature itself.
Result<void> writeSignature(const fs::path& folder, const Ledger& ledger, const std::vector<SignatureFact>& signatures) {
    const SignatureFact* told = toldSignature(signatures);
    if (told == nullptr) {
        return {};
    }
    const auto& entry = ledger.at(told->entry).body.get<SealSigned>();
    SignatureBytes bytes{};
    if (!readHex(entry.signature, bytes)) {
        return refuse(Core::say("The signature in entry %1 cannot be read.", told->entry));
    }
    std::error_code error;
    fs::create_directories(folder / "signature", error);
    const std::pair<const char*, std::string> files[] = {
        {"statement.txt", signedStatement(entry.signedEntry, entry.signedSeal, told->key)},
        {"public-key.pem", publicKeyPem(told->key.publicKey)},
        {"signature.bin", std::string(reinterpret_cast<const char*>(bytes.data()), bytes.size())}};
    for (const auto& [name, content] : files) {
        if (auto written = writeInside((folder / "signature" / name).string(), content); !written) {
            return written;
        }
    }
    return {};
}

Result<void> fill(const RecordFile& record, const fs::path& folder, const HandOverOptions& options) {
    const auto at = [&](const char* name) { return (folder / name).string(); };
    if (options.writeSheet) {
        if (auto done = options.writeSheet(at("build-sheet.pdf")); !done) {
            return done;
        }
    }
    const Facts facts = fold(record.ledger());
    const auto signatures = signaturesOf(record.ledger());
    if (auto done = writeInside(at("README.txt"), handOverReadme(record.ledger(), facts, signatures, options.withTables));
        !done) {
        return done;
    }
    if (auto done = writeSignature(folder, record.ledger(), signatures); !done) {
        return done;
    }
    if (auto done = exportLedger(record.ledger(), at("ledger.jsonl")); !done) {
        return done;
    }
    if (auto done = writeInside(at("history.txt"), historyText(record.ledger(), options.units)); !done) {
        return done;
    }
    if (options.withTables) {
        if (auto done = exportTables(record.ledger(), facts, assess(facts, options.units), at("tables")); !done) {
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
    return makeNewFolder(folder, [&](const std::string& unfinished) { return fill(record, unfinished, options); });
}

} // namespace caprail
