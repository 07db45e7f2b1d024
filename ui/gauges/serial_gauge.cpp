// SPDX-License-Identifier: GPL-3.0-or-later
#include <gauges/serial_gauge.h>

#include <QFileInfo>
#include <QStringDecoder>
#include <session/filled.h>

namespace caprail {

namespace {

constexpr int againAfter = 1000;            // milliseconds
constexpr int pauseEndsLine = 120;          // milliseconds; at 300 bit/s a sign takes 33
constexpr qsizetype longestLine = 200;      // bytes: what is longer is no value of a gauge
constexpr qsizetype mostAtOnce = 64 * 1024; // bytes taken before the window has its turn again

/// Gauges older than UTF-8 send one byte a sign.
QString decoded(const QByteArray& bytes) {
    QStringDecoder utf8(QStringDecoder::Utf8);
    const QString text = utf8(bytes);
    return utf8.hasError() ? QString::fromLatin1(bytes) : text;
}

} // namespace

SerialGauge::SerialGauge(const GaugeSetup& setup, QObject* parent) : QObject(parent), m_setup(setup) {
    m_again.setInterval(againAfter);
    m_pause.setInterval(pauseEndsLine);
    m_pause.setSingleShot(true);
    m_port.setReadBufferSize(mostAtOnce);
    connect(&m_again, &QTimer::timeout, this, &SerialGauge::open);
    connect(&m_pause, &QTimer::timeout, this, &SerialGauge::tell);
    connect(&m_port, &QSerialPort::readyRead, this, &SerialGauge::read);
    connect(&m_port, &QSerialPort::errorOccurred, this, &SerialGauge::lose, Qt::QueuedConnection);
}

QString SerialGauge::whyNotOpen() const {
    if (!QFileInfo::exists(m_setup.device)) {
        return filled(tr("%1 is not connected at %2: plug it in, it is taken up again by itself. Nothing is lost."),
                      m_setup.name(), m_setup.device);
    }
    if (m_port.error() == QSerialPort::PermissionError) {
        return filled(tr("%1 at %2 is used by another program, or you may not use it: close that program, or have yourself "
                         "added to the group that owns it (mostly “dialout”)."),
                      m_setup.name(), m_setup.device);
    }
    return filled(tr("%1 at %2 cannot be read as a serial port (%3): choose its port under Instruments ▸ Gauges on this "
                     "computer."),
                  m_setup.name(), m_setup.device, m_port.errorString());
}

void SerialGauge::open() {
    if (m_port.isOpen()) {
        return;
    }
    m_port.setPortName(m_setup.device);
    m_port.setBaudRate(m_setup.speed);
    m_port.setDataBits(m_setup.dataBits == 7 ? QSerialPort::Data7 : QSerialPort::Data8);
    m_port.setStopBits(m_setup.stopBits == 2 ? QSerialPort::TwoStop : QSerialPort::OneStop);
    m_port.setParity(m_setup.parity == GaugeParity::even  ? QSerialPort::EvenParity
                     : m_setup.parity == GaugeParity::odd ? QSerialPort::OddParity
                                                          : QSerialPort::NoParity);
    m_port.setFlowControl(QSerialPort::NoFlowControl);
    if (!QFileInfo::exists(m_setup.device) || !m_port.open(QIODevice::ReadOnly)) {
        const QString why = whyNotOpen();
        m_again.start();
        if (why != m_said) {
            m_said = why;
            emit missing(why);
        }
        return;
    }
    m_again.stop();
    m_pending.clear();
    // Many handheld gauges draw the current of their interface from these two lines.
    m_port.setDataTerminalReady(true);
    m_port.setRequestToSend(true);
    if (!m_said.isEmpty()) {
        m_said.clear();
        emit found(filled(tr("%1 is connected again at %2."), m_setup.name(), m_setup.device));
    }
}

void SerialGauge::lose(QSerialPort::SerialPortError error) {
    const bool isGone = error == QSerialPort::ResourceError || error == QSerialPort::ReadError;
    if (!isGone || !m_port.isOpen()) {
        return;
    }
    m_port.close();
    m_pending.clear(); // half a value is none
    m_pause.stop();
    m_said = filled(tr("%1 went away from %2: plug it in again, it is taken up by itself. What it sent before is stored."),
                    m_setup.name(), m_setup.device);
    emit missing(m_said);
    m_again.start();
}

void SerialGauge::tell() {
    const QString text = decoded(m_pending);
    m_pending.clear();
    if (!text.trimmed().isEmpty()) {
        emit line(text);
    }
}

void SerialGauge::read() {
    const QByteArray bytes = m_port.readAll();
    for (const char byte : bytes) {
        const bool isEnd = m_setup.end == GaugeEnd::line  ? byte == '\r' || byte == '\n'
                           : m_setup.end == GaugeEnd::tab ? byte == '\t'
                                                          : false;
        if (isEnd) {
            tell();
        } else if (m_pending.size() <= longestLine) {
            m_pending.append(byte); // one byte too long is kept, so that the line is not read as one of this length
        }
    }
    if (m_setup.end == GaugeEnd::pause) {
        m_pause.start();
    }
}

} // namespace caprail
