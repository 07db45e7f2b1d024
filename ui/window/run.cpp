// SPDX-License-Identifier: GPL-3.0-or-later
#include <window/run.h>

#include <QApplication>
#include <QIcon>
#include <future>
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

MainWindow* firstWindow(const QStringList& files) {
    // Reading takes about as long as the toolkit's first look at the fonts, which building the window sets off.
    std::future<Result<ReadRecord>> reading;
    if (!files.isEmpty()) {
        reading = std::async(std::launch::async, [path = files.front()] { return RecordSession::read(path); });
    }
    auto* first = new MainWindow;
    if (reading.valid()) {
        first->showRead(files.front(), reading.get());
    }
    for (const QString& file : files.mid(1)) {
        first->openFile(file);
    }
    return first;
}

int runWindows(const QStringList& files) {
    dress();
    firstWindow(files)->show();
    return QApplication::exec();
}

} // namespace caprail
