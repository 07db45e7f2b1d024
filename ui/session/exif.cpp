// SPDX-License-Identifier: GPL-3.0-or-later
#include <session/exif.h>

#include <QByteArrayView>
#include <session/picture.h>

namespace caprail {

namespace {

constexpr QByteArrayView exifHead("Exif\0\0", 6);
constexpr qsizetype largestExif = 65'533; // what a JPEG segment can hold; cameras keep to it in all formats

} // namespace

QByteArray exifIn(const QByteArray& photo) {
    const QByteArray format = pictureFormat(photo);
    const QByteArrayView before = format == "png" ? QByteArrayView("eXIf") : exifHead;
    for (const QByteArrayView order : {QByteArrayView("II*\0", 4), QByteArrayView("MM\0*", 4)}) { // TIFF 6.0, section 2
        if (const qsizetype at = photo.indexOf(before.toByteArray() + order.toByteArray()); at >= 0) {
            return exifHead.toByteArray() + photo.mid(at + before.size(), largestExif);
        }
        // WebP has the size of the chunk between its name and the block.
        constexpr qsizetype chunkHead = 8;
        const qsizetype chunk = format == "webp" ? photo.indexOf("EXIF", 12) : -1;
        if (chunk >= 0 && photo.mid(chunk + chunkHead, order.size()) == order) {
            return exifHead.toByteArray() + photo.mid(chunk + chunkHead, largestExif);
        }
    }
    return {};
}

} // namespace caprail
