// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QDBusAbstractAdaptor>
#include <QDBusConnection>
#include <QDBusMessage>
#include <QStringList>
#include <QVariantMap>

namespace caprail {

/// What the desktop asks of the program over the session's bus, so that a launcher, a file manager or a notification
/// need not start it again: org.freedesktop.Application (Desktop Entry Specification 1.5, “D-Bus Activation”). The
/// first program of a session has the name, and opens windows for all that are asked for; one that comes later keeps to
/// its own. Beside it each window has its doorbell, which needs no bus.
class DesktopCalls : public QDBusAbstractAdaptor {
    Q_OBJECT
    Q_CLASSINFO("D-Bus Interface", "org.freedesktop.Application")
public:
    /// Takes the name on this bus, and answers there as long as `parent` lives. Null: there is no bus, or another
    /// program has the name.
    static DesktopCalls* answerOn(QDBusConnection bus, QObject* parent);
    /// The bus of this session; not connected where there is none, and none is started for it.
    static QDBusConnection sessionBus();

public slots:
    /// The start page: the one that is open, or a new one.
    void Activate(const QVariantMap& platform);
    /// Records, as addresses (file:///…): each in its window, which comes to the front where there is one.
    void Open(const QStringList& addresses, const QVariantMap& platform);
    /// “new-record” or “shop”, as in the desktop entry. Others are refused.
    void ActivateAction(const QString& name, const QVariantList& parameters, const QVariantMap& platform,
                        const QDBusMessage& call);

private:
    DesktopCalls(QDBusConnection bus, QObject* object);

    QDBusConnection m_bus;
};

} // namespace caprail
