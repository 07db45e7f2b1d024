// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/plan_tools.h>

#include <QHBoxLayout>
#include <QToolButton>
#include <planview/plan_view.h>

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
}

void PlanTools::add(QHBoxLayout* row, const QString& text, const QString& name, void (PlanView::*action)()) {
    auto* button = new QToolButton(this);
    button->setText(text);
    button->setToolTip(name);
    button->setAccessibleName(name);
    button->setMinimumSize(34, 30);
    connect(button, &QToolButton::clicked, m_view, action);
    row->addWidget(button);
}

} // namespace caprail
