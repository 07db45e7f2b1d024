// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>
#include <stations/pickup/section.h>

namespace caprail {

/// The section on the screen, in the system's look.
class PickupSectionView : public QWidget {
    Q_OBJECT
public:
    explicit PickupSectionView(QWidget* parent = nullptr);
    void show(PickupSection section);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    PickupSection m_section;
};

} // namespace caprail
