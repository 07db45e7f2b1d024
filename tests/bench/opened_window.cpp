// SPDX-License-Identifier: GPL-3.0-or-later
/// The program's own window on the record that is named, as `caprail FILE` opens it, until it is drawn.
#include "first_paint.h"

#include <QApplication>
#include <QSettings>
#include <memory>
#include <window/main_window.h>
#include <window/preferences.h>
#include <window/run.h>

int main(int argc, char** argv) {
    const QApplication application(argc, argv);
    QCoreApplication::setApplicationName(QStringLiteral("caprail"));
    QCoreApplication::setOrganizationName(QStringLiteral("caprail-bench"));
    caprail::applyLook(caprail::Preferences::load().look);
    if (argc != 2) {
        return 1;
    }
    const caprail::FirstPaint watch;
    const std::unique_ptr<caprail::MainWindow> window(caprail::firstWindow({QString::fromLocal8Bit(argv[1])}));
    if (window->session() == nullptr) {
        std::fputs("opened_window: the record cannot be opened\n", stderr);
        return 1;
    }
    window->setAttribute(Qt::WA_DeleteOnClose, false);
    window->resize(1280, 800);
    window->show();
    return QApplication::exec();
}
