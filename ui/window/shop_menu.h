// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QMenu;

namespace caprail {

class MainWindow;

/// Builds the menu of what a shop has for many engines: templates, the shelf, builds of one engine.
void makeShopMenu(MainWindow& window);
/// Adds the customer's folder to the file menu.
void addHandOver(MainWindow& window, QMenu* file);

} // namespace caprail
