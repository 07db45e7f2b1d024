// SPDX-License-Identifier: GPL-3.0-or-later
#include <window/house_style.h>

#include <QAbstractItemView>
#include <QComboBox>
#include <QGuiApplication>
#include <QIconEngine>
#include <QLabel>
#include <QPainter>
#include <QPalette>
#include <QScroller>
#include <QStyleFactory>
#include <QTabBar>
#include <QTabWidget>
#include <algorithm>
#include <text/box_label.h>

namespace caprail {

namespace {

/// Two chevrons that point to where there is more; drawn only when they are seen.
class Chevrons : public QIconEngine {
public:
    explicit Chevrons(bool isDownwards) : m_isDownwards(isDownwards) {}

    void paint(QPainter* painter, const QRect& rect, QIcon::Mode mode, QIcon::State) override {
        const auto group = mode == QIcon::Disabled ? QPalette::Disabled : QPalette::Active;
        const double side = std::min(rect.width(), rect.height());
        painter->save();
        painter->setRenderHint(QPainter::Antialiasing);
        painter->translate(QRectF(rect).center());
        if (m_isDownwards) {
            painter->rotate(90);
        }
        painter->setPen(QPen(QGuiApplication::palette().color(group, QPalette::ButtonText), 0.12 * side));
        for (const double at : {-0.22, 0.12}) {
            painter->drawPolyline(
                QPolygonF{{at * side, -0.25 * side}, {(at + 0.2) * side, 0}, {at * side, 0.25 * side}});
        }
        painter->restore();
    }
    QPixmap pixmap(const QSize& size, QIcon::Mode mode, QIcon::State state) override {
        QPixmap picture(size);
        picture.fill(Qt::transparent);
        QPainter painter(&picture);
        paint(&painter, QRect(QPoint(), size), mode, state);
        return picture;
    }
    [[nodiscard]] QIconEngine* clone() const override { return new Chevrons(m_isDownwards); }

private:
    bool m_isDownwards;
};

} // namespace

HouseStyle::HouseStyle() : QProxyStyle(QStyleFactory::create(QStringLiteral("Fusion"))) {}

void HouseStyle::polish(QWidget* widget) {
    QProxyStyle::polish(widget);
    // A tip's text comes in a form of its own (text/plain_text.h).
    if (auto* label = qobject_cast<QLabel*>(widget);
        label != nullptr && label->textFormat() == Qt::AutoText && !label->inherits("QTipLabel")) {
        label->setTextFormat(Qt::PlainText);
    }
    if (auto* box = qobject_cast<QComboBox*>(widget)) {
        labelBox(*box);
    }
    if (auto* tabs = qobject_cast<QTabWidget*>(widget)) {
        tabs->setFocusPolicy(Qt::NoFocus); // goes to the bar too, which takes the keyboard for both
        tabs->tabBar()->setFocusPolicy(Qt::TabFocus);
    }
    if (auto* area = qobject_cast<QAbstractScrollArea*>(widget)) {
        QScroller::grabGesture(area->viewport(), QScroller::TouchGesture);
        if (auto* view = qobject_cast<QAbstractItemView*>(widget)) {
            view->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel); // whole rows would jump under the finger
        }
    }
}

QSize HouseStyle::sizeFromContents(ContentsType type, const QStyleOption* option, const QSize& contents,
                                   const QWidget* widget) const {
    const QSize size = QProxyStyle::sizeFromContents(type, option, contents, widget);
    switch (type) {
    case CT_LineEdit:
    case CT_ComboBox:
    case CT_SpinBox:
    case CT_PushButton:
    case CT_ToolButton:
    case CT_CheckBox:
    case CT_RadioButton:
    case CT_TabBarTab:
        return size.expandedTo({leastTarget, leastTarget});
    default:
        return size;
    }
}

QIcon HouseStyle::standardIcon(StandardPixmap which, const QStyleOption* option, const QWidget* widget) const {
    switch (which) {
    case SP_ToolBarHorizontalExtensionButton:
    case SP_ToolBarVerticalExtensionButton:
        return QIcon(new Chevrons(which == SP_ToolBarVerticalExtensionButton)); // the icon takes it over
    default:
        return QProxyStyle::standardIcon(which, option, widget);
    }
}

} // namespace caprail
