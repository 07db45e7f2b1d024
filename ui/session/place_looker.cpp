// SPDX-License-Identifier: GPL-3.0-or-later
#include <session/place_looker.h>

#include <QTimer>
#include <mutex>
#include <thread>

namespace caprail {

namespace {

PlaceSeen lookAt(const RecordPlace& place, bool isForWriting) {
    const auto mark = place.mark();
    if (!mark) {
        return {QString::fromStdString(mark.error().sentence), {}};
    }
    const auto writable = isForWriting ? mayWrite(place.path()) : Result<void>();
    return {writable ? QString() : QString::fromStdString(writable.error().sentence), *mark};
}

} // namespace

/// Shared with the looking thread, which may outlive the looker by as long as a disk hangs.
struct PlaceLooker::Answer {
    std::mutex mutex;
    PlaceLooker* awaiting; ///< null when nobody waits for it any more
};

PlaceLooker::PlaceLooker(QObject* parent) : QObject(parent), m_look(lookAt), m_patience(new QTimer(this)) {
    m_patience->setSingleShot(true);
    m_patience->setInterval(patience);
    connect(m_patience, &QTimer::timeout, this, [this] {
        m_isSilent = true;
        emit silent();
    });
}

PlaceLooker::~PlaceLooker() {
    abandon();
}

bool PlaceLooker::look(const RecordPlace& place, bool isForWriting) {
    if (m_awaited) {
        return false;
    }
    m_awaited = std::make_shared<Answer>();
    m_awaited->awaiting = this;
    m_patience->start();
    std::thread([answer = m_awaited, look = m_look, place, isForWriting] {
        const PlaceSeen what = look(place, isForWriting);
        const std::lock_guard lock(answer->mutex);
        if (answer->awaiting != nullptr) {
            // The context object drops it when it goes meanwhile; the answer itself tells an abandoned look.
            QMetaObject::invokeMethod(
                answer->awaiting,
                [looker = answer->awaiting, answer, what] {
                    if (looker->m_awaited == answer) {
                        looker->take(what);
                    }
                },
                Qt::QueuedConnection);
        }
    }).detach();
    return true;
}

void PlaceLooker::take(const PlaceSeen& what) {
    m_awaited.reset();
    m_patience->stop();
    m_isSilent = false;
    emit seen(what);
}

void PlaceLooker::abandon() {
    if (m_awaited) {
        const std::lock_guard lock(m_awaited->mutex);
        m_awaited->awaiting = nullptr;
    }
    m_awaited.reset();
    m_patience->stop();
    m_isSilent = false;
}

} // namespace caprail
