// SPDX-License-Identifier: GPL-3.0-or-later
#include "call.h"

#include "verbs.h"

#include <QDateTime>
#include <QFile>
#include <cstdio>
#include <ledger/remarks.h>
#include <units/plain_text.h>
#include <window/preferences.h>

namespace caprail::verbs {

namespace {

void write(std::FILE* to, const std::string& bytes) {
    std::fwrite(bytes.data(), 1, bytes.size(), to);
}

} // namespace

void print(const QString& text) {
    write(stdout, visibleLines(text.toStdString()));
}

void print(const QJsonDocument& json) {
    write(stdout, visibleJson(json.toJson().toStdString()));
}

QString lineOf(std::string_view text) {
    return QString::fromStdString(visibly(text));
}

int complain(ExitCode exitCode, const QString& sentence) {
    write(stderr, visibleLines((QStringLiteral("caprail: ") + sentence + QLatin1Char('\n')).toStdString()));
    return exitCode;
}

int complain(ExitCode exitCode, const QString& place, const Problem& problem) {
    const QString where = lineOf(place.toStdString());
    const QString sentence = QString::fromStdString(problem.sentence);
    return complain(exitCode, sentence.contains(where) ? sentence : where + QStringLiteral(": ") + sentence);
}

QCommandLineOption flag(const char* name) {
    return QCommandLineOption(QString::fromUtf8(name));
}
QCommandLineOption valued(const char* name) {
    return QCommandLineOption(QString::fromUtf8(name), QString(), QStringLiteral("value"));
}

Call::Call(const char* verb, const QStringList& arguments, qsizetype positional,
           std::initializer_list<QCommandLineOption> options)
    : m_verb(QString::fromUtf8(verb)) {
    m_parser.setSingleDashWordOptionMode(QCommandLineParser::ParseAsLongOptions);
    m_parser.addOptions(options);
    m_isGood = m_parser.parse(QStringList{m_verb} + arguments) && m_parser.positionalArguments().size() == positional;
}

int Call::refuseUsage() const {
    const QString reason =
        m_parser.errorText().isEmpty() ? QStringLiteral("the arguments do not fit") : m_parser.errorText();
    return complain(wrongUsage, QStringLiteral("%1: %2.\n%3").arg(m_verb, reason, usage()));
}

Result<QByteArray> readFile(const QString& path, qint64 largest) {
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly)) {
        return refuse(path.toStdString() + " cannot be read (" + file.errorString().toStdString() +
                      "): check the path.");
    }
    if (file.size() > largest) {
        return refuse(path.toStdString() + " is larger than 64 MiB: this is not such a file.");
    }
    return file.readAll();
}

Result<Opened> openRecord(const QString& path) {
    auto file = RecordFile::open(path.toStdString(), OpenMode::readOnly);
    if (!file) {
        return tl::unexpected(file.error());
    }
    Facts facts = fold(file->ledger());
    Assessment assessment = assess(facts);
    return Opened{std::move(*file), std::move(facts), std::move(assessment)};
}

UtcTime now() {
    return {QDateTime::currentMSecsSinceEpoch()};
}

QString remarksOn(const Ledger& ledger) {
    constexpr std::size_t most = 20;
    QString text;
    for (const auto& remarks : {salvageRemarks(ledger), clockRemarks(ledger, now())}) {
        for (std::size_t i = 0; i < remarks.size() && i < most; ++i) {
            text += QString::fromStdString(remarks[i].sentence) + QLatin1Char('\n');
        }
        if (remarks.size() > most) {
            text += QStringLiteral("%1 more such entries.\n").arg(remarks.size() - most);
        }
    }
    return text;
}

SheetOptions sheetOptions(const Call& call) {
    SheetOptions options;
    options.pageSize = call.has("letter") ? QPageSize::Letter : QPageSize::A4;
    if (call.has("metric")) {
        options.units = {LengthUnit::millimetre, TorqueUnit::newtonMetre, '.'};
    }
    // As the sheet speaks the chosen language, it writes the chosen mark.
    options.units.decimalMark = Preferences::load().units.decimalMark;
    options.now = now();
    options.appVersion = QStringLiteral(CAPRAIL_VERSION);
    return options;
}

SheetSource sheetSource(const Opened& record, const Assessment& assessment) {
    return {record.file.ledger(), record.facts, assessment, [&record](const std::string& sha256) {
                const auto bytes = record.file.attachmentBytes(sha256);
                return bytes ? QByteArray::fromStdString(*bytes) : QByteArray();
            }};
}

} // namespace caprail::verbs
