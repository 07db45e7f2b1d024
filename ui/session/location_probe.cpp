// SPDX-License-Identifier: GPL-3.0-or-later
#include <session/location_probe.h>

#include <QTimer>
#include <session/apart.h>
#include <store/file/writer_lock.h>
#include <utility>

namespace caprail {

namespace {

LocationSeen lookAt(const RecordLocation& location, bool isForWriting) {
    const auto mark = location.mark();
    if (!mark) {
        return {QString::fromStdString(mark.error().sentence), {}};
    }
    const auto writable = isForWriting ? mayWrite(location.path()) : Result<void>();
    return {writable ? QString() : QString::fromStdString(writable.error().sentence), *mark,
            !isForWriting && isLockHeld(location.path())};
}

} // namespace

/// A look that is under way, on a thread of its own; one that hangs is left behind with it.
struct LocationProbe::Answer {
    struct Eyes {
        WayBack<LocationProbe> back;
        explicit Eyes(WayBack<LocationProbe> way) : back(std::move(way)) {}
    };
    Apart<Eyes, LocationProbe> eyes;
    explicit Answer(LocationProbe& to) : eyes(to, std::chrono::milliseconds(0)) {}
};

LocationProbe::LocationProbe(QObject* parent) : QObject(parent), m_look(lookAt), m_patience(new QTimer(this)) {
    m_patience->setSingleShot(true);
    m_patience->setInterval(patience);
    connect(m_patience, &QTimer::timeout, this, [this] {
        m_isSilent = true;
        emit silent();
    });
}

LocationProbe::~LocationProbe() = default;

bool LocationProbe::look(const RecordLocation& location, bool isForWriting) {
    if (m_awaited) {
        return false;
    }
    m_awaited = std::make_shared<Answer>(*this);
    m_patience->start();
    m_awaited->eyes.post(
        QStringLiteral("look"),
        [look = m_look, location, isForWriting](const Answer::Eyes& eyes, const std::stop_token&) {
            eyes.back.tell([what = look(location, isForWriting)](LocationProbe& to) { to.take(what); });
        });
    return true;
}

void LocationProbe::take(const LocationSeen& what) {
    abandon();
    emit seen(what);
}

void LocationProbe::abandon() {
    m_awaited.reset();
    m_patience->stop();
    m_isSilent = false;
}

} // namespace caprail
