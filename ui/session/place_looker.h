// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QObject>
#include <QString>
#include <functional>
#include <memory>
#include <store/file/record_place.h>

class QTimer;

namespace caprail {

/// What a look at an open record's file found.
struct PlaceSeen {
    QString lost;  ///< why nothing could be stored there, a sentence; empty while all is well
    FileMark mark; ///< by which a write of another program is noticed
};

/// Looks at the file of an open record on a thread that is never waited for: a share that hangs keeps that thread and
/// nothing else. One look at a time; the answer comes by a queued signal.
class PlaceLooker : public QObject {
    Q_OBJECT
public:
    /// Runs on another thread. `isForWriting`: whether it may still be written is looked at too.
    using Look = std::function<PlaceSeen(const RecordPlace& place, bool isForWriting)>;
    /// How long a look may take until the place counts as silent, in milliseconds.
    static constexpr int patience = 1000;

    explicit PlaceLooker(QObject* parent = nullptr);
    ~PlaceLooker() override;
    /// Begins a look; false when one is on its way already.
    bool look(const RecordPlace& place, bool isForWriting);
    /// Forgets the look that is on its way: the record lies elsewhere now.
    void abandon();
    /// Whether the look that is on its way has taken too long.
    [[nodiscard]] bool isSilent() const { return m_isSilent; }
    /// Other eyes, for tests.
    void setLook(Look look) { m_look = std::move(look); }

signals:
    void seen(const caprail::PlaceSeen& what); ///< the answer; the place is not silent any more
    void silent();                             ///< no answer came within `patience`

private:
    struct Answer;
    void take(const PlaceSeen& what);
    Look m_look;
    std::shared_ptr<Answer> m_awaited;
    QTimer* m_patience;
    bool m_isSilent = false;
};

} // namespace caprail
