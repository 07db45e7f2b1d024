// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/common/photo_tools.h>

#include <QCoreApplication>
#include <QDialog>
#include <QFileDialog>
#include <QFileInfo>
#include <QImage>
#include <QMimeData>
#include <QScreen>
#include <QUrl>
#include <QVBoxLayout>
#include <algorithm>
#include <session/filled.h>
#include <session/picture.h>
#include <stations/common/prepared_photo.h>
#include <stations/common/station_text.h>
#include <store/file/path_text.h>
#include <store/file/read_file.h>
#include <store/sqlite/defences.h>
#include <text/label.h>
#include <text/plain_text.h>

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

bool isRecordName(const QString& path) {
    return path.endsWith(QLatin1String(".caprail"), Qt::CaseInsensitive);
}

/// Whether a file begins as a picture does. A folder, a pipe or a device is not opened.
bool isPictureFile(const QString& path) {
    constexpr qint64 enough = 32; // bytes, to tell the format
    QFile file(path);
    return QFileInfo(path).isFile() && file.open(QIODevice::ReadOnly) && !pictureFormat(file.read(enough)).isEmpty();
}

/// Null for what is no picture.
QPixmap pixmapOf(const std::string& bytes) {
    const auto picture = readPicture(QByteArray::fromStdString(bytes));
    return picture ? QPixmap::fromImage(*picture) : QPixmap();
}

/// The bytes of a copied or dropped picture in one of the kinds that are read; empty when it is given as none of them.
QByteArray encodedIn(const QMimeData* data) {
    for (const auto* type : {"image/png", "image/jpeg", "image/webp", "image/heif", "image/heic"}) {
        if (QByteArray bytes = data->data(QString::fromLatin1(type)); !pictureFormat(bytes).isEmpty()) {
            return bytes;
        }
    }
    return {};
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

GivenFiles sortFiles(const QMimeData& data) {
    GivenFiles sorted;
    for (const QString& path : filesIn(&data)) {
        (isRecordName(path) ? sorted.records : isPictureFile(path) ? sorted.photos : sorted.others) << path;
    }
    return sorted;
}

QString neitherRecordNorPhoto(const QString& path) {
    return PhotoText::tr("“%1” is neither a build record (.caprail) nor a photo (JPEG, PNG, WebP or HEIF): nothing was "
                         "done with it.")
        .arg(QFileInfo(path).fileName());
}

bool holdsPhotos(const QMimeData* data) {
    if (data == nullptr) {
        return false;
    }
    const QStringList files = filesIn(data);
    return files.isEmpty() ? data->hasImage() : std::ranges::none_of(files, isRecordName);
}

Result<void> addPhotoFiles(RecordSession& session, const QStringList& paths, const std::string& place,
                           const std::string& caption) {
    for (const QString& path : paths) {
        const auto bytes = readWholeFile(pathBytes(path), largestAttachment);
        if (!bytes) {
            return tl::unexpected(bytes.error());
        }
        if (auto kept = keep(session, preparePhoto(QByteArray::fromStdString(*bytes), path), place, caption); !kept) {
            return kept;
        }
    }
    return {};
}

Result<void> addPhotos(RecordSession& session, const QMimeData* data, const std::string& place,
                       const std::string& caption) {
    if (!filesIn(data).isEmpty()) {
        const GivenFiles files = sortFiles(*data);
        auto added = addPhotoFiles(session, files.photos, place, caption);
        return added && !files.others.isEmpty() ? refuse(coreText(neitherRecordNorPhoto(files.others.front()))) : added;
    }
    if (const QByteArray bytes = encodedIn(data); !bytes.isEmpty()) {
        return keep(session, preparePhoto(bytes, PhotoText::tr("pasted")), place, caption);
    }
    // Else Qt would try every reader that it has, for drawings too.
    if (data->hasFormat(QStringLiteral("image/svg+xml"))) {
        return refuse(
            coreText(PhotoText::tr("What was copied is a drawing, not a photo: save it as PNG and add that.")));
    }
    return keep(session, preparePhoto(qvariant_cast<QImage>(data->imageData()), PhotoText::tr("pasted")), place,
                caption);
}

QStringList askForPhotos(QWidget* parent) {
    return QFileDialog::getOpenFileNames(
        parent, PhotoText::tr("Add photos"), {},
        filled(PhotoText::tr("Pictures (%1);;All files (*)"), readablePictures()));
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
    const QString name = qtText(photo.caption.empty() ? photo.fileName : photo.caption);
    dialog.setWindowTitle(literalTitle(name));
    auto* picture = new Label(&dialog);
    picture->setAccessibleName(name);
    picture->setPixmap(pixmapOf(*bytes).scaled(parent->screen()->availableSize() * 0.8, Qt::KeepAspectRatio,
                                               Qt::SmoothTransformation));
    (new QVBoxLayout(&dialog))->addWidget(picture);
    dialog.exec();
    return {};
}

} // namespace caprail
