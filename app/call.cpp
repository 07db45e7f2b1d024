// SPDX-License-Identifier: GPL-3.0-or-later
#include "call.h"

#include "verb_table.h"
#include "verbs.h"

#include <QJsonArray>
#include <QTemporaryDir>
#include <algorithm>
#include <base/plain_text.h>
#include <cerrno>
#include <cstdio>
#include <cstring>
#include <filesystem>
#include <ledger/remarks.h>
#include <session/now.h>
#include <store/file/output_file.h>
#include <store/file/read_file.h>
#include <unistd.h>
#include <window/preferences.h>

namespace caprail::verbs {

namespace {

constexpr std::int64_t largestInput = std::int64_t{64} * 1024 * 1024;

struct Printed {
    bool isAny = false;
    int failure = 0; ///< errno of the first time that something could not be written
};
Printed printed;

/// As UTF-8; what is hidden, and the bytes of a file's name that are no text, can be seen.
std::string visible(const QString& text) {
    return visibleLines(pathBytes(text));
}

void note(bool isWritten) {
    if (!isWritten && printed.failure == 0) {
        printed.failure = errno == 0 ? EIO : errno;
    }
}

bool printBytes(const std::string& bytes) {
    printed.isAny = true;
    note(std::fwrite(bytes.data(), 1, bytes.size(), stdout) == bytes.size());
    return printed.failure == 0;
}

} // namespace

bool print(const QString& text) {
    return printBytes(visible(text));
}

bool print(const QJsonDocument& json) {
    return printBytes(visibleJson(json.toJson().toStdString()));
}

bool printMember(const QJsonObject& member, bool isFirst) {
    const QByteArray alone = QJsonDocument(QJsonArray{member}).toJson(); // "[\n    {…}\n]\n"
    return printBytes((isFirst ? "" : ",\n") + visibleJson(alone.sliced(2, alone.size() - 5).toStdString()));
}

Result<void> toStandardOutput(const QString& name, const std::function<Result<void>(const QString&)>& write) {
    const QTemporaryDir folder;
    if (!folder.isValid()) {
        return refuse("no folder for unfinished files can be made: " + folder.errorString().toStdString());
    }
    const QString path = folder.filePath(name);
    if (auto written = write(path); !written) {
        return written;
    }
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly)) {
        return refuse(file.errorString().toStdString());
    }
    printBytes(file.readAll().toStdString()); // what does not arrive is told by `finish`
    return {};
}

Result<void> toOutput(const QString& path, const QString& name,
                      const std::function<Result<void>(const QString&)>& write) {
    return path == QLatin1String("-") ? toStandardOutput(name, write) : write(path);
}

bool flushPrinted() {
    note(std::fflush(stdout) == 0);
    return printed.failure == 0;
}

int finish(int exitCode) {
    if (printed.isAny) {
        note(std::fflush(stdout) == 0);
        note(std::fclose(stdout) == 0); // a network folder may refuse only then
    }
    return printed.failure == 0 ? exitCode
                                : complain(exitCode == done ? answerIsNo : static_cast<ExitCode>(exitCode),
                                           QStringLiteral("what was to be printed could not be written whole: %1.")
                                               .arg(QString::fromLocal8Bit(std::strerror(printed.failure))));
}

QString lineOf(std::string_view text) {
    return QString::fromStdString(visibly(text));
}

int complain(ExitCode exitCode, const QString& sentence) {
    const std::string bytes = visible(QStringLiteral("caprail: ") + sentence + QLatin1Char('\n'));
    std::fwrite(bytes.data(), 1, bytes.size(), stderr);
    return exitCode;
}

int complain(ExitCode exitCode, const QString& place, const Problem& problem) {
    const QString where = lineOf(pathBytes(place));
    const QString sentence = qtPath(problem.sentence); // it may name a file that is no text
    return complain(exitCode, sentence.contains(where) ? sentence : where + QStringLiteral(": ") + sentence);
}

Call::Call(const char* verb, const QStringList& arguments, qsizetype positional, qsizetype most)
    : m_verb(QString::fromUtf8(verb)) {
    m_parser.setSingleDashWordOptionMode(QCommandLineParser::ParseAsLongOptions);
    m_parser.addOptions(optionsOf(verb));
    m_isGood = m_parser.parse(QStringList{m_verb} + arguments) && count() >= positional &&
               count() <= std::max(positional, most);
}

