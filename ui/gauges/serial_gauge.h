// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QByteArray>
#include <QObject>
#include <QSerialPort>
#include <QTimer>
#include <gauges/gauge_setup.h>

namespace caprail {

/// The lines of a gauge on a serial port, as they come. Opening and reading never wait. A port that is not there, or goes
/// away, is tried again every second; that it is missing, why, and that it is back is each said once.
class SerialGauge : public QObject {
    Q_OBJECT
public:
    explicit SerialGauge(const GaugeSetup& setup, QObject* parent = nullptr);
    void open();
    [[nodiscard]] bool isOpen() const { return m_port.isOpen(); }

signals:
    void line(const QString& text); ///< without what ended it
    void missing(const QString& sentence);
    void found(const QString& sentence);

private:
    void read();
    void tell();
    void lose(QSerialPort::SerialPortError error);
    [[nodiscard]] QString whyNotOpen() const;
    GaugeSetup m_setup;
    QSerialPort m_port;
    QByteArray m_pending; ///< of a line that has not ended yet
    QTimer m_again, m_pause;
    QString m_said; ///< the last reason that was said; empty while all is well
};

} // namespace caprail
