// SPDX-License-Identifier: GPL-3.0-or-later
#include <gauges/gauge_hub.h>

#include <QApplication>
#include <gauges/gauge_keys.h>
#include <gauges/serial_gauge.h>
#include <session/filled.h>
#include <stations/common/entry_field.h>

namespace caprail {

namespace {

constexpr qint64 ofOneButton = 500; // milliseconds: nobody moves a gauge, reads it and presses again within

} // namespace

EntryField* fieldInFocus() {
    for (QWidget* w = QApplication::focusWidget(); w != nullptr; w = w->parentWidget()) {
        if (auto* field = qobject_cast<EntryField*>(w)) {
            return field->isEnabled() ? field : nullptr;
        }
        if (w->isWindow()) {
            break;
        }
    }
    return nullptr;
}

GaugeHub::GaugeHub(std::function<qint64()> clock, QObject* parent)
    : QObject(parent), m_clock(std::move(clock)), m_keys(new GaugeKeys(this)) {
    m_elapsed.start();
    if (!m_clock) {
        m_clock = [this] { return m_elapsed.elapsed(); };
    }
    connect(m_keys, &GaugeKeys::line, this, &GaugeHub::take);
}

GaugeHub::~GaugeHub() = default;

GaugeHub& GaugeHub::instance() {
    static GaugeHub* hub = nullptr;
    static const QObject* madeFor = nullptr;
    if (madeFor != qApp) {
        hub = new GaugeHub({}, qApp);
        madeFor = qApp;
        hub->use(loadGauges());
    }
    return *hub;
}

void GaugeHub::use(const std::vector<GaugeSetup>& gauges) {
    m_ports.clear();
    m_lastAt.clear();
    m_saidNoField = m_saidTooFast = false;
    std::vector<GaugeSetup> typing;
    for (const GaugeSetup& gauge : gauges) {
        if (!gauge.isUsed) {
            continue;
        }
        if (gauge.way == GaugeWay::keyboard) {
            typing.push_back(gauge);
            continue;
        }
        auto port = std::make_unique<SerialGauge>(gauge);
        connect(port.get(), &SerialGauge::line, this, [this, gauge](const QString& text) { take(gauge, text); });
        connect(port.get(), &SerialGauge::missing, this, [this](const QString& why) { emit said(why, true); });
        connect(port.get(), &SerialGauge::found, this, [this](const QString& what) { emit said(what, false); });
        // Once the window listens: what is missing at the start is said too.
        QMetaObject::invokeMethod(port.get(), &SerialGauge::open, Qt::QueuedConnection);
        m_ports.push_back(std::move(port));
    }
    m_keys->watch(std::move(typing));
}

bool GaugeHub::comesByItself(const GaugeSetup& gauge) {
    const qint64 now = m_clock();
    const auto [at, isFirst] = m_lastAt.try_emplace(gauge.name(), now);
    const qint64 since = now - at->second;
    at->second = now;
    return !isFirst && since < ofOneButton;
}

void GaugeHub::take(const GaugeSetup& gauge, const QString& line) {
    if (comesByItself(gauge)) {
        if (!std::exchange(m_saidTooFast, true)) {
            emit said(filled(tr("%1 sends values faster than anyone presses its button; only the first was taken. Set it to "
                                "send one value for each press."),
                             gauge.name()),
                      true);
        }
        return;
    }
    m_saidTooFast = false;
    EntryField* field = fieldInFocus();
    const auto typed = readGaugeLine(line.toStdString(), gauge.form);
    if (!typed) {
        const QString why = QString::fromStdString(typed.error().sentence);
        if (field != nullptr) {
            field->showProblem(why);
        }
        emit said(why, true);
        return;
    }
    if (field == nullptr) {
        if (!std::exchange(m_saidNoField, true)) {
            emit said(filled(tr("%1 came from %2 and is not stored: no value field has the keyboard. Choose the place, then "
                                "press the gauge's button again."),
                             QString::fromStdString(*typed), gauge.name()),
                      true);
        }
        return;
    }
    m_saidNoField = false;
    field->takeFromGauge(QString::fromStdString(*typed), gauge.instrument);
}

} // namespace caprail
