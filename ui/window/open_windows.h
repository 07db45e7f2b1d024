// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QPointer>
#include <vector>
#include <window/main_window.h>

namespace caprail {

/// The windows of records that are on the screen, and the one of the start page; one that is closed meanwhile is null.
std::vector<QPointer<MainWindow>> openMainWindows();

/// Shows a record: in its window, which comes to the front, in that of a start page, or in a new one. What is refused
/// is said there.
void openInWindow(const QString& record);

/// In front of all others, and no longer minimized.
void bringToFront(QWidget& window);

} // namespace caprail
