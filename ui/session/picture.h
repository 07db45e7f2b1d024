// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QByteArray>
#include <QImage>
#include <QSize>
#include <QString>
#include <functional>
#include <base/problem.h>

namespace caprail {

/// What a picture is by its first bytes: "jpeg", "png", "webp" or "heif"; empty for everything else, whatever its name
/// or type says. A drawing (SVG) is no picture here: it may lead to other files of the computer that shows it.
QByteArray pictureFormat(const QByteArray& bytes);

/// The endings of the pictures that this computer can read, for a dialog: "*.jpg *.jpeg *.png *.webp …". Qt reads WebP and
/// HEIF only where a plugin for them is installed.
QString readablePictures();

/// Gives the size, in pixels, at which a picture of a size is wanted.
using WantedSize = std::function<QSize(QSize)>;

/// The one way in which pictures that come from outside are read, photos and logos alike: only the four formats above,
/// by that format's reader alone, turned upright as the camera says. With `wanted` it is read at that size, which costs
/// less than to scale it. Refuses what is no such picture and what has more than 200 million pixels; the sentence
/// begins in the middle, for one who says which ("it is not a JPEG, PNG, WebP or HEIF picture").
Result<QImage> readPicture(const QByteArray& bytes, const WantedSize& wanted = {});

} // namespace caprail
