// SPDX-License-Identifier: GPL-3.0-or-later
#include "verbs.h"

#include "assessment_json.h"
#include "call.h"
#include "check_verb.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <ledger/entry_json.h>
#include <session/filled.h>
#include <session/now.h>
#include <session/record_session.h>
#include <sheet/logo.h>
#include <sheet/sheet.h>
#include <shop/table_export.h>
#include <store/care/salvage.h>
#include <store/text/text_form.h>

namespace caprail::verbs {

namespace {

/// The ledger as text to standard output. Photos are files of their own, which it cannot take: that is said.
int printLedger(const RecordFile& file, const QString& path) {
    const auto written = toStandardOutput(QStringLiteral("ledger.jsonl"), [&](const QString& text) {
        return exportLedger(file.ledger(), pathBytes(text));
    });
    if (!written) {
        return complain(answerIsNo, path, written.error());
    }
    std::int64_t photos = 0;
    for (std::int64_t n = 1; n <= file.ledger().size(); ++n) {
        photos += file.ledger().at(n).body.is<AttachmentAdded>() ? 1 : 0;
    }
    return photos == 0 ? int(done)
                       : complain(done, QStringLiteral("%1: its photos (%2) are not printed: “--ledger OUT.jsonl” writes them "
                                                       "beside the text.")
                                            .arg(path)
                                            .arg(photos));
}

} // namespace

int show(const QStringList& arguments) {
    const Call call("show", arguments, 1);
    if (!call.isGood()) {
        return call.refuseUsage();
    }
    const Units units = unitsOf(call);
    const auto record = openRecord(call.at(0), units);
    if (!record) {
        return complain(unusable, call.at(0), record.error());
    }
    if (call.has("json")) {
        QJsonObject json = assessmentJson(record->file.ledger(), record->facts, record->assessment);
        json["signatures"] = signaturesJson(record->file.ledger());
        json["results"] = resultsJson(record->facts, record->assessment);
        json["remarks"] =
            QJsonArray::fromStringList(remarksOn(record->file.ledger()).split(QLatin1Char('\n'), Qt::SkipEmptyParts));
        print(QJsonDocument(json));
        return done;
    }
    print(remarksOn(record->file.ledger()));
    (void)tellSignatures(record->file.ledger(), call.at(0));
    print(assessmentText(record->file.ledger(), record->facts, record->assessment, units));
    return done;
}

int sheet(const QStringList& arguments) {
    if (arguments.contains(QStringLiteral("--difference"))) {
        return sheetOfDifference(arguments);
    }
    const Call call("sheet", arguments, 2);
    if (!call.isGood()) {
        return call.refuseUsage();
    }
    if (const auto refused = refuseSheetPath(call, {QStringLiteral(".pdf"), QStringLiteral(".png")})) {
        return *refused;
    }
    SheetOptions options = sheetOptions(call);
    // Sentences in the assessment are written in the sheet's units.
    const auto record = openRecord(call.at(0), options.units);
    if (!record) {
        return complain(unusable, call.at(0), record.error());
    }
    options.mayReplace = call.has("replace");
    if (call.has("logo")) {
        const auto logo = sheet::readLogo(call.value("logo"));
        if (!logo) {
            return complain(unusable, call.value("logo"), logo.error());
        }
        options.logo = *logo;
    }
    const SheetSource source = sheetSource(*record);
    if (call.at(1).endsWith(QLatin1String(".png"), Qt::CaseInsensitive)) {
        const auto pictures = writeSheetPages(source, call.at(1), options);
        return pictures ? int(done) : complain(answerIsNo, call.at(1), pictures.error());
    }
    const auto written = toOutput(call.at(1), QStringLiteral("sheet.pdf"),
                                  [&](const QString& path) { return writeSheet(source, path, options); });
    return written ? int(done) : complain(answerIsNo, call.at(1), written.error());
}

int exportRecord(const QStringList& arguments) {
    const bool isLedger = arguments.contains(QStringLiteral("--ledger"));
    const Call call("export", arguments, isLedger ? 1 : 2);
    if (!call.isGood()) {
        return call.refuseUsage();
    }
    if (isLedger && call.has("bom")) {
        return complain(wrongUsage, QStringLiteral("export: --bom is for tables, not for a ledger as text."));
    }
    if (isLedger) {
        const auto file = RecordFile::open(call.path(0), OpenMode::readOnly);
        if (!file) {
            return complain(unusable, call.at(0), file.error());
        }
        sayRemark(*file);
        if (call.value("ledger") == QLatin1String("-")) {
            return printLedger(*file, call.at(0));
        }
        const auto written = exportLedger(*file, pathBytes(call.value("ledger")));
        return written ? int(done) : complain(answerIsNo, call.value("ledger"), written.error());
    }
    if (call.at(1) == QLatin1String("-")) {
        return complain(wrongUsage, QStringLiteral("export: tables are a folder of files, which standard output cannot take: "
                                                   "name a folder, or print the ledger with “--ledger -”."));
    }
    const auto record = openRecord(call.at(0));
    if (!record) {
        return complain(unusable, call.at(0), record.error());
    }
    const auto written = exportTables(record->file.ledger(), record->facts, record->assessment, call.path(1),
                                      {.withByteOrderMark = call.has("bom")});
    return written ? int(done) : complain(answerIsNo, call.at(1), written.error());
}

int importLedger(const QStringList& arguments) {
    const Call call("import", arguments, 2);
    if (!call.isGood()) {
        return call.refuseUsage();
    }
    const auto made =
        caprail::importLedger(call.at(0) == QLatin1String("-") ? "/dev/stdin" : call.path(0), call.path(1),
                              now());
    if (!made) {
        return complain(unusable, call.at(0), made.error());
    }
    // A text that was cut off at the end of a line looks whole: these are what the person compares.
    print(filled(QStringLiteral("%1 was made: %2 entries, %3 attachments, seal %4.\n"), lineOf(call.path(1)),
                 made->entries, made->attachments, QString::fromStdString(shortForm(made->seal))));
    if (made->outside > 0) {
        print(QStringLiteral("%1 of them came without seals: an entry before them says so.\n").arg(made->outside));
    }
    // A shop brings its old records in: what the rules of today would not have let through is kept, and said.
    return reviewed(call.path(1));
}

int salvage(const QStringList& arguments) {
    const Call call("salvage", arguments, 2);
    if (!call.isGood()) {
        return call.refuseUsage();
    }
    const auto made = caprail::salvage(call.path(0), call.path(1), now());
    if (!made) {
        return complain(unusable, call.at(0), made.error());
    }
    print(QStringLiteral("%1 entries were kept, %2 of them did not fit their seal, %3 are lost.\n")
              .arg(made->kept)
              .arg(made->unsealed.size())
              .arg(made->lost.size()));
    for (const auto& sentence : made->sentences) {
        print(lineOf(sentence) + QLatin1Char('\n'));
    }
    return made->isWhole() ? done : answerIsNo;
}

int append(const QStringList& arguments) {
    const Call call("append", arguments, 2);
    if (!call.isGood()) {
        return call.refuseUsage();
    }
    const auto text = readFile(call.at(1));
    if (!text) {
        return complain(unusable, call.at(1), text.error());
    }
    auto session = RecordSession::open(call.at(0));
    if (!session) {
        return complain(unusable, call.at(0), session.error());
    }
    if ((*session)->isReadOnly()) {
        return complain(answerIsNo, call.at(0) + QStringLiteral(": ") + (*session)->readOnlyReason());
    }
    if (const QString notice = (*session)->notice(); !notice.isEmpty()) {
        complain(done, notice);
    }
    // A single entry may stand over several lines; otherwise there is one a line.
    const bool isOne = QJsonDocument::fromJson(*text).isObject();
    int number = 0;
    for (const QByteArray& line : isOne ? QList<QByteArray>{*text} : text->split('\n')) {
        ++number;
        if (line.trimmed().isEmpty()) {
            continue;
        }
        const QString where = isOne ? call.at(1) : filled(QStringLiteral("%1, line %2"), call.at(1), number);
        auto draft = fromJson(std::string_view(line.constData(), static_cast<std::size_t>(line.size())));
        if (!draft) {
            return complain(unusable, where, draft.error());
        }
        if (const auto may = mayBeMadeNow(*draft); !may) {
            return complain(answerIsNo, where, may.error());
        }
        if (!draft->person.empty()) {
            (*session)->setPerson(QString::fromStdString(draft->person));
        }
        const auto sequence = (*session)->append(std::move(draft->body));
        if (!sequence) {
            return complain(answerIsNo, where, sequence.error());
        }
        print(QString::number(*sequence) + QLatin1Char('\n'));
        if (!flushPrinted()) {
            return done; // it is stored, but nobody was told: nothing more is, and the end says why
        }
    }
    return done;
}

} // namespace caprail::verbs
