// SPDX-License-Identifier: GPL-3.0-or-later
#include <store/file/journal.h>

#include <store/sqlite/database.h>
#include <base/say.h>

namespace caprail {

namespace {

constexpr std::string_view journalMagic("\xd9\xd5\x05\xf9\x20\xa1\x63\xd7", 8);

} // namespace

std::uint32_t bigEndian(std::string_view bytes, std::size_t at) {
    std::uint32_t value = 0;
    for (std::size_t i = 0; i < 4; ++i) {
        value = value << 8 | static_cast<unsigned char>(bytes[at + i]);
    }
    return value;
}

std::optional<JournalHeader> readJournalHeader(std::string_view first28Bytes) {
    if (first28Bytes.size() < 28 || !first28Bytes.starts_with(journalMagic)) {
        return {};
    }
    // After the magic: pages kept, a random number, pages before, bytes of a sector, bytes of a page.
    return JournalHeader{bigEndian(first28Bytes, 16), bigEndian(first28Bytes, 24)};
}

bool namesAnotherFile(std::string_view last8Bytes) {
    return last8Bytes == journalMagic;
}

Result<void> refuseSuperJournal(const std::string& journal) {
    return refuse(
        Core::say("%1 names another file, which would be deleted if it were played back; no write to a record "
                  "leaves such a journal. It was not touched: move it away, then try again.",
                  inQuotes(journal)));
}

std::uint32_t changeCounter(std::string_view header) {
    return header.size() < 28 ? 0 : bigEndian(header, 24);
}

} // namespace caprail
