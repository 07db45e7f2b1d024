// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/pickup/section_view.h>

#include <QPainter>
#include <stations/common/station_text.h>

namespace caprail {

PickupSectionView::PickupSectionView(QWidget* parent) : QWidget(parent) {
    setMinimumSize(420, 280);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    setAccessibleName(tr("Section through pan, plate and pickup"));
}

void PickupSectionView::show(PickupSection section) {
    m_section = std::move(section);
    setAccessibleDescription(m_section.clearance
                                 ? tr("Clearance %1").arg(qtText(format(*m_section.clearance, m_section.units)))
                                 : tr("Clearance not known yet"));
    update();
}

void PickupSectionView::paintEvent(QPaintEvent*) {
    const Look look = screenLook();
    QPainter painter(this);
    painter.fillRect(rect(), look.paper);
    drawPickupSection(painter, QRectF(rect()).adjusted(12, 10, -12, -8), m_section, look);
}

} // namespace caprail
