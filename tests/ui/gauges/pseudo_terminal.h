// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// A serial port for tests: the gauge's end is written to, the program opens the other under a name of ours, as an adapter
/// that is plugged in and out has the same name again.
#include <QFile>
#include <QString>
#include <fcntl.h>
#include <pty.h>
#include <stdexcept>
#include <string_view>
#include <unistd.h>

namespace caprail {

class PseudoTerminal {
public:
    explicit PseudoTerminal(QString name) : m_name(std::move(name)) { plugIn(); }
    ~PseudoTerminal() { pullOut(); }
    PseudoTerminal(const PseudoTerminal&) = delete;
    PseudoTerminal& operator=(const PseudoTerminal&) = delete;

    void plugIn() {
        char port[256];
        if (::openpty(&m_gauge, &m_port, port, nullptr, nullptr) != 0) {
            throw std::runtime_error("no pseudo-terminal on this computer");
        }
        QFile::link(QString::fromLocal8Bit(port), m_name);
        // A gauge does not wait for the computer either.
        ::fcntl(m_gauge, F_SETFL, O_NONBLOCK);
    }
    void pullOut() {
        ::close(m_gauge);
        ::close(m_port);
        QFile::remove(m_name);
    }
    /// False where the port takes no more at the moment.
    bool send(std::string_view bytes) {
        return ::write(m_gauge, bytes.data(), bytes.size()) == static_cast<ssize_t>(bytes.size());
    }
    [[nodiscard]] QString name() const { return m_name; }

private:
    QString m_name;
    int m_gauge = -1, m_port = -1;
};

} // namespace caprail
