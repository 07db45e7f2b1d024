// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QElapsedTimer>
#include <QObject>
#include <QPointer>
#include <QTimer>
#include <gauges/gauge_setup.h>
#include <vector>

class QKeyEvent;
class QWidget;

namespace caprail {

/// Tells the keys of a gauge that types from those of a person: they follow each other within milliseconds, fit the
/// gauge's pattern from the first to the last, and end as it ends. In a value field they are seen as they come, and the
/// end hands over the whole line. Anywhere else they would press buttons and fill forms, so keys that may be a gauge's are
/// held for an instant: a line of a gauge is handed over, anything else goes where it was typed, in order.
class GaugeKeys : public QObject {
    Q_OBJECT
public:
    explicit GaugeKeys(QObject* parent);
    /// The gauges that type; none: keys pass without a look.
    void watch(std::vector<GaugeSetup> gauges);

signals:
    void line(const caprail::GaugeSetup& gauge, const QString& text);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    struct Key {
        int key;
        Qt::KeyboardModifiers modifiers;
        QString text;
    };
    bool inField(const QKeyEvent& key);
    bool elsewhere(const QKeyEvent& key, bool isOverride);
    [[nodiscard]] const GaugeSetup* ended(GaugeEnd end) const;
    [[nodiscard]] bool couldBegin(const QString& text) const;
    void handOver(const GaugeSetup& gauge);
    void pause();
    void release();

    std::vector<GaugeSetup> m_gauges;
    QString m_burst;         ///< what came at a gauge's speed
    QString m_before;        ///< the field's text before it
    std::vector<Key> m_held; ///< the keys of the burst where they are held
    QPointer<QWidget> m_widget;
    QElapsedTimer m_sinceLast;
    QTimer m_pause;
    bool m_isReleasing = false;
};

} // namespace caprail
