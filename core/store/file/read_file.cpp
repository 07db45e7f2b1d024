// SPDX-License-Identifier: GPL-3.0-or-later
#include <store/file/read_file.h>

#include <cerrno>
#include <cstring>
#include <fcntl.h>
#include <store/sqlite/database.h>
#include <sys/stat.h>
#include <unistd.h>
#include <base/say.h>
#include <utility>

namespace caprail {

namespace {

constexpr std::size_t readAtOnce = 256UL * 1024;

Result<int> openToRead(const std::string& path) {
    // Standard input may be what cannot be opened a second time: a socket.
    const int file =
        path == "/dev/stdin" ? ::fcntl(STDIN_FILENO, F_DUPFD_CLOEXEC, 3) : ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
    struct stat status {};
    if (file >= 0 && ::fstat(file, &status) == 0 && S_ISDIR(status.st_mode)) {
        ::close(file);
        return refuse(Core::say("%1 is a folder: name a file in it.", inQuotes(path)));
    }
    return file >= 0
               ? Result<int>(file)
               : refuse(Core::say("%1 cannot be read (%2): check the path.", inQuotes(path), std::strerror(errno)));
}

/// Reads up to `wanted` bytes to the end of `text`; gives how many, 0 at the end, −1 with errno.
ssize_t readOnto(std::string& text, int file, std::size_t wanted) {
    const std::size_t before = text.size();
    text.resize(before + wanted);
    ssize_t count = 0;
    do {
        count = ::read(file, text.data() + before, wanted);
    } while (count < 0 && errno == EINTR);
    text.resize(before + static_cast<std::size_t>(count < 0 ? 0 : count));
    return count;
}

} // namespace

Result<std::string> readWholeFile(const std::string& path, std::int64_t largest) {
    const auto file = openToRead(path);
    if (!file) {
        return tl::unexpected(file.error());
    }
    std::string text;
    ssize_t count = 1;
    while (count > 0 && static_cast<std::int64_t>(text.size()) <= largest) {
        count = readOnto(text, *file, readAtOnce);
    }
    const std::string why = count < 0 ? std::strerror(errno) : "";
    ::close(*file);
    if (count < 0) {
        return refuse(Core::say("%1 cannot be read (%2): check the path.", inQuotes(path), why));
    }
    if (static_cast<std::int64_t>(text.size()) > largest) {
        return refuse(
            Core::say("%1 is larger than %2 MiB: this is not such a file.", inQuotes(path), largest / 1024 / 1024));
    }
    return text;
}

Result<LineReader> LineReader::open(const std::string& path, std::size_t longestLine, std::int64_t largest) {
    const auto file = openToRead(path);
    return file ? Result<LineReader>(LineReader(*file, longestLine, largest)) : tl::unexpected(file.error());
}

LineReader::LineReader(LineReader&& other) noexcept
    : m_file(std::exchange(other.m_file, -1)), m_longestLine(other.m_longestLine), m_left(other.m_left),
      m_read(std::move(other.m_read)), m_at(other.m_at), m_isAtEnd(other.m_isAtEnd) {}

LineReader::~LineReader() {
    if (m_file >= 0) {
        ::close(m_file);
    }
}

/// Reads on behind what is kept; false at the end.
Result<bool> LineReader::readMore() {
    m_read.erase(0, std::exchange(m_at, 0));
    const ssize_t count = readOnto(m_read, m_file, readAtOnce);
    if (count < 0) {
        return refuse(Core::say("it cannot be read (%1).", std::strerror(errno)));
    }
    m_left -= count;
    if (m_left < 0) {
        return refuse(Core::say("the text goes on for longer than a record could hold."));
    }
    m_isAtEnd = count == 0;
    return !m_isAtEnd;
}

Result<bool> LineReader::next(std::string_view& line) {
    std::size_t looked = 0; // of what is kept, this much holds no line feed
    for (;;) {
        const std::string_view kept = std::string_view(m_read).substr(m_at);
        const auto end = kept.find('\n', looked);
        const std::size_t length = end == std::string_view::npos ? kept.size() : end;
        if (length > m_longestLine) {
            return refuse(Core::say("the line is too long for an entry."));
        }
        if (end != std::string_view::npos || (m_isAtEnd && !kept.empty())) {
            line = kept.substr(0, length);
            m_at += std::min(length + 1, kept.size());
            return true;
        }
        if (m_isAtEnd) {
            return false;
        }
        looked = kept.size();
        if (const auto more = readMore(); !more) {
            return tl::unexpected(more.error());
        }
    }
}

} // namespace caprail
