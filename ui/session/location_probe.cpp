// SPDX-License-Identifier: GPL-3.0-or-later
#include <session/location_probe.h>

#include <QTimer>
#include <mutex>
#include <store/file/writer_lock.h>
#include <thread>

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

/// Shared with the looking thread, which may outlive the probe by as long as a disk hangs.
struct LocationProbe::Answer {
    std::mutex mutex;
    LocationProbe* awaiting; ///< null when nobody waits for it any more
};

LocationProbe::LocationProbe(QObject* parent) : QObject(parent), m_look(lookAt), m_patience(new QTimer(this)) {
    m_patience->setSingleShot(true);
    m_patience->setInterval(patience);
    connect(m_patience, &QTimer::timeout, this, [this] {
        m_isSilent = true;
        emit silent();
    });
}

LocationProbe::~LocationProbe() {
    abandon();
}

bool LocationProbe::look(const RecordLocation& location, bool isForWriting) {
    if (m_awaited) {
        return false;
    }
    m_awaited = std::make_shared<Answer>();
    m_awaited->awaiting = this;
    m_patience->start();
    std::thread([answer = m_awaited, look = m_look, location, isForWriting] {
        const LocationSeen what = look(location, isForWriting);
        const std::lock_guard lock(answer->mutex);
        if (answer->awaiting != nullptr) {
            // The context object drops it when it goes meanwhile; the answer itself tells an abandoned look.
            QMetaObject::invokeMethod(
                answer->awaiting,
                [probe = answer->awaiting, answer, what] {
                    if (probe->m_awaited == answer) {
                        probe->take(what);
                    }
                },
                Qt::QueuedConnection);
        }
    }).detach();
    return true;
}

void LocationProbe::take(const LocationSeen& what) {
    m_awaited.reset();
    m_patience->stop();
    m_isSilent = false;
    emit seen(what);
}

void LocationProbe::abandon() {
    if (m_awaited) {
        const std::lock_guard lock(m_awaited->mutex);
        m_awaited->awaiting = nullptr;
    }
    m_awaited.reset();
    m_patience->stop();
    m_isSilent = false;
}

} // namespace caprail
