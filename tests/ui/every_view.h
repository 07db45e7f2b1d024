// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// Walks a window over all stations, and at each over every view behind its tabs and its row of view buttons.
#include <QApplication>
#include <QTabWidget>
#include <QTest>
#include <QToolButton>
#include <functional>
#include <session/girdle_runner.h>
#include <stations/common/station.h>
#include <string>
#include <window/main_window.h>

namespace caprail {

/// `look` is called with each view laid out, and with its name: "fasteners, 3  Groups".
inline void inEveryView(MainWindow& window, const std::function<void(const std::string& name)>& look) {
    for (const auto& station : allWords<Station>()) {
        window.showDestination({station.value, {}});
        QApplication::processEvents();
        const auto* panel = window.panel(station.value);
        const auto shown = [&](const QString& name) {
            (void)GirdleRunner::of(*window.session()).finished(); // what it says else comes at a moment of its own
            QApplication::processEvents();
            QTest::qWait(1);
            look(std::string(station.word) + ", " + name.toStdString());
        };
        bool hasViews = false;
        for (QToolButton* button : panel->findChildren<QToolButton*>()) {
            if (button->isCheckable() && button->isVisible() && !button->shortcut().isEmpty()) {
                button->click();
                shown(button->text());
                hasViews = true;
            }
        }
        for (QTabWidget* tabs : panel->findChildren<QTabWidget*>()) {
            for (int page = 0; tabs->isVisible() && page < tabs->count(); ++page) {
                tabs->setCurrentIndex(page);
                shown(tabs->tabText(page));
                hasViews = true;
            }
        }
        if (!hasViews) {
            shown({});
        }
    }
}

} // namespace caprail
