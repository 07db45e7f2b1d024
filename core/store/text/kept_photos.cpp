// SPDX-License-Identifier: GPL-3.0-or-later
#include <store/text/kept_photos.h>

#include <charconv>
#include <filesystem>
#include <ledger/entry.h>
#include <store/sqlite/database.h>
#include <store/sqlite/defences.h>
#include <store/file/entry_rows.h>
#include <store/file/read_file.h>
#include <store/text/text_form.h>
#include <base/say.h>

namespace caprail {

namespace {

/// 12 for "12-cap 3.jpg"; 0 for a name without a number.
std::int64_t leadingNumber(const std::string& name) {
    std::int64_t number = 0;
    const auto [rest, error] = std::from_chars(name.data(), name.data() + name.size(), number);
    return error == std::errc() && number > 0 && rest != name.data() + name.size() && *rest == '-' ? number : 0;
}

} // namespace

void KeptPhotos::look() {
    if (std::exchange(m_hasLooked, true)) {
        return;
    }
    namespace fs = std::filesystem;
    std::error_code error;
    for (fs::directory_iterator entry(photosFolder(m_textPath), error); !error && entry != fs::directory_iterator();
         entry.increment(error)) {
        std::error_code gone;
        if (!entry->is_regular_file(gone)) {
            continue;
        }
        const auto size = static_cast<std::int64_t>(entry->file_size(gone));
        if (gone || size > largestAttachment) {
            continue;
        }
        m_files.push_back({entry->path().string(), size, {}});
        m_unread[size].push_back(m_files.size() - 1);
        if (const auto number = leadingNumber(entry->path().filename().string()); number != 0) {
            m_byNumber[number].push_back(m_files.size() - 1);
        }
    }
}

Result<std::string> KeptPhotos::read(File& file) {
    auto bytes = readWholeFile(file.path, largestAttachment);
    if (bytes) {
        file.sha256 = sha256Hex(*bytes);
        ++m_hashed;
    }
    return bytes;
}

/// Reads a file, remembers its hash, and tells whether it is the attachment's.
bool KeptPhotos::isIn(File& file, const AttachmentAdded& added, std::string& bytes) {
    auto read_ = read(file);
    if (!read_ || static_cast<std::int64_t>(read_->size()) != added.size) {
        return false;
    }
    m_byHash.emplace(file.sha256, static_cast<std::size_t>(&file - m_files.data()));
    bytes = std::move(*read_);
    return file.sha256 == added.sha256;
}

Result<std::string> KeptPhotos::bytesOf(std::int64_t sequence, const AttachmentAdded& added) {
    const std::string named = attachmentsFolder(m_textPath) + "/" + added.sha256;
    std::error_code error;
    if (std::filesystem::is_regular_file(named, error)) {
        File file{named, 0, {}};
        auto bytes = read(file);
        const bool fits =
            bytes && file.sha256 == added.sha256 && static_cast<std::int64_t>(bytes->size()) == added.size;
        return fits ? bytes
                    : refuse(Core::say("The bytes in %1 do not fit the hash and size of its attachment.",
                                       inQuotes(named)));
    }
    look();
    std::string bytes;
    const auto numbered = m_byNumber.find(sequence);
    for (const std::size_t at : numbered == m_byNumber.end() ? std::vector<std::size_t>() : numbered->second) {
        if (m_files[at].sha256.empty() && m_files[at].size == added.size && isIn(m_files[at], added, bytes)) {
            return bytes;
        }
    }
    if (const auto known = m_byHash.find(added.sha256); known != m_byHash.end()) {
        if (isIn(m_files[known->second], added, bytes)) { // read again: it may have changed since
            return bytes;
        }
    }
    std::vector<std::size_t>& unread = m_unread[added.size];
    while (!unread.empty()) {
        File& file = m_files[unread.back()];
        unread.pop_back();
        if (file.sha256.empty() && isIn(file, added, bytes)) {
            return bytes;
        }
    }
    return refuse(Core::say("The bytes of its attachment are neither in %1 nor among the files of %2: put them there.",
                            inQuotes(named), inQuotes(photosFolder(m_textPath))));
}

} // namespace caprail
