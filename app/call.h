// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// What the verbs share: their arguments, their complaints, and records opened for reading.
#include "command_line.h"

#include <QCommandLineParser>
#include <QJsonDocument>
#include <QJsonObject>
#include <assessment/assessment.h>
#include <functional>
#include <sheet/sheet.h>
#include <store/file/path_text.h>
#include <store/file/record_file.h>

namespace caprail::verbs {

/// To standard output, as UTF-8; what cannot be seen is made visible (base/plain_text.h), so that no text of a record
/// steers the terminal. Line feeds stay. What cannot be written there is told at the end, by `finish`; false from then
/// on.
bool print(const QString& text);
/// JSON likewise: what cannot be seen is escaped, so that its value stays what it is.
bool print(const QJsonDocument& json);
/// One member of an array of objects, as it stands in a document that holds all of them; "[\n" goes before the first,
/// and
/// "\n]\n" behind the last.
bool printMember(const QJsonObject& member, bool isFirst);
/// What `write` makes as a file, byte by byte to standard output: a sheet or a ledger that another program takes over a
/// pipe. The file lies in a folder of its own, which is gone afterwards; its name ends as `name` does. Refuses as `write`
/// does, and then prints nothing.
Result<void> toStandardOutput(const QString& name, const std::function<Result<void>(const QString& path)>& write);
/// The same where `path` is “-”; else `write` has that path itself.
Result<void> toOutput(const QString& path, const QString& name,
                      const std::function<Result<void>(const QString& path)>& write);
/// Brings what was printed to where it goes, now; false when it did not arrive.
bool flushPrinted();
/// The exit code of the whole call: what a verb gave, unless something that it printed did not arrive (a full disk, a
/// closed pipe); then that is said, and it is no success. Nothing can be printed afterwards.
int finish(int exitCode);
/// A text of a record or a file's name as one line.
QString lineOf(std::string_view text);
/// One sentence to standard error, as visible as above; gives back the exit code.
int complain(ExitCode exitCode, const QString& sentence);
/// As above, and names the place where the sentence does not.
int complain(ExitCode exitCode, const QString& where, const Problem& problem);

/// A verb's arguments, as the table of verbs has them; wrong ones are answered with its help.
class Call {
public:
    /// `most`: where it takes more than `positional` or as many as these.
    Call(const char* verb, const QStringList& arguments, qsizetype positional, qsizetype most = 0);
    [[nodiscard]] bool isGood() const { return m_isGood; }
    [[nodiscard]] qsizetype count() const { return m_parser.positionalArguments().size(); }
    [[nodiscard]] QString at(qsizetype i) const { return m_parser.positionalArguments().at(i); }
    /// An argument as the bytes of a file's name.
    [[nodiscard]] std::string path(qsizetype i) const { return pathBytes(at(i)); }
    [[nodiscard]] bool has(const char* option) const { return m_parser.isSet(QString::fromUtf8(option)); }
    [[nodiscard]] QString value(const char* option) const { return m_parser.value(QString::fromUtf8(option)); }
    [[nodiscard]] int refuseUsage() const;

private:
    QString m_verb;
    QCommandLineParser m_parser;
    bool m_isGood = false;
};

/// Of at most 64 MiB. "-" is standard input.
Result<QByteArray> readFile(const QString& path);

/// A record opened for reading only, folded and assessed; what the assessment says is in those units.
struct Opened {
    RecordFile file;
    Facts facts;
    Assessment assessment;
};
Result<Opened> openRecord(const QString& path, const Units& units = {});
/// To standard error, what a person should know of how it was opened, if anything: that a write was cut off.
void sayRemark(const RecordFile& file);

/// What whoever reads this ledger should know: salvages, and entries that a clock was wrong for. A sentence a line.
QString remarksOn(const Ledger& ledger);

/// Whether the sheet of the record `call.at(0)` may be written to `call.at(1)`: nothing when it may; otherwise it is
/// complained about, and the exit code is given. The name must end in one of `endings` (".pdf", ".png"); "-" is standard
/// output, which takes a PDF unless it is a terminal.
std::optional<int> refuseSheetPath(const Call& call, const QStringList& endings);

/// As `--metric` asks; inches and pound-feet without.
Units unitsOf(const Call& call);
/// Paper and units as `--letter` and `--metric` ask.
SheetOptions sheetOptions(const Call& call);
/// What a sheet of a record is made from that was opened in the sheet's units. It must outlive what it is made from.
SheetSource sheetSource(const Opened& record);

} // namespace caprail::verbs
