// SPDX-License-Identifier: GPL-3.0-or-later
#include <catalogue/connection.h>

#include <QSqlDatabase>
#include <QSqlDriver>
#include <QSqlQuery>
#include <QVariant>
#include <atomic>
#include <base/say.h>
#include <catalogue/quiet_driver.h>
#include <catalogue/sql_problem.h>
#include <utility>

namespace caprail {

namespace {

QString qtUtf8(std::string_view text) {
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

QString freshName() {
    static std::atomic<unsigned> count = 0;
    return QStringLiteral("caprail-%1").arg(++count);
}

} // namespace

struct Connection::State {
    DatabasePlace place;
    QString name = freshName();
    QSqlDatabase database;
    bool isInTransaction = false;
    bool isOffline = false;
    std::string code;

    bool isPostgres() const { return place.kind == DatabasePlace::Kind::postgres; }

    tl::unexpected<Problem> refuseBy(SqlProblem problem) {
        isOffline = problem.isOffline;
        code = std::move(problem.code);
        return refuse(std::move(problem.sentence));
    }
    /// A statement failed. Whether the server is still there, it is asked: the driver goes on saying that it is open.
    tl::unexpected<Problem> refuseStatement(const QSqlError& error) {
        bool isAlive = true;
        if (isPostgres() && error.nativeErrorCode().isEmpty() && database.isOpen()) {
            QSqlQuery asked(database);
            isAlive = asked.exec(QStringLiteral("SELECT 1")) || !asked.lastError().nativeErrorCode().isEmpty();
        }
        SqlProblem problem = statementProblem(error, place, isAlive);
        if (!isAlive || problem.code.starts_with("57P")) {
            isInTransaction = false;
            database.close();
        }
        return refuseBy(std::move(problem));
    }
    void close() {
        database.close();
        database = QSqlDatabase();
        QSqlDatabase::removeDatabase(name);
    }
    Result<void> run(const QString& sql) {
        QSqlQuery query(database);
        query.setForwardOnly(true);
        return query.exec(sql) ? Result<void>() : Result<void>(refuseStatement(query.lastError()));
    }
};

struct Query::State {
    Connection::State* connection = nullptr;
    QSqlQuery query;
    bool isRunning = false;

