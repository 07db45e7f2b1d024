// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/common/diagram_setting.h>

#include <QCoreApplication>
#include <QPointer>
#include <QSettings>

namespace caprail {

DiagramSetting& DiagramSetting::shared() {
    static QPointer<DiagramSetting> one;
    if (one.isNull()) {
        one = new DiagramSetting(QCoreApplication::instance());
    }
    return *one;
}

DiagramSetting::DiagramSetting(QObject* parent) : QObject(parent) {
    const QSettings settings;
    m_orientation.quarterTurns = settings.value("diagram/quarter-turns", 0).toInt() % 4;
    m_orientation.isFlipped = settings.value("diagram/flipped", false).toBool();
    m_shown = PlanLayers(QFlag(settings.value("diagram/layers-shown", 0).toInt()));
    m_hidden = PlanLayers(QFlag(settings.value("diagram/layers-hidden", 0).toInt()));
}

void DiagramSetting::setOrientation(const PlanOrientation& orientation) {
    if (orientation != m_orientation) {
        m_orientation = orientation;
        save();
        emit changed();
    }
}

void DiagramSetting::setLayer(PlanLayer layer, bool isOn) {
    m_shown.setFlag(layer, isOn);
    m_hidden.setFlag(layer, !isOn);
    save();
    emit changed();
}

void DiagramSetting::resetLayers() {
    m_shown = {};
    m_hidden = {};
    save();
    emit changed();
}

void DiagramSetting::save() const {
    QSettings settings;
    settings.setValue("diagram/quarter-turns", m_orientation.quarterTurns);
    settings.setValue("diagram/flipped", m_orientation.isFlipped);
    settings.setValue("diagram/layers-shown", static_cast<int>(m_shown.toInt()));
    settings.setValue("diagram/layers-hidden", static_cast<int>(m_hidden.toInt()));
}

} // namespace caprail
