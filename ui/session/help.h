// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QString>
#include <assessment/check.h>

namespace caprail {

/// What a station is for and how it is used, in a paragraph.
QString helpFor(Station station);

} // namespace caprail
