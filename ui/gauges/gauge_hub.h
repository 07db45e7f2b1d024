// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QElapsedTimer>
#include <QObject>
#include <functional>
#include <gauges/gauge_setup.h>
#include <map>
#include <memory>

class QWidget;

namespace caprail {

class EntryField;
class GaugeKeys;
class SerialGauge;

/// The value field that has the keyboard; null where something else has it, or another program.
EntryField* fieldInFocus();

/// Brings what the gauges of this computer send to the value field in focus, of whatever window, as if it were typed
/// and Enter pressed. One for the whole program, since a serial port has one reader.
///
/// A line that does not fit, a gauge that is missing, and that no value field has the keyboard is each one sentence,
/// told by `said`; a line that does not fit is told at the field in focus too. A gauge that sends by itself, without
/// its button, would fill a pass with what nobody read: of values that follow each other within half a second only the
/// first is taken.
class GaugeHub : public QObject {
    Q_OBJECT
public:
    explicit GaugeHub(std::function<qint64()> clock = {}, QObject* parent = nullptr);
    ~GaugeHub() override;
    /// That of the program, with the gauges that are set up.
    static GaugeHub& instance();
    /// From now on these; none: every port is free, and keys are keys.
    void use(const std::vector<GaugeSetup>& gauges);
    /// A line of one of them.
    void take(const GaugeSetup& gauge, const QString& line);

signals:
    void said(const QString& sentence, bool isFault);

private:
    [[nodiscard]] bool comesByItself(const GaugeSetup& gauge);
    std::function<qint64()> m_clock; ///< milliseconds
    QElapsedTimer m_elapsed;
    std::vector<std::unique_ptr<SerialGauge>> m_ports;
    GaugeKeys* m_keys;
    std::map<QString, qint64> m_lastAt;
    bool m_saidNoField = false;
    bool m_saidTooFast = false;
};

} // namespace caprail
