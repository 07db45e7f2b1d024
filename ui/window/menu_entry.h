// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QKeySequence>
#include <QString>
#include <functional>

class QAction;
class QMenu;

namespace caprail {

class MainWindow;

/// Whether a menu's entry is greyed while no record is open.
enum class Needs { nothing, record };

/// Adds an entry that does something with the window.
QAction* addEntry(MainWindow& window, QMenu* menu, Needs needs, const QString& text, const QKeySequence& keys,
                  const std::function<void(MainWindow&)>& what);

} // namespace caprail
