// SPDX-License-Identifier: GPL-3.0-or-later
#include <catalogue/quiet_driver.h>

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

} // namespace

void quietDriver() {
    static const bool isQuiet = [] {
        before = qInstallMessageHandler(passOn);
        return true;
    }();
    (void)isQuiet; // once is enough
}

} // namespace caprail