    void bind(int at, const QVariant& value) { query.bindValue(at - 1, value); }
};

Query::Query(std::unique_ptr<State> state) : m_state(std::move(state)) {}
Query::Query(Query&&) noexcept = default;
Query& Query::operator=(Query&&) noexcept = default;
Query::~Query() = default;

void Query::bind(int at, std::int64_t value) {
    m_state->bind(at, static_cast<qlonglong>(value));
}
void Query::bind(int at, std::string_view text) {
    m_state->bind(at, text.empty() ? QVariant(QLatin1String("")) : QVariant(qtUtf8(text))); // empty is not null
}
void Query::bindBytes(int at, std::string_view bytes) {
    m_state->bind(at, bytes.empty() ? QByteArray("") : QByteArray(bytes.data(), static_cast<qsizetype>(bytes.size())));
}
void Query::bindNull(int at) {
    m_state->bind(at, QVariant(QMetaType::fromType<QString>()));
}

Result<bool> Query::step() {
    State& s = *m_state;
    if (!s.isRunning) {
        if (!s.connection->database.isOpen()) {
            return s.connection->refuseBy(statementProblem(s.query.lastError(), s.connection->place, false));
        }
        if (!s.query.exec()) {
            return s.connection->refuseStatement(s.query.lastError());
        }
        s.isRunning = s.query.isSelect();
        if (!s.isRunning) {
            return false;
        }
    }
    if (s.query.next()) {
        return true;
    }
    // Rows that were not read look like the end of them: only the error tells.
    if (const QSqlError error = s.query.lastError(); error.isValid()) {
        s.isRunning = false;
        return s.connection->refuseStatement(error);
    }
    reset();
    return false;
}

Result<void> Query::run() {
    auto more = step();
    while (more && *more) {
        more = step();
    }
    return more ? Result<void>() : Result<void>(tl::unexpected(more.error()));
}

Result<void> Query::each(const std::function<Result<void>(const Query& row)>& take) {
    for (auto more = step();; more = step()) {
        if (!more || !*more) {
            return more ? Result<void>() : Result<void>(tl::unexpected(more.error()));
        }
        if (auto taken = take(*this); !taken) {
            reset();
            return taken;
        }
    }
}

void Query::reset() {
    m_state->query.finish();
    m_state->isRunning = false;
}

bool Query::isNull(int column) const {
    return m_state->query.isNull(column);
}
std::int64_t Query::integer(int column) const {
    return m_state->query.value(column).toLongLong();
}
std::string Query::text(int column) const {
    const QVariant value = m_state->query.value(column);
    return value.typeId() == QMetaType::QByteArray ? static_cast<const QByteArray*>(value.constData())->toStdString()
                                                   : value.toString().toStdString();
}
std::string Query::bytes(int column) const {
    return m_state->query.value(column).toByteArray().toStdString();
}

Connection::Connection(DatabasePlace place) : m_state(std::make_unique<State>()) {
    m_state->place = std::move(place);
}
Connection::Connection(Connection&&) noexcept = default;
Connection& Connection::operator=(Connection&& other) noexcept {
    if (m_state != nullptr && this != &other) {
        m_state->close();
    }
    m_state = std::move(other.m_state);
    return *this;
}
Connection::~Connection() {
    if (m_state != nullptr) {
        m_state->close();
    }
}

Result<void> Connection::open() {
    State& s = *m_state;
    const QString driver = s.isPostgres() ? QStringLiteral("QPSQL") : QStringLiteral("QSQLITE");
    if (!s.database.isValid()) {
        if (!QSqlDatabase::isDriverAvailable(driver)) {
            return s.refuseBy(driverProblem(s.place));
        }
        s.database = QSqlDatabase::addDatabase(driver, s.name);
        if (!s.database.isValid()) {
            return s.refuseBy(driverProblem(s.place));
        }
    }
    s.database.close();
    s.isInTransaction = false;
    if (s.isPostgres()) {
        quietDriver();
        askForTls();
        // A network cable that was pulled is noticed within half a minute.
        s.database.setConnectOptions(
            qtUtf8("application_name=caprail connect_timeout=10 keepalives_idle=10 keepalives_interval=5 "
                   "keepalives_count=3 tcp_user_timeout=30000 " +
                   s.place.where));
    } else {
        s.database.setDatabaseName(qtUtf8(s.place.where));
        s.database.setConnectOptions(QStringLiteral("QSQLITE_BUSY_TIMEOUT=5000")); // another window may be writing
    }
    s.database.setNumericalPrecisionPolicy(QSql::LowPrecisionInt64);
    if (!s.database.open()) {
        return s.refuseBy(openingProblem(s.database.lastError(), s.place));
    }
    if (s.isPostgres()) {
        keepNotices(s.database.driver()->handle());
        auto set = run("SET search_path TO caprail, pg_temp");
        set = set ? run("SET TIME ZONE 'UTC'") : set;
        // Somebody who holds a record and does nothing keeps nobody else from going on.
        set = set ? run("SET lock_timeout TO '1min'") : set;
        if (!set) {
            return set;
        }
    }
    s.isOffline = false;
    s.code.clear();
    return {};
}

bool Connection::isOpen() const {
    return m_state->database.isOpen();
}

Result<void> Connection::limitTo(std::chrono::milliseconds patience) {
    return m_state->isPostgres() ? run("SET statement_timeout TO " + std::to_string(patience.count())) : Result<void>();
}

Result<Query> Connection::prepare(std::string_view sql) {
    auto state = std::make_unique<Query::State>();
    state->connection = m_state.get();
    state->query = QSqlQuery(m_state->database);
    state->query.setForwardOnly(true);
    if (!isOpen()) {
        return m_state->refuseBy(statementProblem({}, m_state->place, false));
    }
    if (!state->query.prepare(qtUtf8(sql))) {
        return m_state->refuseStatement(state->query.lastError());
    }
    return Query(std::move(state));
}

Result<Query*> Connection::ready(std::optional<Query>& kept, std::string_view sql) {
    if (!kept) {
        auto prepared = prepare(sql);
        if (!prepared) {
            return tl::unexpected(prepared.error());
        }
        kept = std::move(*prepared);
    }
    return &*kept;
}

Result<void> Connection::run(std::string_view sql) {
    return isOpen() ? m_state->run(qtUtf8(sql))
                    : Result<void>(m_state->refuseBy(statementProblem({}, m_state->place, false)));
}

Result<std::int64_t> Connection::integer(std::string_view sql) {
    auto query = prepare(sql);
    const auto row = query ? query->step() : tl::unexpected(query.error());
    if (!row) {
        return tl::unexpected(row.error());
    }
    return *row ? Result<std::int64_t>(query->integer(0))
                : refuse(Core::say("%1 holds no such row.", m_state->place.shownAs));
}

Result<std::string> Connection::text(std::string_view sql) {
    auto query = prepare(sql);
    const auto row = query ? query->step() : tl::unexpected(query.error());
    if (!row) {
        return tl::unexpected(row.error());
    }
    return *row ? Result<std::string>(query->text(0))
                : refuse(Core::say("%1 holds no such row.", m_state->place.shownAs));
}

Result<void> Connection::together(const std::function<Result<void>()>& change) {
    if (auto begun = run(dialect().begin); !begun) {
        return begun;
    }
    m_state->isInTransaction = true;
    auto done = change();
    if (done) {
        done = run("COMMIT");
        // What PostgreSQL refuses to keep is undone by that; SQLite may be asked again.
        m_state->isInTransaction = !m_state->isPostgres();
    }
    if (!done && m_state->isInTransaction && isOpen()) {
        // What the refusal was, the connection goes on saying.
        const bool isOffline = m_state->isOffline;
        std::string code = std::move(m_state->code);
        (void)run("ROLLBACK"); // the transaction ends all the same; `done` says what went wrong
        m_state->isOffline = isOffline;
        m_state->code = std::move(code);
    }
    m_state->isInTransaction = false;
    return done;
}

bool Connection::isOffline() const {
    return m_state->isOffline;
}
const std::string& Connection::lastCode() const {
    return m_state->code;
}
const DatabasePlace& Connection::place() const {
    return m_state->place;
}

} // namespace caprail
