// SPDX-License-Identifier: GPL-3.0-or-later
#include <window/focus_ring.h>

#include <QApplication>
#include <QEvent>
#include <QPainter>
#include <session/look.h>

namespace caprail {

FocusRing::FocusRing(QWidget* window) : QFocusFrame(window) {
    setObjectName(QStringLiteral("focusRing"));
    setAttribute(Qt::WA_NoSystemBackground);
    hide();
}

void FocusRing::install() {
    static const bool isInstalled = [] {
        connect(qApp, &QApplication::focusChanged, qApp, [](QWidget* before, QWidget* now) {
            const auto ringOf = [](QWidget* widget) {
                return widget->window()->findChild<FocusRing*>(QString(), Qt::FindDirectChildrenOnly);
            };
            if (before != nullptr && (now == nullptr || now->window() != before->window())) {
                if (FocusRing* ring = ringOf(before)) {
                    ring->follow(nullptr);
                }
            }
            // A menu and the list of a box show by themselves where they are.
            if (now == nullptr || now->isWindow() || now->window()->windowType() == Qt::Popup) {
                return;
            }
            FocusRing* ring = ringOf(now);
            (ring == nullptr ? new FocusRing(now->window()) : ring)->follow(now); // the window takes it over
        });
        return true;
    }();
    Q_UNUSED(isInstalled)
}

void FocusRing::follow(QWidget* target) {
    for (const QPointer<QWidget>& one : std::exchange(m_watched, {})) {
        if (one) {
            one->removeEventFilter(this);
        }
    }
    m_target = target;
    for (QWidget* at = target; at != nullptr && at != parentWidget(); at = at->parentWidget()) {
        at->installEventFilter(this);
        m_watched << at;
    }
    surround();
}

void FocusRing::surround() {
    // As much of it as is in sight in a page that scrolls.
    QRect area;
    if (m_target && m_target->isVisible() && m_target->window() == parentWidget()) {
        area = QRect(m_target->mapTo(parentWidget(), QPoint()), m_target->size());
        for (QWidget* at = m_target->parentWidget(); at != nullptr && at != parentWidget(); at = at->parentWidget()) {
            area &= QRect(at->mapTo(parentWidget(), QPoint()), at->size());
        }
    }
    if (area.isEmpty()) {
        hide();
        return;
    }
    setGeometry(area);
    // Only the ring: what is inside needs not be painted with it.
    setMask(QRegion(rect()) - QRegion(rect().adjusted(width, width, -width, -width)));
    show();
    raise();
}

bool FocusRing::eventFilter(QObject* watched, QEvent* event) {
    switch (event->type()) {
    case QEvent::Move:
    case QEvent::Resize:
    case QEvent::Show:
    case QEvent::Hide:
        surround();
        break;
    case QEvent::ParentChange:
        QMetaObject::invokeMethod(
            this, [this] { follow(m_target && m_target->window() == parentWidget() ? m_target.data() : nullptr); },
            Qt::QueuedConnection);
        break;
    default:
        break;
    }
    return QWidget::eventFilter(watched, event); // not QFocusFrame's, which would lead it about itself
}

void FocusRing::paintEvent(QPaintEvent*) {
    QPainter(this).fillRect(rect(), screenLook().accent);
}

} // namespace caprail
