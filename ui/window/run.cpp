// SPDX-License-Identifier: GPL-3.0-or-later
#include <window/run.h>

#include <QApplication>
#include <QIcon>
#include <window/main_window.h>
#include <window/shop_wiring.h>

namespace caprail {

namespace {

void dress() {
    QApplication::setWindowIcon(QIcon(QStringLiteral(":/caprail/icons/caprail-256.png")));
    QApplication::setDesktopFileName(QStringLiteral("caprail"));
    applyLook(Preferences::load().look);
}

} // namespace

int runShop(const QString& folder) {
    dress();
    showShop(folder);
    return QApplication::exec();
}

int runWindows(const QStringList& files) {
    dress();
    auto* first = new MainWindow;
    for (const QString& file : files) {
        first->openFile(file);
    }
    first->show();
    return QApplication::exec();
}

} // namespace caprail
