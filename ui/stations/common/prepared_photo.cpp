// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/common/prepared_photo.h>

#include <QBuffer>
#include <QColorSpace>
#include <QFileInfo>
#include <base/say.h>
#include <ledger/entry.h>
#include <session/picture.h>
#include <stations/common/photo_taken.h>
#include <stations/common/station_text.h>

namespace caprail {

namespace {

constexpr qsizetype largestOriginal = 60'000'000;
constexpr int jpegQuality = 86;

std::string_view view(const QByteArray& bytes) {
    return {bytes.constData(), static_cast<std::size_t>(bytes.size())};
}

/// The picture alone: what its file said besides (a comment, the camera, a place) would be written into the new one.
QImage bare(const QImage& picture) {
    const QImage plain =
        picture.convertToFormat(picture.hasAlphaChannel() ? QImage::Format_ARGB32 : QImage::Format_RGB32);
    QImage copy = QImage(plain.constBits(), plain.width(), plain.height(), plain.bytesPerLine(), plain.format()).copy();
    copy.setColorSpace(plain.colorSpace());
    return copy;
}

PreparedPhoto prepared(QImage picture, const QByteArray& original, const QString& fileName) {
    if (std::max(picture.width(), picture.height()) > longestPhotoSide) {
        picture = picture.scaled(longestPhotoSide, longestPhotoSide, Qt::KeepAspectRatio, Qt::SmoothTransformation);
    }
    picture = bare(picture);
    const bool isPng = picture.hasAlphaChannel();
    PreparedPhoto photo;
    QBuffer buffer(&photo.bytes);
    buffer.open(QIODevice::WriteOnly);
    picture.save(&buffer, isPng ? "PNG" : "JPEG", isPng ? -1 : jpegQuality);
    photo.what.fileName =
        coreText(QFileInfo(fileName).completeBaseName() + (isPng ? QStringLiteral(".png") : QStringLiteral(".jpg")));
    photo.what.mediaType = isPng ? "image/png" : "image/jpeg";
    photo.what.originalSha256 = sha256Hex(view(original));
    photo.what.sha256 = sha256Hex(view(photo.bytes));
    photo.what.size = photo.bytes.size();
    photo.what.taken = takenAt(original);
    return photo;
}

} // namespace

Result<PreparedPhoto> preparePhoto(const QByteArray& original, const QString& fileName) {
    if (original.size() > largestOriginal) {
        return refuse(Core::say("“%1” is larger than 60 MB: take a smaller picture of it.", coreText(fileName)));
    }
    const auto picture = readPicture(original);
    if (!picture) {
        return refuse(Core::say("“%1” cannot be taken: %2. Save it as JPEG or PNG and add that.", coreText(fileName),
                                picture.error().sentence));
    }
    return prepared(*picture, original, fileName);
}

Result<PreparedPhoto> preparePhoto(const QImage& picture, const QString& fileName) {
    if (picture.isNull()) {
        return refuse(Core::say("There is no picture on the clipboard: copy one first."));
    }
    QByteArray original;
    QBuffer buffer(&original);
    buffer.open(QIODevice::WriteOnly);
    picture.save(&buffer, "PNG");
    return prepared(picture, original, fileName);
}

} // namespace caprail
