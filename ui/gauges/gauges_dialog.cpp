// SPDX-License-Identifier: GPL-3.0-or-later
#include <gauges/gauges_dialog.h>

#include <QCheckBox>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QDir>
#include <QFormLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSerialPortInfo>
#include <QVBoxLayout>
#include <gauges/serial_gauge.h>
#include <session/filled.h>
#include <session/look.h>
#include <text/plain_text.h>
#include <text/tab_order.h>

namespace caprail {

namespace {

constexpr int linesKept = 200;
constexpr int pauseEndsTyping = 400; // milliseconds: a person may try it by hand

template <class Value> void offer(QComboBox* box, std::initializer_list<std::pair<QString, Value>> entries) {
    for (const auto& [text, value] : entries) {
        box->addItem(text, static_cast<int>(value));
    }
}

void choose(QComboBox* box, int value) {
    box->setCurrentIndex(std::max(0, box->findData(value)));
}

} // namespace

GaugesDialog::GaugesDialog(std::vector<GaugeSetup> gauges, const QStringList& instruments, QWidget* parent)
    : QDialog(parent), m_gauges(std::move(gauges)), m_which(new QComboBox(this)), m_instrument(new QComboBox),
      m_way(new QComboBox), m_end(new QComboBox), m_unit(new QComboBox), m_device(new QComboBox), m_speed(new QComboBox),
      m_dataBits(new QComboBox), m_parity(new QComboBox), m_stopBits(new QComboBox), m_pattern(new QLineEdit),
      m_try(new QLineEdit), m_used(new QCheckBox(tr("&Take its values"))), m_remove(new QPushButton(tr("Re&move"), this)),
      m_propose(new QPushButton(tr("&Fit the pattern to the last line"))), m_log(new QPlainTextEdit),
      m_problem(new Label(this)), m_form(new QWidget(this)), m_serial(new QWidget) {
    setWindowTitle(tr("Gauges on this computer"));
    offerChoices(instruments);
    nameParts();
    layOut();
    connectParts();
    listPorts();
    if (m_gauges.empty()) {
        m_gauges.push_back({});
    }
    fillList(0);
}

GaugesDialog::~GaugesDialog() = default;

void GaugesDialog::offerChoices(const QStringList& instruments) {
    m_instrument->setEditable(true);
    m_instrument->addItems(instruments);
    m_instrument->lineEdit()->setPlaceholderText(tr("as chosen at the station"));
    offer<GaugeWay>(m_way, {{tr("types like a keyboard"), GaugeWay::keyboard}, {tr("on a serial line"), GaugeWay::serial}});
    offer<GaugeEnd>(m_end, {{tr("with Enter or a line break"), GaugeEnd::line},
                            {tr("with Tab"), GaugeEnd::tab},
                            {tr("with nothing: after a pause"), GaugeEnd::pause}});
    m_unit->addItem(tr("none: the line says it"), QString());
    for (const std::string& unit : gaugeUnits()) {
        m_unit->addItem(QString::fromStdString(unit), QString::fromStdString(unit));
    }
    m_device->setEditable(true);
    for (const int speed : {300, 600, 1200, 2400, 4800, 9600, 19200, 38400, 57600, 115200}) {
        m_speed->addItem(QString::number(speed), speed);
    }
    offer<int>(m_dataBits, {{QStringLiteral("8"), 8}, {QStringLiteral("7"), 7}});
    offer<int>(m_stopBits, {{QStringLiteral("1"), 1}, {QStringLiteral("2"), 2}});
    offer<GaugeParity>(m_parity, {{tr("no parity"), GaugeParity::none},
                                  {tr("even parity"), GaugeParity::even},
                                  {tr("odd parity"), GaugeParity::odd}});
}

void GaugesDialog::nameParts() {
    const std::pair<QWidget*, const char*> names[] = {
        {m_which, "which"}, {m_instrument, "instrument"}, {m_way, "way"},         {m_end, "end"},
        {m_unit, "unit"},   {m_device, "device"},         {m_speed, "speed"},     {m_pattern, "pattern"},
        {m_try, "try"},     {m_log, "lines"},             {m_problem, "problem"}, {m_propose, "propose"}};
    for (const auto& [widget, name] : names) {
        widget->setObjectName(QLatin1String(name));
    }
    m_which->setAccessibleName(tr("Gauge"));
    m_log->setAccessibleName(tr("Lines as they come"));
    m_log->setReadOnly(true);
    m_log->setMaximumBlockCount(linesKept);
    m_log->setTabChangesFocus(true);
    m_log->setMinimumHeight(m_log->fontMetrics().lineSpacing() * 6);
    m_problem->setWordWrap(true);
    m_try->setPlaceholderText(tr("put the keyboard here and press the gauge's button"));
    m_try->installEventFilter(this);
    setTip(m_pattern, tr("The gauge's line, with # where the value stands and * for anything"));

}

void GaugesDialog::layOut() {
    auto* line = new QHBoxLayout(m_serial);
    line->setContentsMargins(0, 0, 0, 0);
    for (const auto& [box, name] : {std::pair{m_speed, tr("Speed, bits a second")}, std::pair{m_dataBits, tr("Data bits")},
                                    std::pair{m_parity, tr("Parity")}, std::pair{m_stopBits, tr("Stop bits")}}) {
        box->setAccessibleName(name);
        setTip(box, name);
        line->addWidget(box);
    }
    auto* form = new QFormLayout(m_form);
    form->setContentsMargins(0, 0, 0, 0);
    addRow(form, tr("&Instrument in records"), m_instrument);
    addRow(form, tr("&Connected"), m_way);
    addRow(form, tr("Po&rt"), m_device);
    addRow(form, tr("Speed, data bits, parity, stop bits"), m_serial);
    addRow(form, tr("A line &ends"), m_end);
    addRow(form, tr("&Pattern of a line"), m_pattern);
    addRow(form, tr("&Unit, where the line has none"), m_unit);
    addRow(form, tr("Tr&y it"), m_try);
    addRow(form, tr("&Lines as they come"), m_log);
    form->addRow(QString(), m_propose);
    form->addRow(QString(), m_used);

    auto* add = new QPushButton(tr("&Add"), this);
    add->setObjectName(QStringLiteral("add"));
    auto* top = new QHBoxLayout;
    top->addWidget(m_which, 1);
    top->addWidget(add);
    top->addWidget(m_remove);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, this);
    auto* help = new Label(tr("A gauge's value goes to the value field that has the keyboard, as if it were typed and Enter "
                              "pressed. In the pattern # stands for the value and * for anything: 01A# is a value behind the "
                              "gauge's own prefix."),
                           this);
    help->setWordWrap(true);
    auto* column = new QVBoxLayout(this);
    column->addWidget(help);
    column->addLayout(top);
    column->addWidget(m_form, 1);
    column->addWidget(m_problem);
    column->addWidget(buttons);
    for (QPushButton* button : findChildren<QPushButton*>()) {
        button->setAutoDefault(false); // Enter in a field belongs to the gauge
    }
    orderAsRead(*this);
    connect(buttons, &QDialogButtonBox::accepted, this, &GaugesDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(add, &QPushButton::clicked, this, &GaugesDialog::addGauge);
}

void GaugesDialog::connectParts() {
    connect(m_remove, &QPushButton::clicked, this, &GaugesDialog::removeGauge);
    connect(m_which, &QComboBox::activated, this, &GaugesDialog::showCurrent);
    connect(m_propose, &QPushButton::clicked, this, [this] {
        m_pattern->setText(QString::fromStdString(patternOfLine(m_lastLine.toStdString())));
        takeEdits();
        tried(m_lastLine);
    });
    for (QComboBox* box : {m_way, m_end, m_unit, m_speed, m_dataBits, m_parity, m_stopBits}) {
        connect(box, &QComboBox::activated, this, &GaugesDialog::takeEdits);
    }
    for (QComboBox* box : {m_instrument, m_device}) {
        connect(box, &QComboBox::activated, this, &GaugesDialog::takeEdits);
        connect(box->lineEdit(), &QLineEdit::editingFinished, this, &GaugesDialog::takeEdits);
    }
    m_pause.setSingleShot(true);
    m_pause.setInterval(pauseEndsTyping);
    connect(&m_pause, &QTimer::timeout, this, &GaugesDialog::triedTyping);
    connect(m_try, &QLineEdit::textEdited, this, [this] {
        if (current() != nullptr && current()->end == GaugeEnd::pause) {
            m_pause.start();
        }
    });
    connect(m_pattern, &QLineEdit::textEdited, this, &GaugesDialog::takeEdits);
    connect(m_used, &QCheckBox::toggled, this, &GaugesDialog::takeEdits);
}

void GaugesDialog::listPorts() {
    // The names by which an adapter is found again, wherever it is plugged in.
    const QDir byId(QStringLiteral("/dev/serial/by-id"));
    for (const QString& name : byId.entryList(QDir::Files | QDir::System)) {
        m_device->addItem(byId.filePath(name));
    }
    for (const QSerialPortInfo& port : QSerialPortInfo::availablePorts()) {
        m_device->addItem(port.systemLocation());
    }
}

GaugeSetup* GaugesDialog::current() {
    const int index = m_which->currentIndex();
    return index < 0 ? nullptr : &m_gauges[static_cast<std::size_t>(index)];
}

void GaugesDialog::fillList(int index) {
    m_which->clear();
    for (const GaugeSetup& gauge : m_gauges) {
        m_which->addItem(gauge.name());
    }
    m_which->setCurrentIndex(std::min(index, m_which->count() - 1));
    showCurrent();
}

void GaugesDialog::showCurrent() {
    const GaugeSetup* gauge = current();
    m_form->setEnabled(gauge != nullptr);
    m_remove->setEnabled(gauge != nullptr);
    m_problem->clear();
    m_lastLine.clear();
    m_log->clear();
    m_isShowing = true;
    const GaugeSetup shown = gauge == nullptr ? GaugeSetup{} : *gauge;
    m_instrument->setEditText(shown.instrument);
    choose(m_way, static_cast<int>(shown.way));
    choose(m_end, static_cast<int>(shown.end));
    m_unit->setCurrentIndex(std::max(0, m_unit->findData(QString::fromStdString(shown.form.unit))));
    m_pattern->setText(QString::fromStdString(shown.form.pattern));
    m_device->setEditText(shown.device);
    choose(m_speed, shown.speed);
    choose(m_dataBits, shown.dataBits);
    choose(m_stopBits, shown.stopBits);
    choose(m_parity, static_cast<int>(shown.parity));
    m_used->setChecked(shown.isUsed);
    m_isShowing = false;
    listen();
}

void GaugesDialog::takeEdits() {
    GaugeSetup* gauge = current();
    if (m_isShowing || gauge == nullptr) {
        return;
    }
    const GaugeSetup before = *gauge;
    gauge->instrument = m_instrument->currentText().trimmed();
    gauge->way = static_cast<GaugeWay>(m_way->currentData().toInt());
    gauge->end = static_cast<GaugeEnd>(m_end->currentData().toInt());
    gauge->form = {m_pattern->text().toStdString(), m_unit->currentData().toString().toStdString()};
    gauge->device = m_device->currentText().trimmed();
    gauge->speed = m_speed->currentData().toInt();
    gauge->dataBits = m_dataBits->currentData().toInt();
    gauge->stopBits = m_stopBits->currentData().toInt();
    gauge->parity = static_cast<GaugeParity>(m_parity->currentData().toInt());
    gauge->isUsed = m_used->isChecked();
    m_which->setItemText(m_which->currentIndex(), gauge->name());
    GaugeSetup line = *gauge;
    line.form = before.form;
    line.isUsed = before.isUsed;
    line.instrument = before.instrument;
    if (line != before) {
        listen(); // what concerns the line itself is another
    }
}

void GaugesDialog::addGauge() {
    m_gauges.push_back({});
    fillList(static_cast<int>(m_gauges.size()) - 1);
    m_instrument->setFocus();
}

void GaugesDialog::removeGauge() {
    if (current() != nullptr) {
        m_gauges.erase(m_gauges.begin() + m_which->currentIndex());
        fillList(m_which->currentIndex());
    }
}

void GaugesDialog::listen() {
    const GaugeSetup* gauge = current();
    const bool isSerial = gauge != nullptr && gauge->way == GaugeWay::serial;
    m_device->setEnabled(isSerial);
    m_serial->setEnabled(isSerial);
    m_try->setEnabled(!isSerial);
    m_propose->setEnabled(!m_lastLine.isEmpty());
    m_port.reset();
    if (!isSerial || gauge->device.isEmpty()) {
        return;
    }
    m_port = std::make_unique<SerialGauge>(*gauge);
    connect(m_port.get(), &SerialGauge::line, this, &GaugesDialog::tried);
    connect(m_port.get(), &SerialGauge::missing, this, &GaugesDialog::log);
    connect(m_port.get(), &SerialGauge::found, this, &GaugesDialog::log);
    m_port->open();
    if (m_port->isOpen()) {
        log(filled(tr("%1 is open: press the gauge's button."), gauge->device));
    }
}

void GaugesDialog::log(const QString& text) {
    m_log->appendPlainText(visible(text));
}

void GaugesDialog::tried(const QString& line) {
    m_lastLine = line;
    m_propose->setEnabled(true);
    const GaugeSetup* gauge = current();
    if (gauge == nullptr) {
        return;
    }
    const auto read = readGaugeLine(line.toStdString(), gauge->form);
    log(read ? filled(tr("“%1”  is read as  %2"), line, QString::fromStdString(*read))
             : QStringLiteral("✕ ") + QString::fromStdString(read.error().sentence));
}

void GaugesDialog::triedTyping() {
    m_pause.stop();
    if (!m_try->text().isEmpty()) {
        tried(m_try->text());
        m_try->clear();
    }
}

/// The keyboard's part of trying: what ends a line of this gauge shows it, whatever else the key does in a dialog.
bool GaugesDialog::eventFilter(QObject* watched, QEvent* event) {
    if (watched == m_try && event->type() == QEvent::KeyPress && !m_try->text().isEmpty()) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        if (key == Qt::Key_Return || key == Qt::Key_Enter || key == Qt::Key_Tab) {
            choose(m_end, static_cast<int>(key == Qt::Key_Tab ? GaugeEnd::tab : GaugeEnd::line));
            takeEdits();
            triedTyping();
            return true;
        }
    }
    return QDialog::eventFilter(watched, event);
}

void GaugesDialog::accept() {
    takeEdits();
    // One that was added and never touched is none.
    std::erase(m_gauges, GaugeSetup{});
    for (std::size_t i = 0; i < m_gauges.size(); ++i) {
        const GaugeSetup& gauge = m_gauges[i];
        const auto form = checkGaugeForm(gauge.form);
        QString why = form ? QString() : QString::fromStdString(form.error().sentence);
        if (form && gauge.way == GaugeWay::serial && gauge.device.isEmpty()) {
            why = tr("Choose the port that the gauge is plugged into.");
        }
        if (!why.isEmpty()) {
            fillList(static_cast<int>(i));
            m_problem->setText(QStringLiteral("✕ ") + why);
            return;
        }
    }
    QDialog::accept();
}

} // namespace caprail
