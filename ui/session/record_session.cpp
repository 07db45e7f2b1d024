// SPDX-License-Identifier: GPL-3.0-or-later
#include <session/record_session.h>

#include <QCursor>
#include <QGuiApplication>
#include <assessment/judged_before.h>
#include <base/say.h>
#include <ledger/entry_json.h>
#include <ledger/history_line.h>
#include <session/now.h>
#include <store/care/copies.h>
#include <store/care/upgrade.h>
#include <store/file/path_text.h>
#include <store/file/writer_lock.h>

namespace caprail {

namespace {

/// The person who made the last entry goes on working, until another one says so. A salvage is no person's.
QString lastPerson(const Ledger& ledger) {
    for (auto entry = ledger.entries().rbegin(); entry != ledger.entries().rend(); ++entry) {
        if (!entry->body.is<Salvaged>()) {
            return QString::fromStdString(entry->person);
        }
    }
    return {};
}

/// Says by the pointer that the disk is being waited for, where it is slow to take an entry. The command line has none.
class Waiting {
public:
    Waiting() : m_hasPointer(qobject_cast<QGuiApplication*>(QCoreApplication::instance()) != nullptr) {
        if (m_hasPointer) {
            QGuiApplication::setOverrideCursor(Qt::WaitCursor);
        }
    }
    ~Waiting() {
        if (m_hasPointer) {
            QGuiApplication::restoreOverrideCursor();
        }
    }
    Waiting(const Waiting&) = delete;
    Waiting& operator=(const Waiting&) = delete;

private:
    bool m_hasPointer;
};

} // namespace

RecordSession::RecordSession(ReadRecord record)
    : m_file(std::move(record.file)), m_path(std::move(record.path)), m_person(lastPerson(m_file.ledger())),
      m_notice(std::move(record.notice)), m_upgradeProblem(std::move(record.upgradeProblem)),
      m_probe(std::make_unique<LocationProbe>()), m_mark(record.mark), m_isHeld(record.isHeld) {
    connect(m_probe.get(), &LocationProbe::seen, this, &RecordSession::follow);
    connect(m_probe.get(), &LocationProbe::silent, this, &RecordSession::followSilence);
    m_facts = fold(m_file.ledger());
    assessAnew();
}

Result<ReadRecord> RecordSession::read(const QString& path) {
    QString notice;
    QString problem;
    if (const auto older = olderVersion(pathBytes(path)); older && *older) {
        const std::string kept = datedBackupName(pathBytes(path), dateOf(now()));
        if (const auto upgraded = upgradeRecord(pathBytes(path), kept); upgraded) {
            notice =
                tr("This record was written by an earlier version of the program and was brought up to date. As it "
                   "was, it is kept in %1.")
                    .arg(QString::fromStdString(kept));
        } else {
            problem = QString::fromStdString(upgraded.error().sentence);
        }
    }
    const auto location = RecordLocation::of(pathBytes(path));
    const auto mark = location ? location->mark() : Result<FileMark>(tl::unexpected(location.error()));
    auto file = RecordFile::open(pathBytes(path), OpenMode::readWrite);
    if (!file) {
        return tl::unexpected(file.error());
    }
    if (!file->remark().empty()) {
        notice += (notice.isEmpty() ? QString() : QStringLiteral(" ")) + QString::fromStdString(file->remark());
    }
    const bool isHeld = file->isReadOnly() && isLockHeld(pathBytes(path));
    return ReadRecord{std::move(*file), path, notice, problem, mark.value_or(FileMark{}), isHeld};
}

Result<std::unique_ptr<RecordSession>> RecordSession::open(const QString& path) {
    auto record = read(path);
    if (!record) {
        return tl::unexpected(record.error());
    }
    return std::make_unique<RecordSession>(std::move(*record));
}

Result<std::unique_ptr<RecordSession>> RecordSession::create(const QString& path, const QString& person,
                                                             const EngineDescribed& engine,
                                                             const QByteArray& templateLines) {
    // The whole beginning is judged before the file exists, so that a refusal leaves nothing behind.
    std::vector<Body> beginning{PersonAdded{person.trimmed().toStdString(), "assembler"}, engine};
    int lineNumber = 0;
    for (const QByteArray& line : templateLines.split('\n')) {
        ++lineNumber;
        if (line.trimmed().isEmpty()) {
            continue;
        }
        auto draft = fromJson(std::string_view(line.constData(), static_cast<std::size_t>(line.size())));
        const auto may = draft ? mayBeMadeNow(*draft) : tl::unexpected(draft.error());
        if (!may) {
            return refuse(Core::say("Line %1 of the template: %2", lineNumber, may.error().sentence));
        }
        beginning.push_back(std::move(draft->body));
    }
    Ledger ledger;
    Facts facts;
    const std::string who = person.trimmed().toStdString();
    for (Body& body : beginning) {
        if (const auto ok = mayAppend(ledger, facts, assess(facts), who, body); !ok) {
            return tl::unexpected(ok.error());
        }
        const Entry& entry = ledger.append(now(), who, std::move(body));
        if (entry.body.is<Struck>()) {
            facts = fold(ledger);
        } else {
            apply(facts, entry);
        }
    }
    auto file = RecordFile::create(pathBytes(path), ledger);
    if (!file) {
        return tl::unexpected(file.error());
    }
    return std::make_unique<RecordSession>(ReadRecord{std::move(*file), path, {}, {}});
}

QString RecordSession::readOnlyReason() const {
    const QString reason = QString::fromStdString(m_file.readOnlyReason());
    return m_upgradeProblem.isEmpty() ? reason : reason + QLatin1Char(' ') + m_upgradeProblem;
}

void RecordSession::setUnits(const Units& units) {
    if (units == m_units) {
        return;
    }
    m_units = units;
    assessAnew();
    emit changed();
}

void RecordSession::setPerson(const QString& name) {
    m_person = name;
    emit changed();
}

void RecordSession::assessAnew() {
    m_assessment = assess(m_facts, m_units);
}

Result<std::int64_t> RecordSession::refuseWith(const Problem& problem) {
    emit refused(QString::fromStdString(problem.sentence));
    return tl::unexpected(problem);
}

Result<std::int64_t> RecordSession::append(Body body) {
    return enter({now(), m_person.toStdString(), std::move(body), {}});
}

Result<std::int64_t> RecordSession::enter(Unstored entry) {
    // What waits was made first and goes first.
    if (!m_unstored.empty() && !storeUnstored()) {
        return letWait(std::move(entry),
                       {Core::say("Entries made before it wait to be stored, so it waits behind them.")});
    }
    if (m_askReason && lacksReason(m_facts, entry.body)) {
        if (const auto why = m_askReason(judgedBefore(m_facts, entry.body)); why && !why->trimmed().isEmpty()) {
            entry.body = withReason(std::move(entry.body), why->trimmed().toStdString());
        }
    }
    bool isJudgedGood = false;
    auto sequence = judgeAndStore(entry, isJudgedGood);
    // Only what the disk alone refused can be stored later.
    const bool hasItsBytes = !entry.body.is<AttachmentAdded>() || !entry.bytes.isNull();
    if (!sequence && isJudgedGood && !isReadOnly() && hasItsBytes &&
        m_file.canKeep(entry.time, entry.person, entry.body)) {
        m_waitingReason = QString::fromStdString(sequence.error().sentence);
        return letWait(std::move(entry), sequence.error());
    }
    return sequence ? sequence : refuseWith(sequence.error());
}

Result<std::int64_t> RecordSession::letWait(Unstored entry, const Problem& why) {
    m_unstored.push_back(std::move(entry));
    emit waiting();
    emit notStored(QString::fromStdString(why.sentence));
    return tl::unexpected(Problem{why.sentence, true});
}

/// Judges an entry and stores it; once it is on the disk, what follows from it is worked out and told.
Result<std::int64_t> RecordSession::judgeAndStore(const Unstored& entry, bool& isJudgedGood) {
    std::optional<Facts> afterStrike;
    const auto judged = mayAppend(ledger(), m_facts, m_assessment, entry.person, entry.body, m_units, &afterStrike);
    isJudgedGood = judged.has_value();
    if (!judged) {
        return tl::unexpected(judged.error());
    }
    if (m_probe->isSilent() && !isReadOnly()) {
        return refuse(m_lost.toStdString()); // to try would hang, for as long as the disk does
    }
    const Waiting waiting;
    const auto* attachment = entry.body.as<AttachmentAdded>();
    auto sequence =
        attachment == nullptr || entry.bytes.isNull()
            ? m_file.append(entry.time, entry.person, entry.body)
            : m_file.appendWithAttachment(entry.time, entry.person, *attachment,
                                          {entry.bytes.constData(), static_cast<std::size_t>(entry.bytes.size())});
    if (!sequence) {
        m_isHeld = m_isHeld || isReadOnly(); // it was taken over just now
        return sequence;
    }
    ++m_writes;
    setLost({});
    if (entry.body.is<Struck>()) {
        m_facts = afterStrike ? std::move(*afterStrike) : fold(ledger());
    } else {
        apply(m_facts, ledger().at(*sequence));
    }
    assessAnew();
    emit stored(*sequence, QString::fromStdString(historyLine(entry.body, m_units)));
    emit changed();
    return sequence;
}

Result<void> RecordSession::appendAll(std::vector<Body> bodies) {
    for (Body& body : bodies) {
        if (auto sequence = append(std::move(body)); !sequence) {
            return tl::unexpected(sequence.error());
        }
    }
    return {};
}

Result<std::int64_t> RecordSession::attach(AttachmentAdded what, const QByteArray& bytes) {
    what.sha256 = sha256Hex({bytes.constData(), static_cast<std::size_t>(bytes.size())});
    what.size = bytes.size();
    return enter({now(), m_person.toStdString(), Body(std::move(what)), bytes.isNull() ? QByteArray("") : bytes});
}

bool RecordSession::storeUnstored() {
    const std::size_t before = m_unstored.size();
    while (!m_unstored.empty()) {
        bool isJudgedGood = false;
        Unstored first = std::move(m_unstored.front()); // out of the list before anyone hears that it is stored
        m_unstored.erase(m_unstored.begin());
        if (const auto sequence = judgeAndStore(first, isJudgedGood); !sequence) {
            m_unstored.insert(m_unstored.begin(), std::move(first));
            const QString why = QString::fromStdString(sequence.error().sentence);
            if (isJudgedGood) {
                m_waitingReason = why;
                emit notStored(why);
            } else {
                emit refused(why);
            }
            break;
        }
    }
    if (m_unstored.empty()) {
        m_waitingReason.clear();
    }
    if (m_unstored.size() != before) {
        emit waiting();
    }
    return m_unstored.empty();
}

void RecordSession::dropUnstored() {
    m_unstored.clear();
    m_waitingReason.clear();
    emit waiting();
}

} // namespace caprail
