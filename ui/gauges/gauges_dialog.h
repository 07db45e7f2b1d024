// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QDialog>
#include <QTimer>
#include <gauges/gauge_setup.h>
#include <memory>
#include <text/label.h>

class QCheckBox;
class QComboBox;
class QFormLayout;
class QLineEdit;
class QPlainTextEdit;
class QPushButton;

namespace caprail {

class SerialGauge;

/// The gauges of this computer: how each is connected, how its line ends and where the value stands in it, tried at once
/// with its own lines shown as they come. While it is open no gauge stores anything.
class GaugesDialog : public QDialog {
    Q_OBJECT
public:
    /// `instruments`: the names that the open record knows, to choose from.
    GaugesDialog(std::vector<GaugeSetup> gauges, const QStringList& instruments, QWidget* parent = nullptr);
    ~GaugesDialog() override;
    [[nodiscard]] const std::vector<GaugeSetup>& gauges() const { return m_gauges; }

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void accept() override;

private:
    void offerChoices(const QStringList& instruments);
    void nameParts();
    void layOut();
    void connectParts();
    void listPorts();
    void fillList(int index);
    void showCurrent();
    void takeEdits();
    void addGauge();
    void removeGauge();
    void listen();
    void tried(const QString& line);
    void triedTyping();
    void log(const QString& text);
    [[nodiscard]] GaugeSetup* current();

    std::vector<GaugeSetup> m_gauges;
    QComboBox *m_which, *m_instrument, *m_way, *m_end, *m_unit, *m_device, *m_speed, *m_dataBits, *m_parity, *m_stopBits;
    QLineEdit *m_pattern, *m_try;
    QCheckBox* m_used;
    QPushButton *m_remove, *m_propose;
    QPlainTextEdit* m_log;
    Label* m_problem;
    QWidget *m_form, *m_serial;
    QString m_lastLine;
    std::unique_ptr<SerialGauge> m_port;
    QTimer m_pause; ///< ends a line of a gauge that ends with nothing
    bool m_isShowing = false; ///< values are put in, nobody edits
};

} // namespace caprail
