// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QImage>
#include <QString>
#include <base/problem.h>

namespace caprail::sheet {

/// The most that a logo takes of the sheet's head, in millimetres.
inline constexpr double logoWidthMm = 46;
inline constexpr double logoHeightMm = 14;

/// Reads a shop's logo for the head of the sheet: PNG, JPEG (turned upright as its camera says), SVG, or what else Qt
/// reads. A drawing is painted as fine as the best printers print, 1200 dots per inch in the space that the head has;
/// a larger picture is brought down to that. Refuses what is no picture, and one of more than 200 million pixels.
Result<QImage> readLogo(const QString& path);

} // namespace caprail::sheet
