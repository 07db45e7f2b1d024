// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// What the programs share that make the README's and the manual's pictures from the sample records.
#include <QApplication>
#include <QFile>
#include <QImage>
#include <QSettings>
#include <algorithm>
#include <map>
#include <memory>
#include <session/language.h>
#include <window/main_window.h>
#include <window/preferences.h>

namespace caprail {

/// English, the light look, and settings of its own in this folder.
inline void dressForPictures(const QString& folder) {
    speak(QStringLiteral("en"));
    QSettings::setDefaultFormat(QSettings::IniFormat);
    QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, folder);
    QApplication::setOrganizationName(QStringLiteral("caprail-pictures"));
    applyLook(LookChoice::light);
}

/// In few colours, so that the file stays small: of those that are nearly alike, eight steps of red, green and blue,
/// the one that the picture has most of stands for all.
inline bool keep(const QImage& picture, const QString& path) {
    const QImage all = picture.convertToFormat(QImage::Format_RGB32);
    std::map<QRgb, std::map<QRgb, int>> alike;
    for (int y = 0; y < all.height(); ++y) {
        for (int x = 0; x < all.width(); ++x) {
            const QRgb colour = all.pixel(x, y);
            ++alike[colour & 0xffe0e0e0U][colour];
        }
    }
    QList<QRgb> table;
    for (const auto& [step, counts] : alike) {
        table << std::ranges::max_element(counts, {}, [](const auto& one) { return one.second; })->first;
    }
    return table.size() <= 256 &&
           all.convertToFormat(QImage::Format_Indexed8, table, Qt::ThresholdDither).save(path, "PNG", 0);
}

/// A window on a writable copy of a sample; null: it was refused.
inline std::unique_ptr<MainWindow> opened(const QString& sample, const QString& copy, QSize size) {
    QFile::copy(sample, copy);
    QFile::setPermissions(copy, QFile::ReadOwner | QFile::WriteOwner);
    auto window = std::make_unique<MainWindow>();
    window->setAttribute(Qt::WA_DeleteOnClose, false);
    window->resize(size);
    window->show();
    return window->openFile(copy) ? std::move(window) : nullptr;
}

} // namespace caprail