int Call::refuseUsage() const {
    QString reason = m_parser.errorText();
    while (reason.endsWith(QLatin1Char('.'))) { // some of Qt's sentences bring their own
        reason.chop(1);
    }
    const VerbText* verb = verbNamed(m_verb);
    return complain(wrongUsage, QStringLiteral("%1: %2.\n\n%3")
                                    .arg(m_verb, reason.isEmpty() ? QStringLiteral("the arguments do not fit") : reason,
                                         verb == nullptr ? usage() : helpOf(*verb)));
}

Result<QByteArray> readFile(const QString& path) {
    const auto bytes = readWholeFile(path == QLatin1String("-") ? "/dev/stdin" : pathBytes(path), largestInput);
    return bytes ? Result<QByteArray>(QByteArray::fromStdString(*bytes)) : tl::unexpected(bytes.error());
}

std::optional<int> refuseSheetPath(const Call& call, const QStringList& endings) {
    const QString out = call.at(1);
    if (out == QLatin1String("-")) {
        return ::isatty(STDOUT_FILENO) == 0
                   ? std::optional<int>()
                   : complain(wrongUsage, QStringLiteral("sheet: a terminal cannot show a PDF: name a file, or let another "
                                                         "program take it (caprail sheet FILE - | …)."));
    }
    const bool isNamed = std::any_of(endings.begin(), endings.end(),
                                     [&](const QString& ending) { return out.endsWith(ending, Qt::CaseInsensitive); });
    if (!isNamed) {
        return complain(wrongUsage, QStringLiteral("sheet: the name of a sheet ends in %1, which “%2” does not.")
                                        .arg(endings.join(QStringLiteral(" or ")), out));
    }
    QStringList places{out};
    const bool isPages = out.endsWith(QLatin1String(".png"), Qt::CaseInsensitive);
    const std::filesystem::path folder = std::filesystem::path(call.path(1)).parent_path();
    for (const QString& page : isPages ? existingPages(out) : QStringList()) {
        places << qtPath((folder / pathBytes(page)).string());
    }
    for (const QString& place : places) {
        const std::string path = pathBytes(place);
        if (const auto good = judgeOutputPath(path, OutputSort::sheet, call.path(0)); !good) {
            return complain(wrongUsage, place, good.error());
        }
        std::error_code error;
        const bool stands = std::filesystem::exists(std::filesystem::symlink_status(path, error));
        const bool isWritten = !isPages || place != out; // pages go beside that name, not to it
        if (stands && isWritten && !call.has("replace")) {
            return complain(answerIsNo,
                            QStringLiteral("“%1” exists already: choose another name, or let it be replaced "
                                           "with --replace.")
                                .arg(place));
        }
    }
    return {};
}

Result<Opened> openRecord(const QString& path, const Units& units) {
    auto file = RecordFile::open(pathBytes(path), OpenMode::readOnly);
    if (!file) {
        return tl::unexpected(file.error());
    }
    sayRemark(*file);
    Facts facts = fold(file->ledger());
    Assessment assessment = assess(facts, units);
    return Opened{std::move(*file), std::move(facts), std::move(assessment)};
}

void sayRemark(const RecordFile& file) {
    if (!file.remark().empty()) {
        complain(done, QString::fromStdString(file.remark()));
    }
}

QString remarksOn(const Ledger& ledger) {
    constexpr std::size_t most = 20;
    QString text;
    for (const auto& remarks : {salvageRemarks(ledger), outsideRemarks(ledger), clockRemarks(ledger, now())}) {
        for (std::size_t i = 0; i < remarks.size() && i < most; ++i) {
            text += QString::fromStdString(remarks[i].sentence) + QLatin1Char('\n');
        }
        if (remarks.size() > most) {
            text += QStringLiteral("%1 more such entries.\n").arg(remarks.size() - most);
        }
    }
    return text;
}

Units unitsOf(const Call& call) {
    return call.has("metric") ? Units{LengthUnit::millimetre, TorqueUnit::newtonMetre, '.'} : Units{};
}

SheetOptions sheetOptions(const Call& call) {
    SheetOptions options;
    options.pageSize = call.has("letter") ? QPageSize::Letter : QPageSize::A4;
    options.units = unitsOf(call);
    // As the sheet speaks the chosen language, it writes the chosen mark.
    options.units.decimalMark = Preferences::load().units.decimalMark;
    options.now = now();
    options.appVersion = QStringLiteral(CAPRAIL_VERSION);
    return options;
}

SheetSource sheetSource(const Opened& record) {
    return {record.file.ledger(), record.facts, record.assessment, [&record](const std::string& sha256) {
                const auto bytes = record.file.attachmentBytes(sha256);
                return bytes ? QByteArray::fromStdString(*bytes) : QByteArray();
            }};
}

} // namespace caprail::verbs
