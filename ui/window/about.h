// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QString>

class QWidget;

namespace caprail {

/// What the program is, its version and licence, and those of every library that is linked; a line each.
QString aboutText();
/// The same for a report of a fault, in English, with the desktop it runs on.
QString reportText();
/// Shows the first, with a button that copies the second.
void showAbout(QWidget* parent);

} // namespace caprail
