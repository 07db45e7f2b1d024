// SPDX-License-Identifier: GPL-3.0-or-later
/// The verbs that tell what can be asked and begin a record.
#include "call.h"
#include "plan_case.h"
#include "verb_table.h"
#include "verbs.h"

#include <QSettings>
#include <algorithm>
#include <ledger/entry_schema.h>
#include <records/shop_config.h>
#include <session/record_session.h>
#include <window/key_list.h>
#include <window/preferences.h>

namespace caprail::verbs {

namespace {

/// Who a record is made by when nobody is named: who last worked in the window, else the account.
QString usualPerson() {
    const QString last = QSettings().value(QStringLiteral("person")).toString().trimmed();
    return last.isEmpty() ? qEnvironmentVariable("USER") : last;
}

/// The manual of the entries as a page for man.
QString entriesManPage() {
    QString text = QString::fromStdString(entryManual());
    text.replace(QLatin1Char('\\'), QStringLiteral("\\e")).replace(QLatin1Char('-'), QStringLiteral("\\-"));
    text.replace(QLatin1Char('\''), QStringLiteral("\\(aq"));
    return QStringLiteral(".\\\" SPDX-License-Identifier: GPL-3.0-or-later\n"
                          ".TH CAPRAIL\\-ENTRIES 5 \"\" \"Caprail %1\" \"File Formats\"\n"
                          ".SH NAME\ncaprail\\-entries \\- every kind of entry of a build record\n"
                          ".SH DESCRIPTION\n.nf\n%2.fi\n.SH \"SEE ALSO\"\n.BR caprail (1)\n")
        .arg(QStringLiteral(CAPRAIL_VERSION), text);
}

QStringList titlesOf(const std::vector<OfferedTemplate>& offered) {
    QStringList titles;
    for (const OfferedTemplate& one : offered) {
        titles << one.title;
    }
    return titles;
}

} // namespace

int help(const QStringList& arguments) {
    if (arguments.contains(QStringLiteral("--completions"))) {
        const Call call("help", arguments, 0);
        const QString script = call.isGood() ? completionsFor(call.value("completions")) : QString();
        if (script.isEmpty()) {
            return complain(wrongUsage, QStringLiteral("help: --completions takes bash, zsh or fish."));
        }
        print(script);
        return done;
    }
    if (arguments.isEmpty()) {
        print(usage());
        return done;
    }
    const QString& about = arguments.front();
    if (about == QLatin1String("entries")) {
        const Call call("help", arguments, 1);
        print(call.has("man") ? entriesManPage() : QString::fromStdString(entryManual()));
        return done;
    }
    if (about == QLatin1String("keys")) {
        for (const KeyTold& told : keyList()) {
            print(QStringLiteral("%1: %2\n").arg(QString::fromUtf8(told.keys), QString::fromUtf8(told.use)));
        }
        return done;
    }
    if (const VerbText* verb = verbNamed(about)) {
        print(helpOf(*verb));
        return done;
    }
    return complain(wrongUsage, QStringLiteral("there is no verb “%1”.\n%2").arg(about, usage()));
}

int schema(const QStringList& arguments) {
    const Call call("schema", arguments, arguments.isEmpty() ? 0 : 1);
    if (!call.isGood()) {
        return call.refuseUsage();
    }
    const QString what = arguments.isEmpty() ? QStringLiteral("entries") : call.at(0);
    if (what == QLatin1String("entries")) {
        print(QString::fromStdString(entrySchema()));
        return done;
    }
    if (what == QLatin1String("case")) {
        print(planCaseSchema());
        return done;
    }
    return complain(wrongUsage, QStringLiteral("schema: there is a schema of “entries” and of a “case”, not of “%1”.").arg(what));
}

int newRecord(const QStringList& arguments) {
    const bool isList = arguments.contains(QStringLiteral("--list"));
    const Call call("new", arguments, isList ? 0 : 1);
    if (!call.isGood()) {
        return call.refuseUsage();
    }
    const std::vector<OfferedTemplate> offered = offeredTemplates();
    if (isList) {
        print(titlesOf(offered).join(QLatin1Char('\n')) + QLatin1Char('\n'));
        return done;
    }
    if (!call.at(0).endsWith(QLatin1String(".caprail"))) {
        return complain(wrongUsage, QStringLiteral("new: the name of a record ends in .caprail, which “%1” does not.").arg(call.at(0)));
    }
    QByteArray beginning;
    if (call.has("template")) {
        const QString wanted = call.value("template");
        const auto found = std::ranges::find_if(offered, [&](const OfferedTemplate& one) {
            return one.title == wanted || qtPath(one.engineTemplate.note.name) == wanted;
        });
        if (found == offered.end()) {
            return complain(wrongUsage, QStringLiteral("new: there is no template “%1”; there are: %2.")
                                            .arg(wanted, titlesOf(offered).join(QStringLiteral("; "))));
        }
        beginning = QByteArray::fromStdString(toLines(found->engineTemplate));
    }
    const QString person = call.has("person") ? call.value("person") : usualPerson();
    const QString shop = call.has("shop") ? call.value("shop") : Preferences::load().shopName;
    const EngineDescribed engine{pathBytes(shop), pathBytes(call.value("customer")), pathBytes(call.value("engine")),
                                 pathBytes(call.value("serial")), {}};
    const auto session = RecordSession::create(call.at(0), person, engine, beginning);
    if (!session) {
        return complain(answerIsNo, call.at(0), session.error());
    }
    print(QStringLiteral("%1 was made: %2 entries.\n").arg(lineOf(call.path(0))).arg((*session)->ledger().entries().size()));
    return done;
}

} // namespace caprail::verbs
