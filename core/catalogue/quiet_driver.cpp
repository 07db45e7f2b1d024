// SPDX-License-Identifier: GPL-3.0-or-later
#include <catalogue/quiet_driver.h>

#include <QByteArray>
#include <QLibrary>
#include <QString>
#include <cstdio>

namespace caprail {

namespace {

QtMessageHandler before = nullptr;

void passOn(QtMsgType type, const QMessageLogContext& context, const QString& message) {
    if (message.startsWith(QLatin1String("Unable to free statement")) ||
        message.startsWith(QLatin1String("QSqlQuery::exec: database not open"))) {
        return;
    }
    if (before != nullptr) {
        before(type, context, message);
    } else {
        std::fprintf(stderr, "%s\n", qFormatLogMessage(type, context, message).toLocal8Bit().constData());
    }
}

void ignore(void* /*nobody*/, const void* /*notice*/) {}

} // namespace

void keepNotices(const QVariant& connection) {
    using Receiver = void (*)(void* whose, const void* notice);
    using SetReceiver = Receiver (*)(void* connection, Receiver receiver, void* whose);
    // The library that the driver has loaded: it lends no header to a program that speaks through the driver alone.
    static const auto set =
        reinterpret_cast<SetReceiver>(QLibrary::resolve(QStringLiteral("pq"), 5, "PQsetNoticeReceiver"));
    const QByteArray type = connection.typeName(); // Qt 6 calls it by the structure's own name
    if (set != nullptr && (type == "pg_conn*" || type == "PGconn*")) {
        set(*static_cast<void* const*>(connection.constData()), ignore, nullptr);
    }
}

void quietDriver() {
    static const bool isQuiet = [] {
        before = qInstallMessageHandler(passOn);
        return true;
    }();
    (void)isQuiet; // once is enough
}

} // namespace caprail
