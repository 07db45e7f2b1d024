// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QStringList>
#include <optional>

namespace caprail {

class MainWindow;

/// The first window with the first record, which is read while the window is built; further records get windows of
/// their own. With no file it is the start page.
MainWindow* firstWindow(const QStringList& files);

/// Opens the windows, one per record file (none: the start page), and runs until the last is closed. A record that has a
/// window already, in another program too, gets none: that one comes to the front.
int runWindows(const QStringList& files);
/// Opens the start page with the questions for a new record.
int runNewRecord();
/// Waits for what the desktop asks over the session's bus (desktop_calls.h), and runs until the last window is closed;
/// ends after a while if nothing was asked. None: there is no bus, or another program has the name.
std::optional<int> runBusService();

/// The start page in front: the one that is open, or a new one.
void showStartPage();
/// A window with the questions for a new record.
void showNewRecord();
/// The window on the records of the folder that was chosen last.
void showLastShop();

/// Opens the window on the records of a folder (empty: the last one), and runs until the last window is closed.
int runShop(const QString& folder);
/// The same for a shop's database, by its service name or URL.
int runShopDatabase(const QString& name);

/// Whether the program may end. Where a person can answer, each window asks what is to become of what is not stored;
/// false: one is to stay. Where nobody can, the answer is no as soon as anything is not stored.
bool mayEnd(bool canAsk);
/// Ends the program without a question: closes all windows, so that no lock stays and their places are kept.
void endUnasked();

} // namespace caprail
