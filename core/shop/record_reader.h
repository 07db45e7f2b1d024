// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <shop/record_summary.h>
#include <base/say.h>

namespace caprail {

/// How much is known of a listed file.
enum class FileReading {
    glanced,    ///< whose engine and the last entry; the rest follows
    assessed,   ///< all of it, every seal verified
    foreign,    ///< no build record
    newer,      ///< of a newer version of this program
    damaged,    ///< or altered: what it says is not believed
    unreadable, ///< not permitted, gone, or its disk does not answer
    beingWritten
};
template <> struct WordsOf<FileReading> {
    static constexpr std::array<Word<FileReading>, 7> list{{{FileReading::glanced, Core::mark("not read yet")},
                                                            {FileReading::assessed, Core::mark("record")},
                                                            {FileReading::foreign, Core::mark("no record")},
                                                            {FileReading::newer, Core::mark("newer")},
                                                            {FileReading::damaged, Core::mark("damaged")},
                                                            {FileReading::unreadable, Core::mark("unreadable")},
                                                            {FileReading::beingWritten, Core::mark("being written")}}};
};
constexpr bool isRecord(FileReading reading) {
    return reading == FileReading::glanced || reading == FileReading::assessed;
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
FileFinding glanceAt(const std::string& path);
/// The whole ledger with its seals, assessed.
FileFinding readWhole(const std::string& path);

} // namespace caprail
