// SPDX-License-Identifier: GPL-3.0-or-later
#include <sheet/logo.h>

#include <QFileInfo>
#include <session/picture.h>
#include <sheet/sheet_text.h>
#include <store/file/path_text.h>
#include <store/file/read_file.h>

namespace caprail::sheet {

namespace {

constexpr double dotsPerMm = 1200 / 25.4;
constexpr std::int64_t largestLogo = std::int64_t{60} * 1024 * 1024;

QSize headRoom() {
    return QSizeF(logoWidthMm * dotsPerMm, logoHeightMm * dotsPerMm).toSize();
}

} // namespace

Result<QImage> readLogo(const QString& path) {
    const QString name = QFileInfo(path).fileName();
    const auto refused = [&](const QString& why) {
        return refuse(Sheet::tr("The logo “%1” cannot be used (%2): choose another picture in the preferences.")
                          .arg(name, why)
                          .toStdString());
    };
    const auto bytes = readWholeFile(pathBytes(path), largestLogo);
    if (!bytes) {
        return tl::unexpected(bytes.error());
    }
    const auto picture = readPicture(QByteArray::fromStdString(*bytes));
    if (!picture) {
        return refused(text(picture.error().sentence));
    }
    const bool isLarger = picture->width() > headRoom().width() || picture->height() > headRoom().height();
    return isLarger ? picture->scaled(headRoom(), Qt::KeepAspectRatio, Qt::SmoothTransformation) : *picture;
}

} // namespace caprail::sheet
