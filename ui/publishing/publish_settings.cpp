// SPDX-License-Identifier: GPL-3.0-or-later
#include <publishing/publish_settings.h>

#include <QCoreApplication>
#include <QSettings>
#include <QStandardPaths>
#include <catalogue/place.h>
#include <ledger/qt_text.h>
#include <session/filled.h>
#include <store/file/path_text.h>

namespace caprail {

namespace {

class PublishText {
    Q_DECLARE_TR_FUNCTIONS(PublishText)
};

} // namespace

PublishSettings PublishSettings::load() {
    const QSettings settings;
    const auto schedule =
        fromWord<PublishSchedule>(settings.value(QStringLiteral("publish/schedule")).toString().toStdString());
    return {settings.value(QStringLiteral("publish/service")).toString(), schedule.value_or(PublishSchedule::never)};
}

Result<void> PublishSettings::save() const {
    if (!service.isEmpty()) {
        if (const auto place = parseService(service.toStdString()); !place) {
            return tl::unexpected(place.error());
        }
    }
    QSettings settings;
    settings.setValue(QStringLiteral("publish/service"), service);
    settings.setValue(QStringLiteral("publish/schedule"), qtWord(schedule));
    settings.sync();
    if (settings.status() != QSettings::NoError) {
        return tl::unexpected(
            Problem{filled(PublishText::tr(
                               "The settings could not be written to %1: see that it can be written, then try again."),
                           settings.fileName())
                        .toStdString()});
    }
    return {};
}

PublishQueue publishQueue() {
    return PublishQueue(pathBytes(QStandardPaths::writableLocation(QStandardPaths::AppConfigLocation)) + "/publish");
}

} // namespace caprail
