// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>

class QHBoxLayout;

namespace caprail {

class PlanView;

/// Turn, flip and zoom for a plan view, as a row of small buttons.
class PlanTools : public QWidget {
    Q_OBJECT
public:
    explicit PlanTools(PlanView* view, QWidget* parent = nullptr);

private:
    void add(QHBoxLayout* row, const QString& text, const QString& name, void (PlanView::*action)());
    PlanView* m_view;
};

} // namespace caprail
