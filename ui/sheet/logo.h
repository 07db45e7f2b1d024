// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QImage>
#include <QString>
#include <base/problem.h>

namespace caprail::sheet {

/// The most that a logo takes of the sheet's head, in millimetres.
inline constexpr double logoWidthMm = 46;
inline constexpr double logoHeightMm = 14;

/// Reads a shop's logo for the head of the sheet, a picture as session/picture.h takes it, and no drawing. One larger
/// than the best printers print in the space that the head has, 1200 dots per inch, is brought down to that. Refuses
/// what is no such picture, and a file of more than 60 MiB.
Result<QImage> readLogo(const QString& path);

} // namespace caprail::sheet
