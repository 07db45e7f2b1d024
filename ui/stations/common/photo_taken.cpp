// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/common/photo_taken.h>

#include <algorithm>
#include <libexif/exif-data.h>
#include <memory>
#include <session/picture.h>
#include <string>

namespace caprail {

namespace {

constexpr QByteArrayView exifHead("Exif\0\0", 6);
constexpr qsizetype largestExif = 65'533; // what a JPEG segment can hold; cameras keep to it in all formats

/// The block with the camera's notes, which begins as a JPEG has it; empty: there is none. Found by how it begins,
/// since that is the same in all formats but for what stands before it.
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

/// "2026:05:04 09:30:00" as the standard has it.
std::optional<ClockTime> momentIn(ExifData& data, ExifTag tag) {
    const ExifEntry* entry = exif_content_get_entry(data.ifd[EXIF_IFD_EXIF], tag);
    constexpr std::size_t length = 19;
    if (entry == nullptr || entry->format != EXIF_FORMAT_ASCII || entry->size < length) {
        return {};
    }
    std::string text(reinterpret_cast<const char*>(entry->data), length);
    std::replace(text.begin(), text.begin() + 10, ':', '-');
    text[10] = 'T';
    const auto time = parseClockTime(text);
    return time ? std::optional(*time) : std::nullopt;
}

} // namespace

std::optional<ClockTime> takenAt(const QByteArray& photo) {
    const QByteArray block = exifIn(photo);
    if (block.isEmpty()) {
        return {};
    }
    const std::unique_ptr<ExifData, decltype(&exif_data_unref)> data(exif_data_new(), &exif_data_unref);
    if (!data) {
        return {};
    }
    // Else it adds what the standard demands and the file lacks, moments of its own among them.
    exif_data_unset_option(data.get(), EXIF_DATA_OPTION_FOLLOW_SPECIFICATION);
    exif_data_load_data(data.get(), reinterpret_cast<const unsigned char*>(block.constData()),
                        static_cast<unsigned>(block.size()));
    const auto taken = momentIn(*data, EXIF_TAG_DATE_TIME_ORIGINAL);
    return taken ? taken : momentIn(*data, EXIF_TAG_DATE_TIME_DIGITIZED);
}

} // namespace caprail
