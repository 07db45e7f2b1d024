// SPDX-License-Identifier: GPL-3.0-or-later
/// The program's own window on the record that is named, as `caprail FILE` opens it, until it is drawn.
#include "first_paint.h"

#include <QApplication>
#include <QSettings>
#include <window/main_window.h>
#include <window/preferences.h>

int main(int argc, char** argv) {
    const QApplication application(argc, argv);
    QCoreApplication::setApplicationName(QStringLiteral("caprail"));
    QCoreApplication::setOrganizationName(QStringLiteral("caprail-bench"));
    caprail::applyLook(caprail::Preferences::load().look);
    caprail::MainWindow window;
    window.setAttribute(Qt::WA_DeleteOnClose, false);
    if (argc != 2 || !window.openFile(QString::fromLocal8Bit(argv[1]))) {
        std::fputs("opened_window: the record cannot be opened\n", stderr);
        return 1;
    }
    window.resize(1280, 800);
    const caprail::FirstPaint watch;
    window.show();
    return QApplication::exec();
}
