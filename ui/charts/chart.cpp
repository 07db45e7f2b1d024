// SPDX-License-Identifier: GPL-3.0-or-later
#include <charts/chart.h>

#include <QAccessibleWidget>
#include <QHelpEvent>
#include <QToolTip>
#include <charts/chart_drawing.h>
#include <cmath>
#include <text/plain_text.h>

namespace caprail {

namespace {

/// To a screen reader a chart is a chart, by name and description, and no bare canvas.
QAccessibleInterface* accessibleChart(const QString&, QObject* object) {
    auto* chart = qobject_cast<Chart*>(object);
    return chart == nullptr ? nullptr : new QAccessibleWidget(chart, QAccessible::Chart);
}

} // namespace

Chart::Chart(QWidget* parent) : QCustomPlot(parent) {
    static const bool isInstalled = [] {
        QAccessible::installFactory(accessibleChart);
        return true;
    }();
    Q_UNUSED(isInstalled);
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    offerPicture(this, [this] { return given(); });
}

GivenPicture Chart::given() {
    return {m_text.name, m_text.description, m_text.points.empty() ? QSize() : size(), [this](QPaintDevice& device) {
                QCPPainter painter(&device);
                painter.setMode(QCPPainter::pmNoCaching);
                painter.fillRect(rect(), m_look.value_or(screenLook()).paper);
                toPainter(&painter, width(), height());
            }};
}

QSize Chart::minimumSizeHint() const {
    return {20 * fontMetrics().height(), 9 * fontMetrics().height()};
}

QSize Chart::sizeHint() const {
    return {44 * fontMetrics().height(), 15 * fontMetrics().height()};
}

void Chart::take(ChartText text, const Look& look) {
    const QString before = m_current && *m_current < m_text.points.size() ? m_text.points[*m_current].place : QString();
    m_text = std::move(text);
    m_look = look;
    m_current.reset();
    for (std::size_t i = 0; i < m_text.points.size() && !before.isEmpty(); ++i) {
        if (m_text.points[i].place == before) {
            m_current = i;
            break;
        }
    }
    setAccessibleName(m_text.name);
    setAccessibleDescription(m_text.description);
    replot(QCustomPlot::rpQueuedReplot);
}

QPointF Chart::widgetPointOf(const ChartPoint& point) const {
    return {xAxis->coordToPixel(point.at.x()), yAxis->coordToPixel(point.at.y())};
}

const ChartPoint* Chart::pointAt(QPointF widgetPoint) const {
    const double reach = std::max(8.0, 0.8 * fontMetrics().height());
    const ChartPoint* nearest = nullptr;
    double least = reach;
    for (const ChartPoint& point : m_text.points) {
        const QPointF away = widgetPointOf(point) - widgetPoint;
        const double distance = std::hypot(away.x(), away.y());
        if (distance <= least && axisRect()->rect().contains(widgetPointOf(point).toPoint())) {
            nearest = &point;
            least = distance;
        }
    }
    return nearest;
}

void Chart::choose(std::size_t index) {
    m_current = index;
    const ChartPoint point = m_text.points[index]; // a slot may fill the chart anew
    update();
    showTip(mapToGlobal(widgetPointOf(point).toPoint()), point.words, this);
    if (!point.place.isEmpty()) {
        emit placeSelected(point.place);
    }
    if (point.entry != 0) {
        emit entrySelected(point.entry);
    }
}

void Chart::step(int by) {
    if (m_text.points.empty()) {
        return;
    }
    const auto count = static_cast<int>(m_text.points.size());
    const int from = m_current ? static_cast<int>(*m_current) : (by > 0 ? -1 : count);
    choose(static_cast<std::size_t>(std::clamp(from + by, 0, count - 1)));
}

bool Chart::event(QEvent* event) {
    if (event->type() == QEvent::ToolTip) {
        const auto* help = static_cast<QHelpEvent*>(event);
        if (const ChartPoint* point = pointAt(help->pos())) {
            showTip(help->globalPos(), point->words, this);
        } else {
            QToolTip::hideText();
        }
        return true;
    }
    return QCustomPlot::event(event);
}

void Chart::mousePressEvent(QMouseEvent* event) {
    const ChartPoint* point = event->button() == Qt::LeftButton ? pointAt(event->position()) : nullptr;
    if (point != nullptr) {
        choose(static_cast<std::size_t>(point - m_text.points.data()));
        return;
    }
    QCustomPlot::mousePressEvent(event);
}

void Chart::mouseMoveEvent(QMouseEvent* event) {
    if (event->buttons() == Qt::NoButton) {
        setCursor(pointAt(event->position()) == nullptr ? Qt::ArrowCursor : Qt::PointingHandCursor);
    }
    QCustomPlot::mouseMoveEvent(event);
}

void Chart::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_Left:
        step(-1);
        return;
    case Qt::Key_Right:
        step(1);
        return;
    default:
        QCustomPlot::keyPressEvent(event);
    }
}

void Chart::changeEvent(QEvent* event) {
    if (event->type() == QEvent::FontChange && m_look) {
        for (QCPAxis* axis : {xAxis, yAxis}) {
            axis->setTickLabelFont(font());
            axis->setLabelFont(font());
        }
        legend->setFont(font());
        updateGeometry();
        replot(QCustomPlot::rpQueuedReplot);
    }
    QCustomPlot::changeEvent(event);
}

void Chart::paintEvent(QPaintEvent* event) {
    QCustomPlot::paintEvent(event);
    const Look look = m_look.value_or(screenLook());
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    if (!m_look || !m_text.nothing.isEmpty()) { // a chart that says on its plot why it is empty says it there only
        painter.setPen(look.quiet);
        const int margin = 2 * fontMetrics().height();
        painter.drawText(rect().adjusted(margin, 0, -margin, 0), Qt::AlignCenter | Qt::TextWordWrap,
                         m_text.nothing.isEmpty() ? tr("Readings are drawn here.") : m_text.nothing);
    }
    if (m_current) {
        painter.setPen(QPen(look.accent, 2));
        const double radius = 0.6 * fontMetrics().height();
        painter.drawEllipse(widgetPointOf(m_text.points[*m_current]), radius, radius);
    }
}

} // namespace caprail
