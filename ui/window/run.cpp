// SPDX-License-Identifier: GPL-3.0-or-later
#include <window/run.h>

#include <QApplication>
#include <QIcon>
#include <QSessionManager>
#include <QSocketNotifier>
#include <QTimer>
#include <csignal>
#include <future>
#include <sys/socket.h>
#include <unistd.h>
#include <window/desktop_calls.h>
#include <window/doorbell.h>
#include <window/focus_ring.h>
#include <window/key_rule.h>
#include <window/open_windows.h>
#include <window/shop_wiring.h>

namespace caprail {

namespace {

/// A shutdown, a terminal that goes and Ctrl+C in it close the windows: the lock beside the record goes, the window's place
/// is kept. Nobody may be there to answer a question. A handler of a signal may do next to nothing, so it writes one byte
/// into a pair of sockets, which the event loop reads (Qt's own way: “Calling Qt Functions From Unix Signal Handlers”).
int signalSockets[2];

void closeOnSignals() {
    if (::socketpair(AF_UNIX, SOCK_STREAM | SOCK_CLOEXEC, 0, signalSockets) != 0) {
        return; // then a signal ends the program as it always did
    }
    auto* notifier = new QSocketNotifier(signalSockets[1], QSocketNotifier::Read, qApp);
    QObject::connect(notifier, &QSocketNotifier::activated, qApp, [] {
        char byte = 0;
        (void)!::read(signalSockets[1], &byte, 1);
        endUnasked();
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

/// The desktop's session ends: a person is there, and is asked for what is not stored.
void askAtSessionsEnd() {
    const auto answer = [](QSessionManager& manager) {
        const bool canAsk = manager.allowsInteraction();
        const bool may = mayEnd(canAsk);
        if (canAsk) {
            manager.release();
        }
        if (!may && canAsk) {
            manager.cancel();
        }
    };
    QObject::connect(qGuiApp, &QGuiApplication::commitDataRequest, qGuiApp, answer, Qt::DirectConnection);
}

/// Gives whether the desktop's calls come here: else another program of the session has them, or there is no bus.
bool dress() {
    QApplication::setWindowIcon(QIcon(QStringLiteral(":/caprail/icons/caprail-256.png")));
    QApplication::setDesktopFileName(QStringLiteral("io.github.caprail.Caprail"));
    const Preferences preferences = Preferences::load();
    applyTextSize(preferences.textSize);
    applyLook(preferences.look);
    KeyRule::install();
    FocusRing::install();
    closeOnSignals();
    askAtSessionsEnd();
    return DesktopCalls::answerOn(DesktopCalls::sessionBus(), qApp) != nullptr;
}

} // namespace

bool mayEnd(bool canAsk) {
    for (const auto& window : openWindows<MainWindow>()) {
        if (!window.isNull() && !(canAsk ? window->mayClose() : window->isAllStored())) {
            return false;
        }
    }
    return true;
}

void endUnasked() {
    for (const auto& window : openWindows<MainWindow>()) {
        if (!window.isNull()) {
            window->closeUnasked();
        }
    }
    QApplication::closeAllWindows();
    QCoreApplication::exit(0); // whatever a window says: the next signal would be the one that kills
}

void showStartPage() {
    for (const auto& window : openWindows<MainWindow>()) {
        if (window->session() == nullptr) {
            bringToFront(*window);
            return;
        }
    }
    bringToFront(*firstWindow({}));
}

void showNewRecord() {
    auto* window = firstWindow({});
    window->show();
    QMetaObject::invokeMethod(window, &MainWindow::newRecord, Qt::QueuedConnection);
}

void showLastShop() {
    showShop();
}

int runNewRecord() {
    dress();
    showNewRecord();
    return QApplication::exec();
}

std::optional<int> runBusService() {
    if (!dress()) {
        return {};
    }
    constexpr int patience = 10'000; // milliseconds: the bus sends the call for which it started the program at once
    QTimer::singleShot(patience, qApp, [] {
        if (openWindows<QWidget>().empty()) {
            QCoreApplication::exit(0);
        }
    });
    return QApplication::exec();
}

int runShop(const QString& folder) {
    dress();
    showShop(folder);
    return QApplication::exec();
}

int runShopDatabase(const QString& name) {
    dress();
    showShopDatabase(name);
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
    QStringList unshown = files;
    unshown.removeIf([](const QString& file) { return raiseWindowOf(file); });
    if (unshown.isEmpty() && !files.isEmpty()) {
        return 0;
    }
    dress();
    firstWindow(unshown)->show();
    return QApplication::exec();
}

} // namespace caprail
