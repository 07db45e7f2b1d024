// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QByteArray>
#include <QObject>
#include <QString>
#include <QStringList>
#include <assessment/admission.h>
#include <functional>
#include <memory>
#include <optional>
#include <session/location_probe.h>
#include <store/file/record_file.h>

namespace caprail {

/// An entry that a person made and that is not on the disk: what it says, when it was made and by whom, and the bytes
/// of an attachment.
struct Unstored {
    UtcTime time;
    std::string person;
    Body body;
    QByteArray bytes;
};

/// A record that was read and is not on any screen yet.
struct ReadRecord {
    RecordFile file;
    QString path;
    QString notice;         ///< what the person should know about how it was opened; mostly empty
    QString upgradeProblem; ///< why it could not be brought to the present version; mostly empty
    FileMark mark = {};     ///< of the file, taken before it was read
    bool isHeld = false;    ///< another program or window writes it, so that this one only reads
};

/// The one object that the screens share: an open record, who works on it, and what follows from it. It judges an
/// entry, stores it, and announces the new assessment; nothing is shown before it is on disk. Entries that the disk
/// refused are kept (`unstored()`), to be stored again or saved elsewhere.
class RecordSession : public QObject {
    Q_OBJECT
public:
    /// Opens for writing, or read-only when the file or another program demands it (see `readOnlyReason`). A record of
    /// an earlier version is brought to the present one first, with a dated copy kept beside it (see `notice`); where
    /// that fails it is opened read-only as it is.
    static Result<std::unique_ptr<RecordSession>> open(const QString& path);
    /// The part of opening that needs no screen: it may run on a thread of its own while the window is built.
    static Result<ReadRecord> read(const QString& path);
    explicit RecordSession(ReadRecord record);
    /// A new record in `path` (not overwritten), begun by `person` from a template's drafts: one JSON entry a line, as
    /// `caprail append` takes them. With an empty template only the person and the engine are entered. The record
    /// appears with all of it, or not at all; nothing is left on refusal.
    static Result<std::unique_ptr<RecordSession>>
    create(const QString& path, const QString& person, const EngineDescribed& engine, const QByteArray& templateLines);

    [[nodiscard]] const Ledger& ledger() const { return m_file.ledger(); }
    [[nodiscard]] const Facts& facts() const { return m_facts; }
    [[nodiscard]] const Assessment& assessment() const { return m_assessment; }
    [[nodiscard]] const Units& units() const { return m_units; }
    [[nodiscard]] RecordFile& file() { return m_file; }
    [[nodiscard]] QString path() const { return m_path; }
    [[nodiscard]] bool isReadOnly() const { return m_file.isReadOnly(); }
    [[nodiscard]] QString readOnlyReason() const;
    /// Whether another program or window has the record, so that this one only reads; as of the last look at the file.
    [[nodiscard]] bool isHeldElsewhere() const { return isReadOnly() && m_isHeld; }
    /// What the person should know about how it was opened; mostly empty.
    [[nodiscard]] QString notice() const { return m_notice; }

    void setUnits(const Units&);
    [[nodiscard]] QString person() const { return m_person; }
    void setPerson(const QString& name);

    /// Judges and stores one entry by the present person, now. On refusal nothing is changed and `refused` is sent too;
    /// what the disk alone would not take waits, and `notStored` is sent.
    Result<std::int64_t> append(Body body);
    /// Several entries that belong together: stops at the first that is refused, and says which.
    Result<void> appendAll(std::vector<Body> bodies);
    /// The same where nothing hangs on the answer: a refusal is said by `refused`, what waits by `notStored`, and the
    /// window shows both.
    void appendAndSay(Body body) { (void)append(std::move(body)); }
    void appendAllAndSay(std::vector<Body> bodies) { (void)appendAll(std::move(bodies)); }
    /// Who is asked for the reason where an entry changes what something was judged by and gives none; the answer none:
    /// the entry is refused. Without an asker such entries are refused.
    void setReasonAsker(std::function<std::optional<QString>(qint64 judgedBefore)> asker) { m_askReason = std::move(asker); }
    /// Stores an attachment's bytes with its entry; fills in hash and size.
    Result<std::int64_t> attach(AttachmentAdded what, const QByteArray& bytes);

