// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QMainWindow>
#include <functional>

namespace caprail {

class MainWindow;

/// What a window says of publishing, in its foot; pressed, it shows the dialog. `record` and `folder` give what there
/// is to publish from there, each perhaps empty.
void addPublishFoot(QMainWindow& window, std::function<QString()> record, std::function<QString()> folder);
/// The dialog, for a record's window.
void publishFrom(MainWindow& window);
/// Has each entry that is stored in the window noted as a change to be published, where a schedule asks for it; not in
/// the tour, whose record goes with its window.
void publishChangesOf(MainWindow& window);

} // namespace caprail
