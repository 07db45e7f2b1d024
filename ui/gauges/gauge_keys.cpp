// SPDX-License-Identifier: GPL-3.0-or-later
#include <gauges/gauge_keys.h>

#include <QApplication>
#include <QKeyEvent>
#include <QLineEdit>
#include <algorithm>
#include <gauges/gauge_hub.h>
#include <optional>
#include <stations/common/entry_field.h>
#include <text/typed_sign.h>

namespace caprail {

namespace {

constexpr qint64 ofOneBurst = 50; // milliseconds between two keys; a quick typist needs 80, a slow gauge 30
constexpr qsizetype shortestLine = 3;

std::optional<GaugeEnd> endOf(const QKeyEvent& key) {
    switch (key.key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter: return GaugeEnd::line;
    case Qt::Key_Tab: return GaugeEnd::tab;
    default: return {};
    }
}

} // namespace

GaugeKeys::GaugeKeys(QObject* parent) : QObject(parent) {
    m_pause.setSingleShot(true);
    m_pause.setInterval(static_cast<int>(2 * ofOneBurst));
    connect(&m_pause, &QTimer::timeout, this, &GaugeKeys::pause);
}

void GaugeKeys::watch(std::vector<GaugeSetup> gauges) {
    release();
    m_burst.clear();
    m_gauges = std::move(gauges);
    qApp->removeEventFilter(this);
    if (!m_gauges.empty()) {
        qApp->installEventFilter(this); // the newest is asked first
    }
}

const GaugeSetup* GaugeKeys::ended(GaugeEnd end) const {
    const auto at = std::ranges::find_if(m_gauges, [&](const GaugeSetup& gauge) {
        return gauge.end == end && readGaugeLine(m_burst.toStdString(), gauge.form);
    });
    return m_burst.size() < shortestLine || at == m_gauges.end() ? nullptr : &*at;
}

bool GaugeKeys::couldBegin(const QString& text) const {
    return std::ranges::any_of(
        m_gauges, [&](const GaugeSetup& gauge) { return couldBeginGaugeLine(text.toStdString(), gauge.form); });
}

bool GaugeKeys::eventFilter(QObject* watched, QEvent* event) {
    const bool isOverride = event->type() == QEvent::ShortcutOverride;
    // A key goes up through the parents of the widget that it was for; only the first sight counts.
    if (m_isReleasing || (!isOverride && event->type() != QEvent::KeyPress) || watched != QApplication::focusWidget()) {
        return false;
    }
    auto* widget = static_cast<QWidget*>(watched);
    auto& key = *static_cast<QKeyEvent*>(event);
    if (m_widget != widget) {
        release();
        m_burst.clear();
        m_widget = widget;
    }
    if (fieldInFocus() != nullptr) {
        return !isOverride && inField(key);
    }
    const bool isTaken = elsewhere(key, isOverride);
    if (isTaken) {
        event->accept();
    }
    return isTaken;
}

bool GaugeKeys::inField(const QKeyEvent& key) {
    const bool isOfBurst = m_sinceLast.isValid() && m_sinceLast.elapsed() <= ofOneBurst;
    if (!isOfBurst) {
        m_burst.clear();
    }
    if (isTypedSign(key)) {
        if (m_burst.isEmpty()) {
            const EntryField* field = fieldInFocus();
            m_before = field->problem().isEmpty() ? field->text() : QString(); // what was refused may be replaced
        }
        m_burst += key.text();
        m_sinceLast.start();
        m_pause.start();
        return false;
    }
    const auto end = endOf(key);
    const GaugeSetup* gauge = end ? ended(*end) : nullptr;
    if (gauge == nullptr) {
        m_burst.clear();
        return false;
    }
    handOver(*gauge);
    return true;
}

bool GaugeKeys::elsewhere(const QKeyEvent& key, bool isOverride) {
    const auto end = endOf(key);
    if (end && ended(*end) != nullptr) {
        if (!isOverride) {
            handOver(*ended(*end));
        }
        return true;
    }
    if (isTypedSign(key) && !key.isAutoRepeat() && couldBegin(m_burst + key.text())) {
        if (!isOverride) {
            m_burst += key.text();
            m_held.push_back({key.key(), key.modifiers(), key.text()});
            m_pause.start();
        }
        return true;
    }
    release();
    return false;
}

void GaugeKeys::handOver(const GaugeSetup& gauge) {
    m_pause.stop();
    const QString text = std::exchange(m_burst, {});
    m_held.clear();
    if (EntryField* field = fieldInFocus()) {
        // What the gauge typed is its line, not yet the value; what a person typed before it stays theirs.
        field->lineEdit()->setText(m_before);
    }
    emit line(gauge, text);
}

void GaugeKeys::pause() {
    const GaugeSetup* gauge = ended(GaugeEnd::pause);
    if (gauge != nullptr) {
        handOver(*gauge);
    } else {
        release();
        m_burst.clear();
    }
}

void GaugeKeys::release() {
    m_pause.stop();
    if (m_held.empty()) {
        return;
    }
    m_burst.clear();
    const std::vector<Key> keys = std::exchange(m_held, {});
    m_isReleasing = true;
    for (const Key& held : keys) {
        // To where the keyboard is by then: a key may have moved it, as it would have without us.
        QWidget* widget = QApplication::focusWidget();
        if (widget == nullptr) {
            break;
        }
        for (const QEvent::Type type : {QEvent::KeyPress, QEvent::KeyRelease}) {
            QKeyEvent event(type, held.key, held.modifiers, held.text);
            QApplication::sendEvent(widget, &event);
        }
    }
    m_isReleasing = false;
}

} // namespace caprail
