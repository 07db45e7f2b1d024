// SPDX-License-Identifier: GPL-3.0-or-later
/// The verbs that speak with a shop's database.
#include "database_verbs.h"

#include "call.h"
#include "verbs.h"

#include <algorithm>
#include <ledger/qt_text.h>
#include <session/filled.h>
#include <shop/folder_walk.h>
#include <shopserver/fetch.h>
#include <shopserver/held_records.h>
#include <shopserver/publish.h>
#include <shopserver/tables.h>

namespace caprail::verbs {

namespace {

/// Without a look at its tables.
Result<Connection> connected(const QString& service) {
    auto place = parseService(service.toStdString());
    if (!place) {
        return tl::unexpected(place.error());
    }
    Connection database(*place);
    auto open = database.open();
    return open ? Result<Connection>(std::move(database)) : tl::unexpected(open.error());
}

/// Whether the database itself failed or refused, so that nothing could be done; else the answer is no: there is no
/// such record, or it is not as it must be. What the functions of its tables refuse (codes CPR…) is of the record.
ExitCode codeOf(const Connection& database) {
    const bool hasFailed = database.isOffline() || !database.isOpen() ||
                           (!database.lastCode().empty() && !database.lastCode().starts_with("CPR"));
    return hasFailed ? unusable : answerIsNo;
}

int makeDatabase(const Call& call) {
    auto database = connected(call.value("at"));
    const auto made = database ? makeTables(*database) : tl::unexpected(database.error());
    if (!made) {
        return cannotUse(call.value("at"), made.error());
    }
    print(made->before == made->now ? QStringLiteral("The tables are there and up to date.\n")
          : made->before == 0       ? QStringLiteral("The tables were made.\n")
                                    : QStringLiteral("The tables were brought up to date.\n"));
    return done;
}

int showDatabase(const Call& call) {
    auto database = openDatabase(call.value("at"));
    const auto sums = database ? sumsOf(*database) : tl::unexpected(database.error());
    if (!sums) {
        return cannotUse(call.value("at"), sums.error());
    }
    print(filled(QStringLiteral("%1 records, %2 entries, %3 photos and files of %4 bytes.\n"), sums->records,
                 sums->entries, sums->photos, sums->photoBytes));
    return done;
}

/// One record, where one is named, or all of them.
Result<std::vector<std::string>> identitiesMeant(Connection& database, const Call& call) {
    if (call.count() > 1) {
        const auto record = recordMeantBy(database, call.at(1).toStdString());
        return record ? Result<std::vector<std::string>>(std::vector{record->identity})
                      : tl::unexpected(record.error());
    }
    std::vector<std::string> identities;
    const auto read = eachRecord(database, [&](const HeldRecord& record) -> Result<void> {
        identities.push_back(record.identity);
        return {};
    });
    return read ? Result<std::vector<std::string>>(std::move(identities)) : tl::unexpected(read.error());
}

int verifyDatabase(const Call& call) {
    auto database = openDatabase(call.value("at"));
    const auto identities = database ? identitiesMeant(*database, call) : tl::unexpected(database.error());
    if (!identities) {
        return cannotUse(call.value("at"), identities.error(), database ? codeOf(*database) : unusable);
    }
    int exitCode = done;
    std::int64_t good = 0;
    for (const std::string& identity : *identities) {
        const auto verified = verifyHeld(*database, identity);
        if (verified) {
            ++good;
            continue;
        }
        if (codeOf(*database) == unusable) {
            return cannotUse(call.value("at"), verified.error());
        }
        const auto record = recordMeantBy(*database, identity);
        exitCode = complain(answerIsNo, record ? qtText(describe(*record)) : qtText(identity), verified.error());
    }
    print(filled(QStringLiteral("%1 of %2 records verify: every entry fits its seal, every photo its hash.\n"), good,
                 identities->size()));
    return exitCode;
}

int takeAwayFromDatabase(const Call& call) {
    if (call.count() < 2) {
        return call.refuseUsage();
    }
    auto database = openDatabase(call.value("at"));
    const auto taken = database ? takeAway(*database, call.at(1).toStdString()) : tl::unexpected(database.error());
    if (!taken) {
        return cannotUse(call.value("at"), taken.error());
    }
    return *taken ? int(done)
                  : complain(answerIsNo,
                             QStringLiteral("%1: it holds no record with the first seal %2, given as 64 digits.")
                                 .arg(call.value("at"), call.at(1)));
}

} // namespace

int cannotUse(const QString& service, const Problem& problem, ExitCode exitCode) {
    return parseService(service.toStdString()) ? complain(exitCode, service, problem)
                                               : complain(exitCode, qtText(problem.sentence));
}

Result<Connection> openDatabase(const QString& service) {
    auto database = connected(service);
    const auto good = database ? checkTables(*database) : tl::unexpected(database.error());
    return good ? std::move(database) : tl::unexpected(good.error());
}

int database(const QStringList& arguments) {
    const Call call("database", arguments, 1, 2);
    if (!call.isGood() || !call.has("at")) {
        return call.refuseUsage();
    }
    constexpr std::pair<const char*, int (*)(const Call&)> doings[] = {{"make", makeDatabase},
                                                                       {"show", showDatabase},
                                                                       {"verify", verifyDatabase},
                                                                       {"take-away", takeAwayFromDatabase}};
    for (const auto& [name, doing] : doings) {
        if (call.at(0) == QLatin1String(name)) {
            return doing(call);
        }
    }
    return call.refuseUsage();
}

int publish(const QStringList& arguments) {
    const Call call("publish", arguments, 1);
    if (!call.isGood() || !call.has("to")) {
        return call.refuseUsage();
    }
    const auto records = recordsAt(call.path(0));
    if (!records) {
        return complain(unusable, call.at(0), records.error());
    }
    auto database = openDatabase(call.value("to"));
    if (!database) {
        return cannotUse(call.value("to"), database.error());
    }
    int exitCode = done;
    for (const UnreadFolder& folder : records->unread) {
        exitCode = complain(answerIsNo, qtText(folder.sentence));
    }
    RecordPublisher publisher(*database);
    std::size_t told = 0;
    for (const std::string& path : records->paths) {
        const auto record = RecordFile::open(path, OpenMode::readOnly);
        const auto published = record ? publisher.publish(*record) : tl::unexpected(record.error());
        if (published) {
            sayRemark(*record);
            print(filled(QStringLiteral("%1: %2\n"), lineOf(path), qtText(sentenceOf(*published))));
        } else {
            // One of a folder that is no record is passed over, and said.
            const ExitCode code = record ? codeOf(*database) : records->isFolder ? answerIsNo : unusable;
            exitCode = std::max(exitCode, complain(code, qtPath(path), published.error()));
            if (database->isOffline() || !database->isOpen()) {
                return complain(unusable,
                                filled(QStringLiteral("%1 of %2 records are done: the same call goes on from there."),
                                       told, records->paths.size()));
            }
        }
        ++told;
        flushPrinted();
    }
    return exitCode;
}

int fetch(const QStringList& arguments) {
    const Call call("fetch", arguments, 2);
    if (!call.isGood() || !call.has("from")) {
        return call.refuseUsage();
    }
    auto database = openDatabase(call.value("from"));
    const auto record =
        database ? recordMeantBy(*database, call.at(0).toStdString()) : tl::unexpected(database.error());
    if (!record) {
        return cannotUse(call.value("from"), record.error(), database ? codeOf(*database) : unusable);
    }
    const auto fetched = fetchRecord(*database, record->identity, call.path(1));
    if (!fetched) {
        return complain(codeOf(*database), call.at(1), fetched.error());
    }
    print(filled(QStringLiteral("%1 was made: %2 entries, %3 attachments, seal %4.\n"), lineOf(call.path(1)),
                 fetched->entries, fetched->photos, QString::fromStdString(shortForm(fetched->seal))));
    return done;
}

} // namespace caprail::verbs
