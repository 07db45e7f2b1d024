// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// What each verb of the command line takes and means, told once: the parser, the usage, `help VERB`, and the completions
/// of the shells are made from it, and a test compares the man page with it.
#include <QCommandLineOption>
#include <QStringList>
#include <vector>

namespace caprail::verbs {

struct OptionText {
    const char* name;
    const char* value; ///< what its value is called, "PICTURE"; empty: it takes none
    const char* meaning;
};

/// One way to call a verb: what stands behind it, and what that does, in a few words.
struct CallText {
    const char* arguments;
    const char* purpose;
};

struct VerbText {
    const char* name;
    std::vector<CallText> calls;
    const char* meaning; ///< a paragraph
    std::vector<OptionText> options;
    int (*run)(const QStringList& arguments); ///< its arguments after its name; gives the exit code (command_line.h)
};

const std::vector<VerbText>& allVerbs();
const VerbText* verbNamed(const QString& name);
/// For the parser. Throws nothing; a verb that is not in the table has no options.
QList<QCommandLineOption> optionsOf(const char* verb);

/// A line per call, and what the exit codes are.
QString usage();
/// Its calls, its meaning, its options.
QString helpOf(const VerbText& verb);
/// A script that completes verbs, options and files in "bash", "zsh" or "fish"; empty for another shell.
QString completionsFor(const QString& shell);

} // namespace caprail::verbs
