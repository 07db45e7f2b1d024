// SPDX-License-Identifier: GPL-3.0-or-later
#include <shopserver/fetch.h>

#include <QTemporaryDir>
#include <base/say.h>
#include <filesystem>
#include <set>
#include <shopserver/held_text.h>
#include <store/file/new_file.h>
#include <store/file/path_text.h>
#include <store/sqlite/database.h>
#include <store/text/text_form.h>

namespace caprail {

namespace {

constexpr std::size_t atOnce = 1024UL * 1024;

/// The text of a ledger with its photos beside it, in a folder that nobody else may look into and that goes again.
class TextFolder {
public:
    Result<void> isGood() const {
        return m_folder.isValid() ? Result<void>()
                                  : refuse(Core::say("A folder for what is fetched cannot be made: %1.",
                                                     m_folder.errorString().toStdString()));
    }
    std::string text() const { return pathBytes(m_folder.filePath(QStringLiteral("ledger.jsonl"))); }

    Result<void> addEntry(const std::string& canonical, const Seal& seal) {
        m_lines.append(canonical, 0, canonical.size() - 1); // the seal goes before the closing brace
        m_lines += ",\"seal\":\"" + toHex(seal) + "\"}\n";
        return m_lines.size() < atOnce ? Result<void>() : flush();
    }
    Result<void> addPhoto(const std::string& sha256, std::string_view piece) {
        std::error_code error;
        std::filesystem::create_directories(attachmentsFolder(text()), error); // what it could not make is said below
        return addTo(made(attachmentsFolder(text()) + "/" + sha256), piece);
    }
    Result<void> flush() {
        auto done = addTo(made(text()), m_lines);
        m_lines.clear();
        return done;
    }

private:
    /// An empty file to add to, the first time.
    const std::string& made(const std::string& path) {
        const auto [at, isNew] = m_made.insert(path);
        if (isNew) {
            (void)writeInside(path, ""); // adding to it says what is wrong
        }
        return *at;
    }
    QTemporaryDir m_folder;
    std::string m_lines;
    std::set<std::string> m_made;
};

/// A sentence about the text is one about the rows that it came from.
std::string aboutTheDatabase(std::string sentence, const std::string& text, const std::string& name) {
    const std::string quoted = inQuotes(text);
    for (auto at = sentence.find(quoted); at != std::string::npos; at = sentence.find(quoted)) {
        sentence.replace(at, quoted.size(), name);
    }
    return Core::say("What %1 holds does not verify, and no file was made: %2", name, sentence);
}

} // namespace

Result<Fetched> fetchRecord(Connection& database, std::string_view identity, const std::string& out,
                            const std::stop_token& stop, const FetchProgress& progress) {
    std::error_code error;
    if (std::filesystem::exists(
            std::filesystem::symlink_status(out, error))) { // before anything comes over the network
        return refuse(Core::say("%1 exists already: choose another name.", inQuotes(out)));
    }
    TextFolder folder;
    if (auto good = folder.isGood(); !good) {
        return tl::unexpected(good.error());
    }
    const HeldTaker taker{
        [&](const std::string& line, const Seal& seal) { return folder.addEntry(line, seal); },
        [&](const std::string& hash, std::string_view piece) { return folder.addPhoto(hash, piece); }};
    auto fetched = readHeld(database, identity, taker, stop, progress);
    auto done = fetched ? folder.flush() : tl::unexpected(fetched.error());
    if (!done) {
        return tl::unexpected(done.error());
    }
    const auto imported = importLedger(folder.text(), out);
    if (!imported) {
        const std::string& sentence = imported.error().sentence;
        // What is said of the new file is its own matter: a disk that is full, a folder that may not be written.
        return sentence.find(folder.text()) == std::string::npos
                   ? refuse(sentence)
                   : refuse(aboutTheDatabase(sentence, folder.text(), database.place().shownAs));
    }
    return fetched;
}

Result<Fetched> verifyHeld(Connection& database, std::string_view identity) {
    Seal before;
    std::int64_t number = 0;
    const HeldTaker taker{[&](const std::string& line, const Seal& seal) -> Result<void> {
                              ++number;
                              if (sealOver(before, line) != seal) {
                                  return refuse(
                                      Core::say("%1: the seal of entry %2 does not fit: it, or the one before it, "
                                                "was altered after it was sealed.",
                                                database.place().shownAs, number));
                              }
                              before = seal;
                              return {};
                          },
                          [](const std::string&, std::string_view) { return Result<void>(); }};
    return readHeld(database, identity, taker, {}, {});
}

} // namespace caprail
