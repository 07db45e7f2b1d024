// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// What every test of a whole window needs: settings of its own, and pictures for whoever asks for them.
#include <QApplication>
#include <QDir>
#include <QImage>
#include <QSettings>
#include <QWidget>
#include <gtest/gtest.h>

namespace caprail {

/// The program's settings, and the user's own data such as keys, lie in this folder from now on, and are empty.
inline void useSettingsIn(const QString& folder) {
    qputenv("XDG_DATA_HOME", (folder + QStringLiteral("/data")).toUtf8());
    QSettings::setDefaultFormat(QSettings::IniFormat);
    QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, folder);
    QApplication::setOrganizationName(QStringLiteral("caprail-test"));
    QSettings().clear();
}

/// Saves what is drawn when the person who runs the tests asks for pictures.
inline void picture(const QImage& image, const QString& name) {
    const QString folder = qEnvironmentVariable("CAPRAIL_PICTURES");
    if (!folder.isEmpty()) {
        QDir().mkpath(folder);
        EXPECT_TRUE(image.save(folder + QLatin1Char('/') + name + QStringLiteral(".png")));
    }
}
inline void picture(QWidget& widget, const QString& name) {
    if (!qEnvironmentVariable("CAPRAIL_PICTURES").isEmpty()) {
        picture(widget.grab().toImage(), name);
    }
}

} // namespace caprail
