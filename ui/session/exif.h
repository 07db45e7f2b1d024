// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QByteArray>

namespace caprail {

/// The block with the camera's notes in a JPEG, PNG (chunk eXIf), WebP (chunk EXIF) or HEIF file, as a JPEG's segment
/// holds it (Exif 2.32, 4.5): "Exif", two zeros, and a TIFF file of 65 533 bytes at most. Empty: there is none. It is
/// found by how it begins, which is the same in all formats but for what stands before it; whether the rest of it can
/// be read is not looked at.
QByteArray exifIn(const QByteArray& photo);

} // namespace caprail
