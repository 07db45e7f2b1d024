// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/common/photo_tools.h>

#include <QCoreApplication>
#include <QDialog>
#include <QFile>
#include <QFileDialog>
#include <QImage>
#include <QLabel>
#include <QMimeData>
#include <QScreen>
#include <QUrl>
#include <QVBoxLayout>
#include <stations/common/prepared_photo.h>
#include <stations/common/station_text.h>

namespace caprail {

namespace {

class PhotoText {
    Q_DECLARE_TR_FUNCTIONS(Photos)
};

QStringList filesIn(const QMimeData* data) {
    QStringList paths;
    for (const QUrl& url : data->urls()) {
        if (url.isLocalFile()) {
            paths << url.toLocalFile();
        }
    }
    return paths;
}

QPixmap pixmapOf(const std::string& bytes) {
    QPixmap pixmap;
    pixmap.loadFromData(reinterpret_cast<const uchar*>(bytes.data()), static_cast<uint>(bytes.size()));
    return pixmap;
}

Result<void> keep(RecordSession& session, const Result<PreparedPhoto>& photo, const std::string& place,
                  const std::string& caption) {
    if (!photo) {
        return tl::unexpected(photo.error());
    }
    AttachmentAdded what = photo->what;
    what.place = place;
    what.caption = caption;
    const auto stored = session.attach(std::move(what), photo->bytes);
    return stored ? Result<void>() : Result<void>(tl::unexpected(stored.error()));
}

} // namespace

bool holdsPhotos(const QMimeData* data) {
    return data != nullptr && (data->hasImage() || !filesIn(data).isEmpty());
}

Result<void> addPhotoFiles(RecordSession& session, const QStringList& paths, const std::string& place,
                           const std::string& caption) {
    for (const QString& path : paths) {
        QFile file(path);
        if (!file.open(QIODevice::ReadOnly)) {
            return refuse(coreText(PhotoText::tr("“%1” cannot be read: %2.").arg(path, file.errorString())));
        }
        if (auto kept = keep(session, preparePhoto(file.readAll(), path), place, caption); !kept) {
            return kept;
        }
    }
    return {};
}

Result<void> addPhotos(RecordSession& session, const QMimeData* data, const std::string& place,
                       const std::string& caption) {
    if (const QStringList paths = filesIn(data); !paths.isEmpty()) {
        return addPhotoFiles(session, paths, place, caption);
    }
    return keep(session, preparePhoto(qvariant_cast<QImage>(data->imageData()), PhotoText::tr("pasted")), place,
                caption);
}

QStringList askForPhotos(QWidget* parent) {
    return QFileDialog::getOpenFileNames(
        parent, PhotoText::tr("Add photos"), {},
        PhotoText::tr("Pictures (*.jpg *.jpeg *.png *.webp *.bmp *.tif *.tiff);;All files (*)"));
}

const QPixmap& Thumbnails::of(const AttachmentAdded& attachment) {
    const auto known = m_known.find(attachment.sha256);
    if (known != m_known.end()) {
        return known->second;
    }
    QPixmap pixmap;
    if (const auto bytes = m_session.file().attachmentBytes(attachment.sha256)) {
        pixmap = pixmapOf(*bytes);
        if (!pixmap.isNull()) {
            pixmap = pixmap.scaled(m_size, Qt::KeepAspectRatio, Qt::SmoothTransformation);
        }
    }
    return m_known.emplace(attachment.sha256, pixmap).first->second;
}

Result<void> showPhoto(RecordSession& session, const AttachmentAdded& photo, QWidget* parent) {
    const auto bytes = session.file().attachmentBytes(photo.sha256);
    if (!bytes) {
        return tl::unexpected(bytes.error());
    }
    QDialog dialog(parent);
    dialog.setWindowTitle(qtText(photo.caption.empty() ? photo.fileName : photo.caption));
    auto* picture = new QLabel(&dialog);
    picture->setAccessibleName(dialog.windowTitle());
    picture->setPixmap(pixmapOf(*bytes).scaled(parent->screen()->availableSize() * 0.8, Qt::KeepAspectRatio,
                                               Qt::SmoothTransformation));
    (new QVBoxLayout(&dialog))->addWidget(picture);
    dialog.exec();
    return {};
}

} // namespace caprail
