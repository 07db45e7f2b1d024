// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstdint>
#include <string>
#include <string_view>
#include <base/problem.h>

namespace caprail {

/// Reads a file, a pipe or a device to its end. Refuses, naming it, what cannot be read, and what gives more than
/// `largest` bytes, which it stops reading then. "/dev/stdin" is standard input.
Result<std::string> readWholeFile(const std::string& path, std::int64_t largest);

/// Lines of a file, a pipe or a device, one after another, in bounded memory. The file is open while this lives.
class LineReader {
public:
    /// `longestLine` and `largest` (of the whole text) in bytes.
    static Result<LineReader> open(const std::string& path, std::size_t longestLine, std::int64_t largest);
    LineReader(LineReader&& other) noexcept;
    LineReader& operator=(LineReader&&) = delete;
    LineReader(const LineReader&) = delete;
    LineReader& operator=(const LineReader&) = delete;
    ~LineReader();

    /// Reads the next line, without its line feed; false at the end. The text is valid until the next call. Refuses a
    /// line or a text that is too long, and what the disk refuses; the sentence begins in the middle, for one who says
    /// where ("…: the line is too long for an entry.").
    Result<bool> next(std::string_view& line);

private:
    LineReader(int file, std::size_t longestLine, std::int64_t largest)
        : m_file(file), m_longestLine(longestLine), m_left(largest) {}
    Result<bool> readMore();

    int m_file;
    std::size_t m_longestLine;
    std::int64_t m_left; ///< bytes that the text may still have
    std::string m_read;  ///< read and not yet given, from m_at on
    std::size_t m_at = 0;
    bool m_isAtEnd = false;
};

} // namespace caprail
