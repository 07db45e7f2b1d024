// SPDX-License-Identifier: GPL-3.0-or-later
#include <window/house_style.h>

#include <QAbstractItemView>
#include <QComboBox>
#include <QGuiApplication>
#include <QHash>
#include <QSet>
#include <QIconEngine>
#include <QLabel>
#include <QPainter>
#include <QPalette>
#include <QScroller>
#include <QStyleOption>
#include <QStyleFactory>
#include <QTabBar>
#include <QTabWidget>
#include <algorithm>
#include <session/look.h>
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

/// Fusion draws frames in the window's colour, 1.4 times darker: with this for the window's colour they come out in a
/// colour between ground and text.
const QPalette& framePalette(const QPalette& palette) {
    constexpr int darker = 140; // per cent, Fusion's
    static QHash<qint64, QPalette> known; // by palette: Fusion keeps pictures of frames by the palette's key
    static QSet<qint64> made;             // a control hands its palette on to its parts
    if (made.contains(palette.cacheKey())) {
        return palette;
    }
    const auto found = known.constFind(palette.cacheKey());
    if (found != known.constEnd()) {
        return *found;
    }
    if (known.size() > 100) {
        known.clear();
        made.clear();
    }
    const QColor ground = palette.color(QPalette::Window);
    const QColor text = palette.color(QPalette::WindowText);
    const double share = isHighContrast(palette) ? 0.7 : 0.6;
    QPalette framed = palette;
    framed.setColor(QPalette::Window, washed(text, ground, share).lighter(darker));
    made.insert(framed.cacheKey());
    return *known.insert(palette.cacheKey(), framed);
}

bool hasFrame(QStyle::PrimitiveElement element) {
    return element == QStyle::PE_FrameLineEdit || element == QStyle::PE_PanelLineEdit ||
           element == QStyle::PE_PanelButtonCommand || element == QStyle::PE_IndicatorCheckBox ||
           element == QStyle::PE_IndicatorRadioButton || element == QStyle::PE_Frame;
}

/// Draws with a copy of the option that has the palette of the frames; `Option` is the kind that Fusion looks for.
template <class Option> bool drawnFramed(const QStyleOption* option, const auto& draw) {
    const auto* given = qstyleoption_cast<const Option*>(option);
    if (given == nullptr) {
        return false;
    }
    Option framed(*given);
    framed.palette = framePalette(given->palette);
    draw(&framed);
    return true;
}

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

void HouseStyle::drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                               const QWidget* widget) const {
    const auto draw = [&](const QStyleOption* with) { QProxyStyle::drawPrimitive(element, with, painter, widget); };
    if (!hasFrame(element) || !(drawnFramed<QStyleOptionButton>(option, draw) || drawnFramed<QStyleOptionFrame>(option, draw))) {
        draw(option);
    }
}

void HouseStyle::drawComplexControl(ComplexControl control, const QStyleOptionComplex* option, QPainter* painter,
                                    const QWidget* widget) const {
    const auto draw = [&](const QStyleOptionComplex* with) {
        QProxyStyle::drawComplexControl(control, with, painter, widget);
    };
    if (!drawnFramed<QStyleOptionComboBox>(option, draw) && !drawnFramed<QStyleOptionSpinBox>(option, draw)) {
        draw(option);
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
