// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QObject>
#include <QString>
#include <assessment/admission.h>
#include <memory>
#include <store/record_file.h>

namespace caprail {

/// The one object that the screens share: an open record, who works on it, and what follows from it. It judges an
/// entry, stores it, and announces the new assessment; nothing is shown before it is on disk. Entries that the disk
/// refused are kept (`unstored()`), to be stored again or saved elsewhere.
class RecordSession : public QObject {
    Q_OBJECT
public:
    /// Opens for writing, or read-only when the file or another program demands it (see `readOnlyReason`).
    static Result<std::unique_ptr<RecordSession>> open(const QString& path);
    /// A new record in `path` (not overwritten), begun by `person` from a template's drafts: one JSON entry a line, as
    /// `caprail append` takes them. With an empty template only the person is entered. Nothing is left on refusal.
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

    void setUnits(const Units&);
    [[nodiscard]] QString person() const { return m_person; }
    void setPerson(const QString& name);

    /// Judges and stores one entry by the present person, now. On refusal nothing is changed and `refused` is sent too.
    Result<std::int64_t> append(Body body);
    /// Several entries that belong together: stops at the first that is refused, and says which.
    Result<void> appendAll(std::vector<Body> bodies);
    /// Withdraws an entry, with a reason.
    Result<std::int64_t> strike(std::int64_t sequence, const QString& why);
    /// Stores an attachment's bytes with its entry; fills in hash and size.
    Result<std::int64_t> attach(AttachmentAdded what, const QByteArray& bytes);

    /// Entries that were judged good but that the disk refused.
    [[nodiscard]] const std::vector<Body>& unstored() const { return m_unstored; }
    /// Tries them again; true when none is left.
    bool storeUnstored();

    /// Reads what another program appended meanwhile.
    void refresh();
    /// Asks the window to show a place.
    void goTo(const Place& place) { emit placeRequested(place); }

signals:
    void changed();                                    ///< facts, assessment, units or person are new
    void stored(qint64 sequence, const QString& line); ///< an entry is on disk
    void refused(const QString& sentence);             ///< an entry was not taken
    void placeRequested(const caprail::Place& place);

private:
    explicit RecordSession(RecordFile file, const QString& path);
    void assessAnew();
    Result<std::int64_t> refuseWith(const Problem&);
    Result<std::int64_t> settle(Body body, Result<std::int64_t> sequence);

    RecordFile m_file;
    QString m_path;
    QString m_person;
    Units m_units;
    Facts m_facts;
    Assessment m_assessment;
    std::vector<Body> m_unstored;
};

} // namespace caprail
