// SPDX-License-Identifier: GPL-3.0-or-later
#include <sheet/logo.h>

#include <QFileInfo>
#include <QImageReader>
#include <QPainter>
#include <QSvgRenderer>
#include <sheet/sheet_text.h>

namespace caprail::sheet {

namespace {

constexpr double dotsPerMm = 1200 / 25.4;
constexpr qint64 mostPixels = 200'000'000;

QSize headRoom() {
    return QSizeF(logoWidthMm * dotsPerMm, logoHeightMm * dotsPerMm).toSize();
}

QImage drawn(QSvgRenderer& drawing) {
    const QSizeF natural = drawing.defaultSize();
    QImage picture(natural.scaled(headRoom(), Qt::KeepAspectRatio).toSize().expandedTo({1, 1}),
                   QImage::Format_ARGB32_Premultiplied);
    picture.fill(Qt::transparent);
    QPainter painter(&picture);
    drawing.render(&painter, picture.rect());
    return picture;
}

} // namespace

Result<QImage> readLogo(const QString& path) {
    const QString name = QFileInfo(path).fileName();
    const auto refused = [&](const QString& why) {
        return refuse(Sheet::tr("The logo “%1” cannot be used (%2): choose another picture in the preferences.")
                          .arg(name, why)
                          .toStdString());
    };
    QImageReader reader(path);
    if (reader.format().startsWith("svg") || path.endsWith(QLatin1String(".svg"), Qt::CaseInsensitive)) {
        QSvgRenderer drawing(path);
        if (!drawing.isValid() || drawing.defaultSize().isEmpty()) {
            return refused(Sheet::tr("it is no drawing that can be read"));
        }
        return drawn(drawing);
    }
    reader.setAutoTransform(true);
    const QSize size = reader.size();
    if (size.isValid() && qint64{size.width()} * size.height() > mostPixels) {
        return refused(Sheet::tr("it has too many pixels"));
    }
    const QImage picture = reader.read();
    if (picture.isNull()) {
        return refused(reader.errorString());
    }
    const bool isLarger = picture.width() > headRoom().width() || picture.height() > headRoom().height();
    return isLarger ? picture.scaled(headRoom(), Qt::KeepAspectRatio, Qt::SmoothTransformation) : picture;
}

} // namespace caprail::sheet
