// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QString>
#include <string>

namespace caprail {

/// "cap 3 right" for "3R", "main 3 left" for "main-3L", "rod 5" for "rod-5"; other words as they are.
QString placeName(const QString& placeCode);
/// Whether a place that a person typed ("3r", "cap 3 right", "Main-3L") is the one with this code.
bool isSamePlace(const std::string& typed, const QString& placeCode);

} // namespace caprail
