// SPDX-License-Identifier: GPL-3.0-or-later
#include <window/run.h>

#include <QApplication>
#include <QIcon>
#include <QSocketNotifier>
#include <csignal>
#include <future>
#include <sys/socket.h>
#include <unistd.h>
#include <window/main_window.h>
#include <window/shop_wiring.h>

namespace caprail {

namespace {

/// The session's end, a shutdown and Ctrl+C in the terminal close the windows as a person would: the lock beside the
/// record goes, the window's place is kept, a value that is typed and not stored is asked for. A handler of a signal may do
/// next to nothing, so it writes one byte into a pair of sockets, which the event loop reads (Qt's own way: “Calling Qt
/// Functions From Unix Signal Handlers”).
int signalSockets[2];

void closeOnSignals() {
    if (::socketpair(AF_UNIX, SOCK_STREAM | SOCK_CLOEXEC, 0, signalSockets) != 0) {
        return; // then a signal ends the program as it always did
    }
    auto* notifier = new QSocketNotifier(signalSockets[1], QSocketNotifier::Read, qApp);
    QObject::connect(notifier, &QSocketNotifier::activated, qApp, [] {
        char byte = 0;
        (void)!::read(signalSockets[1], &byte, 1);
        QApplication::closeAllWindows();
    });
    struct sigaction action = {};
    action.sa_handler = [](int) {
        const char byte = 1;
        (void)!::write(signalSockets[0], &byte, 1);
    };
    sigemptyset(&action.sa_mask);
    action.sa_flags = SA_RESTART;
    for (const int number : {SIGTERM, SIGINT, SIGHUP}) {
        ::sigaction(number, &action, nullptr);
    }
}

void dress() {
    QApplication::setWindowIcon(QIcon(QStringLiteral(":/caprail/icons/caprail-256.png")));
    QApplication::setDesktopFileName(QStringLiteral("caprail"));
    applyLook(Preferences::load().look);
    closeOnSignals();
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
