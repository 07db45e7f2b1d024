// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QtGlobal>

class QString;

namespace caprail {

class MainWindow;

/// Builds the menu bar with its shortcuts, and keeps what needs a record greyed while none is open.
void makeMenus(MainWindow& window);

/// Asks for the reason and strikes an entry.
void askAndStrike(MainWindow& window, qint64 sequence);

/// Says why a file was not opened; where it is a damaged record, offers to salvage it into a new file.
void offerSalvage(MainWindow& window, const QString& path, const QString& sentence);

} // namespace caprail
