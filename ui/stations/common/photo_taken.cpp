// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/common/photo_taken.h>

#include <algorithm>
#include <libexif/exif-data.h>
#include <memory>
#include <session/exif.h>
#include <string>

namespace caprail {

namespace {

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
