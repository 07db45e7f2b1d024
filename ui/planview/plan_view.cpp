// SPDX-License-Identifier: GPL-3.0-or-later
#include <planview/plan_view.h>

#include <QGuiApplication>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QPainter>
#include <QToolTip>
#include <algorithm>
#include <planview/plan_places.h>

namespace caprail {

namespace {

constexpr qreal largestZoom = 8;
constexpr qreal zoomStep = 1.25;

} // namespace

PlanView::PlanView(QWidget* parent) : QWidget(parent) {
    installSpokenPlaces();
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    m_sentence = tr("Describe the engine first: the pan rail is drawn from its layout.");
    offerPicture(this, [this] { return given(); });
}

PlanView::~PlanView() = default;

void PlanView::setContent(PlanContent content) {
    const QStringList before = places();
    m_content = std::move(content);
    m_given = m_content->layers;
    m_content->layers = (m_given | m_shown) & ~m_hidden;
    // It is laid out when it is painted: until then the size may change, and the content again.
    layOutAnew();
    const QStringList now = places();
    if (!now.contains(m_content->selected)) {
        m_content->selected.clear();
    }
    if (before != now) {
        announcePlaces(*this);
    }
}

void PlanView::setEmpty(const QString& sentence) {
    m_content.reset();
    m_sentence = sentence;
    layOutAnew();
    announcePlaces(*this);
}

void PlanView::setOrientation(const PlanOrientation& orientation) {
    if (orientation == m_orientation) {
        return;
    }
    m_orientation = orientation;
    layOutAnew();
    emit orientationChanged();
}

void PlanView::setLayers(PlanLayers on, PlanLayers hidden) {
    m_shown = on;
    m_hidden = hidden;
    if (m_content) {
        PlanContent content = std::move(*m_content);
        content.layers = m_given;
        setContent(std::move(content));
    }
}

void PlanView::setLook(const Look& look) {
    m_look = look;
    update();
}

Look PlanView::look() const {
    return m_look.value_or(screenLook());
}

void PlanView::select(const QString& place) {
    if (!m_content) {
        return;
    }
    const QString wanted = places().contains(place) ? place : QString();
    if (wanted == m_content->selected) {
        return;
    }
    m_content->selected = wanted;
    if (m_drawing) {
        m_drawing->select(wanted);
    }
    update();
    bringIntoSight(wanted);
    announceSelection(*this);
}

QStringList PlanView::places() const {
    return m_content ? placeCodes(*m_content) : QStringList();
}

QString PlanView::selected() const {
    return m_content ? m_content->selected : QString();
}

void PlanView::go(const QString& place) {
    if (!place.isEmpty() && place != selected()) {
        select(place);
        emit placeSelected(place);
    }
}

void PlanView::layOutAnew() {
    m_drawing.reset();
    update();
}

const PlanDrawing* PlanView::drawing() const {
    if (m_content && !m_drawing) {
        m_drawing.emplace(*m_content, m_orientation, QRectF(rect()).adjusted(3, 3, -3, -3), font(), this);
    }
    return m_drawing ? &*m_drawing : nullptr;
}

void PlanView::setZoom(qreal zoom, QPointF about) {
    const qreal wanted = std::clamp(zoom, 1.0, largestZoom);
    m_scroll = about - (about - m_scroll) * (wanted / m_zoom);
    m_zoom = wanted;
    keepInside();
    update();
}

void PlanView::keepInside() {
    m_scroll.setX(std::clamp(m_scroll.x(), width() * (1 - m_zoom), 0.0));
    m_scroll.setY(std::clamp(m_scroll.y(), height() * (1 - m_zoom), 0.0));
}

void PlanView::bringIntoSight(const QString& place) {
    if (m_zoom <= 1) {
        return; // all of it is in sight
    }
    const QRectF at = widgetRectOf(place);
    if (at.isNull() || QRectF(rect()).contains(at)) {
        return;
    }
    const QRectF wanted = at.adjusted(-6, -6, 6, 6);
    const auto shift = [](qreal from, qreal to, qreal room) {
        return from < 0 ? -from : (to > room ? std::max(room - to, -from) : 0.0);
    };
    m_scroll += QPointF(shift(wanted.left(), wanted.right(), width()), shift(wanted.top(), wanted.bottom(), height()));
    keepInside();
    update();
}

QPointF PlanView::toDrawing(QPointF widgetPoint) const {
    return (widgetPoint - m_scroll) / m_zoom;
}

QRectF PlanView::widgetRectOf(const QString& place) const {
    const QRectF at = drawing() == nullptr ? QRectF() : drawing()->rectOf(place);
    return at.isNull() ? at : QRectF(at.topLeft() * m_zoom + m_scroll, at.size() * m_zoom);
}

QSize PlanView::sizeHint() const {
    return {56 * fontMetrics().height(), 32 * fontMetrics().height()};
}

QSize PlanView::minimumSizeHint() const {
    return {24 * fontMetrics().height(), 17 * fontMetrics().height()};
}

void PlanView::turn() {
    setOrientation({(m_orientation.quarterTurns + 1) % 4, m_orientation.isFlipped});
}

void PlanView::flip() {
    setOrientation({m_orientation.quarterTurns, !m_orientation.isFlipped});
}

void PlanView::zoomIn() {
    setZoom(m_zoom * zoomStep, QRectF(rect()).center());
}

void PlanView::zoomOut() {
    setZoom(m_zoom / zoomStep, QRectF(rect()).center());
}

void PlanView::zoomToAll() {
    setZoom(1, {});
}

GivenPicture PlanView::given() const {
    return {accessibleName(), accessibleDescription(), drawing() == nullptr ? QSize() : size(),
            [this](QPaintDevice& device) {
                QPainter painter(&device);
                painter.setRenderHint(QPainter::Antialiasing);
                painter.setFont(font());
                painter.fillRect(rect(), look().paper);
                drawing()->paint(painter, look());
            }};
}

void PlanView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const Look colours = look();
    painter.fillRect(rect(), colours.paper);
    if (const PlanDrawing* plan = drawing()) {
        painter.save();
        painter.translate(m_scroll);
        painter.scale(m_zoom, m_zoom);
        plan->paint(painter, colours);
        painter.restore();
    } else {
        painter.setPen(colours.quiet);
        painter.drawText(QRectF(rect()).adjusted(20, 20, -20, -20), Qt::AlignCenter | Qt::TextWordWrap, m_sentence);
    }
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(colours.faint, 1));
    painter.drawRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5));
}

void PlanView::resizeEvent(QResizeEvent* event) {
    layOutAnew();
    keepInside();
    QWidget::resizeEvent(event);
}

void PlanView::changeEvent(QEvent* event) {
    if (event->type() == QEvent::FontChange || event->type() == QEvent::PaletteChange ||
        event->type() == QEvent::StyleChange) {
        layOutAnew();
        updateGeometry();
    }
    QWidget::changeEvent(event);
}

void PlanView::focusInEvent(QFocusEvent* event) {
    QWidget::focusInEvent(event);
    announceSelection(*this);
}

} // namespace caprail
