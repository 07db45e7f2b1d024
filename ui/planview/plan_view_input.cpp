// SPDX-License-Identifier: GPL-3.0-or-later
// The hands on a plan view: keys, mouse, wheel, tooltips.
#include <QHelpEvent>
#include <QKeyEvent>
#include <QToolTip>
#include <algorithm>
#include <cmath>
#include <planview/plan_view.h>
#include <text/plain_text.h>

namespace caprail {

namespace {

std::optional<PlanDirection> directionOf(int key) {
    switch (key) {
    case Qt::Key_Left:
        return PlanDirection::left;
    case Qt::Key_Right:
        return PlanDirection::right;
    case Qt::Key_Up:
        return PlanDirection::up;
    case Qt::Key_Down:
        return PlanDirection::down;
    default:
        return std::nullopt;
    }
}

bool isWriting(const QString& text) {
    return !text.isEmpty() && std::all_of(text.begin(), text.end(), [](QChar c) { return c.isPrint(); });
}

} // namespace

void PlanView::keyPressEvent(QKeyEvent* event) {
    const PlanDrawing* plan = drawing();
    const bool isCommand = event->modifiers().testFlag(Qt::ControlModifier);
    if (plan == nullptr) {
        QWidget::keyPressEvent(event);
        return;
    }
    if (isCommand) {
        switch (event->key()) {
        case Qt::Key_Plus:
        case Qt::Key_Equal: // the plus of keyboards where it needs Shift
            zoomIn();
            return;
        case Qt::Key_Minus:
            zoomOut();
            return;
        case Qt::Key_0:
            zoomToAll();
            return;
        default:
            QWidget::keyPressEvent(event);
            return;
        }
    }
    if (event->modifiers().testFlag(Qt::AltModifier) || event->modifiers().testFlag(Qt::MetaModifier)) {
        QWidget::keyPressEvent(event);
        return;
    }
    const QStringList places = plan->places();
    if (const auto direction = directionOf(event->key())) {
        go(plan->neighbour(selected(), *direction));
    } else if (event->key() == Qt::Key_Home && !places.isEmpty()) {
        go(places.front());
    } else if (event->key() == Qt::Key_End && !places.isEmpty()) {
        go(places.back());
    } else if ((event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) && !selected().isEmpty()) {
        emit placeActivated(selected());
    } else if (isWriting(event->text())) {
        emit typed(event->text());
    } else {
        QWidget::keyPressEvent(event);
    }
}

QString PlanView::placeAt(QPointF widgetPoint) const {
    return drawing() == nullptr ? QString() : drawing()->placeAt(toDrawing(widgetPoint));
}

void PlanView::mousePressEvent(QMouseEvent* event) {
    const bool isMain = event->button() == Qt::LeftButton;
    const QString place = isMain ? placeAt(event->position()) : QString();
    if (!place.isEmpty()) {
        go(place);
        emit placeClicked(place);
    } else if (m_zoom > 1 && (isMain || event->button() == Qt::MiddleButton)) {
        m_grip = event->position() - m_scroll;
        setCursor(Qt::ClosedHandCursor);
    }
}

void PlanView::mouseMoveEvent(QMouseEvent* event) {
    if (m_grip) {
        m_scroll = event->position() - *m_grip;
        keepInside();
        update();
        return;
    }
    const bool isOverPlace = !placeAt(event->position()).isEmpty();
    setCursor(isOverPlace ? Qt::PointingHandCursor : Qt::ArrowCursor);
}

void PlanView::mouseReleaseEvent(QMouseEvent*) {
    if (m_grip) {
        m_grip.reset();
        setCursor(Qt::ArrowCursor);
    }
}

void PlanView::mouseDoubleClickEvent(QMouseEvent* event) {
    const QString place = drawing() == nullptr ? QString() : drawing()->placeAt(toDrawing(event->position()));
    if (!place.isEmpty()) {
        go(place);
        emit placeActivated(place);
    }
}

void PlanView::wheelEvent(QWheelEvent* event) {
    if (!event->modifiers().testFlag(Qt::ControlModifier)) {
        event->ignore(); // the scroll area around it may want it
        return;
    }
    setZoom(m_zoom * std::pow(1.0015, event->angleDelta().y()), event->position());
    event->accept();
}

QStringList PlanView::spokenPlaces() const {
    return drawing() == nullptr ? QStringList() : drawing()->places();
}

QString PlanView::spokenSentence(const QString& place) const {
    return drawing() == nullptr ? QString() : drawing()->sentenceOf(place);
}

QString PlanView::spokenFigure(const QString& place) const {
    const PlanMark* mark = drawing() == nullptr ? nullptr : drawing()->markOf(place);
    return mark == nullptr ? QString() : mark->figure;
}

QRect PlanView::spokenRect(const QString& place) const {
    return widgetRectOf(place).toAlignedRect();
}

void PlanView::chooseSpoken(const QString& place, bool isActivated) {
    select(place);
    emit placeSelected(place);
    if (isActivated) {
        emit placeActivated(place);
    }
}

bool PlanView::event(QEvent* event) {
    if (event->type() == QEvent::ToolTip && drawing() != nullptr) {
        const auto* help = static_cast<QHelpEvent*>(event);
        const QString place = drawing()->placeAt(toDrawing(help->pos()));
        if (place.isEmpty()) {
            QToolTip::hideText();
            event->ignore();
        } else {
            showTip(help->globalPos(), drawing()->sentenceOf(place), this, widgetRectOf(place).toAlignedRect());
        }
        return true;
    }
    return QWidget::event(event);
}

} // namespace caprail
