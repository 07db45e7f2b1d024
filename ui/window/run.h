// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QStringList>

namespace caprail {

class MainWindow;

/// The first window with the first record, which is read while the window is built; further records get windows of
/// their own. With no file it is the start page.
MainWindow* firstWindow(const QStringList& files);

/// Opens the windows, one per record file (none: the start page), and runs until the last is closed.
int runWindows(const QStringList& files);
/// Opens the window on the records of a folder, and runs until the last window is closed.
int runShop(const QString& folder);

} // namespace caprail
