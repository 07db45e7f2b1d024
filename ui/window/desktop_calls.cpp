// SPDX-License-Identifier: GPL-3.0-or-later
#include <window/desktop_calls.h>

#include <QCoreApplication>
#include <QDBusError>
#include <QFileInfo>
#include <QUrl>
#include <utility>
#include <window/open_windows.h>
#include <window/run.h>

namespace caprail {

namespace {

constexpr char busName[] = "io.github.caprail.Caprail"; // of the desktop entry
constexpr char objectPath[] = "/io/github/caprail/Caprail";

/// What lets a window come to the front, as the desktop gave it with the call.
void takeToken(const QVariantMap& platform) {
    for (const auto& key : {QStringLiteral("activation-token"), QStringLiteral("desktop-startup-id")}) {
        if (const QByteArray token = platform.value(key).toString().toUtf8(); !token.isEmpty()) {
            qputenv("XDG_ACTIVATION_TOKEN", token);
            return;
        }
    }
}

/// Once the call is answered: a dialog may come, which would let the desktop wait.
template <class Work> void later(Work work) {
    QMetaObject::invokeMethod(qApp, work, Qt::QueuedConnection);
}

} // namespace

DesktopCalls::DesktopCalls(QDBusConnection bus, QObject* object)
    : QDBusAbstractAdaptor(object), m_bus(std::move(bus)) {}

QDBusConnection DesktopCalls::sessionBus() {
    const QString runtime = qEnvironmentVariable("XDG_RUNTIME_DIR");
    const bool isThere = qEnvironmentVariableIsSet("DBUS_SESSION_BUS_ADDRESS") ||
                         (!runtime.isEmpty() && QFileInfo::exists(runtime + QStringLiteral("/bus")));
    return isThere ? QDBusConnection::sessionBus() : QDBusConnection(QStringLiteral("none"));
}

DesktopCalls* DesktopCalls::answerOn(QDBusConnection bus, QObject* parent) {
    if (!bus.isConnected()) {
        return nullptr;
    }
    // First what answers, then the name: a call may come as soon as it is taken.
    auto* object = new QObject(parent);
    auto* calls = new DesktopCalls(bus, object);
    if (!bus.registerObject(QLatin1String(objectPath), object) || !bus.registerService(QLatin1String(busName))) {
        bus.unregisterObject(QLatin1String(objectPath));
        delete object;
        return nullptr;
    }
    return calls;
}

void DesktopCalls::Activate(const QVariantMap& platform) {
    takeToken(platform);
    later(&showStartPage);
}

void DesktopCalls::Open(const QStringList& addresses, const QVariantMap& platform) {
    takeToken(platform);
    for (const QString& address : addresses) {
        const QUrl url(address);
        later([record = url.isLocalFile() ? url.toLocalFile() : address] { openInWindow(record); });
    }
}

void DesktopCalls::ActivateAction(const QString& name, const QVariantList& /*parameters*/, const QVariantMap& platform,
                                  const QDBusMessage& call) {
    takeToken(platform);
    if (name == QLatin1String("new-record")) {
        later(&showNewRecord);
    } else if (name == QLatin1String("shop")) {
        later(&showLastShop);
    } else {
        call.setDelayedReply(true);
        m_bus.send(
            call.createErrorReply(QDBusError::InvalidArgs,
                                  QStringLiteral("Caprail has no action “%1”: ask for new-record or shop.").arg(name)));
    }
}

} // namespace caprail
