// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QObject>
#include <planview/plan_content.h>

namespace caprail {

/// How the diagrams lie and what they show: the same at every station and in every window, since there is one engine on
/// the stand. Kept in the user's configuration; nothing of it is in a record.
class DiagramSetting : public QObject {
    Q_OBJECT
public:
    static DiagramSetting& shared();

    [[nodiscard]] PlanOrientation orientation() const { return m_orientation; }
    void setOrientation(const PlanOrientation& orientation);
    /// Layers that a person wants to see, or not to see, wherever a station would draw otherwise.
    [[nodiscard]] PlanLayers shown() const { return m_shown; }
    [[nodiscard]] PlanLayers hidden() const { return m_hidden; }
    void setLayer(PlanLayer layer, bool isOn);
    /// As the stations draw by themselves.
    void resetLayers();

signals:
    void changed();

private:
    explicit DiagramSetting(QObject* parent);
    void save() const;
    PlanOrientation m_orientation;
    PlanLayers m_shown, m_hidden;
};

} // namespace caprail
