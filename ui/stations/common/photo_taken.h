// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QByteArray>
#include <base/date.h>
#include <optional>

namespace caprail {

/// When a photo was taken, by its camera's clock (Exif 2.32, 4.6.5: DateTimeOriginal; where there is none,
/// DateTimeDigitized). None: the file, JPEG, PNG, WebP or HEIF, says nothing of it, or nothing that is a moment.
std::optional<ClockTime> takenAt(const QByteArray& photo);

} // namespace caprail
