// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <shop/record_summary.h>
#include <store/sqlite/connection_for_many.h>
#include <base/say.h>

namespace caprail {

/// How much is known of a listed file.
enum class FileReading {
    summarised, ///< whose engine and the last entry; the rest follows
    assessed,   ///< all of it, every seal verified
    foreign,    ///< no build record
    newer,      ///< of a newer version of this program
    damaged,    ///< or altered: what it says is not believed
    unreadable, ///< not permitted, gone, or its disk does not answer
    beingWritten,
    unfinished ///< it takes too much computing to read; nothing is said of it
};
template <> struct WordsOf<FileReading> {
    static constexpr std::array<Word<FileReading>, 8> list{{{FileReading::summarised, Core::mark("not read yet")},
                                                            {FileReading::assessed, Core::mark("record")},
                                                            {FileReading::foreign, Core::mark("no record")},
                                                            {FileReading::newer, Core::mark("newer")},
                                                            {FileReading::damaged, Core::mark("damaged")},
                                                            {FileReading::unreadable, Core::mark("unreadable")},
                                                            {FileReading::beingWritten, Core::mark("being written")},
                                                            {FileReading::unfinished, Core::mark("not finished")}}};
};
constexpr bool isRecord(FileReading reading) {
    return reading == FileReading::summarised || reading == FileReading::assessed;
}

/// What was found in a file. `digest` holds what its reading says; `sentence` why it is no record that can be read.
struct FileFinding {
    FileReading reading = FileReading::unreadable;
    std::string sentence;
    RecordDigest digest;
};

/// Both look at a file without a trace: no lock is taken, nothing is made beside it, no byte and no time of it changes.
/// `path` is absolute, and may hold any bytes. A file that someone writes to meanwhile is found `beingWritten`.

/// One row of the file: fast, and believed for the list alone.
FileFinding readSummary(const std::string& path);
/// The whole ledger with its seals, assessed.
FileFinding readWhole(const std::string& path);

/// The same for one file after another, faster. Between looks it keeps the last file open to be read; it goes with it.
class RecordReader {
public:
    FileFinding readSummary(const std::string& path);
    FileFinding readWhole(const std::string& path);

private:
    ConnectionForMany m_connection;
};

} // namespace caprail