    /// Entries that the disk refused, and those made after them, in order. Nothing of them is in the facts yet.
    [[nodiscard]] const std::vector<Unstored>& unstored() const { return m_unstored; }
    /// What the disk said to the first of them; empty when none waits.
    [[nodiscard]] QString waitingReason() const { return m_waitingReason; }
    /// Tries them again in order; true when none is left. One that makes no sense any more stays, and so do those after
    /// it; `refused` says why.
    bool storeUnstored();
    /// Lets go of what waits, when the person says so.
    void dropUnstored();
    /// Writes everything, with what waits, into a new record and goes on in that one: for when the disk of this one no
    /// longer takes or gives anything. Gives a sentence for each attachment whose bytes could not be read any more.
    Result<QStringList> moveTo(const QString& path);

    /// Puts a copy in the place of this record, which is kept under a dated name beside it first, and goes on in that.
    /// Gives the name under which it is kept.
    Result<QString> restoreFrom(const QString& copy);

    /// Begins to look whether the file is still there and whether another program appended to it. It is looked at on
    /// another thread; what is new is told by `fileLost`, `fileFound` and `changed`, and `lookedAround` comes in any
    /// case, once the disk answers. To be called now and then.
    void lookAround();
    /// Why nothing can be stored at the moment: the file was moved, replaced, taken away, or its disk does not answer;
    /// empty while all is well. While the disk is silent, entries wait without being tried, so that nothing hangs; they
    /// are stored, in order, as soon as it answers.
    [[nodiscard]] QString lostReason() const { return m_lost; }
    [[nodiscard]] LocationProbe& probe() { return *m_probe; }
    /// Reads what another program appended meanwhile; false when it could not be read.
    bool refresh();
    /// Asks the window to jump there.
    void goTo(const Destination& destination) { emit destinationRequested(destination); }

signals:
    void changed();                                    ///< facts, assessment, units or person are new
    void stored(qint64 sequence, const QString& line); ///< an entry is on disk
    void refused(const QString& sentence);             ///< an entry was not taken
    void notStored(const QString& sentence);           ///< an entry waits: the disk did not take it
    void destinationRequested(const caprail::Destination& destination);
    void waiting();                          ///< what waits to be stored is another
    void fileLost(const QString& sentence);  ///< the file is no longer where it was
    void fileFound();                        ///< it is there again
    void lookedAround();                     ///< a look was answered
    void moved();                            ///< the session goes on in another file

private:
    void assessAnew();
    Result<std::int64_t> refuseWith(const Problem&);
    Result<std::int64_t> enter(Unstored entry);
    Result<std::int64_t> judgeAndStore(const Unstored& entry, bool& isJudgedGood);
    Result<std::int64_t> letWait(Unstored entry, const Problem& why);
    void follow(const LocationSeen& seen);
    void followSilence();
    void setLost(const QString& why);
    void goneElsewhere();

    RecordFile m_file;
    QString m_path;
    QString m_person;
    Units m_units;
    std::function<std::optional<QString>(qint64)> m_askReason;
    Facts m_facts;
    Assessment m_assessment;
    std::vector<Unstored> m_unstored;
    QString m_waitingReason;
    QString m_notice;
    QString m_upgradeProblem;
    QString m_lost;
    std::unique_ptr<LocationProbe> m_probe;
    std::optional<FileMark> m_mark;   ///< as it was when the ledger was last read from it
    bool m_isHeld = false;            ///< by another program or window, when it was last looked at
    bool m_isSilent = false;          ///< its disk does not answer at the moment
    std::uint64_t m_writes = 0;       ///< entries that this session stored
    std::uint64_t m_writesAtLook = 0; ///< when the look that is on its way began
    std::uint64_t m_writesAtMark = 0; ///< when `m_mark` was taken
};

} // namespace caprail
