// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QObject>
#include <QString>
#include <functional>
#include <memory>
#include <store/file/record_location.h>

class QTimer;

namespace caprail {

/// What a look at an open record's file found.
struct LocationSeen {
    QString lost;  ///< why nothing could be stored there, a sentence; empty while all is well
    FileMark mark; ///< by which a write of another program is noticed
    bool isHeld = false; ///< another program or window writes it, where this one only reads
};

/// Looks at the file of an open record on a thread that is never waited for: a share that hangs keeps that thread and
/// nothing else. One look at a time; the answer comes by a queued signal.
class LocationProbe : public QObject {
    Q_OBJECT
public:
    /// Runs on another thread. `isForWriting`: whether it may still be written is looked at too.
    using Look = std::function<LocationSeen(const RecordLocation& location, bool isForWriting)>;
    /// How long a look may take until the disk counts as silent, in milliseconds.
    static constexpr int patience = 1000;

    explicit LocationProbe(QObject* parent = nullptr);
    ~LocationProbe() override;
    /// Begins a look; false when one is on its way already.
    bool look(const RecordLocation& location, bool isForWriting);
    /// Forgets the look that is on its way: the record lies elsewhere now.
    void abandon();
    /// Whether the look that is on its way has taken too long.
    [[nodiscard]] bool isSilent() const { return m_isSilent; }
    /// Other eyes, for tests.
    void setLook(Look look) { m_look = std::move(look); }

signals:
    void seen(const caprail::LocationSeen& what); ///< the answer; the disk is not silent any more
    void silent();                                ///< no answer came within `patience`

private:
    struct Answer;
    void take(const LocationSeen& what);
    Look m_look;
    std::shared_ptr<Answer> m_awaited;
    QTimer* m_patience;
    bool m_isSilent = false;
};

} // namespace caprail
