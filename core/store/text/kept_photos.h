// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <ledger/entries.h>
#include <map>
#include <string>
#include <base/problem.h>
#include <vector>

namespace caprail {

/// The bytes of attachments that lie beside the text of a ledger: in `attachmentsFolder(text)` under their hash, or
/// among the files of `photosFolder(text)` under whatever name. However many there are, each file is read and hashed
/// once to be found; one that a hand-over wrote is found by the number that its name begins with.
class KeptPhotos {
public:
    explicit KeptPhotos(std::string textPath) : m_textPath(std::move(textPath)) {}
    /// The bytes of the attachment that entry `sequence` adds. Refuses when no file has them.
    Result<std::string> bytesOf(std::int64_t sequence, const AttachmentAdded& added);
    /// How many times a file was hashed until now.
    [[nodiscard]] std::int64_t hashed() const { return m_hashed; }

private:
    struct File {
        std::string path;
        std::int64_t size = 0;
        std::string sha256; ///< empty: not read yet
    };
    void look();
    Result<std::string> read(File& file);
    bool isIn(File& file, const AttachmentAdded& added, std::string& bytes);

    std::string m_textPath;
    bool m_hasLooked = false;
    std::vector<File> m_files;
    std::map<std::int64_t, std::vector<std::size_t>> m_byNumber; ///< that the name begins with: "12-cap 3.jpg"
    std::map<std::string, std::size_t> m_byHash;                 ///< of those read
    std::map<std::int64_t, std::vector<std::size_t>> m_unread;   ///< by size, not read yet
    std::int64_t m_hashed = 0;
};

} // namespace caprail
