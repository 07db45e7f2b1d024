// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QStringList>
#include <optional>

namespace caprail {

/// Exit codes of the command line.
enum ExitCode {
    done = 0,        ///< it was done, or the answer is yes
    answerIsNo = 1,  ///< the answer is no: a damaged file, an entry that was refused
    unusable = 2,    ///< the input cannot be used at all
    wrongUsage = 64, ///< the call itself is wrong (as in BSD sysexits)
};

/// Runs the verb that the arguments name (without the program's own name); nothing when they name none, so that the
/// window is to open. Results go to standard output, errors to standard error as one sentence.
std::optional<int> runVerb(const QStringList& arguments);

/// Whether the verb needs fonts and painting, hence a GUI application object (on the offscreen platform).
bool needsPainting(const QString& verb);

} // namespace caprail
