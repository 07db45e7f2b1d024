// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QStringList>
#include <assessment/check.h>

namespace caprail {

/// What to mind at a station, in a sentence or two; shown on its panel. Empty where there is nothing to mind.
QString cautionFor(Station station);
/// All cautions, one a line, as the build sheet prints them.
QStringList allCautions();

} // namespace caprail
