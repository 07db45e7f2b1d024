// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QString>

namespace caprail {

/// The signs by which the program tells states and ways, besides words and colours.
QString allSigns();

/// Where none of the machine's fonts has one of them, it would vanish without a word, on the screen and on the sheet:
/// then the program's own font of drawn signs helps out. Called once the application is there, before anything is drawn.
void loadSigns();

} // namespace caprail
