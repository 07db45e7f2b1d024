// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QObject>
#include <QStringList>
#include <QTimer>
#include <map>
#include <optional>
#include <publishing/publish_settings.h>
#include <session/apart.h>
#include <set>
#include <string>
#include <vector>

namespace caprail {

/// Publishes the records that wait, on a thread of its own that is never waited for: what a person asked for at once,
/// the others when the schedule says so. While the database is away they go on waiting, and it is tried again by
/// itself. One of a user's programs publishes at a time; one object serves all windows of a program.
class Publisher : public QObject {
    Q_OBJECT
public:
    static Publisher& instance();
    explicit Publisher(PublishQueue queue, QObject* parent = nullptr);
    ~Publisher() override;

    /// A record was added to: it will be published, where a schedule asks for it.
    void noteChanged(const QString& path);
    /// A person asks for these records and for those of these folders, now. Gives why it cannot begin, as a sentence.
    QString publish(const QStringList& filesAndFolders);
    /// Stops what is on its way, and nothing of a record is left half sent. What a person asked for waits no longer;
    /// what the schedule sends waits for its next time: the next change, or an hour or a day from now.
    void stop();
    /// Tries again now, and goes by the settings as they are now.
    void lookAround();
    /// How long it waits before it tries a database again that was away, at first, in milliseconds; for tests.
    void setPatience(int milliseconds) { m_patience = milliseconds; }

    /// What it is about.
    struct State {
        bool isRunning = false;
        QString file;         ///< that is being sent
        int done = 0, of = 0; ///< records of this run
        int perCent = 0;      ///< of the file
        int waiting = 0;      ///< records that are due and not yet sent
        QString away;         ///< why the database cannot be reached; empty while it can
        QString next;         ///< when it is tried again, by the clock on the wall
        QString notNoted;     ///< why a change could not be noted to be published; it is tried again. Empty: all are
        QStringList refused;  ///< of the last run, a sentence each
    };
    [[nodiscard]] const State& state() const { return m_state; }
    /// In a few words for the foot of a window; empty when there is nothing to say.
    [[nodiscard]] QString sentence() const;

signals:
    void changed();                     ///< the state is another
    void told(const QString& sentence); ///< what came of one record

private:
    struct Sender; ///< in its thread
    void begin(std::vector<WaitingRecord> due);
    void finish(const QString& away);
    void follow(const QString& file, int done, int of, int perCent);
    void keepChanged();
    [[nodiscard]] std::vector<WaitingRecord> dueNow() const;

    PublishQueue m_queue;
    State m_state;
    Apart<Sender, Publisher> m_sender;
    QTimer m_look;
    QTimer m_soon;
    std::set<std::string> m_changed; ///< not noted in the queue yet
    std::map<std::string, UtcTime>
        m_putOff; ///< records whose sending was stopped, by the change that waits for another
    int m_patience = 60'000;
    int m_failures = 0;
    std::optional<qint64> m_notBefore; ///< milliseconds since 1970: the database was away
};

} // namespace caprail
