// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// What the verbs share: their arguments, their complaints, and records opened for reading.
#include "command_line.h"

#include <QCommandLineParser>
#include <assessment/assessment.h>
#include <sheet/sheet.h>
#include <store/file/record_file.h>

namespace caprail::verbs {

/// To standard output, as UTF-8.
void print(const QString& text);
/// One sentence to standard error; gives back the exit code.
int complain(ExitCode exitCode, const QString& sentence);
/// As above, and names the place where the sentence does not.
int complain(ExitCode exitCode, const QString& where, const Problem& problem);

QCommandLineOption flag(const char* name);
QCommandLineOption valued(const char* name);

/// A verb's arguments; wrong ones are answered with its usage.
class Call {
public:
    Call(const char* verb, const QStringList& arguments, qsizetype positional,
         std::initializer_list<QCommandLineOption> options);
    [[nodiscard]] bool isGood() const { return m_isGood; }
    [[nodiscard]] QString at(qsizetype i) const { return m_parser.positionalArguments().at(i); }
    [[nodiscard]] bool has(const char* option) const { return m_parser.isSet(QString::fromUtf8(option)); }
    [[nodiscard]] QString value(const char* option) const { return m_parser.value(QString::fromUtf8(option)); }
    [[nodiscard]] int refuseUsage() const;

private:
    QString m_verb;
    QCommandLineParser m_parser;
    bool m_isGood = false;
};

Result<QByteArray> readFile(const QString& path, qint64 largest = 64 * 1024 * 1024);

/// A record opened for reading only, folded and assessed.
struct Opened {
    RecordFile file;
    Facts facts;
    Assessment assessment;
};
Result<Opened> openRecord(const QString& path);

/// Paper and units as `--letter` and `--metric` ask.
SheetOptions sheetOptions(const Call& call);
/// What a sheet of an opened record is made from; `assessment` in the units of the sheet. Both must outlive it.
SheetSource sheetSource(const Opened& record, const Assessment& assessment);

} // namespace caprail::verbs
