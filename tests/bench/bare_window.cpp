// SPDX-License-Identifier: GPL-3.0-or-later
/// What a window with a plot costs at least: a main window with an empty chart, as large as the program's.
#include "first_paint.h"

#include <QApplication>
#include <QMainWindow>
#include <qcustomplot.h>

int main(int argc, char** argv) {
    const QApplication application(argc, argv);
    QMainWindow window;
    window.setCentralWidget(new QCustomPlot(&window));
    window.resize(1280, 800);
    const caprail::FirstPaint watch;
    window.show();
    return QApplication::exec();
}
