// SPDX-License-Identifier: GPL-3.0-or-later
#include <session/record_session.h>

#include <QDateTime>
#include <QFile>
#include <ledger/entry_json.h>
#include <ledger/history_line.h>

namespace caprail {

namespace {

UtcTime now() {
    return {QDateTime::currentMSecsSinceEpoch()};
}

/// The person who made the last entry goes on working, until another one says so.
QString lastPerson(const Ledger& ledger) {
    return ledger.empty() ? QString() : QString::fromStdString(ledger.entries().back().person);
}

} // namespace

RecordSession::RecordSession(RecordFile file, const QString& path)
    : m_file(std::move(file)), m_path(path), m_person(lastPerson(m_file.ledger())) {
    m_facts = fold(m_file.ledger());
    assessAnew();
}

Result<std::unique_ptr<RecordSession>> RecordSession::open(const QString& path) {
    auto file = RecordFile::open(path.toStdString(), OpenMode::readWrite);
    if (!file) {
        return tl::unexpected(file.error());
    }
    return std::unique_ptr<RecordSession>(new RecordSession(std::move(*file), path));
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
        if (!draft) {
            return refuse("Line " + std::to_string(lineNumber) + " of the template: " + draft.error().sentence);
        }
        beginning.push_back(std::move(draft->body));
    }
    Ledger trial;
    Facts facts;
    const std::string who = person.trimmed().toStdString();
    for (const Body& body : beginning) {
        if (const auto ok = admit(facts, who, body); !ok) {
            return tl::unexpected(ok.error());
        }
        apply(facts, trial.append(now(), who, body));
    }
    auto file = RecordFile::create(path.toStdString());
    if (!file) {
        return tl::unexpected(file.error());
    }
    std::unique_ptr<RecordSession> session(new RecordSession(std::move(*file), path));
    session->m_person = person.trimmed();
    if (auto ok = session->appendAll(std::move(beginning)); !ok) {
        session.reset();
        QFile::remove(path);
        return tl::unexpected(ok.error());
    }
    return session;
}

QString RecordSession::readOnlyReason() const {
    return QString::fromStdString(m_file.readOnlyReason());
}

void RecordSession::setUnits(const Units& units) {
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
    if (auto ok = mayAppend(ledger(), m_facts, m_assessment, m_person.toStdString(), body); !ok) {
        return refuseWith(ok.error());
    }
    auto sequence = m_file.append(now(), m_person.toStdString(), body);
    return settle(std::move(body), std::move(sequence));
}

/// What follows once the disk has answered: the new assessment, or the entry kept for another try.
Result<std::int64_t> RecordSession::settle(Body body, Result<std::int64_t> sequence) {
    if (!sequence) {
        m_unstored.push_back(std::move(body));
        return refuseWith(sequence.error());
    }
    if (std::holds_alternative<Struck>(body)) {
        m_facts = fold(ledger());
    } else {
        apply(m_facts, ledger().at(*sequence));
    }
    assessAnew();
    emit stored(*sequence, QString::fromStdString(historyLine(body, m_units)));
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

Result<std::int64_t> RecordSession::strike(std::int64_t sequence, const QString& why) {
    return append(Struck{sequence, why.trimmed().toStdString()});
}

Result<std::int64_t> RecordSession::attach(AttachmentAdded what, const QByteArray& bytes) {
    const std::string_view view(bytes.constData(), static_cast<std::size_t>(bytes.size()));
    what.sha256 = sha256Hex(view);
    what.size = bytes.size();
    if (auto ok = mayAppend(ledger(), m_facts, m_assessment, m_person.toStdString(), Body(what)); !ok) {
        return refuseWith(ok.error());
    }
    auto sequence = m_file.appendWithAttachment(now(), m_person.toStdString(), what, view);
    return settle(Body(std::move(what)), std::move(sequence));
}

bool RecordSession::storeUnstored() {
    std::vector<Body> waiting;
    waiting.swap(m_unstored);
    for (Body& body : waiting) {
        append(std::move(body));
    }
    return m_unstored.empty();
}

void RecordSession::refresh() {
    if (auto ok = m_file.refresh(); !ok) {
        emit refused(QString::fromStdString(ok.error().sentence));
        return;
    }
    m_facts = fold(ledger());
    assessAnew();
    emit changed();
}

} // namespace caprail
