// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/common/diagram_tools.h>

#include <QHBoxLayout>
#include <QMenu>
#include <QToolButton>
#include <planview/plan_view.h>
#include <stations/common/caution_label.h>
#include <stations/common/diagram_setting.h>
#include <text/plain_text.h>

namespace caprail {

PlanTools::PlanTools(PlanView* view, QWidget* parent) : QWidget(parent), m_view(view) {
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(2);
    add(row, tr("Turn"), tr("Turn the diagram a quarter"), &PlanView::turn);
    add(row, tr("Flip"), tr("Flip the diagram across the crank"), &PlanView::flip);
    add(row, QStringLiteral("+"), tr("Zoom in (Ctrl +)"), &PlanView::zoomIn);
    add(row, QStringLiteral("−"), tr("Zoom out (Ctrl −)"), &PlanView::zoomOut);
    add(row, tr("All"), tr("Show the whole diagram (Ctrl 0)"), &PlanView::zoomToAll);
    addLayers(row);
    connect(m_view, &PlanView::orientationChanged, this,
            [this] { DiagramSetting::shared().setOrientation(m_view->orientation()); });
    connect(&DiagramSetting::shared(), &DiagramSetting::changed, this, &PlanTools::follow);
    follow();
}

void PlanTools::follow() {
    const DiagramSetting& setting = DiagramSetting::shared();
    m_view->setOrientation(setting.orientation());
    m_view->setLayers(setting.shown(), setting.hidden());
}

void PlanTools::fitAllIn(const QWidget& station) {
    const bool isRoomy = CautionLabel::isWide(station);
    for (PlanTools* tools : station.findChildren<PlanTools*>()) {
        for (QToolButton* button : tools->m_movers) {
            button->setVisible(isRoomy);
        }
    }
}

void PlanTools::addLayers(QHBoxLayout* row) {
    auto* button = new QToolButton(this);
    button->setText(tr("Layers"));
    setTip(button, tr("What the diagrams show"));
    button->setMinimumHeight(30);
    button->setPopupMode(QToolButton::InstantPopup);
    auto* menu = new QMenu(button);
    const std::pair<PlanLayer, QString> layers[] = {
        {PlanLayer::girdle, tr("Girdle")},       {PlanLayer::cutout, tr("Its cutout")},
        {PlanLayer::pickup, tr("Pickup")},       {PlanLayer::dipstick, tr("Dipstick")},
        {PlanLayer::throws, tr("Crank throws")}, {PlanLayer::sequence, tr("Tightening numbers")}};
    for (const auto& [layer, name] : layers) {
        QAction* action = menu->addAction(name);
        action->setCheckable(true);
        action->setData(static_cast<int>(layer));
        connect(action, &QAction::triggered, this,
                [layer = layer](bool isOn) { DiagramSetting::shared().setLayer(layer, isOn); });
    }
    menu->addSeparator();
    menu->addAction(tr("As each station draws it"), this, [] { DiagramSetting::shared().resetLayers(); });
    menu->addSeparator();
    menu->addAction(tr("Turn the diagram a quarter"), m_view, &PlanView::turn);
    menu->addAction(tr("Flip the diagram across the crank"), m_view, &PlanView::flip);
    menu->addAction(tr("Show the whole diagram (Ctrl 0)"), m_view, &PlanView::zoomToAll);
    connect(menu, &QMenu::aboutToShow, this, [this, menu] {
        for (QAction* action : menu->actions()) {
            if (action->isCheckable() && m_view->content() != nullptr) {
                action->setChecked(m_view->content()->layers.testFlag(static_cast<PlanLayer>(action->data().toInt())));
            }
        }
    });
    button->setMenu(menu);
    row->addWidget(button);
}

void PlanTools::add(QHBoxLayout* row, const QString& text, const QString& name, void (PlanView::*action)()) {
    auto* button = new QToolButton(this);
    button->setText(text);
    setTip(button, name);
    if (text.size() == 1) {
        button->setAccessibleName(name); // "+" is no word
        button->setMinimumWidth(34);
    }
    button->setMinimumHeight(30); // as wide as its name at least, in every language
    connect(button, &QToolButton::clicked, m_view, action);
    row->addWidget(button);
    m_movers.push_back(button);
}

} // namespace caprail
