// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>
#include <vector>

class QHBoxLayout;
class QToolButton;

namespace caprail {

class PlanView;

/// Turn, flip, zoom and layers for a plan view, as a row of small buttons. Turning one diagram turns all of them.
class PlanTools : public QWidget {
    Q_OBJECT
public:
    explicit PlanTools(PlanView* view, QWidget* parent = nullptr);
    /// Where a station is small only the layers keep their button; all else is in its menu.
    static void fitAllIn(const QWidget& station);

private:
    void add(QHBoxLayout* row, const QString& text, const QString& name, void (PlanView::*action)());
    void addLayers(QHBoxLayout* row);
    void follow();
    PlanView* m_view;
    std::vector<QToolButton*> m_movers; ///< turn, flip and zoom
};

} // namespace caprail
