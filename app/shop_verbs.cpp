// SPDX-License-Identifier: GPL-3.0-or-later
/// The verbs that look at many records.
#include "call.h"
#include "verbs.h"

#include <QDateTime>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QStandardPaths>
#include <ledger/qt_text.h>
#include <shop/build_comparison.h>
#include <shop/hand_over.h>
#include <shop/shop_scan.h>

namespace caprail::verbs {

namespace {

/// Where the window keeps its index too.
std::string cacheFolder() {
    return (QStandardPaths::writableLocation(QStandardPaths::CacheLocation) + QStringLiteral("/shop")).toStdString();
}

UtcTime now() {
    return {QDateTime::currentMSecsSinceEpoch()};
}

QJsonObject jsonOf(const ShopRow& row) {
    const RecordSummary& s = row.summary;
    QJsonObject o{{"file", qtText(plainLine(row.file.path))}, {"reading", qtWord(row.reading)}};
    if (!isRecord(row.reading)) {
        o.insert("sentence", qtText(row.sentence));
        return o;
    }
    o.insert("customer", qtText(s.customer));
    o.insert("engine", qtText(s.engine));
    o.insert("serial", qtText(s.serial));
    o.insert("state", qtWord(s.state));
    o.insert("build", static_cast<qint64>(s.build));
    o.insert("round", static_cast<qint64>(s.round));
    o.insert("round_result", qtWord(s.roundResult));
    o.insert("moved", static_cast<qint64>(s.moved));
    o.insert("out", static_cast<qint64>(s.out));
    o.insert("stale", static_cast<qint64>(s.stale));
    o.insert("entries", static_cast<qint64>(s.entries));
    o.insert("who", qtText(s.who));
    o.insert("template", qtText(s.templateName));
    o.insert("layout", qtText(s.layout));
    if (s.entries > 0) {
        o.insert("last_entry", qtText(format(s.lastEntry)));
        o.insert("is_in_future", isInFuture(s.lastEntry, now()));
    }
    if (s.due) {
        o.insert("calibration_due", qtText(format(*s.due)));
    }
    return o;
}

QString lineOf(const ShopRow& row) {
    const RecordSummary& s = row.summary;
    const QString file = qtText(plainLine(row.file.path));
    if (!isRecord(row.reading)) {
        return QStringLiteral("%1: %2. %3\n").arg(file, qtWord(row.reading), qtText(row.sentence));
    }
    QStringList parts{qtText(s.customer), (qtText(s.engine) + QLatin1Char(' ') + qtText(s.serial)).trimmed(),
                      qtWord(s.state)};
    if (s.round > 0) {
        parts << QStringLiteral("round %1 %2").arg(s.round).arg(qtWord(s.roundResult));
    }
    if (s.out > 0) {
        parts << QStringLiteral("%1 out").arg(s.out);
    }
    if (s.stale > 0) {
        parts << QStringLiteral("%1 stale").arg(s.stale);
    }
    if (s.entries > 0) {
        parts << qtText(format(s.lastEntry)).left(16).replace(QLatin1Char('T'), QLatin1Char(' ')) +
                     (isInFuture(s.lastEntry, now()) ? QStringLiteral(" (in the future: a clock was wrong)")
                                                     : QString());
        parts << qtText(s.who);
    }
    parts.removeAll(QString());
    return QStringLiteral("%1: %2\n").arg(file, parts.join(QStringLiteral(", ")));
}

} // namespace

QString shopWindowFolder(const QStringList& arguments) {
    const bool hasDisplay = qEnvironmentVariableIsSet("DISPLAY") || qEnvironmentVariableIsSet("WAYLAND_DISPLAY") ||
                            qEnvironmentVariableIsSet("QT_QPA_PLATFORM");
    const Call call("shop", arguments, 1, {flag("list"), flag("json"), valued("search")});
    return call.isGood() && hasDisplay && !call.has("list") && !call.has("json") && !call.has("search") ? call.at(0)
                                                                                                        : QString();
}

int shop(const QStringList& arguments) {
    const Call call("shop", arguments, 1, {flag("list"), flag("json"), valued("search")});
    if (!call.isGood()) {
        return call.refuseUsage();
    }
    const auto listing = listShop(cacheFolder(), call.path(0), call.value("search").toStdString());
    if (!listing) {
        return complain(unusable, call.at(0), listing.error());
    }
    if (call.has("json")) {
        QJsonArray records;
        for (const ShopRow& row : listing->rows) {
            records.append(jsonOf(row));
        }
        print(QString::fromUtf8(QJsonDocument(records).toJson()));
    } else {
        for (const ShopRow& row : listing->rows) {
            print(lineOf(row));
        }
    }
    for (const UnreadFolder& folder : listing->report.unread) {
        complain(done, qtText(folder.sentence));
    }
    return done;
}

int handOver(const QStringList& arguments) {
    const Call call("handover", arguments, 2, {flag("csv"), flag("letter"), flag("metric")});
    if (!call.isGood()) {
        return call.refuseUsage();
    }
    const auto record = openRecord(call.at(0));
    if (!record) {
        return complain(unusable, call.at(0), record.error());
    }
    const SheetOptions options = sheetOptions(call);
    const Assessment assessment = assess(record->facts, options.units);
    const SheetSource source = sheetSource(*record, assessment);
    const auto made =
        caprail::handOver(record->file, call.path(1), {options.units, call.has("csv"), [&](const std::string& pdfPath) {
                                                           return writeSheet(source, qtPath(pdfPath), options);
                                                       }});
    return made ? int(done) : complain(answerIsNo, call.at(1), made.error());
}

int sheetOfDifference(const QStringList& arguments) {
    const Call call("sheet", arguments, 2, {flag("difference"), flag("letter"), flag("metric"), flag("replace")});
    if (!call.isGood()) {
        return call.refuseUsage();
    }
    if (const auto refused = refuseSheetPlace(call, {QStringLiteral(".pdf")})) {
        return *refused;
    }
    const auto record = openRecord(call.at(0));
    if (!record) {
        return complain(unusable, call.at(0), record.error());
    }
    SheetOptions options = sheetOptions(call);
    options.mayReplace = call.has("replace");
    const auto comparison = compareLastBuilds(record->file.ledger());
    if (!comparison) {
        return complain(answerIsNo, call.at(0), comparison.error());
    }
    const auto written =
        writeDifferenceSheet(sheetSource(*record, record->assessment), *comparison, call.at(1), options);
    return written ? int(done) : complain(answerIsNo, call.at(1), written.error());
}

} // namespace caprail::verbs
