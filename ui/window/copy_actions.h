// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QMenu;
class QString;

namespace caprail {

class MainWindow;

/// Adds to the file menu what has to do with copies of the open record: a dated backup beside it, and restoring one.
void addCopyActions(MainWindow& window, QMenu* menu);

/// Writes a copy under a dated name beside the record, and says where.
void saveDatedCopy(MainWindow& window);

/// Asks for a copy, and restores it.
void chooseCopy(MainWindow& window);

/// Says what restoring this copy would change, and does it when the person agrees. What is no copy is refused in a box.
void restoreFromCopy(MainWindow& window, const QString& copy);

} // namespace caprail
