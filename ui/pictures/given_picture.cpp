// SPDX-License-Identifier: GPL-3.0-or-later
#include <pictures/given_picture.h>

#include <QAction>
#include <QBuffer>
#include <QClipboard>
#include <QCoreApplication>
#include <QFileDialog>
#include <QGuiApplication>
#include <QMimeData>
#include <QRegularExpression>
#include <QSvgGenerator>
#include <QWidget>
#include <session/filled.h>
#include <store/file/output_file.h>
#include <store/file/path_text.h>
#include <text/ask.h>

namespace caprail {

namespace {

constexpr double fineness = 2; // dots for each of the screen's pixels

class PictureText {
    Q_DECLARE_TR_FUNCTIONS(GivenPicture)
};

bool isSvg(const QString& path) {
    return path.endsWith(QLatin1String(".svg"), Qt::CaseInsensitive);
}

void copyPicture(const GivenPicture& picture) {
    if (picture.size.isEmpty()) {
        return;
    }
    auto* data = new QMimeData;
    data->setImageData(imageOf(picture));
    data->setData(QStringLiteral("image/svg+xml"), svgOf(picture));
    QGuiApplication::clipboard()->setMimeData(data);
}

void savePicture(QWidget* parent, const GivenPicture& picture, const QString& ending) {
    if (picture.size.isEmpty()) {
        return;
    }
    static const QRegularExpression noName(QStringLiteral("[^\\w .-]+"), QRegularExpression::UseUnicodePropertiesOption);
    const QString name = QString(picture.name).replace(noName, QStringLiteral("-"));
    QString path = QFileDialog::getSaveFileName(parent, picture.name, name + ending,
                                                ending == QLatin1String(".svg") ? PictureText::tr("Drawings (*.svg)")
                                                                                : PictureText::tr("Pictures (*.png)"));
    if (path.isEmpty()) {
        return;
    }
    if (const auto written = writePicture(picture, path); !written) {
        warn(parent, PictureText::tr("The picture was not written"), QString::fromStdString(written.error().sentence));
    }
}

} // namespace

QImage imageOf(const GivenPicture& picture) {
    if (picture.size.isEmpty()) {
        return {};
    }
    QImage image(picture.size * fineness, QImage::Format_RGB32);
    image.setDevicePixelRatio(fineness);
    image.fill(Qt::white);
    picture.paint(image);
    return image;
}

QByteArray svgOf(const GivenPicture& picture) {
    if (picture.size.isEmpty()) {
        return {};
    }
    constexpr int screen = 96; // dots per inch of CSS, in which SVG counts
    QBuffer buffer;
    QSvgGenerator generator;
    generator.setOutputDevice(&buffer);
    generator.setResolution(screen);
    generator.setSize(picture.size);
    generator.setViewBox(QRect(QPoint(), picture.size));
    generator.setTitle(picture.name);
    generator.setDescription(picture.description);
    picture.paint(generator);
    return buffer.data();
}

Result<void> writePicture(const GivenPicture& picture, const QString& path) {
    const bool isDrawing = isSvg(path);
    if (!isDrawing && !path.endsWith(QLatin1String(".png"), Qt::CaseInsensitive)) {
        return refuse(filled(PictureText::tr("The name of a picture ends in .svg or .png, which “%1” does not."), path)
                          .toStdString());
    }
    QByteArray bytes;
    if (isDrawing) {
        bytes = svgOf(picture);
    } else {
        QBuffer buffer(&bytes);
        buffer.open(QIODevice::WriteOnly);
        imageOf(picture).save(&buffer, "PNG");
    }
    return writeOutput(pathBytes(path), isDrawing ? OutputSort::text : OutputSort::sheet, true,
                       std::string_view(bytes.constData(), static_cast<std::size_t>(bytes.size())));
}

void offerPicture(QWidget* widget, std::function<GivenPicture()> picture) {
    const auto add = [widget](const QString& text, auto what) {
        auto* action = new QAction(text, widget);
        QObject::connect(action, &QAction::triggered, widget, what);
        widget->addAction(action);
        return action;
    };
    QAction* copy = add(PictureText::tr("Copy as picture"), [picture] { copyPicture(picture()); });
    copy->setShortcut(QKeySequence::Copy);
    copy->setShortcutContext(Qt::WidgetShortcut);
    add(PictureText::tr("Save as SVG…"), [widget, picture] { savePicture(widget, picture(), QStringLiteral(".svg")); });
    add(PictureText::tr("Save as PNG…"), [widget, picture] { savePicture(widget, picture(), QStringLiteral(".png")); });
    widget->setContextMenuPolicy(Qt::ActionsContextMenu);
}

} // namespace caprail
