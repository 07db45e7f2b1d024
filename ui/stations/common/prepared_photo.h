// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QByteArray>
#include <QImage>
#include <QString>
#include <ledger/entries.h>

namespace caprail {

/// A photo ready to be stored: the bytes to keep and what is known of them (place and caption are still empty).
struct PreparedPhoto {
    AttachmentAdded what;
    QByteArray bytes;
};

/// No side of a kept photo is longer, in pixels.
inline constexpr int longestPhotoSide = 1600;
/// The size from which attachments together are called large: the file is meant to be mailed.
inline constexpr std::int64_t largeAttachments = 15'000'000;

/// Scales a photo down to `longestPhotoSide` (never up), turned upright after its own note of orientation, as JPEG, or
/// as PNG where it has transparency. The original's SHA-256 is kept. Refuses bytes that are no picture of the
/// kinds that session/picture.h reads, and originals above 60 MB.
Result<PreparedPhoto> preparePhoto(const QByteArray& original, const QString& fileName);
/// As above for a picture without a file, such as a pasted one; its lossless PNG counts as the original.
Result<PreparedPhoto> preparePhoto(const QImage& picture, const QString& fileName);

} // namespace caprail
