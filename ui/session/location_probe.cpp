// SPDX-License-Identifier: GPL-3.0-or-later
#include <session/location_probe.h>

#include <QTimer>
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

struct LocationProbe::Eyes {
    WayBack<LocationProbe> back;
    explicit Eyes(WayBack<LocationProbe> way) : back(std::move(way)) {}
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
    if (m_isLooking) {
        return false;
    }
    m_isLooking = true;
    m_patience->start();
    if (m_eyes == nullptr) {
        m_eyes = std::make_unique<Apart<Eyes, LocationProbe>>(*this, std::chrono::milliseconds(0));
    }
    m_eyes->post(QStringLiteral("look"),
                 [look = m_look, location, isForWriting](const Eyes& eyes, const std::stop_token&) {
                     eyes.back.tell([what = look(location, isForWriting)](LocationProbe& to) { to.take(what); });
                 });
    return true;
}

void LocationProbe::take(const LocationSeen& what) {
    m_isLooking = false;
    m_patience->stop();
    m_isSilent = false;
    emit seen(what);
}

void LocationProbe::abandon() {
    m_eyes.reset(); // a look that hangs is left behind with its thread
    m_isLooking = false;
    m_patience->stop();
    m_isSilent = false;
}

} // namespace caprail
