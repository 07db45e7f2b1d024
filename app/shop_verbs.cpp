// SPDX-License-Identifier: GPL-3.0-or-later
/// The verbs that look at many records.
#include "call.h"
#include "database_verbs.h"
#include "passphrase.h"
#include "verbs.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QStandardPaths>
#include <ledger/qt_text.h>
#include <ledger/remarks.h>
#include <session/now.h>
#include <shop/build_comparison.h>
#include <shop/hand_over.h>
#include <shop/list_columns.h>
#include <shop/listing_pages.h>
#include <shop/shop_scan.h>

namespace caprail::verbs {

namespace {

/// Where the window keeps its index too.
std::string cacheFolder() {
    return (QStandardPaths::writableLocation(QStandardPaths::CacheLocation) + QStringLiteral("/shop")).toStdString();
}

/// How a field of the summary stands in JSON; undefined: nothing is known, and it is left out.
QJsonValue jsonValue(const std::string& text) {
    return qtText(text);
}
QJsonValue jsonValue(std::int64_t number) {
    return static_cast<qint64>(number);
}
QJsonValue jsonValue(UtcTime time) {
    return time == UtcTime() ? QJsonValue(QJsonValue::Undefined) : QJsonValue(qtText(format(time)));
}
QJsonValue jsonValue(const std::optional<Date>& day) {
    return day ? QJsonValue(qtText(format(*day))) : QJsonValue(QJsonValue::Undefined);
}
template <Worded E> QJsonValue jsonValue(E value) {
    return qtWord(value);
}

QJsonObject jsonOf(const ShopRow& row) {
    QJsonObject o{{"file", qtText(plainLine(row.file.path))}, {"reading", qtWord(row.reading)}};
    if (!isRecord(row.reading)) {
        o.insert("sentence", qtText(row.sentence));
        return o;
    }
    eachSummaryField([&](const auto& column) {
        if (const QJsonValue value = jsonValue(row.summary.*column.member); column.isInJson && !value.isUndefined()) {
            o.insert(qtText(column.name), value);
        }
    });
    if (row.summary.entries > 0) {
        o.insert("is_in_future", isInFuture(row.summary.lastEntry, now()));
    }
    return o;
}

/// "2026-05-04 09:30", in UTC.
std::string moment(UtcTime time) {
    const std::string text = format(time);
    return text.substr(0, 10) + " " + text.substr(11, 5);
}

} // namespace

namespace {

/// The one place that a call asks the window for; empty: it asks for the list, or there is no display.
bool isForWindow(const Call& call) {
    const bool hasDisplay = qEnvironmentVariableIsSet("DISPLAY") || qEnvironmentVariableIsSet("WAYLAND_DISPLAY") ||
                            qEnvironmentVariableIsSet("QT_QPA_PLATFORM");
    return call.isGood() && hasDisplay && !call.has("list") && !call.has("json") && !call.has("search");
}

/// The records of a shop's database, each printed as it comes: the list may be longer than the memory has room for.
int listDatabase(const Call& call) {
    const QString name = call.value("from");
    ListingWish wish;
    wish.search = call.value("search").trimmed().toStdString();
    wish.now = now();
    const bool isJson = call.has("json");
    bool isFirst = true;
    const auto printed = [&](const ShopRow& row) -> Result<void> {
        if (isJson) {
            if (isFirst) {
                print(QStringLiteral("[\n"));
            }
            printMember(jsonOf(row), isFirst);
        } else {
            print(qtText(listLine(row, {wish.now, moment})) + QLatin1Char('\n'));
        }
        isFirst = false;
        return {};
    };
    auto connection = openDatabase(name);
    if (connection && !isJson) {
        print(qtText(listHead()) + QLatin1Char('\n'));
    }
    const auto listed = connection ? ListingPages(*connection).each(wish, printed) : tl::unexpected(connection.error());
    if (!listed) {
        return cannotUse(name, listed.error());
    }
    if (isJson) {
        print(isFirst ? QStringLiteral("[\n]\n") : QStringLiteral("\n]\n"));
    }
    return done;
}

} // namespace

QString shopWindowFolder(const QStringList& arguments) {
    const Call call("shop", arguments, 1);
    return isForWindow(call) && !call.has("from") ? call.at(0) : QString();
}

QString shopWindowDatabase(const QStringList& arguments) {
    const Call call("shop", arguments, 0);
    return isForWindow(call) ? call.value("from") : QString();
}

int shop(const QStringList& arguments) {
    if (const Call call("shop", arguments, 0); call.isGood() && call.has("from")) {
        return listDatabase(call);
    }
    const Call call("shop", arguments, 1);
    if (!call.isGood() || call.has("from")) {
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
        print(QJsonDocument(records));
    } else {
        print(qtText(listHead()) + QLatin1Char('\n'));
        for (const ShopRow& row : listing->rows) {
            print(qtText(listLine(row, {now(), moment})) + QLatin1Char('\n'));
        }
    }
    for (const UnreadFolder& folder : listing->report.unread) {
        complain(done, qtText(folder.sentence));
    }
    return done;
}

int handOver(const QStringList& arguments) {
    const Call call("handover", arguments, 2);
    if (!call.isGood()) {
        return call.refuseUsage();
    }
    if (call.has("sign")) {
        if (const auto refused = signNow(call)) {
            return *refused;
        }
    }
    const SheetOptions options = sheetOptions(call);
    const auto record = openRecord(call.at(0), options.units);
    if (!record) {
        return complain(unusable, call.at(0), record.error());
    }
    const SheetSource source = sheetSource(*record);
    const auto made =
        caprail::handOver(record->file, call.path(1), {options.units, call.has("csv"), [&](const std::string& pdfPath) {
                                                           return writeSheet(source, qtPath(pdfPath), options);
                                                       }});
    if (made && !record->facts.isClosed()) {
        return complain(done, QStringLiteral("%1: the build is not signed off; README.txt and the sheet say so.").arg(call.at(1)));
    }
    return made ? int(done) : complain(answerIsNo, call.at(1), made.error());
}

int sheetOfDifference(const QStringList& arguments) {
    const Call call("sheet", arguments, 2);
    if (!call.isGood()) {
        return call.refuseUsage();
    }
    if (const auto refused = refuseSheetPath(call, {QStringLiteral(".pdf")})) {
        return *refused;
    }
    SheetOptions options = sheetOptions(call);
    const auto record = openRecord(call.at(0), options.units);
    if (!record) {
        return complain(unusable, call.at(0), record.error());
    }
    options.mayReplace = call.has("replace");
    if (call.has("logo")) {
        return complain(wrongUsage, QStringLiteral("sheet: the difference of builds has no logo: leave --logo out."));
    }
    const auto comparison = compareLastBuilds(record->file.ledger());
    if (!comparison) {
        return complain(answerIsNo, call.at(0), comparison.error());
    }
    const SheetSource source = sheetSource(*record);
    const auto written = toOutput(call.at(1), QStringLiteral("difference.pdf"), [&](const QString& path) {
        return writeDifferenceSheet(source, *comparison, path, options);
    });
    return written ? int(done) : complain(answerIsNo, call.at(1), written.error());
}

} // namespace caprail::verbs
