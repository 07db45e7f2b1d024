// SPDX-License-Identifier: GPL-3.0-or-later
#include <window/doorbell.h>

#include <QCryptographicHash>
#include <QFileInfo>
#include <QLocalServer>
#include <QLocalSocket>
#include <store/file/path_text.h>
#include <sys/stat.h>
#include <window/open_windows.h>

namespace caprail {

namespace {

constexpr int connecting = 500; // milliseconds
constexpr int answering = 1000;
constexpr int longestToken = 512;
/// What a desktop gives a program that a person started, so that its window may come to the front (Wayland's
/// xdg-activation; the freedesktop startup notification).
const char* const tokenNames[] = {"XDG_ACTIVATION_TOKEN", "DESKTOP_STARTUP_ID"};

/// The same record by another path is the same; another file that took its place is another. Empty: it cannot be told.
QString socketOf(const QString& record) {
    const QString folder = qEnvironmentVariable("XDG_RUNTIME_DIR");
    const QString path = QFileInfo(record).canonicalFilePath();
    struct stat file = {};
    if (folder.isEmpty() || path.isEmpty() || ::stat(pathBytes(path).c_str(), &file) != 0) {
        return {};
    }
    QCryptographicHash hash(QCryptographicHash::Sha256);
    hash.addData(path.toUtf8());
    hash.addData(QByteArray::number(static_cast<qulonglong>(file.st_dev)) + ' ' +
                 QByteArray::number(static_cast<qulonglong>(file.st_ino)));
    return folder + QStringLiteral("/caprail-") + QString::fromLatin1(hash.result().toHex().left(32));
}

bool raiseOwnWindowOf(const QString& record) {
    const QString path = QFileInfo(record).canonicalFilePath();
    for (const auto& window : openWindows<MainWindow>()) {
        if (window->session() != nullptr && !path.isEmpty() &&
            QFileInfo(window->session()->path()).canonicalFilePath() == path) {
            bringToFront(*window);
            return true;
        }
    }
    return false;
}

} // namespace

Doorbell::Doorbell(QWidget* window) : QObject(window), m_window(window), m_server(new QLocalServer(this)) {
    // No socket options: with them Qt puts its socket in the place of another one's. The folder is its owner's alone.
    connect(m_server, &QLocalServer::newConnection, this, &Doorbell::answer);
}

void Doorbell::hangAt(const QString& record) {
    m_server->close();
    const QString name = socketOf(record);
    if (name.isEmpty() || m_server->listen(name)) {
        return;
    }
    // Another window has it, or a program that died left it.
    QLocalSocket other;
    other.connectToServer(name);
    if (!other.waitForConnected(connecting) && other.error() == QLocalSocket::ConnectionRefusedError) {
        QLocalServer::removeServer(name);
        m_server->listen(name);
    }
}

void Doorbell::answer() {
    QLocalSocket* socket = m_server->nextPendingConnection();
    connect(socket, &QLocalSocket::disconnected, socket, &QObject::deleteLater);
    const auto ring = [this, socket] {
        if (!socket->canReadLine()) {
            return;
        }
        const QByteArray token = socket->readLine(longestToken).trimmed();
        if (!token.isEmpty()) {
            qputenv(tokenNames[0], token); // the window system takes it from there
        }
        bringToFront(*m_window);
        socket->write("raised\n");
        socket->flush();
    };
    connect(socket, &QLocalSocket::readyRead, this, ring);
    ring();
}

bool raiseWindowOf(const QString& record) {
    if (raiseOwnWindowOf(record)) {
        return true;
    }
    const QString name = socketOf(record);
    QLocalSocket socket;
    if (!name.isEmpty()) {
        socket.connectToServer(name);
    }
    if (name.isEmpty() || !socket.waitForConnected(connecting)) {
        return false;
    }
    QByteArray token = qgetenv(tokenNames[0]);
    socket.write((token.isEmpty() ? qgetenv(tokenNames[1]) : token).left(longestToken - 2) + '\n');
    return socket.waitForReadyRead(answering) && socket.readLine(longestToken) == "raised\n";
}

} // namespace caprail
